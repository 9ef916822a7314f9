package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.model.Finding;
import workuptally.model.Limit;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.report.view.firstpage.NextMeasurement;
import workuptally.report.view.firstpage.UrgentAction;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.RowIndex;
import workuptally.report.view.tables.ShownFigures;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;
import workuptally.report.view.wording.Words;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.balance.Closure;

/** One line per run and wanted product: what was found, and what the run asks of the reader. */
public final class SummarySection {
    /** A line with the runs of a whole quarter would make the sheet print too small to read. */
    private static final int MOST_LEFT_OUT_NAMED = 6;

    private static final int MOST_OF_ACTION = 150;

    /** Title of the table. */
    public static final String TITLE = "Summary";

    private SummarySection() {}

    /** The table of a review. */
    public static TableView of(Review review, Wording wording) {
        Index index = new Index(
                YieldsSection.rows(review),
                YieldsSection.headlines(review),
                LotsSection.rows(review),
                ClosuresSection.rows(review),
                FindingsSection.firstRows(review));
        return TableView.of(
                TITLE, note(review, wording), columns(), review.runs(), run -> rows(review, index, run, wording));
    }

    private static Stream<TableView.Row> rows(Review review, Index index, RunReview run, Wording wording) {
        List<Product> wanted =
                run.tally().run().products().stream().filter(Product::wanted).toList();
        return Stream.concat(
                Stream.of(row(review, index, run, wanted.stream().findFirst(), true, wording)),
                wanted.stream().skip(1).map(product -> row(review, index, run, Optional.of(product), false, wording)));
    }

    private static List<Column> columns() {
        return List.of(
                Column.text("Run", 14),
                Column.text("Status", 11),
                Column.text("Reaction", 34),
                Column.text("Product", 20),
                Column.number("Theory", "g", 3),
                Column.number("Crude over theory", "%", 1),
                Column.number("Yield", "%", 1),
                Column.number("U of yield", "%", 1),
                Column.text("Yield is", 12),
                Column.number("Closure", "%", 1),
                Column.number("U of closure", "%", 1),
                Column.text("Verdict", 12),
                Column.text("Worst", 8),
                Column.text("Findings", 11),
                Column.text("Action asked", 60));
    }

