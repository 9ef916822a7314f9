package workuptally.book;

import java.util.Optional;
import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.Severity;

/** Reads the Isolated table. */
final class LotRows {
    private LotRows() {}

    static void read(TableRows rows, RunIndex runs) {
        rows.forEach(row -> runs.of(row).ifPresent(run -> row.label("Lot").ifPresent(label -> read(row, label, run))));
    }

    private static void read(TableRow row, String label, RunParts run) {
        Optional<Lot> first = run.lot(label);
        if (first.isPresent()) {
            row.report(
                    FindingCode.LOT_DUPLICATE,
                    Severity.STOP,
                    "Lot",
                    "read lot '" + label + "' a second time; it stands in row "
                            + first.get().row().row() + " already",
                    "each lot of a run once",
                    "Give the second lot a label of its own and run again; only the first was read.");
            return;
        }
        run.lots.add(lot(row, label, run));
        run.defineLabel(label);
    }

    private static Lot lot(TableRow row, String label, RunParts run) {
        Field tare = row.number("Tare");
        return new Lot(
                label,
                product(row, run),
                row.choice("Stage", Lot.Stage.values()),
                run.spelling(row.labels("From", run::knows)),
                row.text("Vessel"),
                row.grossAbove(row.number("Gross"), tare),
                tare,
                row.number("Net"),
                row.number("Assay"),
                row.number("Relative standard uncertainty"),
                row.text("Identity by"),
                row.grossAbove(row.number("Second weighing"), tare),
                row.number("Stated yield"),
                row.text("Notes"),
                row.place());
    }

    private static String product(TableRow row, RunParts run) {
        String typed = row.text("Product");
        Optional<Product> product = run.product(typed);
        if (product.isEmpty()) {
            row.report(
                    FindingCode.PRODUCT_UNKNOWN,
                    Severity.STOP,
                    "Product",
                    typed.isEmpty() ? "read an empty cell" : "read '" + typed + "'",
                    "a product of the run in the Products table",
                    "Correct the name or add the product, then run again.");
        }
        return product.map(Product::name).orElse(typed);
    }
}
