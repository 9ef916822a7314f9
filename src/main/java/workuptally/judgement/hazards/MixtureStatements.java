package workuptally.judgement.hazards;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.reference.FlashPoint;

/**
 * The hazard statements that go with a portion because of what it holds: those of each component from the share on from which a mixture
 * bears them. A water layer with a little ethyl acetate is not highly flammable; that it may give off flammable vapour is said instead.
 *
 * <p>Where water and solvents of which the flash points in water are listed make at least half of it, their mixture is called by its flash
 * point. Beside another flammable liquid each also counts by its own share, since nothing tells how all of them flash together.
 *
 * <p>Shares are the generic concentration limits of Regulation (EC) 1272/2008, Annex I, parts 3 and 4 (from memory, to be checked), those of
 * one component taken by itself. The regulation has no limit for flammable liquids, whose flash point is to be measured, for peroxides and
 * for drying of the skin; a tenth and a fifth are common practice. A statement without a figure holds from 1 % on. The label of a supplier and the local rules come first.
 */
public final class MixtureStatements {
    private static final double FLAMMABLE_PERCENT = 10;
    private static final double TRACE_PERCENT = 1;
    private static final String WATER = "water";
    /** Water and listed solvents have to be this much of a mixture to be judged by their flash point, mass %. */
    private static final double LEAST_OF_WATER_AND_SOLVENTS_PERCENT = 50;

    private static final Set<String> FLAMMABLE = Set.of("H224", "H225", "H226");
    private static final Map<String, Double> LEAST_PERCENT = Map.ofEntries(
            Map.entry("EUH019", 10.0),
            Map.entry("EUH066", 20.0),
            Map.entry("H300", 0.1),
            Map.entry("H310", 0.1),
            Map.entry("H330", 0.1),
            Map.entry("H302", 25.0),
            Map.entry("H312", 25.0),
            Map.entry("H332", 25.0),
            Map.entry("H304", 10.0),
            Map.entry("H314", 5.0),
            Map.entry("H315", 10.0),
            Map.entry("H318", 3.0),
            Map.entry("H319", 10.0),
            Map.entry("H335", 20.0),
            Map.entry("H336", 20.0),
            Map.entry("H340", 0.1),
            Map.entry("H350", 0.1),
            Map.entry("H360", 0.3),
            Map.entry("H361", 3.0),
            Map.entry("H370", 10.0),
            Map.entry("H371", 10.0),
            Map.entry("H372", 10.0),
            Map.entry("H373", 10.0),
            Map.entry("H400", 25.0),
            Map.entry("H410", 25.0),
            Map.entry("H411", 25.0),
            Map.entry("H412", 25.0));
    /**
     * Statements that need not stand beside a graver one of the same kind: flammable liquids, burns and irritation. Source: Regulation (EC)
     * 1272/2008, Article 27, statements that plainly repeat another need not be shown.
     */
    private static final Map<String, Set<String>> SAID_BY = Map.of(
            "H224", Set.of("H225", "H226"),
            "H225", Set.of("H226"),
            "H314", Set.of("H315", "H318", "H319"),
            "H318", Set.of("H319"));

    /** Source of the combined wording: Regulation (EC) 1272/2008, Annex III, H300 + H310 + H330 and those of the lower categories (from memory). */
    private static final List<String> BY_ROUTE = List.of("if swallowed", "in contact with skin", "if inhaled");

    private static final Map<String, List<String>> ROUTES = Map.of(
            "Fatal", List.of("H300", "H310", "H330"),
            "Toxic", List.of("H301", "H311", "H331"),
            "Harmful", List.of("H302", "H312", "H332"));

    /** Wording of what a mixture is called by its flash point. Source: Regulation (EC) 1272/2008, Annex III. */
    private static final Map<String, String> IN_WATER =
            Map.of("H225", "Highly flammable liquid and vapour.", "H226", "Flammable liquid and vapour.");

    private MixtureStatements() {}

    /**
     * The statements of a portion in words, without their codes.
     *
     * @param grams mass of each component by full name, g
     * @param notes hazard notes of the run, of which those about its materials count
     * @return statements in order of the components; empty where no component has one
     */
    public static List<String> of(Map<String, Double> grams, List<HazardNote> notes) {
        return of(grams, notes, List.of());
    }

