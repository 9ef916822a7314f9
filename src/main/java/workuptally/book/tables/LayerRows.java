package workuptally.book.tables;

import java.util.List;
import java.util.Optional;
import workuptally.book.words.BookWords;
import workuptally.book.words.NoteWords;
import workuptally.book.words.TotalRow;
import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.LeftOutRow;
import workuptally.model.Severity;

/** Reads the Layers table. */
public final class LayerRows {
    private LayerRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        RowsOfRuns.read(
                rows,
                runs,
                LeftOutRow.Of.LAYER,
                "Layer",
                (row, run) -> row.label("Layer")
                        .map(label -> read(row, label, run))
                        .orElseGet(() -> TotalRow.isNamed(RowsOfRuns.plain(row, "Layer"))));
    }

    /** False where the row is left out. */
    private static boolean read(TableRow row, String label, RunAssembly run) {
        Optional<Layer> sameLabel = run.layer(label);
        if (sameLabel.isPresent()) {
            reportSecond(row, label, sameLabel.get());
            return false;
        }
        Layer layer = layer(row, label, run);
        Optional<Layer> sameVessel = run.layerInVessel(layer.vessel());
        if (sameVessel.isPresent() && RunAssembly.stillInItsVessel(layer)) {
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
        return true;
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

    private static Layer layer(TableRow row, String label, RunAssembly run) {
        Field tare = row.number("Tare");
        Layer.Weighing weighing = new Layer.Weighing(
                GrossAboveTare.of(row, "Gross", row.number("Gross"), tare),
                tare,
                row.number("Net"),
                row.text("Balance"));
        return new Layer(
                label,
                row.choice("Phase", Layer.Phase.values()),
                row.choice("Position", Layer.Position.values()),
                row.text("Vessel"),
                row.total("Volume"),
                row.number("Volume uncertainty"),
                weighing,
                row.numberOrWord("Temperature"),
                row.numberOrWord("pH"),
                CompositionCell.read(row, run, weighing),
                new Layer.Custody(
                        row.choice("Status", Layer.Status.values()),
                        row.text("Released by"),
                        row.date("Made on"),
                        row.date("Review by"),
                        ""),
                NoteWords.read(row.text("Notes"), NoteWords.Of.LAYER),
                row.place());
    }
}
