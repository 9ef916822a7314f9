package workuptally.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the wash that a typed name means: a named row, or a solute at a strength. */
final class WashNames {
    private static final String NUMBER = "(\\d+(?:[.,]\\d+)?)";
    private static final String UNIT =
            "(mol\\s*/\\s*L|mol\\s*L-1|M|N|(?:wt\\.?|mass|m/m|w/w)?\\s*%\\s*(?:ige[rns]?|w/w|m/m|\\(w/w\\)|by mass)?)";
    private static final Pattern STRENGTH_FIRST =
            Pattern.compile("^\\s*" + NUMBER + "\\s*" + UNIT + "(?:\\s+|(?=\\())(.+)$");
    private static final Pattern STRENGTH_LAST =
            Pattern.compile("^(.+?)[\\s,(]+" + NUMBER + "\\s*" + UNIT + "\\)?\\s*$");
    private static final Pattern FILLERS = Pattern.compile(
            "(?iu)(?<![\\p{L}\\p{N}])(aq\\.?|aqueous|soln\\.?|solution|of|in water|l\u00f6sung|loesung|lsg\\.?|w\u00e4ssrige[rs]?|w\u00e4sserige[rs]?|w\u00e4\u00dfrige[rs]?)(?![\\p{L}\\p{N}])");
    /** German writes solute and solution as one word: Natriumcarbonatl\u00f6sung, NaCl-Lsg. */
    private static final Pattern SOLUTION_ATTACHED =
            Pattern.compile("(?iu)^(\\S.*?\\S)[\\s-]*(?:l\u00f6sung|loesung|lsg\\.?)$");

    private static final Pattern SATURATED = Pattern.compile(
            "(?iu)(?<![\\p{L}\\p{N}-])(sat['\u2019]d|satd\\.?|saturated|sat\\.?|ges\u00e4ttigte[rns]?|ges\\.)(?![\\p{L}\\p{N}-])");
    private static final Pattern HALF =
            Pattern.compile("(?iu)^\\s*(?:half|semi|halb|1/2|50\\s*%)[\\s-]*(?=sat|ges|conc)");

    private final List<Wash> washes;
    private final Map<String, Wash> byName;
    private final Map<String, Solute> solutes;
    private final Map<String, AqueousDensity> densities;

    WashNames(
            List<Wash> washes,
            Map<String, Wash> byName,
            Map<String, Solute> solutes,
            Map<String, AqueousDensity> densities) {
        this.washes = washes;
        this.byName = byName;
        this.solutes = solutes;
        this.densities = densities;
    }

    Optional<Wash> find(String typed) {
        return asTyped(typed).or(() -> asTyped(Names.withoutState(typed)));
    }

    private Optional<Wash> asTyped(String typed) {
        Optional<Wash> named = named(typed).or(() -> named(withoutFillers(typed)));
        if (named.isPresent()) {
            return named;
        }
        Matcher half = HALF.matcher(typed);
        if (half.find()) {
            return find(typed.substring(half.end())).flatMap(this::halved);
        }
        Matcher saturated = SATURATED.matcher(typed);
        if (saturated.find()) {
            return saturated(withoutFillers(saturated.replaceAll(" ")));
        }
        Matcher first = STRENGTH_FIRST.matcher(typed);
        if (first.matches()) {
            return atStrength(number(first.group(1)), first.group(2), withoutFillers(first.group(3)));
        }
        Matcher last = STRENGTH_LAST.matcher(typed);
        if (last.matches()) {
            return atStrength(number(last.group(2)), last.group(3), withoutFillers(last.group(1)));
        }
        return Optional.empty();
    }

    private Optional<Wash> named(String name) {
        return Optional.ofNullable(byName.get(Names.plain(name)));
    }

    private static String withoutFillers(String name) {
        String bare = FILLERS.matcher(name).replaceAll(" ").strip();
        return SOLUTION_ATTACHED.matcher(bare).replaceFirst("$1").strip();
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }

    private Optional<Solute> solute(String name) {
        return Optional.ofNullable(solutes.get(Names.plain(name)));
    }

    private Optional<Wash> saturated(String soluteName) {
        Optional<Solute> solute = solute(soluteName);
        if (solute.isEmpty()) {
            return Optional.empty();
        }
        Optional<Wash> row = washes.stream()
                .filter(wash -> wash.solute().equals(solute.map(Solute::name)))
                .filter(wash -> wash.name().startsWith("Saturated"))
                .findFirst();
        return row.isPresent()
                ? row
                : density(solute.get())
                        .flatMap(table -> table.saturated()
                                .map(point -> derived(
                                        solute.get(),
                                        table,
                                        point.massPercent(),
                                        "Saturated " + solute.get().name())));
    }

