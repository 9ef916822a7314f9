package workuptally.book.tables;

import java.util.Optional;
import workuptally.book.words.BookWords;
import workuptally.book.words.FormulaWords;
import workuptally.book.words.TotalRow;
import workuptally.model.Charge;

/** Reads the Charges table. */
public final class ChargeRows {
    private ChargeRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        RowsOfRuns.read(rows, runs, ChargeRows::read, (row, run) -> run.charges.add(unread(row)));
    }

    private static boolean read(TableRow row, RunAssembly run) {
        Optional<String> material = row.label("Material");
        material.ifPresent(m -> run.charges.add(charge(row, m)));
        return material.isPresent() || TotalRow.isNamed(RowsOfRuns.plain(row, "Material"));
    }

    /** A charge of which nothing is known but, where its role stands under its heading, the material. */
    private static Charge unread(TableRow row) {
        Optional<Charge.Role> role = BookWords.find(Charge.Role.values(), RowsOfRuns.plain(row, "Role"));
        String material = role.isPresent() ? RowsOfRuns.plain(row, "Material") : "";
        return Charge.unread(material, role, row.place());
    }

    private static Charge charge(TableRow row, String material) {
        Optional<Charge.Role> role = row.choice("Role", Charge.Role.values());
        // of a reagent in excess, a catalyst or a solvent no theory needs the amount
        boolean aside = row.isBlank("Coefficient")
                && role.filter(r -> r != Charge.Role.SUBSTRATE).isPresent();
        return new Charge(
                material,
                role,
                FormulaWords.read(row.text("Formula")),
                row.number("Molar mass"),
                row.count("Coefficient"),
                new Charge.Quantity(
                        row.amount("Planned amount", "Planned unit", aside),
                        row.amount("Actual amount", "Actual unit", aside),
                        row.number("Amount of substance"),
                        row.number("Equivalents")),
                new Charge.Goods(
                        row.number("Assay"),
                        row.number("Assay uncertainty"),
                        row.number("Molarity"),
                        row.number("Titre"),
                        row.number("Titre uncertainty"),
                        row.date("Titre date"),
                        row.number("Density"),
                        row.text("Supplier lot")),
                Charge.Reading.READ,
                row.place());
    }
}
