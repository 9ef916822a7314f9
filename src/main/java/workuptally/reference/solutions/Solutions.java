package workuptally.reference.solutions;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.NamedTable;
import workuptally.reference.tables.TableFile;

/**
 * Solutions in water at 20 °C: the rows of the washes, and any other strength of a listed solute worked out from its density table, then
 * with the key {@code derived}.
 */
public final class Solutions {
    private static final double STRENGTH_TOLERANCE = 0.0005;

    private final NamedTable<Wash> washes;
    private final NamedTable<Solute> solutes;
    private final NamedTable<AqueousDensity> densities;

    private Solutions(NamedTable<Wash> washes, NamedTable<Solute> solutes, NamedTable<AqueousDensity> densities) {
        this.washes = washes;
        this.solutes = solutes;
        this.densities = densities;
    }

    /**
     * Reads the tables.
     *
     * @throws IllegalReferenceException if a value is malformed or out of range
     */
    public static Solutions of(Map<KnownTable, TableFile> files) throws IllegalReferenceException {
        NamedTable<Solute> solutes = NamedTable.spelledFreely(
                        files.get(KnownTable.SOLUTES).each(Solute::of))
                .by(Solute::formula)
                .by(Solute::name)
                .byEach(Solute::aliases);
        NamedTable<AqueousDensity> densities = NamedTable.spelledFreely(
                        AqueousDensity.ofAll(files.get(KnownTable.AQUEOUS_DENSITIES)))
                .by(AqueousDensity::formula)
                .by(AqueousDensity::solute);
        return new Solutions(
                NamedTable.spelledFreely(files.get(KnownTable.WASHES).each(Wash::of))
                        .by(Wash::name)
                        .byEach(Wash::aliases)
                        .by(Wash::key),
                solutes,
                densities.byEach(table -> namesOfSolute(table, densities, solutes)));
    }

    /** A density table goes by every name of its solute. */
    private static List<String> namesOfSolute(
            AqueousDensity table, NamedTable<AqueousDensity> densities, NamedTable<Solute> solutes) {
        return Stream.of(table.formula(), table.solute())
                .flatMap(name -> solutes.findAll(name).stream())
                .filter(solute -> densities
                        .find(solute.name())
                        .filter(own -> own == table)
                        .isPresent())
                .flatMap(solute -> Stream.concat(Stream.of(solute.formula()), solute.aliases().stream()))
                .distinct()
                .toList();
    }

    /** All named washes. */
    public NamedTable<Wash> washes() {
        return washes;
    }

    /** All solutes, by name, alias or formula. */
    public NamedTable<Solute> solutes() {
        return solutes;
    }

    /** All density tables, by any name or formula of their solute. */
    public NamedTable<AqueousDensity> densities() {
        return densities;
    }

    /** The row with this name or alias, a strength that belongs to the name included: {@code brine}, {@code conc. HCl}. */
    public Optional<Wash> named(String name) {
        return washes.find(name);
    }

    /** The saturated solution, where the row or the density table knows it. */
    public Optional<Wash> saturated(Solute solute) {
        Optional<Wash> row = rowStartingWith("Saturated", solute);
        return row.isPresent()
                ? row
                : density(solute)
                        .flatMap(table -> table.saturated()
                                .map(point ->
                                        derived(solute, table, point.massPercent(), "Saturated " + solute.name())));
    }

    /** The concentrated solution as it is sold, where a row knows it. */
    public Optional<Wash> concentrated(Solute solute) {
        return rowStartingWith("Concentrated", solute);
    }

    private Optional<Wash> rowStartingWith(String word, Solute solute) {
        return washes.stream()
                .filter(wash -> wash.solute().filter(solute.name()::equals).isPresent())
                .filter(wash -> wash.name().startsWith(word))
                .findFirst();
    }

    /** A solution mixed with its own volume of water. */
    public Optional<Wash> halved(Wash wash) {
        Optional<Solute> solute = wash.solute().flatMap(this::solute);
        Optional<AqueousDensity> table = solute.flatMap(this::density);
        OptionalDouble water = named("water")
                .map(w -> w.concentration().densityGramsPerMillilitre())
                .orElse(OptionalDouble.empty());
        if (table.isEmpty()
                || water.isEmpty()
                || wash.concentration().massPercent().isEmpty()
                || wash.concentration().densityGramsPerMillilitre().isEmpty()) {
            return Optional.empty();
        }
        double density = wash.concentration().densityGramsPerMillilitre().getAsDouble();
        double massPercent =
                wash.concentration().massPercent().getAsDouble() * density / (density + water.getAsDouble());
        Optional<Wash> row = rowStartingWith("Half-saturated", solute.get());
        return row.isPresent()
                ? row
                : Optional.of(derived(
                        solute.get(),
                        table.get(),
                        massPercent,
                        "Half-saturated " + solute.get().name()));
    }