    private static TableView.Row row(
            Review review, Index index, RunReview run, Optional<Product> product, boolean first, Wording wording) {
        String name = product.map(Product::name).orElse("");
        Optional<Finding> worst = run.findings().stream().findFirst().filter(f -> first);
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(run.id()),
                Cell.of(Words.of(run.tally().run().status())),
                Cell.of(run.tally().run().head().reaction()),
                Cell.of(name),
                theory(review, index, run, name),
                crudeOverTheory(review, index, run, name)));
        cells.addAll(yieldOf(review, index, run, name));
        cells.addAll(first ? closure(index, run) : List.of(new Cell.Missing(""), new Cell.Missing("")));
        cells.addAll(List.of(
                first ? verdict(run) : new Cell.Missing(""),
                Cell.of(worst.map(f -> f.severity().word()).orElse("")),
                first ? findings(index, run) : new Cell.Missing(""),
                Cell.of(worst.map(f -> wording.inShort(f.action(), MOST_OF_ACTION))
                        .orElse(""))));
        return new TableView.Row(cells, worst.map(Finding::severity));
    }

    private static Cell theory(Review review, Index index, RunReview run, String product) {
        return ShownFigures.cell(
                run.tally().theory().stream()
                        .flatMap(theory -> theory.products().stream())
                        .filter(p -> p.product().name().equals(product))
                        .map(Theory.ProductTheory::massGrams)
                        .findFirst(),
                review.period().coverageFactor(),
                live(index.theories().of(run, product), YieldsSection.TITLE, "Theory"));
    }

    private static Cell crudeOverTheory(Review review, Index index, RunReview run, String product) {
        double k = review.period().coverageFactor();
        List<LotTally> lots = run.tally().lots().stream()
                .filter(lot -> lot.isCrude()
                        && lot.isOf(product)
                        && lot.overTheoryPercent().isPresent())
                .toList();
        if (lots.size() == 1) {
            return ShownFigures.cell(
                    lots.get(0).overTheoryPercent(),
                    k,
                    live(index.lots().of(run, lots.get(0).lot().label()), LotsSection.TITLE, "Net over theory"));
        }
        return Cell.of(lots.stream()
                .map(lot -> lot.lot().label() + " "
                        + ShownFigures.plain(
                                lot.overTheoryPercent().orElseThrow().value(), 1))
                .collect(Collectors.joining("; ")));
    }

    private static Optional<Live> live(OptionalInt row, String table, String column) {
        return row.isEmpty() ? Optional.empty() : Optional.of(new Live.InTable(table, row.getAsInt(), column));
    }

    private record Index(
            RowIndex theories, RowIndex yields, RowIndex lots, RowIndex closures, Map<String, Integer> findings) {}

    /** The yield with its U, as they stand on the sheet of yields, and what is to be known of it. */
    private static List<Cell> yieldOf(Review review, Index index, RunReview run, String product) {
        Optional<ProductYield> found = run.tally().yields().stream()
                .filter(y -> y.headline() && y.product().name().equals(product))
                .findFirst();
        if (found.isEmpty()) {
            return List.of(new Cell.Missing(""), new Cell.Missing(""), new Cell.Missing(""));
        }
        ProductYield yield = found.get();
        double expanded = yield.percent().expandedUncertainty(review.period().coverageFactor());
        OptionalInt row = index.yields().of(run, product);
        String bound = yield.basis().isUpperBound() ? "at most" : "";
        String purified = yield.stage() == ProductYield.Stage.PURIFIED ? "purified" : "";
        return List.of(
                ShownFigures.cell(
                        yield.percent().value(), expanded, live(row, YieldsSection.TITLE, YieldsSection.YIELD)),
                uncertainty(expanded, live(row, YieldsSection.TITLE, YieldsSection.U_OF_YIELD)),
                Cell.of(Stream.of(bound, purified).filter(w -> !w.isEmpty()).collect(Collectors.joining(", "))));
    }

    private static Cell uncertainty(double expanded, Optional<Live> live) {
        return expanded > 0 && Double.isFinite(expanded)
                ? ShownFigures.cell(expanded, expanded, live)
                : new Cell.Missing("");
    }

    /** The worst balance of a run; all of them stand on the sheet of closures. */
    private static List<Cell> closure(Index index, RunReview run) {
        Optional<Closure> worst = worst(run);
        if (worst.isEmpty()) {
            return List.of(new Cell.Missing(""), new Cell.Missing(""));
        }
        double expanded = worst.get().expandedUncertaintyPercent();
        OptionalInt row = index.closures().of(run, worst.get().skeleton());
        return List.of(
                ShownFigures.cell(
                        worst.get().percent().value(),
                        expanded,
                        live(row, ClosuresSection.TITLE, ClosuresSection.CLOSURE)),
                uncertainty(expanded, live(row, ClosuresSection.TITLE, ClosuresSection.U_OF_CLOSURE)));
    }

    private static Cell verdict(RunReview run) {
        int all = run.tally().closures().size();
        return Cell.of(worst(run)
                .map(c -> c.verdict().word() + (all > 1 ? ", worst of " + all : ""))
                .orElse(""));
    }

    private static Optional<Closure> worst(RunReview run) {
        return Closure.worst(run.tally().closures());
    }

    private static Cell findings(Index index, RunReview run) {
        int count = run.findings().size();
        if (count == 0) {
            return Cell.of("none");
        }
        String shown = count == 1 ? "1 finding" : count + " findings";
        return new Cell.Jump(shown, FindingsSection.TITLE, index.findings().get(run.id()));
    }

    private static String note(Review review, Wording wording) {
        PeriodTotals period = review.period();
        List<String> lines = new ArrayList<>();
        String where =
                List.of(
                                review.book().limits().text(Limit.GROUP),
                                review.book().limits().text(Limit.SITE))
                        .stream()
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.joining(", "));
        if (!where.isEmpty()) {
            lines.add(where);
        }
        lines.addAll(toDo(review, wording));
        lines.add(count(review, Severity.STOP) + " stop, " + count(review, Severity.HOLD) + " hold, "
                + count(review, Severity.CHECK) + " check, " + count(review, Severity.NOTE) + " note. Runs: "
                + period.runsIsolated() + " isolated, " + period.runsInWorkup() + " in workup, "
                + period.runsPlanned() + " planned.");
        lines.add("Yields stated: " + period.yieldsStated() + statistic(", mean ", period.meanYieldPercent())
                + statistic(", median ", period.medianYieldPercent())
                + statistic(", weighted by amount ", period.amountWeightedYieldPercent()) + ".");
        if (!period.excluded().isEmpty()) {
            int more = period.excluded().size() - MOST_LEFT_OUT_NAMED;
            lines.add("Left out of these: "
                    + period.excluded().stream().limit(MOST_LEFT_OUT_NAMED).collect(Collectors.joining("; "))
                    + (more > 0 ? "; and " + more + " more, in the PDF and the JSON." : "."));
        }
        lines.add("Crude over theory is no yield. " + ShownFigures.coverage(period.coverageFactor()));
        lines.add(
                "Figures follow the entries when the workbook is recalculated; verdicts, findings and actions ask for a new review.");
        lines.add(SafetyWording.A_PERSON_DECIDES);
        return String.join("\n", lines);
    }

    /** What to do first and to measure next, a line each, so that it stands in the first screen of the workbook. */
    private static List<String> toDo(Review review, Wording wording) {
        ReadableNumbers numbers = new ReadableNumbers(wording.mark());
        List<String> lines = new ArrayList<>();
        for (UrgentAction action : UrgentAction.of(review, numbers, UrgentAction.MOST_LINES)) {
            lines.add(action.severity().word() + "  " + action.where() + ": " + action.text());
        }
        List<NextMeasurement> next = NextMeasurement.of(review, wording);
        next.stream()
                .limit(NextMeasurement.MOST_LINES)
                .forEach(one -> lines.add("measure next  " + one.run() + ": " + one.test() + "; " + one.settles()));
        NextMeasurement.left(next).ifPresent(left -> lines.add("measure next  " + left));
        return lines;
    }

    private static long count(Review review, Severity severity) {
        return review.findings().stream().filter(f -> f.severity() == severity).count();
    }

    private static String statistic(String name, OptionalDouble percent) {
        return percent.isPresent() ? name + ShownFigures.plain(percent.getAsDouble(), 1) + " %" : "";
    }
}
