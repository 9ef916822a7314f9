package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import workuptally.model.Field.Entered;
import workuptally.model.VesselTare;

/** Clean dry tares by vessel, whatever its capitals; the latest last, undated ones first. */
public final class TareRegister {
    private final Map<String, List<Entered>> byVessel = new LinkedHashMap<>();

    /** Of the vessels of a book. */
    public TareRegister(List<VesselTare> tares) {
        tares.stream()
                .sorted(Comparator.comparing(v -> v.date().orElse(java.time.LocalDate.MIN)))
                .forEach(v -> v.tareGrams()
                        .entered()
                        .ifPresent(t -> byVessel.computeIfAbsent(key(v.vessel()), k -> new ArrayList<>())
                                .add(t)));
    }

    private static String key(String vessel) {
        return vessel.strip().toLowerCase(Locale.ROOT);
    }

    /** Tares of a vessel, the latest last; empty for none. */
    public List<Entered> of(String vessel) {
        return vessel.isBlank() ? List.of() : byVessel.getOrDefault(key(vessel), List.of());
    }

    Optional<Entered> latest(String vessel) {
        List<Entered> known = of(vessel);
        return known.isEmpty() ? Optional.empty() : Optional.of(known.get(known.size() - 1));
    }

    /** Tares of all vessels, g. */
    DoubleStream all() {
        return byVessel.values().stream().flatMap(List::stream).mapToDouble(Entered::value);
    }

    /** True where a mass is, within a tolerance, the tare of another vessel than this one. */
    boolean isOfAnother(String vessel, double grams, double toleranceGrams) {
        return byVessel.entrySet().stream()
                .filter(e -> !e.getKey().equals(key(vessel)))
                .flatMap(e -> e.getValue().stream())
                .anyMatch(t -> Math.abs(t.value() - grams) <= toleranceGrams);
    }
}
