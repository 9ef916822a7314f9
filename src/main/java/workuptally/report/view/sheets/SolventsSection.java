package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.TableView;
import workuptally.tally.waste.SolventUse;

/** What became of each solvent of each run. */
public final class SolventsSection {
    /** Title of the table. */
    public static final String TITLE = "Solvents";

    /** What stands above tables of solvents. */
    public static final String NOTE =
            "In = charged + workup = to re-use + in other distillates + in layers + on cakes + in lots + not found. Purification is outside this balance. Where amounts are missing, In is a least one.";

    private static final Live IN = Live.sum(List.of(new Live.InRow("Charged"), new Live.InRow("Workup")));

    private SolventsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        List<Column> columns = new ArrayList<>(List.of(Column.text("Run", 14)));
        columns.addAll(columns());
        return TableView.of(
                TITLE,
                NOTE + "\nShares in layers, on cakes and not found are estimates unless stated.",
                columns,
                review.runs(),
                run -> run.tally().solvents().stream().map(use -> row(run, use)));
    }

    private static TableView.Row row(RunReview run, SolventUse use) {
        List<Cell> cells = new ArrayList<>(List.of(Cell.of(run.id())));
        cells.addAll(cells(use));
        return new TableView.Row(cells, Optional.empty());
    }

    /** The columns of solvents, in every table that has them. */
    public static List<Column> columns() {
        return List.of(
                Column.text("Solvent", 24),
                Column.number("In by volume", "L", 3),
                Column.number("In by mass", "kg", 3),
                Column.number("Charged", "g", 1),
                Column.number("Workup", "g", 1),
                Column.number("To re-use", "g", 1),
                Column.number("In distillates", "g", 1),
                Column.number("In layers", "g", 1),
                Column.number("On cakes", "g", 1),
                Column.number("In lots", "g", 1),
                Column.number("Not found", "g", 1),
                Column.number("Purification", "g", 1),
                Column.number("Purification to re-use", "g", 1),
                Column.number("Purification in distillates", "g", 1),
                Column.number("Purification in layers", "g", 1),
                Column.number("Purification not found", "g", 1),
                Column.number("Density", "g/mL", 3),
                Column.number("Missing amounts", "", 0));
    }

    /** The cells of a solvent under these columns. */
    public static List<Cell> cells(SolventUse use) {
        return List.of(
                Cell.of(use.solvent()),
                Cell.of(use.inLitres(), Live.over(Live.over(IN, new Live.InRow("Density")), new Live.Fixed(1000))),
                Cell.of(use.inGrams() / 1000, Live.over(IN, new Live.Fixed(1000))),
                Cell.of(use.chargedGrams()),
                Cell.of(use.workupGrams()),
                Cell.of(use.recoveredGrams()),
                Cell.of(use.inDistillatesGrams()),
                Cell.of(use.inLayersGrams()),
                Cell.of(use.onCakesGrams()),
                Cell.of(use.inLotsGrams()),
                Cell.of(
                        use.notFoundGrams(),
                        Live.minus(
                                IN,
                                Live.sum(List.of(
                                        new Live.InRow("To re-use"),
                                        new Live.InRow("In distillates"),
                                        new Live.InRow("In layers"),
                                        new Live.InRow("On cakes"),
                                        new Live.InRow("In lots"))))),
                Cell.of(use.purificationGrams()),
                Cell.of(use.purification().recoveredGrams()),
                Cell.of(use.purification().inDistillatesGrams()),
                Cell.of(use.purification().inLayersGrams()),
                Cell.of(
                        use.purification().notFoundGrams(),
                        Live.minus(
                                new Live.InRow("Purification"),
                                Live.sum(List.of(
                                        new Live.InRow("Purification to re-use"),
                                        new Live.InRow("Purification in distillates"),
                                        new Live.InRow("Purification in layers"))))),
                Cell.of(use.densityGramsPerMillilitre()),
                Cell.of(use.missingAmounts()));
    }
}
