package workuptally.tally.containers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.tally.amounts.Masses;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerMakeUpAccount;

/**
 * What a container holds at one point of its ledger.
 *
 * @param grams mass of each component by full name, g
 * @param millilitres volume, mL: measured layers by their volume, the rest by densities, volumes added
 * @param capacityLitres capacity, L, if known
 */
public record ContainerState(Map<String, Double> grams, double millilitres, OptionalDouble capacityLitres) {
    /** Name of the components grouped as traces. */
    public static final String TRACES = "traces";

    private static final Set<String> OUR_WORDS = Set.of(TRACES, LayerFlow.UNSTATED, LayerMakeUpAccount.SALTS);

    private static final int TENTHS_IN_ALL = 1000;

    /** Copies the map in its order. */
    public ContainerState {
        grams = Masses.copyOf(grams);
    }

    /** Mass of all components, g. */
    public double totalGrams() {
        return grams.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Volume, L. */
    public double litres() {
        return millilitres / 1000;
    }

    /** True for a name that is ours and no material: what is not stated, salts of neutralisation, traces put together. */
    public static boolean isOurWord(String name) {
        return OUR_WORDS.contains(name.toLowerCase(Locale.ROOT)) || name.endsWith(LayerMakeUpAccount.AS_SALT);
    }

    /** Share of the capacity, %. */
    public OptionalDouble fillPercent() {
        return capacityLitres.isPresent()
                ? OptionalDouble.of(100 * litres() / capacityLitres.getAsDouble())
                : OptionalDouble.empty();
    }

    /** The state after an addition. */
    public ContainerState plus(ContainerAddition addition) {
        Map<String, Double> sum = new LinkedHashMap<>(grams);
        addition.grams().forEach((name, mass) -> sum.merge(name, mass, Double::sum));
        return new ContainerState(sum, millilitres + addition.millilitres(), capacityLitres);
    }

    /**
     * The composition by mass, the largest part first, in tenths of a per cent that add up to exactly 100.0 (largest remainders rounded
     * up).
     *
     * @param tracePercent components below this share are put together as traces where there are at least two; empty for none
     * @return empty for an empty container
     */
    public List<Part> composition(OptionalDouble tracePercent) {
        double total = totalGrams();
        if (total <= 0) {
            return List.of();
        }
        Map<String, Double> shown = new LinkedHashMap<>();
        double least = tracePercent.orElse(0);
        List<String> traces = grams.entrySet().stream()
                .filter(e -> 100 * e.getValue() / total < least)
                .map(Map.Entry::getKey)
                .toList();
        grams.forEach((name, mass) ->
                shown.merge(traces.size() > 1 && traces.contains(name) ? TRACES : name, mass, Double::sum));
        List<Map.Entry<String, Double>> ordered = shown.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .toList();
        int[] tenths = ordered.stream()
                .mapToInt(e -> (int) Math.floor(TENTHS_IN_ALL * e.getValue() / total))
                .toArray();
        int missing = TENTHS_IN_ALL - java.util.Arrays.stream(tenths).sum();
        List<Integer> byRemainder = new ArrayList<>();
        for (int i = 0; i < tenths.length; i++) {
            byRemainder.add(i);
        }
        byRemainder.sort(Comparator.comparingDouble(
                i -> tenths[i] - TENTHS_IN_ALL * ordered.get(i).getValue() / total));
        for (int i = 0; i < missing; i++) {
            tenths[byRemainder.get(i % byRemainder.size())]++;
        }
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < tenths.length; i++) {
            parts.add(new Part(ordered.get(i).getKey(), ordered.get(i).getValue(), tenths[i] / 10.0));
        }
        return parts;
    }

    /**
     * One part of the composition.
     *
     * @param substance full name
     * @param massGrams mass, g
     * @param massPercent share by mass rounded to 0.1, %
     */
    public record Part(String substance, double massGrams, double massPercent) {}
}
