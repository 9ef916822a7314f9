package workuptally.book.tables;

import java.util.List;
import java.util.Optional;
import workuptally.book.cells.PartsText;
import workuptally.book.words.NamedNumber;
import workuptally.book.words.Unit;
import workuptally.model.CompositionPart;
import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Severity;

/**
 * Reads the composition of a layer, shares of its mass in per cent.
 *
 * <p>Masses are shares of what the layer weighs, or where that is not known of their sum. Numbers without a per cent sign can be shares of one, grams or parts by volume as well: they count where they add up to about 100, or
 * several of them to 1, and are asked about elsewhere.
 */
final class CompositionCell {
    private static final String HEADING = "Composition";

    /** Rounding that a stated composition may have over 100 %, in percent. */
    private static final double ROUNDING_PERCENT = 1;

    /** Numbers without a sign that add up to less may be something else than per cent; the rest of what adds up to more is hardly missed. */
    private static final double LEAST_SUM_WITHOUT_SIGN = 90;

    private CompositionCell() {}

    /**
     * The parts; none where blank, or where they are asked about.
     *
     * @param weighing what the layer weighs
     */
    static List<CompositionPart> read(TableRow row, RunAssembly run, Layer.Weighing weighing) {
        PartsText.Read masses = PartsText.read(row.text(HEADING), Unit.GRAM, Optional.empty());
        if (masses.fault().isEmpty()
                && !masses.parts().isEmpty()
                && masses.parts().stream().noneMatch(NamedNumber::bare)) {
            return byMass(row, run, masses.parts(), netGrams(weighing));
        }
        List<NamedNumber> parts =
                row.parts(HEADING, Unit.PERCENT, "ethyl acetate 81 %; ethanol 19 %", Optional.of(100.0));
        double sum = parts.stream().mapToDouble(NamedNumber::value).sum();
        boolean bare = parts.stream().anyMatch(NamedNumber::bare);
        if (sum > 100 + ROUNDING_PERCENT) {
            report(row, FindingCode.VALUE_IMPOSSIBLE, "parts that add up to 100 % at most", TableRow.CORRECT);
            return List.of();
        }
        if (!bare || sum >= LEAST_SUM_WITHOUT_SIGN) {
            return shared(row, run, parts, 1);
        }
        if (parts.size() > 1
                && parts.stream().allMatch(NamedNumber::bare)
                && Math.abs(sum - 1) <= ROUNDING_PERCENT / 100) {
            return shared(row, run, parts, 100);
        }
        boolean fraction = sum <= 1 + ROUNDING_PERCENT / 100;
        report(
                row,
                fraction ? FindingCode.PERCENT_AS_FRACTION : FindingCode.PARTS_UNREADABLE,
                "shares in per cent of the layer's mass; without a sign they add up to 1 or 100",
                fraction
                        ? "Write '97 %' for 0.97, or '0.97 %' if that is meant, and run again; it was not used."
                        : "Write '%' behind each share, 'rest' for what is left, and run again; it was not used.");
        return List.of();
    }

    private static List<CompositionPart> byMass(
            TableRow row, RunAssembly run, List<NamedNumber> parts, Optional<Double> netGrams) {
        double sum = parts.stream().mapToDouble(NamedNumber::value).sum();
        if (netGrams.filter(net -> sum > net * (1 + ROUNDING_PERCENT / 100)).isPresent()) {
            report(row, FindingCode.VALUE_IMPOSSIBLE, "parts that weigh no more than the layer", TableRow.CORRECT);
            return List.of();
        }
        if (netGrams.isEmpty() && parts.size() == 1) {
            report(
                    row,
                    FindingCode.PARTS_UNREADABLE,
                    "shares in per cent of the layer's mass, or masses beside what the layer weighs",
                    "Enter what the layer weighs, or the share, and run again; it was not used.");
            return List.of();
        }
        double all = Math.max(sum, netGrams.orElse(sum));
        return shared(row, run, parts, 100 / all);
    }

    private static Optional<Double> netGrams(Layer.Weighing weighing) {
        Optional<Double> net = weighing.netGrams().entered().map(Field.Entered::value);
        Optional<Double> gross = weighing.grossGrams().entered().map(Field.Entered::value);
        Optional<Double> tare = weighing.tareGrams().entered().map(Field.Entered::value);
        return net.or(() -> gross.flatMap(g -> tare.map(t -> g - t))).filter(grams -> grams > 0);
    }

    private static List<CompositionPart> shared(
            TableRow row, RunAssembly run, List<NamedNumber> parts, double percent) {
        return row.shared(parts.stream()
                .map(part -> new CompositionPart(run.substance(part.name()), part.value() * percent))
                .toList());
    }

    private static void report(TableRow row, FindingCode code, String expected, String action) {
        row.report(code, Severity.CHECK, HEADING, "read '" + row.text(HEADING) + "'", expected, action);
    }
}
