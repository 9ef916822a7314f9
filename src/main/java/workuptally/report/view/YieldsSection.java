package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Field;
import workuptally.model.Product;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;

/** Yields by product and stage, and the theory of products that have no yield yet. */
public final class YieldsSection {
    /** Title of the table. */
    public static final String TITLE = "Yields";

    private YieldsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        double k = review.period().coverageFactor();
        RowIndex lots = LotsSection.rows(review);
        return TableView.of(
                TITLE,
                "Yields rest on an assay, or are marked as an upper bound by their basis. " + Words.coverage(k)
                        + "\nA purified yield stands beside the workup's yield and is never added to it.",
                columns(),
                review.runs(),
                run -> Stream.concat(
                        run.tally().yields().stream().map(yield -> row(run, lots, yield, k)),
                        withoutYield(run).map(theory -> theoryOnly(run, theory, k))));
    }

    private static List<Column> columns() {
        return List.of(
                Column.text("Run", 14),
                Column.text("Product", 30),
                Column.text("Stage", 10),
                Column.text("Lots", 18),
                Column.number("Theory amount", "mmol", 3),
                Column.number("Theory", "g", 4),
                Column.number("Found", "g", 4),
                Column.number("Yield", "%", 1),
                Column.number("U of yield", "%", 1),
                Column.text("Percent of", 9),
                Column.text("Basis", 24),
                Column.number("Conversion-adjusted", "%", 1),
                Column.number("Aliquot-corrected", "%", 1),
                Column.number("Planned", "%", 1));
    }

    /** Rows by product. */
    static RowIndex rows(Review review) {
        return new RowIndex(
                review.runs(),
                run -> Stream.concat(
                                run.tally().yields().stream().map(ProductYield::product),
                                withoutYield(run).map(Theory.ProductTheory::product))
                        .map(product -> List.of(product.name()))
                        .toList());
    }

    private static Stream<Theory.ProductTheory> withoutYield(RunReview run) {
        return run.tally().theory().stream()
                .flatMap(theory -> theory.products().stream())
                .filter(p -> p.product().wanted() && hasNoYield(run, p.product()));
    }

    private static Optional<Live> found(RunReview run, RowIndex lots, ProductYield yield) {
        List<Live> parts = new ArrayList<>();
        for (String lot : yield.lots()) {
            lots.of(run, lot, yield.product().name())
                    .ifPresent(row -> parts.add(new Live.InTable(LotsSection.TITLE, row, "Product in it")));
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(Live.sum(parts));
    }

    private static TableView.Row row(RunReview run, RowIndex lots, ProductYield yield, double k) {
        Optional<Theory.ProductTheory> theory = theory(run, yield.product());
        double expanded = yield.percent().expandedUncertainty(k);
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(yield.product().name()),
                        Cell.of(Words.of(yield.stage())),
                        Cell.of(String.join(" + ", yield.lots())),
                        Figures.cell(theory.map(Theory.ProductTheory::amountMillimoles), k),
                        Figures.cell(
                                theory.map(Theory.ProductTheory::massGrams),
                                k,
                                theory.flatMap(t -> LiveEntries.theoryGrams(run.tally(), t))),
                        Figures.cell(Optional.of(yield.massGrams()), k, found(run, lots, yield)),
                        Figures.cell(
                                yield.percent().value(),
                                expanded,
                                Optional.of(Live.percent(new Live.InRow("Found"), new Live.InRow("Theory")))),
                        Figures.uncertaintyCell(expanded),
                        Cell.of(Words.of(yield.percentOf())),
                        Cell.of(yield.basis().word()),
                        Figures.cell(yield.conversionAdjustedPercent(), k),
                        Figures.cell(yield.aliquotCorrectedPercent(), k),
                        planned(yield.product())),
                Optional.empty());
    }

    private static TableView.Row theoryOnly(RunReview run, Theory.ProductTheory theory, double k) {
        Cell none = new Cell.Missing("");
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(theory.product().name()),
                        none,
                        none,
                        Figures.cell(theory.amountMillimoles(), k),
                        Figures.cell(Optional.of(theory.massGrams()), k, LiveEntries.theoryGrams(run.tally(), theory)),
                        none,
                        none,
                        none,
                        none,
                        Cell.of("no yield"),
                        none,
                        none,
                        planned(theory.product())),
                Optional.empty());
    }

    private static boolean hasNoYield(RunReview run, Product product) {
        return run.tally().yields().stream().noneMatch(y -> y.product() == product);
    }

    private static Optional<Theory.ProductTheory> theory(RunReview run, Product product) {
        return run.tally().theory().stream()
                .flatMap(theory -> theory.products().stream())
                .filter(p -> p.product() == product)
                .findFirst();
    }

    private static Cell planned(Product product) {
        return product.plannedYieldPercent()
                .entered()
                .map(Field.Entered::value)
                .map(Cell::of)
                .orElseGet(() -> new Cell.Missing(""));
    }
}
