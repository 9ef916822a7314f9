package workuptally.judgement.hazards;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.model.SubstanceName;
import workuptally.reference.hazards.FlashPoint;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;

/**
 * The hazard statements that go with a portion because of what it holds: those of each component from the share on from which a mixture
 * bears them. A water layer with a little ethyl acetate is not highly flammable; that it may give off flammable vapour is said instead.
 *
 * <p>Where water and solvents of which the flash points in water are listed make at least half of it, their mixture is called by its flash
 * point. Beside another flammable liquid each also counts by its own share, since nothing tells how all of them flash together.
 *
 * <p>Shares follow {@link MixtureRules}; flammable liquids, of which the flash point is to be measured, count from a tenth on, alone
 * or together (common practice). The label of a supplier and the local rules come first.
 */
public final class MixtureStatements {
    /**
     * Most of a dissolved material on a drying cake, mass %: a cake holds about its own mass of solution, and more than 15 % is rarely
     * dissolved in it (common practice).
     */
    public static final double MOST_DISSOLVED_ON_CAKE_PERCENT = 7.5;

    private static final double FLAMMABLE_PERCENT = 10;
    private static final double TRACE_PERCENT = 1;
    /** Water and listed solvents have to be this much of a mixture to be judged by their flash point, mass %. */
    private static final double LEAST_OF_WATER_AND_SOLVENTS_PERCENT = 50;

    private static final Set<String> FLAMMABLE = Set.of("H224", "H225", "H226");

    private MixtureStatements() {}

    /**
     * The statements of a portion in words, without their codes: first those of the portion as a whole, then those of its components in
     * order; what is said of the whole in words stands last.
     *
     * @param grams mass of each component by full name, g
     * @param notes hazard notes of the run, of which those about its materials count
     * @param ofPortion notes about the portion
     * @return statements; empty where there is none
     */
    public static List<String> of(Map<String, Double> grams, List<HazardNote> notes, List<HazardNote> ofPortion) {
        return of(grams, notes, ofPortion, Map.of());
    }

    /**
     * The same where a part of it has no name, and may be any of what was charged up to that share.
     *
     * @param mayBe what that part may be, as written, by its name in the tables
     */
    public static List<String> of(
            Map<String, Double> grams, List<HazardNote> notes, List<HazardNote> ofPortion, Map<String, String> mayBe) {
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        Map<String, Double> percents = new LinkedHashMap<>();
        grams.forEach((name, mass) -> percents.put(name, total > 0 ? 100 * mass / total : 0));
        List<HazardNote> whole = new ArrayList<>(ofPortion);
        unnamed(percents, notes, mayBe).ifPresent(whole::add);
        return words(percents, notes, mixture(percents, notes), whole, true);
    }

    private static Optional<HazardNote> unnamed(
            Map<String, Double> percents, List<HazardNote> notes, Map<String, String> mayBe) {
        double percent = percents.getOrDefault(LayerFlow.UNSTATED, 0.0)
                + percents.getOrDefault(IngredientAccount.REACTANTS, 0.0);
        Set<String> statements = new LinkedHashSet<>();
        List<String> names = new ArrayList<>();
        for (String name : percent < TRACE_PERCENT ? Set.<String>of() : mayBe.keySet()) {
            Set<String> borne = borneUpTo(percent, name, notes);
            statements.addAll(borne);
            if (!borne.isEmpty()) {
                names.add(mayBe.get(name));
            }
        }
        return statements.isEmpty()
                ? Optional.empty()
                : Optional.of(new HazardNote(
                        "unnamed part",
                        List.copyOf(statements),
                        "What is not named may be " + String.join(", ", names) + ".",
                        "reference table of hazards, by share"));
    }

    /** Statements, code and words, that a portion bears which holds that material up to a share, mass %. */
    private static Set<String> borneUpTo(double percent, String name, List<HazardNote> notes) {
        Set<String> own = new LinkedHashSet<>();
        notes.stream()
                .filter(note -> note.ofMaterial() && isSame(note.subject(), name))
                .flatMap(note -> note.statements().stream())
                .forEach(own::add);
        Set<String> borne = borneAlone(own.stream().map(MixtureStatements::code).toList(), percent);
        Set<String> statements = new LinkedHashSet<>();
        own.stream().filter(s -> borne.remove(code(s))).forEach(statements::add);
        borne.forEach(code -> statements.add(code + " " + MixtureWords.OF_MIXTURE.get(code)));
        return statements;
    }

