package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.measure.MeasuredValue;
import workuptally.model.Limit;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.RowIndex;
import workuptally.report.view.tables.ShownFigures;
import workuptally.report.view.tables.TableView;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.CompositeSample;

/** Closures per skeleton: what is isolated, what stands in layers, what is not accounted for and where it can be. */
public final class ClosuresSection {
    /** Title of the table. */
    public static final String TITLE = "Closures";

    private static final Live Z = Live.over(
            Live.times(new Live.InRow("Unaccounted"), Live.Named.of(Limit.COVERAGE_FACTOR)),
            new Live.InRow("U of closure"));

    static final String CLOSURE = "Closure";
    static final String U_OF_CLOSURE = "U of closure";

    private ClosuresSection() {}

    /** Rows by skeleton. */
    static RowIndex rows(Review review) {
        return new RowIndex(
                review.runs(),
                run -> run.tally().closures().stream()
                        .map(closure -> List.of(closure.skeleton()))
                        .toList());
    }

    /** The table of a review. */
    public static TableView of(Review review) {
        RowIndex lots = LotsSection.rows(review);
        RowIndex layers = LayerBalanceSection.rows(review);
        RowIndex amounts = AmountsSection.rows(review);
        double k = review.period().coverageFactor();
        return TableView.of(
                TITLE,
                "Units of the named partner found, over units charged. "
                        + ShownFigures.coverage(review.period().coverageFactor())
                        + "\nA closure that cannot decide says so; bounds and estimates are named as such in the layer balance; the places with their grams stand in their own table.",
                List.of(
                        Column.text("Run", 14),
                        Column.text("Skeleton", 24),
                        Column.number("Charged", "mmol", 3),
                        Column.number("Isolated", "%", 1),
                        Column.number("In layers", "%", 1),
                        Column.number("Unaccounted", "%", 1),
                        Column.number(CLOSURE, "%", 1),
                        Column.number(U_OF_CLOSURE, "%", 1),
                        Column.text("Verdict", 14),
                        Column.number("z", "", 1),
                        Column.number("Unaccounted mass", "g", 3),
                        Column.text("As", 24),
                        Column.text("Where it can be", 40)),
                review.runs(),
                run -> run.tally().closures().stream().map(closure -> row(run, lots, layers, amounts, closure, k)));
    }

