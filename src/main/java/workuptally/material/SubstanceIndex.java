package workuptally.material;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.reference.Reference;
import workuptally.reference.solutions.Solute;
import workuptally.reference.solutions.Wash;
import workuptally.reference.tables.Names;

/**
 * Names of all tables with the substance each of them means. A name that several substances share is told apart by letter case and
 * brackets ({@code CoCl2}, {@code COCl2}, {@code (COCl)2}) or not at all.
 */
final class SubstanceIndex {
    private static final Pattern CODE = Pattern.compile("[A-Z]\\d{1,2}");

    private static final String IN = " in ";
    private static final int SHORTEST_CASELESS = 3;

    /** Elements of organic molecules: a composition of these alone tells no molecule. */
    private static final Set<String> OF_ORGANIC =
            Set.of("C", "H", "D", "N", "O", "F", "Cl", "Br", "I", "S", "P", "Si", "B", "Se");

    private final Map<String, List<Entry>> byPlainName = new HashMap<>();
    private final Map<String, Set<Substance>> byComposition = new HashMap<>();
    private final Set<Substance> substances = new LinkedHashSet<>();
    private final Map<Substance, Map<Substance, Substance>> solutions = new IdentityHashMap<>();

    /** A name as the table writes it. */
    private record Entry(String written, Substance substance) {}

    /**
     * What a name means: one substance, several, or none.
     *
     * @param substances those it can mean; empty where no table has it
     * @param certain true where it means exactly one
     */
    record Answer(List<Substance> substances, boolean certain) {
        static final Answer NONE = new Answer(List.of(), false);

        Optional<Substance> only() {
            return certain ? Optional.of(substances.get(0)) : Optional.empty();
        }

        boolean isAmbiguous() {
            return !certain && !substances.isEmpty();
        }
    }

    SubstanceIndex(Reference reference) {
        NameWordSearch words = new NameWordSearch(reference.nameWords());
        Map<String, Substance> withoutWater = new LinkedHashMap<>();
        SubstanceRows.All all = SubstanceRows.of(reference);
        for (SubstanceRows rows : all.rows()) {
            Substance substance = rows.substance();
            substances.add(substance);
            for (String name : rows.names()) {
                if (!meansSolution(name, substance, rows.names(), words, reference)) {
                    add(name, all.plainByName().computeIfAbsent(name, Names::plain), substance);
                }
                words.withoutHydrate(name).ifPresent(bare -> withoutWater.putIfAbsent(bare, substance));
            }
        }
        // A hydrate stands for the material where no row of its own lists that without water.
        withoutWater.forEach((name, substance) -> {
            String plain = Names.plain(name);
            if (!byPlainName.containsKey(plain)) {
                add(name, plain, substance);
            }
        });
        List<Entry> ofTwo = byPlainName.values().stream()
                .flatMap(List::stream)
                .filter(e -> e.written().contains(IN))
                .toList();
        Map<Substance, Set<String>> namesOfTwo = namesOfTwo();
        ofTwo.forEach(each -> combine(each.written(), each.substance(), namesOfTwo));
    }

    /** A name that tells a strength, {@code conc. HCl}: read as a solution, not as the substance. */
    private static boolean meansSolution(
            String name, Substance substance, Collection<String> names, NameWordSearch words, Reference reference) {
        Optional<Solute> own = substance.solute();
        boolean wash = own.isPresent()
                && reference
                        .solutions()
                        .named(name)
                        .flatMap(Wash::solute)
                        .filter(solute -> own.get().name().equals(solute))
                        .isPresent();
        boolean ofSolute = own.filter(
                        s -> s.aliases().contains(name) || s.name().equalsIgnoreCase(name))
                .isPresent();
        return wash && !ofSolute
                || words.withoutStrength(name).filter(names::contains).isPresent();
    }

    /** A solution with a row of its own, {@code hydrogen chloride in dioxane}: found by what is dissolved and its solvent. */
    private void combine(String name, Substance substance, Map<Substance, Set<String>> namesOfTwo) {
        int in = name.indexOf(IN);
        Optional<Substance> solute = in > 0 ? find(name.substring(0, in)).only() : Optional.empty();
        Optional<Substance> carrier =
                solute.isPresent() ? find(name.substring(in + IN.length())).only() : Optional.empty();
        if (carrier.isPresent() && solute.get() != substance) {
            Substance withHazard = substance.hazard().isPresent()
                    ? substance
                    : substance.withHazard(solute.get().hazard());
            solutions
                    .computeIfAbsent(solute.get(), s -> new IdentityHashMap<>())
                    .put(carrier.get(), withHazard);
        }
        if (carrier.isPresent()) {
            for (String plain : namesOfTwo.getOrDefault(substance, Set.of())) {
                byPlainName.computeIfPresent(plain, (same, entries) -> {
                    entries.removeIf(e -> e.substance() == substance && isOfTwo(e.written()));
                    return entries.isEmpty() ? null : entries;
                });
            }
        }
    }

