package workuptally.book.tables;

import workuptally.model.Charge;

/** Reads the Charges table. */
public final class ChargeRows {
    private ChargeRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        rows.forEach(row -> runs.of(row)
                .ifPresent(run -> row.label("Material").ifPresent(name -> run.charges.add(charge(row, name)))));
    }

    private static Charge charge(TableRow row, String material) {
        return new Charge(
                material,
                row.choice("Role", Charge.Role.values()),
                row.text("Formula"),
                row.number("Molar mass"),
                row.count("Coefficient"),
                row.amount("Planned amount", "Planned unit"),
                row.amount("Actual amount", "Actual unit"),
                row.number("Amount of substance"),
                row.number("Equivalents"),
                row.number("Assay"),
                row.number("Molarity"),
                row.number("Titre"),
                row.date("Titre date"),
                row.number("Density"),
                row.number("Assay uncertainty"),
                row.number("Titre uncertainty"),
                row.text("Supplier lot"),
                row.place());
    }
}