    /**
     * A note on what a portion may hold beside its make-up.
     *
     * @param mostPercents largest share by the name in the tables, mass %
     * @param notes hazard notes of the run, of which those about its materials count
     * @return the note; empty where no share reaches a limit
     */
    public static Optional<HazardNote> upTo(Map<String, Double> mostPercents, List<HazardNote> notes) {
        Set<String> statements = new LinkedHashSet<>();
        mostPercents.forEach((name, percent) -> statements.addAll(borneUpTo(percent, name, notes)));
        return statements.isEmpty()
                ? Optional.empty()
                : Optional.of(new HazardNote(
                        "part that may be there", List.copyOf(statements), "", "reference table of hazards, by share"));
    }

    /**
     * The statements of a portion of which only the largest share that each component can have is known.
     *
     * @param mostPercents largest share of what it may hold by full name, mass %; together they may exceed 100
     * @param notes hazard notes of the run, of which those about its materials count
     * @param ofPortion notes about the portion as a whole
     * @return statements in order of the names; empty where none has one
     */
    public static List<String> ofLargestShares(
            Map<String, Double> mostPercents, List<HazardNote> notes, List<HazardNote> ofPortion) {
        return words(mostPercents, notes, Optional.empty(), ofPortion, false);
    }

    /**
     * The statements of a portion of which no share is known: all that any component has, since each may be the most of it.
     *
     * @param names full names of what it may hold
     * @param notes hazard notes of the run, of which those about its materials count
     * @param ofPortion notes about the portion as a whole
     * @return statements in order of the names; empty where none has one
     */
    public static List<String> ofUnknownShares(List<String> names, List<HazardNote> notes, List<HazardNote> ofPortion) {
        Map<String, Double> percents = new LinkedHashMap<>();
        names.forEach(name -> percents.put(name, 100.0));
        return ofLargestShares(percents, notes, ofPortion);
    }

    /**
     * Solvents in water whose flash point is known together.
     *
     * @param names the solvents
     * @param statement {@code H225}, {@code H226} or nothing
     * @param alone true where nothing else in it is flammable
     */
    private record InWater(Set<String> names, Optional<String> statement, boolean alone) {}

    private static Optional<InWater> mixture(Map<String, Double> percents, List<HazardNote> notes) {
        Map<String, List<FlashPoint>> listed = new LinkedHashMap<>();
        boolean alone = true;
        double solvents = 0;
        double water = 0;
        for (Map.Entry<String, Double> part : percents.entrySet()) {
            if (SubstanceName.same(part.getKey(), IngredientAccount.WATER)) {
                water += part.getValue();
            }
            for (HazardNote note : notes) {
                boolean is = note.ofMaterial() && isSame(note.subject(), part.getKey());
                if (is && part.getValue() >= TRACE_PERCENT && !note.inWater().isEmpty()) {
                    listed.put(part.getKey(), note.inWater());
                    solvents += part.getValue();
                    break;
                } else if (is && part.getValue() >= TRACE_PERCENT && isFlammable(note)) {
                    alone = false;
                }
            }
        }
        if (listed.isEmpty() || water == 0 || water + solvents < LEAST_OF_WATER_AND_SOLVENTS_PERCENT) {
            return Optional.empty();
        }
        return Optional.of(new InWater(
                listed.keySet(),
                FlashPointInWater.statement(List.copyOf(listed.values()), 100 * solvents / (water + solvents)),
                alone));
    }

    private static boolean isFlammable(HazardNote note) {
        return note.statements().stream().map(MixtureStatements::code).anyMatch(FLAMMABLE::contains);
    }