    /** Plain names of each substance that tell two materials. */
    private Map<Substance, Set<String>> namesOfTwo() {
        Map<Substance, Set<String>> names = new IdentityHashMap<>();
        byPlainName.forEach((plain, entries) -> {
            for (Entry entry : entries) {
                if (isOfTwo(entry.written())) {
                    names.computeIfAbsent(entry.substance(), s -> new LinkedHashSet<>())
                            .add(plain);
                }
            }
        });
        return names;
    }

    private static boolean isOfTwo(String name) {
        return name.contains(IN) || name.contains("/");
    }

    /** The row of its own that a solution has; empty for most. */
    Optional<Substance> solution(Substance solute, Substance carrier) {
        return Optional.ofNullable(solutions.getOrDefault(solute, Map.of()).get(carrier));
    }

    private void add(String name, String plain, Substance substance) {
        byPlainName.computeIfAbsent(plain, key -> new ArrayList<>(1)).add(new Entry(name, substance));
    }

    /** All names, as the tables write them, each with its substance. */
    Map<String, Substance> names() {
        Map<String, Substance> names = new LinkedHashMap<>();
        byPlainName.values().forEach(entries -> entries.forEach(e -> names.putIfAbsent(e.written(), e.substance())));
        return names;
    }

    /** What a name means. */
    Answer find(String name) {
        String plain = Names.plain(name);
        List<Entry> entries = plain.isEmpty() ? null : byPlainName.get(plain);
        if (entries == null) {
            return Answer.NONE;
        }
        List<Substance> exact = meant(entries, name, false);
        if (exact.size() == 1) {
            return new Answer(exact, true);
        }
        List<Substance> caseless = exact.isEmpty() ? meant(entries, name, true) : exact;
        List<Substance> all = caseless.isEmpty()
                ? entries.stream().map(Entry::substance).distinct().toList()
                : caseless;
        return new Answer(all, all.size() == 1 && !isAnotherFormula(name, plain, entries));
    }

    private static List<Substance> meant(List<Entry> entries, String name, boolean caseless) {
        String typed = spelling(name, caseless);
        return entries.stream()
                .filter(e -> spelling(e.written(), caseless).equals(typed))
                .map(Entry::substance)
                .distinct()
                .toList();
    }

    private static String spelling(String name, boolean caseless) {
        String tight = name.replace(" ", "");
        return caseless ? tight.toLowerCase(Locale.ROOT) : tight;
    }

    /** A name in other letters that is a formula of its own, {@code Hf} for {@code HF}, or too short to be guessed at, {@code na}. */
    private static boolean isAnotherFormula(String name, String plain, List<Entry> entries) {
        if (plain.length() < SHORTEST_CASELESS && plain.chars().allMatch(Character::isLetter)) {
            return true;
        }
        if (name.equals(name.toUpperCase(Locale.ROOT)) || name.equals(name.toLowerCase(Locale.ROOT))) {
            return false;
        }
        Optional<Formula> typed = formula(name);
        return typed.isPresent()
                && entries.stream()
                        .flatMap(e -> formula(e.written()).stream())
                        .anyMatch(f -> !f.sameComposition(typed.get()));
    }

    /** The substances of a composition, where a composition tells what it is: inorganic ones and those with a metal. */
    Collection<Substance> ofComposition(Formula formula) {
        return tellsIdentity(formula) ? byComposition().getOrDefault(composition(formula), Set.of()) : List.of();
    }

    /** Made at the first question: most books ask by name alone. */
    private synchronized Map<String, Set<Substance>> byComposition() {
        if (byComposition.isEmpty()) {
            for (Substance substance : substances) {
                substance
                        .formula()
                        .flatMap(SubstanceIndex::formula)
                        .filter(SubstanceIndex::tellsIdentity)
                        .ifPresent(f -> byComposition
                                .computeIfAbsent(composition(f), key -> new LinkedHashSet<>())
                                .add(substance));
            }
        }
        return byComposition;
    }

    private static String composition(Formula formula) {
        return new TreeMap<>(formula.composition()) + " " + formula.charge();
    }

    private static boolean tellsIdentity(Formula formula) {
        return formula.count("C") == 0
                || formula.count("H") == 0
                || formula.composition().keySet().stream().anyMatch(e -> !OF_ORGANIC.contains(e));
    }

    /** True for a formula of metals and nothing else. */
    static boolean isOfMetalsAlone(Formula formula) {
        return formula.composition().keySet().stream().noneMatch(OF_ORGANIC::contains);
    }

    /**
     * The formula that a name is. A capital and a number, {@code P1}, is the code of a product or lot, unless it is the formula of an element,
     * {@code O2}.
     */
    Optional<Formula> formulaOfName(String name) {
        if (!Adducts.looksLikeFormula(name)) {
            return Optional.empty();
        }
        Optional<Formula> formula = formula(name);
        boolean code = CODE.matcher(name).matches();
        return formula.filter(
                f -> !code || !name.endsWith("1") && !ofComposition(f).isEmpty());
    }

    /** The formula a text is; empty for any other text. */
    static Optional<Formula> formula(String text) {
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(Formula.parse(text));
        } catch (IllegalFormulaException e) {
            return Optional.empty();
        }
    }
}