    /**
     * A solution by mass per cent; empty beyond the density table.
     *
     * @param percent mass %, above 0
     */
    public Optional<Wash> atMassPercent(Solute solute, double percent) {
        Optional<Wash> row = rowOf(solute, percent, w -> w.concentration().massPercent());
        if (row.isPresent()) {
            return row;
        }
        Optional<AqueousDensity> table = density(solute);
        if (table.isEmpty()) {
            return Optional.of(ofUnknownDensity(solute, OptionalDouble.empty(), plainNumber(percent) + " %"));
        }
        return table.filter(t -> percent <= t.strongestMassPercent())
                .map(t -> derived(solute, t, percent, plainNumber(percent) + " % " + solute.name()));
    }

    /**
     * A solution by amount; empty beyond the density table.
     *
     * @param molarity mol/L, above 0
     */
    public Optional<Wash> atMolesPerLitre(Solute solute, double molarity) {
        Optional<Wash> row = rowOf(solute, molarity, w -> w.concentration().molarityMolesPerLitre());
        return row.isPresent() ? row : atMolarity(solute, molarity, plainNumber(molarity) + " M");
    }

    /**
     * A solution by protons given or taken; empty for a solute that does neither, and beyond the density table.
     *
     * @param normality mol of protons per litre, above 0
     */
    public Optional<Wash> atEquivalentsPerLitre(Solute solute, double normality) {
        double equivalents =
                Math.max(solute.acidBase().acidMolesPerMole(), solute.acidBase().baseMolesPerMole());
        return equivalents == 0
                ? Optional.empty()
                : atMolarity(solute, normality / equivalents, plainNumber(normality) + " N");
    }

    private Optional<Wash> atMolarity(Solute solute, double molarity, String strength) {
        Optional<AqueousDensity> table = density(solute);
        if (table.isEmpty()) {
            return Optional.of(ofUnknownDensity(solute, OptionalDouble.of(molarity), strength));
        }
        OptionalDouble massPercent = table.get().massPercentAt(molarity);
        return massPercent.isEmpty()
                ? Optional.empty()
                : Optional.of(derived(solute, table.get(), massPercent.getAsDouble(), strength + " " + solute.name()));
    }

    private interface StrengthOf {
        OptionalDouble of(Wash wash);
    }

    private Optional<Wash> rowOf(Solute solute, double value, StrengthOf strength) {
        return washes.stream()
                .filter(wash -> wash.solute().filter(solute.name()::equals).isPresent())
                .filter(wash -> {
                    OptionalDouble listed = strength.of(wash);
                    // Rows of the table print their strength to three or four digits.
                    return listed.isPresent() && Math.abs(listed.getAsDouble() - value) <= STRENGTH_TOLERANCE * value;
                })
                .findFirst();
    }

    private Optional<Solute> solute(String name) {
        return solutes.find(name);
    }

    private Optional<AqueousDensity> density(Solute solute) {
        return densities.find(solute.name());
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
                new Wash.Concentration(
                        OptionalDouble.of(massPercent), OptionalDouble.of(molarity), OptionalDouble.of(density)),
                OptionalDouble.of(molarity * solute.acidBase().acidMolesPerMole()),
                OptionalDouble.of(molarity * solute.acidBase().baseMolesPerMole()),
                solute.gas(),
                solute.note(),
                sources,
                table.basisAt(massPercent).weaker(solute.basis()));
    }

    /** A solution of a listed solute without a density table: what it takes up is known by its molarity, its mass is not. */
    private static Wash ofUnknownDensity(Solute solute, OptionalDouble molarity, String strength) {
        return new Wash(
                "derived",
                strength + " " + solute.name(),
                List.of(),
                Optional.of(solute.name()),
                solute.formula(),
                new Wash.Concentration(OptionalDouble.empty(), molarity, OptionalDouble.empty()),
                times(molarity, solute.acidBase().acidMolesPerMole()),
                times(molarity, solute.acidBase().baseMolesPerMole()),
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
