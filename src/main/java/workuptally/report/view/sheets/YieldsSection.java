package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Field;
import workuptally.model.Product;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.LiveEntries;
import workuptally.report.view.tables.RowIndex;
import workuptally.report.view.tables.ShownFigures;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Words;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;

/** Yields by product and stage, and the theory of products that have no yield yet. */
public final class YieldsSection {
    /** Title of the table. */
    public static final String TITLE = "Yields";

    static final String YIELD = "Yield";
    static final String U_OF_YIELD = "U of yield";
    private static final String THEORY_AMOUNT = "Theory amount";
    private static final String MOLAR_MASS = "Molar mass";
    private static final String AS_TYPED = "Theory as typed";

    private YieldsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        double k = review.period().coverageFactor();
        RowIndex lots = LotsSection.rows(review);
        LiveTheory live = new LiveTheory(AmountsSection.rows(review));
        return TableView.of(
                TITLE,
                "Yields rest on an assay, or are marked as an upper bound by their basis. " + ShownFigures.coverage(k)
                        + "\nA purified yield stands beside the workup's yield and is never added to it.",
                columns(),
                review.runs(),
                run -> Stream.concat(
                        run.tally().yields().stream().map(yield -> row(run, lots, live, yield, k)),
                        withoutYield(run).map(theory -> theoryOnly(run, live, theory, k))));
    }

    private static List<Column> columns() {
        return List.of(
                Column.text("Run", 14),
                Column.text("Product", 30),
                Column.text("Stage", 10),
                Column.text("Lots", 18),
                Column.number(THEORY_AMOUNT, "mmol", 3),
                Column.number(MOLAR_MASS, "g/mol", 3),
                Column.number("Theory", "g", 4),
                Column.number(AS_TYPED, "g", 4),
                Column.number("Found", "g", 4),
                Column.number(YIELD, "%", 1),
                Column.number(U_OF_YIELD, "%", 1),
                Column.number("Yield as typed", "%", 1),
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

    /** Rows of the yields that stand on the summary, by product. */
    static RowIndex headlines(Review review) {
        return new RowIndex(
                review.runs(),
                run -> Stream.concat(
                                run.tally().yields().stream()
                                        .map(y -> y.headline()
                                                ? List.of(y.product().name())
                                                : List.<String>of()),
                                withoutYield(run).map(theory -> List.<String>of()))
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

    private static TableView.Row row(RunReview run, RowIndex lots, LiveTheory live, ProductYield yield, double k) {
        Optional<Theory.ProductTheory> theory = theory(run, yield.product());
        double expanded = yield.percent().expandedUncertainty(k);
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(run.id()),
                Cell.of(yield.product().name()),
                Cell.of(Words.of(yield.stage())),
                Cell.of(String.join(" + ", yield.lots()))));
        cells.addAll(theoryCells(run, live, theory, k));
        cells.addAll(List.of(
                ShownFigures.cell(Optional.of(yield.massGrams()), k, found(run, lots, yield)),
                ShownFigures.cell(
                        yield.percent().value(),
                        expanded,
                        Optional.of(Live.percent(new Live.InRow("Found"), new Live.InRow("Theory")))),
                ShownFigures.uncertaintyCell(expanded, k, yield.percent().value(), YIELD),
                yieldAsTyped(theory, yield),
                Cell.of(Words.of(yield.percentOf())),
                Cell.of(yield.basis().word()),
                ShownFigures.cell(yield.conversionAdjustedPercent(), k),
                ShownFigures.cell(yield.aliquotCorrectedPercent(), k),
                planned(yield.product())));
        return new TableView.Row(cells, Optional.empty());
    }

    /** Amount, molar mass and mass of a theory, and the mass with the molar masses as typed where that differs. */
    private static List<Cell> theoryCells(
            RunReview run, LiveTheory live, Optional<Theory.ProductTheory> theory, double k) {
        Cell none = new Cell.Missing("");
        if (theory.isEmpty()) {
            return List.of(none, none, none, none);
        }
        Theory.ProductTheory product = theory.get();
        Field typed = product.product().molarMassGramsPerMole();
        Live mass =
                Live.over(Live.times(new Live.InRow(THEORY_AMOUNT), new Live.InRow(MOLAR_MASS)), new Live.Fixed(1000));
        Live typedMass = LiveEntries.of(typed).orElseGet(() -> new Live.InRow(MOLAR_MASS));
        return List.of(
                ShownFigures.cell(Optional.of(product.amountMillimoles()), k, live.millimoles(run, product)),
                new Cell.Number(
                        product.molarMassGramsPerMole(),
                        Cell.Number.AS_COLUMN,
                        LiveEntries.of(typed)
                                .filter(m -> product.product().formula().isBlank())),
                ShownFigures.cell(Optional.of(product.massGrams()), k, Optional.of(mass)),
                product.massAsTypedGrams().isEmpty()
                        ? none
                        : new Cell.Number(
                                product.massAsTypedGrams().getAsDouble(),
                                Cell.Number.AS_COLUMN,
                                live.millimolesAsTyped(run, product)
                                        .map(n -> Live.over(Live.times(n, typedMass), new Live.Fixed(1000)))));
    }

    /** The yield that the molar masses as typed would give: beside the yield, never instead of it. */
    private static Cell yieldAsTyped(Optional<Theory.ProductTheory> theory, ProductYield yield) {
        Optional<Double> asTyped = theory.map(Theory.ProductTheory::massAsTypedGrams)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .filter(grams -> grams > 0 && yield.percentOf() == ProductYield.PercentOf.THEORY);
        return asTyped.isEmpty()
                ? new Cell.Missing("")
                : Cell.of(
                        100 * yield.massGrams().value() / asTyped.get(),
                        Live.percent(new Live.InRow("Found"), new Live.InRow(AS_TYPED)));
    }

    private static TableView.Row theoryOnly(RunReview run, LiveTheory live, Theory.ProductTheory theory, double k) {
        Cell none = new Cell.Missing("");
        List<Cell> cells = new ArrayList<>(
                List.of(Cell.of(run.id()), Cell.of(theory.product().name()), none, none));
        cells.addAll(theoryCells(run, live, Optional.of(theory), k));
        cells.addAll(List.of(none, none, none, none, none, Cell.of("no yield"), none, none, planned(theory.product())));
        return new TableView.Row(cells, Optional.empty());
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
