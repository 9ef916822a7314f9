package workuptally.chemistry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Atomic weights of the elements by symbol, with the nuclides that labelled compounds use.
 *
 * <p>Element values are passed in. Nuclide masses are those of the 2020 atomic mass evaluation (Wang et al., Chin. Phys. C 2021, 45, 030003;
 * from memory), rounded to 1e-6 g/mol: {@code D} and {@code [2H]} 2.014102, {@code [3H]} 3.016049, {@code [13C]} 13.003355,
 * {@code [14C]} 14.003242, {@code [15N]} 15.000109, {@code [17O]} 16.999132, {@code [18O]} 17.999160. Uncertainty below 1e-6 g/mol is taken
 * as 1e-6.
 */
public final class AtomicWeights {
    private static final double NUCLIDE_HALF_WIDTH_GRAMS_PER_MOLE = 1e-6;
    private static final Map<String, Double> NUCLIDES = Map.of(
            "2H", 2.014102, "3H", 3.016049, "13C", 13.003355, "14C", 14.003242, "15N", 15.000109, "17O", 16.999132,
            "18O", 17.999160);
    private static final Map<String, String> LETTERS = Map.of("D", "2H");

    private final Map<String, AtomicMass> elements;

    static boolean knowsNuclide(String nuclide) {
        return NUCLIDES.containsKey(nuclide);
    }

    private AtomicWeights(Map<String, AtomicMass> elements) {
        this.elements = elements;
    }

    /**
     * Weights of the elements.
     *
     * @param elements by chemical symbol, for example {@code Na}
     */
    public static AtomicWeights of(Map<String, AtomicMass> elements) {
        return new AtomicWeights(Map.copyOf(new HashMap<>(elements)));
    }

    /**
     * Weight of an element or nuclide.
     *
     * @param symbol {@code Na}, {@code D}, or a nuclide such as {@code 13C}
     */
    public Optional<AtomicMass> of(String symbol) {
        Double nuclide = NUCLIDES.get(LETTERS.getOrDefault(symbol, symbol));
        return nuclide == null
                ? Optional.ofNullable(elements.get(symbol))
                : Optional.of(new AtomicMass(nuclide, NUCLIDE_HALF_WIDTH_GRAMS_PER_MOLE));
    }
}
