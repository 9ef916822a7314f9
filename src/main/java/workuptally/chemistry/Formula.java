package workuptally.chemistry;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Composition of a substance: how many of each element or nuclide, and the charge.
 *
 * <p>Read from text such as {@code C7H6O2}, {@code Cu(NO3)2}, {@code MgSO4·7H2O}, {@code K2CO3.1.5H2O}, {@code CDCl3}, {@code [13C]6H6},
 * {@code NH4+}, {@code SO4^2-}. Counts may be fractions where a hydrate has them.
 */
public final class Formula {
    /** Mass of an electron, g/mol. Source: CODATA 2018, 5.485 799 090 65e-4 u, from memory. */
    static final double ELECTRON_GRAMS_PER_MOLE = 5.4858e-4;

    private final Map<String, Double> composition;
    private final int charge;

    /** Put into words at the first question, since names are looked up by it; two threads at once make the same. */
    private String text = "";

    Formula(Map<String, Double> composition, int charge) {
        this.composition = Collections.unmodifiableMap(hillOrder(composition));
        this.charge = charge;
    }

    /**
     * Reads a molecular formula.
     *
     * <p>Understood: element symbols and whole-number subscripts, round, square and curly brackets nested, parts joined by {@code ·},
     * {@code *} or {@code .} with a leading number, Unicode subscripts and superscripts, {@code D}, nuclides in square brackets, a charge at
     * the end ({@code +}, {@code 2-} after a space, a {@code ^} or in brackets). Symbols of groups such as Ph or Boc are refused, and so are
     * Ac, Ar, Pr and Ts, which chemists use for groups; the elements are written {@code [Ac]}, {@code [Ar]}, {@code [Pr]}, {@code [Ts]}.
     *
     * @param text formula, at most 200 characters
     * @throws IllegalFormulaException (unchecked) if it cannot be read; the message says why
     */
    public static Formula parse(String text) {
        return new FormulaReader(text).read();
    }

    /** What a cell for a formula holds; empty for a blank one, and for one that cannot be read. */
    public static Optional<Formula> in(String text) {
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(parse(text));
        } catch (IllegalFormulaException e) {
            return Optional.empty();
        }
    }

    /** Number of each element or nuclide by symbol, in Hill order: carbon, hydrogen, then by the alphabet. */
    public Map<String, Double> composition() {
        return composition;
    }

    /** Number of one element or nuclide; 0 where it does not occur. */
    public double count(String symbol) {
        return composition.getOrDefault(symbol, 0.0);
    }

    /** Charge in elementary charges. */
    public int charge() {
        return charge;
    }

    /**
     * Molar mass M = Σ nᵢ·Aᵢ less the electrons lost; u(M)² = Σ (nᵢ·aᵢ/√3)² with aᵢ the half-width of atomic weight Aᵢ, all in g/mol.
     *
     * <p>Holds for ordinary isotopic composition. Source: IUPAC abridged atomic weights as passed in; rectangular rule JCGM 100:2008, 4.3.7.
     *
     * @throws IllegalFormulaException if an element has no atomic weight, for example technetium
     */
    public MolarMass molarMass(AtomicWeights weights) {
        double mass = -charge * ELECTRON_GRAMS_PER_MOLE;
        double variance = 0;
        for (Map.Entry<String, Double> part : composition.entrySet()) {
            Optional<AtomicMass> atomic = weights.of(part.getKey());
            if (atomic.isEmpty()) {
                throw new IllegalFormulaException(
                        part.getKey() + " has no standard atomic weight; enter the molar mass");
            }
            mass += part.getValue() * atomic.get().gramsPerMole();
            double halfWidth = part.getValue() * atomic.get().halfWidthGramsPerMole();
            variance += halfWidth * halfWidth / 3;
        }
        return new MolarMass(mass, Math.sqrt(variance));
    }

    /** Whether both hold the same atoms and charge, however written. */
    public boolean sameComposition(Formula other) {
        return charge == other.charge && composition.equals(other.composition);
    }

    /** How many waters it holds beyond another one; 0 where that is not all in which they differ, or it holds no more. */
    public double watersBeyond(Formula other) {
        double waters = count("O") - other.count("O");
        Map<String, Double> with = new HashMap<>(other.composition);
        with.merge("O", waters, Double::sum);
        with.merge("H", 2 * waters, Double::sum);
        return waters > 0 && charge == other.charge && with.equals(composition) ? waters : 0;
    }

    private static Map<String, Double> hillOrder(Map<String, Double> counts) {
        boolean carbon =
                counts.keySet().stream().anyMatch(symbol -> element(symbol).equals("C"));
        Map<String, Double> ordered = new LinkedHashMap<>();
        counts.entrySet().stream()
                .sorted(Comparator.comparingInt(
                                (Map.Entry<String, Double> part) -> rank(element(part.getKey()), carbon))
                        .thenComparing(part -> element(part.getKey()))
                        .thenComparing(Map.Entry::getKey))
                .forEach(part -> ordered.put(part.getKey(), part.getValue()));
        return ordered;
    }

    private static String element(String symbol) {
        int start = 0;
        while (start < symbol.length() && Character.isDigit(symbol.charAt(start))) {
            start++;
        }
        return symbol.substring(start);
    }

    private static int rank(String element, boolean carbon) {
        if (!carbon) {
            return 2;
        }
        return switch (element) {
            case "C" -> 0;
            case "H" -> 1;
            default -> 2;
        };
    }

    /** Hill formula with the charge, for example {@code C7H5O2-}; nuclides in square brackets. */
    @Override
    public String toString() {
        if (text.isEmpty()) {
            text = inWords();
        }
        return text;
    }

    private String inWords() {
        StringBuilder text = new StringBuilder();
        composition.forEach((symbol, count) -> {
            text.append(Character.isDigit(symbol.charAt(0)) ? "[" + symbol + "]" : symbol);
            if (count != 1) {
                text.append(
                        count == Math.rint(count)
                                ? Long.toString(Math.round(count))
                                : String.format(Locale.ROOT, "%s", count));
            }
        });
        if (charge != 0) {
            int size = Math.abs(charge);
            text.append(size == 1 ? "" : "^" + size).append(charge > 0 ? '+' : '-');
        }
        return text.toString();
    }
}