    private static TableView.Row row(
            RunReview run, RowIndex lots, RowIndex layers, RowIndex amounts, Closure closure, double k) {
        double expanded = closure.expandedUncertaintyPercent();
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(closure.skeleton()),
                        ShownFigures.cell(
                                Optional.of(closure.chargedMillimoles()),
                                closure.coverageFactor(),
                                charged(run, amounts, closure)),
                        ShownFigures.cell(share(run, closure, true), expanded, live(run, lots, layers, closure, true)),
                        ShownFigures.cell(
                                share(run, closure, false), expanded, live(run, lots, layers, closure, false)),
                        ShownFigures.cell(
                                closure.unaccountedPercent(),
                                expanded,
                                Optional.of(Live.minus(new Live.Fixed(100), new Live.InRow(CLOSURE)))),
                        ShownFigures.cell(
                                closure.percent().value(),
                                expanded,
                                Optional.of(
                                        Live.sum(List.of(new Live.InRow("Isolated"), new Live.InRow("In layers"))))),
                        ShownFigures.uncertaintyCell(
                                expanded, k, closure.percent().value(), CLOSURE),
                        Cell.of(closure.verdict().word()),
                        Double.isFinite(closure.z()) ? Cell.of(closure.z(), Z) : new Cell.Missing(""),
                        unaccountedGrams(closure),
                        Cell.of(closure.unaccountedAs()),
                        Cell.of(closure.candidates().stream()
                                .map(Closure.Candidate::place)
                                .distinct()
                                .collect(Collectors.joining(", ")))),
                Optional.empty());
    }

    private static double share(RunReview run, Closure closure, boolean isolated) {
        return closure.terms().stream()
                .filter(term -> run.tally().run().lot(term.place()).isPresent() == isolated)
                .mapToDouble(Closure.Term::percent)
                .sum();
    }

    private static Optional<Live> charged(RunReview run, RowIndex amounts, Closure closure) {
        List<ChargeAmount> charges = run.tally().amounts().stream()
                .filter(a -> a.charge().isOf(closure.skeleton()))
                .toList();
        OptionalInt row =
                charges.size() == 1 ? amounts.of(run, charges.get(0).charge().material()) : OptionalInt.empty();
        return row.isEmpty()
                ? Optional.empty()
                : Optional.of(new Live.InTable(AmountsSection.TITLE, row.getAsInt(), AmountsSection.AMOUNT));
    }

    /** Units found in lots or in layers, over units charged; a place whose mass stands in a table is read from there. */
    private static Optional<Live> live(
            RunReview run, RowIndex lots, RowIndex layers, Closure closure, boolean isolated) {
        List<Live> units = closure.terms().stream()
                .filter(term -> run.tally().run().lot(term.place()).isPresent() == isolated)
                .map(term -> isolated ? ofLot(run, lots, term) : ofLayer(run, layers, term))
                .toList();
        return units.isEmpty()
                ? Optional.empty()
                : Optional.of(Live.percent(Live.sum(units), new Live.InRow("Charged")));
    }

    /** Product by what the lot holds of it; another substance in proportion to the lot's mass. */
    private static Live ofLot(RunReview run, RowIndex lots, Closure.Term term) {
        List<LotTally> rows = run.tally().lots().stream()
                .filter(l -> l.lot().label().equals(term.place()))
                .toList();
        Optional<LotTally> ofProduct =
                rows.stream().filter(l -> l.isOf(term.substance())).findFirst();
        Optional<LotTally> lot = ofProduct.or(() -> rows.stream().findFirst());
        OptionalInt row = lot.map(l -> lots.of(run, term.place(), l.product())).orElse(OptionalInt.empty());
        Optional<Double> pure = ofProduct.flatMap(LotTally::pureGrams).map(MeasuredValue::value);
        if (pure.isPresent()) {
            return scaled(term, pure, row, LotsSection.TITLE, "Product in it");
        }
        return scaled(term, lot.flatMap(LotTally::netGrams).map(MeasuredValue::value), row, LotsSection.TITLE, "Net");
    }

    private static Live ofLayer(RunReview run, RowIndex layers, Closure.Term term) {
        Stream<Content> ofOne = run.tally().layer(term.place()).stream().flatMap(layer -> layer.contents().stream());
        Stream<Content> ofSeveral = run.tally().evidence().composites().counted().stream()
                .filter(sample -> sample.name().equals(term.place()))
                .map(CompositeSample::together);
        Optional<Double> grams = Stream.concat(ofOne, ofSeveral)
                .filter(content -> content.substance().equals(term.substance()))
                .flatMap(content -> content.massGrams().stream())
                .map(MeasuredValue::value)
                .findFirst();
        OptionalInt row = layers.of(run, term.place(), term.substance());
        return scaled(term, grams, row, LayerBalanceSection.TITLE, "Content");
    }

    private static Live scaled(
            Closure.Term term, Optional<Double> grams, OptionalInt row, String table, String column) {
        double units = term.unitsMillimoles().value();
        return grams.isEmpty() || grams.get() == 0 || row.isEmpty()
                ? new Live.Fixed(units)
                : Live.times(new Live.Fixed(units / grams.get()), new Live.InTable(table, row.getAsInt(), column));
    }

    private static Cell unaccountedGrams(Closure closure) {
        double perUnit =
                closure.unaccountedPercent() * closure.chargedMillimoles().value();
        return perUnit == 0
                ? Cell.of(closure.unaccountedGrams())
                : Cell.of(
                        closure.unaccountedGrams(),
                        Live.times(
                                new Live.Fixed(closure.unaccountedGrams() / perUnit),
                                new Live.InRow("Unaccounted"),
                                new Live.InRow("Charged")));
    }
}