    /** A wash mixed with its own volume of water. */
    private Optional<Wash> halved(Wash wash) {
        Optional<Solute> solute = wash.solute().flatMap(this::solute);
        Optional<AqueousDensity> table = solute.flatMap(this::density);
        OptionalDouble water = waterDensity();
        if (table.isEmpty()
                || water.isEmpty()
                || wash.massPercent().isEmpty()
                || wash.densityGramsPerMillilitre().isEmpty()) {
            return Optional.empty();
        }
        double density = wash.densityGramsPerMillilitre().getAsDouble();
        double massPercent = wash.massPercent().getAsDouble() * density / (density + water.getAsDouble());
        Optional<Wash> row = washes.stream()
                .filter(w -> w.solute().equals(wash.solute()))
                .filter(w -> w.name().startsWith("Half-saturated"))
                .findFirst();
        return row.isPresent()
                ? row
                : Optional.of(derived(
                        solute.get(),
                        table.get(),
                        massPercent,
                        "Half-saturated " + solute.get().name()));
    }

    private OptionalDouble waterDensity() {
        return named("water").map(Wash::densityGramsPerMillilitre).orElse(OptionalDouble.empty());
    }

    private Optional<Wash> atStrength(double value, String unit, String soluteName) {
        Optional<Solute> solute = solute(soluteName);
        if (solute.isEmpty()) {
            return Optional.empty();
        }
        Optional<Wash> row = washes.stream()
                .filter(wash -> wash.solute().equals(solute.map(Solute::name)))
                .filter(wash -> sameStrength(wash, value, unit))
                .findFirst();
        if (row.isPresent()) {
            return row;
        }
        Optional<AqueousDensity> table = density(solute.get());
        if (table.isEmpty()) {
            return Optional.of(ofUnknownDensity(solute.get(), value, unit.strip()));
        }
        OptionalDouble massPercent = massPercent(solute.get(), table.get(), value, unit);
        return massPercent.isEmpty()
                ? Optional.empty()
                : Optional.of(derived(
                        solute.get(),
                        table.get(),
                        massPercent.getAsDouble(),
                        plainNumber(value) + " " + unit.strip() + " "
                                + solute.get().name()));
    }

    private static boolean sameStrength(Wash wash, double value, String unit) {
        OptionalDouble strength = unit.contains("%") ? wash.massPercent() : wash.molarityMolesPerLitre();
        // Rows of the table print their strength to three or four digits.
        return !unit.equals("N") && strength.isPresent() && Math.abs(strength.getAsDouble() - value) <= 0.0005 * value;
    }

    private static OptionalDouble massPercent(Solute solute, AqueousDensity table, double value, String unit) {
        if (unit.contains("%")) {
            return value <= table.strongestMassPercent() ? OptionalDouble.of(value) : OptionalDouble.empty();
        }
        double equivalents = Math.max(solute.acidMolesPerMole(), solute.baseMolesPerMole());
        if (unit.equals("N")) {
            return equivalents == 0 ? OptionalDouble.empty() : table.massPercentAt(value / equivalents);
        }
        return table.massPercentAt(value);
    }

    private Optional<AqueousDensity> density(Solute solute) {
        return Optional.ofNullable(densities.get(Names.plain(solute.name())));
    }

    private static Wash derived(Solute solute, AqueousDensity table, double massPercent, String name) {
        double density = table.densityGramsPerMillilitre(massPercent).orElseThrow();
        double molarity = table.molarityMolesPerLitre(massPercent).orElseThrow();
        List<String> sources = new ArrayList<>(table.sources());
        solute.sources().stream().filter(key -> !sources.contains(key)).forEach(sources::add);
        return new Wash(
                "derived",
                name,
                List.of(),
                Optional.of(solute.name()),
                solute.formula(),
                OptionalDouble.of(massPercent),
                OptionalDouble.of(molarity),
                OptionalDouble.of(density),
                OptionalDouble.of(molarity * solute.acidMolesPerMole()),
                OptionalDouble.of(molarity * solute.baseMolesPerMole()),
                solute.gas(),
                solute.note(),
                sources,
                table.basisAt(massPercent).weaker(solute.basis()));
    }

    /** A solution of a listed solute without a density table: what it takes up is known by its molarity, its mass is not. */
    private static Wash ofUnknownDensity(Solute solute, double value, String unit) {
        double equivalents = Math.max(solute.acidMolesPerMole(), solute.baseMolesPerMole());
        OptionalDouble molarity = unit.contains("%") || unit.equals("N") && equivalents == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(unit.equals("N") ? value / equivalents : value);
        return new Wash(
                "derived",
                plainNumber(value) + " " + unit + " " + solute.name(),
                List.of(),
                Optional.of(solute.name()),
                solute.formula(),
                OptionalDouble.empty(),
                molarity,
                OptionalDouble.empty(),
                times(molarity, solute.acidMolesPerMole()),
                times(molarity, solute.baseMolesPerMole()),
                solute.gas(),
                solute.note(),
                solute.sources(),
                solute.basis());
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }

    private static String plainNumber(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
