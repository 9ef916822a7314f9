package workuptally.report.explain;

import java.util.Optional;
import workuptally.model.Field;

/** The net mass of a layer or lot with the entries it comes from. */
final class Weighings {
    private Weighings() {}

    /** {@code gross [place] − tare [place]}, or the net mass typed; empty where neither was entered. */
    static Optional<String> of(Field gross, Field tare, Field net, Numbers numbers) {
        if (gross.entered().isPresent() && tare.entered().isPresent()) {
            return Optional.of(numbers.entry(gross, "g").orElseThrow() + " − "
                    + numbers.entry(tare, "g").orElseThrow());
        }
        return gross.entered().isPresent() ? Optional.empty() : numbers.entry(net, "g");
    }
}