    private static List<String> words(
            Map<String, Double> percents,
            List<HazardNote> notes,
            Optional<InWater> inWater,
            List<HazardNote> ofPortion,
            boolean together) {
        Map<String, String> phrases = new LinkedHashMap<>();
        ofPortion.forEach(note -> note.statements().forEach(s -> put(s, phrases)));
        Set<String> vapour = new LinkedHashSet<>();
        Set<String> byFlashPoint =
                inWater.filter(InWater::alone).map(InWater::names).orElse(Set.of());
        Map<String, List<String>> statements = new LinkedHashMap<>();
        percents.forEach((name, percent) -> notes.stream()
                .filter(note -> note.ofMaterial() && isSame(note.subject(), name))
                .forEach(note ->
                        statements.computeIfAbsent(name, n -> new ArrayList<>()).addAll(note.statements())));
        Set<String> borne = borne(percents, statements, together);
        double flammablePercent = together ? flammablePercent(percents, statements, byFlashPoint) : 0;
        statements.forEach((name, own) -> {
            for (String statement : own) {
                if (!FLAMMABLE.contains(code(statement))) {
                    if (borne.remove(code(statement))) {
                        put(statement, phrases);
                    }
                } else if (!byFlashPoint.contains(name)) {
                    flammable(statement, name, percents.get(name), flammablePercent, phrases, vapour);
                }
            }
        });
        borne.forEach(code -> phrases.putIfAbsent(code, MixtureWords.OF_MIXTURE.get(code)));
        inWater.flatMap(InWater::statement)
                .ifPresent(code -> phrases.putIfAbsent(code, MixtureWords.OF_MIXTURE.get(code)));
        MixtureWords.SAID_BY.forEach((graver, milder) -> {
            if (phrases.containsKey(graver)) {
                phrases.keySet().removeAll(milder);
            }
        });
        List<String> words = new ArrayList<>(WaysIn.together(phrases).values());
        byFlashPoint.stream()
                .filter(name ->
                        statements.get(name).stream().noneMatch(s -> code(s).equals(FlashPointInWater.FLAMMABLE)))
                .forEach(vapour::add);
        if (!byFlashPoint.isEmpty() && phrases.containsKey(FlashPointInWater.FLAMMABLE)) {
            words.add("Contains " + String.join(", ", byFlashPoint) + ".");
        }
        if (!vapour.isEmpty() && FLAMMABLE.stream().noneMatch(phrases::containsKey)) {
            words.add("May give off flammable vapour (" + String.join(", ", vapour) + ").");
        }
        ofPortion.stream().map(HazardNote::caution).filter(w -> !w.isBlank()).forEach(words::add);
        return words;
    }

    /** What burns, all parts from a trace on together: 9 % of an amine and 7 % of an ester burn no less than 16 % of either. */
    private static double flammablePercent(
            Map<String, Double> percents, Map<String, List<String>> statements, Set<String> byFlashPoint) {
        return statements.entrySet().stream()
                .filter(e -> !byFlashPoint.contains(e.getKey()))
                .filter(e -> e.getValue().stream().map(MixtureStatements::code).anyMatch(FLAMMABLE::contains))
                .mapToDouble(e -> percents.get(e.getKey()))
                .filter(percent -> percent >= TRACE_PERCENT)
                .sum();
    }

    /** Codes by all parts together, or by each alone where their shares are not those of one mixture. */
    private static Set<String> borne(
            Map<String, Double> percents, Map<String, List<String>> statements, boolean together) {
        List<MixtureRules.Part> parts = new ArrayList<>();
        statements.forEach((name, own) -> parts.add(part(
                percents.get(name), own.stream().map(MixtureStatements::code).toList())));
        if (together) {
            double unknown = percents.entrySet().stream()
                    .filter(p -> !statements.containsKey(p.getKey())
                            && !SubstanceName.same(p.getKey(), IngredientAccount.WATER))
                    .mapToDouble(Map.Entry::getValue)
                    .sum();
            return MixtureRules.codes(parts, unknown);
        }
        Set<String> codes = new LinkedHashSet<>();
        parts.forEach(part -> codes.addAll(MixtureRules.codes(List.of(part), 0)));
        return codes;
    }

    /** Codes that a mixture bears of one part with that share, mass %. */
    static Set<String> borneAlone(List<String> codes, double percent) {
        Set<String> borne = MixtureRules.codes(List.of(part(percent, codes)), 0);
        if (percent >= FLAMMABLE_PERCENT) {
            codes.stream().filter(FLAMMABLE::contains).forEach(borne::add);
        }
        return borne;
    }

    /** Flammable liquids are judged elsewhere. */
    private static MixtureRules.Part part(double percent, List<String> codes) {
        Set<String> judged = new LinkedHashSet<>(codes);
        judged.removeAll(FLAMMABLE);
        return new MixtureRules.Part(percent, judged);
    }

    private static void put(String statement, Map<String, String> phrases) {
        String code = code(statement);
        String phrase = statement.substring(code.length()).strip();
        phrases.put(code, phrase.isEmpty() ? statement : phrase);
    }

    private static void flammable(
            String statement,
            String name,
            double percent,
            double allPercent,
            Map<String, String> phrases,
            Set<String> vapour) {
        if (percent >= FLAMMABLE_PERCENT || percent >= TRACE_PERCENT && allPercent >= FLAMMABLE_PERCENT) {
            put(statement, phrases);
        } else if (percent >= TRACE_PERCENT) {
            vapour.add(name);
        }
    }

    private static String code(String statement) {
        int end = statement.indexOf(' ');
        return end < 0 ? statement : statement.substring(0, end);
    }

    /** A grade behind a comma may stand or not: {@code acetic acid, glacial}. */
    private static boolean isSame(String subject, String typed) {
        String name = typed.toLowerCase(Locale.ROOT);
        String plain = subject.toLowerCase(Locale.ROOT);
        return name.equals(plain) || name.startsWith(plain + ", ");
    }
}
