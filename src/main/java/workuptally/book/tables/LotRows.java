package workuptally.book.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.schema.Schema;
import workuptally.book.words.IdentityWords;
import workuptally.book.words.NoteWords;
import workuptally.book.words.TotalRow;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.FindingCode;
import workuptally.model.LeftOutRow;
import workuptally.model.Lot;
import workuptally.model.LotIdentity;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.reference.bench.Threshold;

/** Reads the Isolated table; a lot that holds several products has a row for each, with one weighing. */
public final class LotRows {
    private final Supplier<Reference> reference;

    private LotRows(Supplier<Reference> reference) {
        this.reference = reference;
    }

    /**
     * Adds the lots of the table to their runs.
     *
     * @param reference figures of the bench in force
     */
    public static void read(TableRows rows, RunIndex runs, Supplier<Reference> reference) {
        LotRows lots = new LotRows(reference);
        RowsOfRuns.read(
                rows,
                runs,
                LeftOutRow.Of.LOT,
                "Lot",
                (row, run) -> isNothing(row)
                        || row.label("Lot")
                                .map(label -> lots.read(row, label, run))
                                .orElseGet(() -> TotalRow.isNamed(RowsOfRuns.plain(row, "Lot"))));
    }

    /** True for the row of a failed run: a dash where the product stands, and no weight but 0. */
    private static boolean isNothing(TableRow row) {
        return row.cell("Product")
                        .filter(cell -> CellNumber.read(cell) instanceof NumberText.Nothing)
                        .isPresent()
                && Schema.WEIGHT_OR_YIELD.stream()
                        .flatMap(heading -> row.cell(heading).stream())
                        .map(CellNumber::read)
                        .allMatch(read -> read instanceof NumberText.Nothing
                                || read instanceof NumberText.Number number
                                        && number.value().signum() == 0);
    }

    /** False where the row is left out. */
    private boolean read(TableRow row, String label, RunAssembly run) {
        Optional<Lot> first = run.lot(label);
        if (first.isPresent() && !isOtherProduct(row, label, run)) {
            row.report(
                    FindingCode.LOT_DUPLICATE,
                    Severity.STOP,
                    "Lot",
                    "read lot '" + label + "' a second time; it stands in row "
                            + first.get().row().row() + " already",
                    "each lot of a run once, or a row for each product that it holds",
                    "Give the second lot a label of its own and run again; only the first was read.");
            return false;
        }
        Lot lot = lot(row, label, run);
        if (first.isEmpty()) {
            run.lots.add(lot);
            run.defineLabel(label);
        } else if (isOneWeighing(row, first.get(), lot, run)) {
            run.lots.add(lot.weighedAs(first.get()));
        } else {
            return false;
        }
        return true;
    }

    private static boolean isOtherProduct(TableRow row, String label, RunAssembly run) {
        Optional<Product> product = run.product(row.text("Product"));
        return product.isPresent()
                && run.lots.stream()
                        .filter(l -> l.label().equals(run.spelling(label)))
                        .allMatch(l -> run.product(l.product()).isPresent()
                                && !l.product().equalsIgnoreCase(product.get().name()));
    }

    /** True where the row of another product repeats the weighing of the lot or leaves it blank; else the row is left out and said. */
    private static boolean isOneWeighing(TableRow row, Lot first, Lot other, RunAssembly run) {
        List<String> differ = new ArrayList<>();
        note(differ, "Gross", first.weighing().grossGrams(), other.weighing().grossGrams());
        note(differ, "Tare", first.weighing().tareGrams(), other.weighing().tareGrams());
        note(differ, "Net", first.weighing().netGrams(), other.weighing().netGrams());
        note(
                differ,
                "Second weighing",
                first.weighing().secondGrossGrams(),
                other.weighing().secondGrossGrams());
        if (other.stage().isPresent() && !other.stage().equals(first.stage())) {
            differ.add("Stage");
        }
        if (!other.from().isEmpty() && !run.spelling(other.from()).equals(run.spelling(first.from()))) {
            differ.add("From");
        }
        if (!differ.isEmpty()) {
            row.report(
                    FindingCode.LOT_ROWS_DIFFER,
                    Severity.STOP,
                    differ.get(0),
                    "read lot '" + first.label() + "' for " + other.product() + " with another "
                            + String.join(", ", differ) + " than in row "
                            + first.row().row() + " for " + first.product(),
                    "one weighing, stage and origin for all products of a lot; an assay for each",
                    "Repeat the weighing of the lot or leave it blank, or give a lot of its own a label of its own; only the"
                            + " first row was read.");
        }
        return differ.isEmpty();
    }

    private static void note(List<String> differ, String heading, Field first, Field other) {
        Optional<Double> mass = other.entered().map(Entered::value);
        if (mass.isPresent() && !mass.equals(first.entered().map(Entered::value))) {
            differ.add(heading);
        }
    }

    private Lot lot(TableRow row, String label, RunAssembly run) {
        Field tare = row.number("Tare");
        return new Lot(
                run.lot(label).map(Lot::label).orElse(label),
                product(row, run),
                row.choice("Stage", Lot.Stage.values()),
                run.spelling(row.labels("From", run::knows)),
                row.text("Vessel"),
                new Lot.Weighing(
                        GrossAboveTare.of(row, "Gross", row.number("Gross"), tare),
                        tare,
                        row.number("Net"),
                        GrossAboveTare.of(row, "Second weighing", row.number("Second weighing"), tare)),
                row.number("Assay"),
                row.number("Relative standard uncertainty"),
                identity(row, run),
                row.number("Stated yield"),
                NoteWords.read(row.text("Notes"), NoteWords.Of.LOT),
                row.place());
    }

    /** What denies the identity or puts it off is no evidence of it; what is not understood counts as blank. Both are said. */
    private LotIdentity identity(TableRow row, RunAssembly run) {
        String typed = row.text("Identity by");
        String product = row.text("Product");
        IdentityWords.Read read = IdentityWords.read(
                typed,
                run.product(product).map(Product::name).orElse(product),
                () -> reference.get().value(Threshold.MELTING_POINT_FAR));
        return switch (read.meaning()) {
            case NOTHING -> LotIdentity.NONE;
            case EVIDENCE -> LotIdentity.shownBy(typed);
            case UNKNOWN -> {
                reportUnclear(row, typed, read, "until then the cell counts as blank.");
                yield LotIdentity.NONE;
            }
            case OPEN -> {
                reportUnclear(row, typed, read, "until then the identity of the lot is open, and its layers wait.");
                yield LotIdentity.open(typed);
            }
        };
    }

    private static void reportUnclear(TableRow row, String typed, IdentityWords.Read read, String meanwhile) {
        row.report(
                FindingCode.IDENTITY_UNCLEAR,
                FindingCode.IDENTITY_UNCLEAR.severity(),
                "Identity by",
                "read '" + typed + "'" + (read.words().equals(typed) ? "" : ", with '" + read.words() + "'"),
                "what shows that the lot is its product, such as 1H NMR or melting point",
                "Name what shows it alone, the rest under Notes, and run again; " + meanwhile);
    }

    private static String product(TableRow row, RunAssembly run) {
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
