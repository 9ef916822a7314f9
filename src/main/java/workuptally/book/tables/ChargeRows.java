package workuptally.book.tables;

import java.util.Optional;
import workuptally.book.words.BookWords;
import workuptally.model.Charge;

/** Reads the Charges table. */
public final class ChargeRows {
    private final RunIndex runs;
    private Optional<RunParts> above = Optional.empty();

    private ChargeRows(RunIndex runs) {
        this.runs = runs;
    }

    public static void read(TableRows rows, RunIndex runs) {
        ChargeRows charges = new ChargeRows(runs);
        rows.forEach(charges::read, charges::leaveOut);
    }

    private void read(TableRow row) {
        Optional<RunParts> run = runs.of(row);
        if (run.isEmpty()) {
            above.filter(r -> row.isBlank("Run") && !row.holdsOnly("Run")).ifPresent(r -> r.charges.add(unread(row)));
            return;
        }
        above = run;
        Optional<String> material = row.label("Material");
        if (material.isPresent()) {
            run.get().charges.add(charge(row, material.get()));
        } else if (row.isBlank("Material") && !row.holdsOnly("Run")) {
            run.get().charges.add(unread(row));
        }
    }

    /** A row of the run, by its id or its neighbour, that was left out: nobody knows what and how much was charged. */
    private void leaveOut(TableRow row) {
        runs.find(plain(row, "Run")).or(() -> above).ifPresent(run -> run.charges.add(unread(row)));
    }

    /** What stands under a heading, unjudged. */
    private static String plain(TableRow row, String heading) {
        return row.cell(heading).map(cell -> BookWords.tidy(cell.text())).orElse("");
    }

    /** A charge of which nothing is known but, where its role stands under its heading, the material. */
    private static Charge unread(TableRow row) {
        Optional<Charge.Role> role = BookWords.find(Charge.Role.values(), plain(row, "Role"));
        String material = role.isPresent() ? plain(row, "Material") : "";
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
                row.text("Formula"),
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
