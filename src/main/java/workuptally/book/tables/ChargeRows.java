package workuptally.book.tables;

import java.util.Optional;
import workuptally.model.Charge;

/** Reads the Charges table. */
public final class ChargeRows {
    private ChargeRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        rows.forEach(row -> runs.of(row)
                .ifPresent(run -> row.label("Material").ifPresent(name -> run.charges.add(charge(row, name)))));
    }

    private static Charge charge(TableRow row, String material) {
        Optional<Charge.Role> role = row.choice("Role", Charge.Role.values());
        // of a reagent in excess, a catalyst or a solvent no theory needs the amount
        boolean aside = row.isBlank("Coefficient")
                && role.filter(r -> r != Charge.Role.SUBSTRATE).isPresent();
        return new Charge(
                material,
                role,
                row.text("Formula"),
                row.number("Molar mass"),
                row.count("Coefficient"),
                row.amount("Planned amount", "Planned unit", aside),
                row.amount("Actual amount", "Actual unit", aside),
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
