package workuptally.report.view.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.BasisRow;
import workuptally.judgement.Review;
import workuptally.model.Limit;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.TableView;

/** What the figures rest on: version, input files with their hashes, limits, reference values and equations in force. */
public final class BasisSection {
    /** Title of the table. */
    public static final String TITLE = "Basis";

    private static final int MOST_DECIMALS = 6;

    private BasisSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        List<TableView.Row> rows = new ArrayList<>();
        List<TableView.Name> names = new ArrayList<>();
        rows.add(row("version", "Workup Tally", Cell.of(review.toolVersion()), "", ""));
        for (BasisRow basis : review.basis()) {
            Optional<Limit> limit = limit(review, basis);
            limit.ifPresent(l -> names.add(new TableView.Name(Live.Named.of(l).name(), rows.size(), "Value")));
            rows.add(row(
                    basis.kind().word(),
                    basis.name(),
                    limit.map(l -> value(review, l)).orElseGet(() -> Cell.of(basis.value())),
                    basis.unit(),
                    basis.origin()));
        }
        if (review.basis().stream().noneMatch(basis -> basis.kind() == BasisRow.Kind.INPUT)) {
            review.book()
                    .files()
                    .forEach(file -> rows.add(row("input", file.name(), Cell.of(file.sha256()), "", "SHA-256")));
        }
        return TableView.of(
                        TITLE,
                        "Computed by the tool from the entries of the book and the values below."
                                + "\nIn a workbook, figures that follow from other cells are formulas: net masses, amounts charged, theory, "
                                + "yields, contents by assay, closures, fills, sums. An expanded uncertainty keeps the relative uncertainty of the"
                                + " review. Limits have names, such as "
                                + Live.Named.of(Limit.COVERAGE_FACTOR).name() + "."
                                + "\nComputed by the tool only, and changed by a new review only: molar masses by formulas, verdicts, bounds, "
                                + "estimates, findings.",
                        List.of(
                                Column.text("Kind", 11),
                                Column.text("Name", 44),
                                Column.text("Value", 60),
                                Column.text("Unit", 18),
                                Column.text("Origin", 50)),
                        rows)
                .naming(names);
    }

    /** The limit that a row is about, if it is one with a number. */
    private static Optional<Limit> limit(Review review, BasisRow basis) {
        return basis.limit()
                .filter(limit -> !limit.isText()
                        && review.book().limits().optional(limit).isPresent());
    }

    /** The number in force; of one that the book sets, that of its cell. */
    private static Cell value(Review review, Limit limit) {
        double value = review.book().limits().value(limit);
        int decimals = Math.max(
                0, new BigDecimal(Double.toString(value)).stripTrailingZeros().scale());
        return new Cell.Number(
                value,
                Math.min(MOST_DECIMALS, decimals),
                review.book().limits().place(limit).map(place -> new Live.Entry(place, value)));
    }

    private static TableView.Row row(String kind, String name, Cell value, String unit, String origin) {
        return new TableView.Row(
                List.of(Cell.of(kind), Cell.of(name), value, Cell.of(unit), Cell.of(origin)), Optional.empty());
    }
}
