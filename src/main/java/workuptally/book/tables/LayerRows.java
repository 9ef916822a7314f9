package workuptally.book.tables;

import java.util.List;
import java.util.Optional;
import workuptally.book.words.BookWords;
import workuptally.book.words.NamedNumber;
import workuptally.book.words.Unit;
import workuptally.model.CompositionPart;
import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Severity;

/** Reads the Layers table. */
public final class LayerRows {
    /** Rounding that a stated composition may have over 100 %, in percent. */
    private static final double COMPOSITION_ROUNDING_PERCENT = 1;

    private LayerRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        rows.forEach(row ->
                runs.of(row).ifPresent(run -> row.label("Layer").ifPresent(label -> read(row, label, run))));
    }

    private static void read(TableRow row, String label, RunParts run) {
        Optional<Layer> sameLabel = run.layer(label);
        if (sameLabel.isPresent()) {
            reportSecond(row, label, sameLabel.get());
            return;
        }
        Layer layer = layer(row, label, run);
        Optional<Layer> sameVessel = run.layerInVessel(layer.vessel());
        if (sameVessel.isPresent() && RunParts.stillInItsVessel(layer)) {
            row.reportOf(
                    List.of(sameVessel.get().label(), label),
                    FindingCode.VESSEL_DUPLICATE,
                    "Vessel",
                    "read vessel '" + layer.vessel() + "', which holds layer "
                            + sameVessel.get().label() + " of row "
                            + sameVessel.get().row().row() + " as well",
                    "each vessel once in a run",
                    "Correct the vessel, or remove a copied line, and run again; both layers were read.");
        }
        run.add(layer);
    }

    private static void reportSecond(TableRow row, String label, Layer first) {
        String vessel = row.text("Vessel");
        boolean copied = !vessel.isEmpty() && BookWords.loose(vessel).equals(BookWords.loose(first.vessel()));
        row.report(
                copied ? FindingCode.VESSEL_DUPLICATE : FindingCode.LAYER_DUPLICATE,
                Severity.STOP,
                copied ? "Vessel" : "Layer",
                "read layer '" + label + "'" + (copied ? " in vessel '" + vessel + "'" : "")
                        + " a second time; it stands in row " + first.row().row() + " already",
                copied ? "each vessel once in a run; this looks like a copied line" : "each label once in a run",
                copied
                        ? "Remove the copied line and run again; only the first was read."
                        : "Give the second layer a label of its own and run again; only the first was read.");
    }

    private static Layer layer(TableRow row, String label, RunParts run) {
        Field tare = row.number("Tare");
        return new Layer(
                label,
                row.choice("Phase", Layer.Phase.values()),
                row.choice("Position", Layer.Position.values()),
                row.text("Vessel"),
                row.total("Volume"),
                row.number("Volume uncertainty"),
                new Layer.Weighing(
                        GrossAboveTare.of(row, "Gross", row.number("Gross"), tare),
                        tare,
                        row.number("Net"),
                        row.text("Balance")),
                row.numberOrWord("Temperature"),
                row.numberOrWord("pH"),
                composition(row, run),
                new Layer.Custody(
                        row.choice("Status", Layer.Status.values()),
                        row.text("Released by"),
                        row.date("Made on"),
                        row.date("Review by")),
                row.text("Notes"),
                row.place());
    }

    private static List<CompositionPart> composition(TableRow row, RunParts run) {
        List<NamedNumber> parts = asPercent(
                row.parts("Composition", Unit.PERCENT, "ethyl acetate 81 %; ethanol 19 %", Optional.of(100.0)),
                row.text("Composition").contains("%"));
        double sum = parts.stream().mapToDouble(NamedNumber::value).sum();
        if (sum <= 100 + COMPOSITION_ROUNDING_PERCENT) {
            return row.shared(parts.stream()
                    .map(part -> new CompositionPart(run.substance(part.name()), part.value()))
                    .toList());
        }
        row.report(
                FindingCode.VALUE_IMPOSSIBLE,
                Severity.CHECK,
                "Composition",
                "read '" + row.text("Composition") + "'",
                "parts that add up to 100 % at most",
                "Correct the cell and run again.");
        return List.of();
    }

    /** Shares that add up to one and carry no per cent sign are fractions. */
    private static List<NamedNumber> asPercent(List<NamedNumber> parts, boolean percentTyped) {
        double sum = parts.stream().mapToDouble(NamedNumber::value).sum();
        return percentTyped || parts.size() < 2 || Math.abs(sum - 1) > COMPOSITION_ROUNDING_PERCENT / 100
                ? parts
                : parts.stream()
                        .map(part -> new NamedNumber(part.name(), part.value() * 100))
                        .toList();
    }
}