    /**
     * The same with what is said of the portion as a whole, whose statements stand first and whose words stand last.
     *
     * @param ofPortion notes about the portion
     */
    public static List<String> of(Map<String, Double> grams, List<HazardNote> notes, List<HazardNote> ofPortion) {
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        Map<String, Double> percents = new LinkedHashMap<>();
        grams.forEach((name, mass) -> percents.put(name, total > 0 ? 100 * mass / total : 0));
        return words(percents, notes, mixture(percents, notes), ofPortion);
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
        return words(mostPercents, notes, Optional.empty(), ofPortion);
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
            if (part.getKey().equalsIgnoreCase(WATER)) {
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
            List<HazardNote> ofPortion) {
        Map<String, String> phrases = new LinkedHashMap<>();
        ofPortion.forEach(note -> note.statements().forEach(s -> put(s, phrases)));
        Set<String> vapour = new LinkedHashSet<>();
        Set<String> byFlashPoint =
                inWater.filter(InWater::alone).map(InWater::names).orElse(Set.of());
        percents.forEach((name, percent) -> {
            for (HazardNote note : notes) {
                if (note.ofMaterial() && isSame(note.subject(), name)) {
                    note.statements().stream()
                            .filter(s -> !byFlashPoint.contains(name) || !FLAMMABLE.contains(code(s)))
                            .forEach(s -> add(s, name, percent, phrases, vapour));
                }
            }
        });
        inWater.flatMap(InWater::statement).ifPresent(code -> phrases.putIfAbsent(code, IN_WATER.get(code)));
        SAID_BY.forEach((graver, milder) -> {
            if (phrases.containsKey(graver)) {
                phrases.keySet().removeAll(milder);
            }
        });
        List<String> words = new ArrayList<>(together(phrases).values());
        vapour.addAll(byFlashPoint);
        if (!byFlashPoint.isEmpty() && phrases.containsKey(FlashPointInWater.FLAMMABLE)) {
            words.add("Contains " + String.join(", ", byFlashPoint) + ".");
        }
        if (!vapour.isEmpty() && FLAMMABLE.stream().noneMatch(phrases::containsKey)) {
            words.add("May give off flammable vapour (" + String.join(", ", vapour) + ").");
        }
        ofPortion.stream().map(HazardNote::caution).filter(w -> !w.isBlank()).forEach(words::add);
        return words;
    }

    /** Swallowed, skin and inhaled in one sentence where two or three of a grade stand, as the annex words them combined. */
    private static Map<String, String> together(Map<String, String> phrases) {
        Map<String, String> joined = new LinkedHashMap<>(phrases);
        ROUTES.forEach((grade, codes) -> {
            List<Integer> there = new ArrayList<>();
            for (int i = 0; i < codes.size(); i++) {
                if (phrases.containsKey(codes.get(i))) {
                    there.add(i);
                }
            }
            if (there.size() > 1) {
                String last = BY_ROUTE.get(there.get(there.size() - 1));
                String first = there.subList(0, there.size() - 1).stream()
                        .map(BY_ROUTE::get)
                        .collect(Collectors.joining(", "));
                there.stream().skip(1).forEach(i -> joined.remove(codes.get(i)));
                joined.put(codes.get(there.get(0)), grade + " " + first + " or " + last + ".");
            }
        });
        return joined;
    }

    /** Whether a mixture bears a statement of a part with that share, mass %. */
    static boolean isBorneAt(String code, double percent) {
        return percent
                >= (FLAMMABLE.contains(code) ? FLAMMABLE_PERCENT : LEAST_PERCENT.getOrDefault(code, TRACE_PERCENT));
    }

    private static void put(String statement, Map<String, String> phrases) {
        String code = code(statement);
        String phrase = statement.substring(code.length()).strip();
        phrases.put(code, phrase.isEmpty() ? statement : phrase);
    }

    private static void add(
            String statement, String name, double percent, Map<String, String> phrases, Set<String> vapour) {
        String code = code(statement);
        if (FLAMMABLE.contains(code) && percent < FLAMMABLE_PERCENT) {
            if (percent >= TRACE_PERCENT) {
                vapour.add(name);
            }
        } else if (isBorneAt(code, percent)) {
            put(statement, phrases);
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
