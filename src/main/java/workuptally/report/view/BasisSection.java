package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.BasisRow;
import workuptally.judgement.Review;

/** What the figures rest on: version, input files with their hashes, limits, reference values and equations in force. */
public final class BasisSection {
    /** Title of the table. */
    public static final String TITLE = "Basis";

    private BasisSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        List<TableView.Row> rows = new ArrayList<>();
        rows.add(row("version", "Workup Tally", review.toolVersion(), "", ""));
        for (BasisRow basis : review.basis()) {
            rows.add(row(basis.kind(), basis.name(), basis.value(), basis.unit(), basis.origin()));
        }
        if (review.basis().stream().noneMatch(basis -> basis.kind().equals("input"))) {
            review.book().files().forEach(file -> rows.add(row("input", file.name(), file.sha256(), "", "SHA-256")));
        }
        return TableView.of(
                TITLE,
                "Computed by the tool from the entries of the book and the values below."
                        + "\nIn a workbook, figures that follow from other cells are formulas: net masses, theory by the amounts charged, "
                        + "yields, contents by assay, closures, sums."
                        + "\nComputed by the tool only, and changed by a new review only: molar masses, uncertainties, verdicts, bounds, "
                        + "estimates, findings.",
                List.of(
                        Column.text("Kind", 11),
                        Column.text("Name", 44),
                        Column.text("Value", 60),
                        Column.text("Unit", 18),
                        Column.text("Origin", 50)),
                rows);
    }

    private static TableView.Row row(String kind, String name, String value, String unit, String origin) {
        return new TableView.Row(
                List.of(Cell.of(kind), Cell.of(name), Cell.of(value), Cell.of(unit), Cell.of(origin)),
                Optional.empty());
    }
}
