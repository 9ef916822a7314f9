package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Lot;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.LiveEntries;
import workuptally.report.view.tables.RowIndex;
import workuptally.report.view.tables.ShownFigures;
import workuptally.report.view.tables.TableView;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Theory;

/** Weighed lots: net mass, its ratio to theory, and the product in it. */
public final class LotsSection {
    /** Title of the table. */
    public static final String TITLE = "Lots";

    private LotsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        double k = review.period().coverageFactor();
        RowIndex theories = YieldsSection.rows(review);
        return TableView.of(
                TITLE,
                "Net over theory is a ratio of masses and no yield: solvent and impurities count in it. "
                        + ShownFigures.coverage(k),
                List.of(
                        Column.text("Run", 14),
                        Column.text("Lot", 12),
                        Column.text("Product", 30),
                        Column.text("Stage", 10),
                        Column.number("Net", "g", 4),
                        Column.number("U of net", "g", 4),
                        Column.number("Theory", "g", 4),
                        Column.number("Net over theory", "%", 1),
                        Column.number("Product fraction", "1", 3),
                        Column.text("Basis", 24),
                        Column.number("Product in it", "g", 4),
                        Column.text("Ends workup", 10)),
                review.runs(),
                run -> run.tally().lots().stream().map(lot -> row(run, theories, lot, k)));
    }

    /** Rows of the lots by label and product. */
    static RowIndex rows(Review review) {
        return new RowIndex(
                review.runs(),
                run -> run.tally().lots().stream()
                        .map(lot -> List.of(lot.lot().label(), lot.product()))
                        .toList());
    }

    private static Cell theory(RunReview run, RowIndex theories, LotTally lot, double k) {
        Optional<Theory.ProductTheory> theory = run.tally().theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(p -> p.isOf(lot.product()))
                .findFirst();
        Optional<Live> live = theory.map(t -> theories.of(run, t.product().name()))
                .filter(OptionalInt::isPresent)
                .map(row -> new Live.InTable(YieldsSection.TITLE, row.getAsInt(), "Theory"));
        return ShownFigures.cell(theory.map(Theory.ProductTheory::massGrams), k, live);
    }

    private static Live product(LotTally lot) {
        return lot.productFraction().isPresent()
                ? Live.times(asCounted(lot), new Live.InRow("Product fraction"))
                : asCounted(lot);
    }

    /** Net mass as the form of the product that theory is in. */
    private static Live asCounted(LotTally lot) {
        Live net = new Live.InRow("Net");
        return lot.gramsPerGram() == 1 ? net : Live.times(net, new Live.Fixed(lot.gramsPerGram()));
    }

    private static TableView.Row row(RunReview run, RowIndex theories, LotTally lot, double k) {
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(lot.lot().label()),
                        Cell.of(lot.lot().product()),
                        Cell.of(lot.lot().stage().map(Lot.Stage::word).orElse("")),
                        ShownFigures.cell(
                                lot.netGrams(),
                                k,
                                LiveEntries.net(
                                        lot.lot().weighing().grossGrams(),
                                        lot.lot().weighing().tareGrams(),
                                        lot.lot().weighing().netGrams())),
                        lot.netGrams()
                                .map(net -> ShownFigures.uncertaintyCell(net.expandedUncertainty(k), k))
                                .orElseGet(() -> new Cell.Missing("")),
                        theory(run, theories, lot, k),
                        ShownFigures.cell(
                                lot.overTheoryPercent(),
                                k,
                                Optional.of(Live.percent(asCounted(lot), new Live.InRow("Theory")))),
                        ShownFigures.cell(
                                lot.productFraction(),
                                k,
                                LiveEntries.of(lot.lot().assayPercent())
                                        .map(assay -> Live.over(assay, new Live.Fixed(100)))),
                        Cell.of(lot.basis().word()),
                        ShownFigures.cell(lot.pureGrams(), k, Optional.of(product(lot))),
                        Cell.yesNo(lot.endsWorkup())),
                Optional.empty());
    }
}
