package workuptally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.BasisRow;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.Criterion;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Book;
import workuptally.model.Field;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.InputFile;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Lot;
import workuptally.model.LotIdentity;
import workuptally.model.Notes;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Product;
import workuptally.model.RowPlace;
import workuptally.model.Run;
import workuptally.model.RunHead;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.model.TablePlace;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.NotComputed;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.YieldBasis;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.bench.WorkupEvidence;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.waste.SolventUse;
import workuptally.tally.waste.WasteLine;

/** An invented review with as many runs as a test wants; its figures only have to be told apart. */
public final class ExampleReview {
    private static final TablePlace RUNS = new TablePlace("week.xlsx", "Runs", true, Map.of("Run", 0));

    private ExampleReview() {}

    /** A review of that many runs with the findings a test gives. */
    public static Review of(int runs, Finding... findings) {
        List<Finding> sorted = new ArrayList<>(List.of(findings));
        sorted.sort(java.util.Comparator.comparing(Finding::severity));
        List<RunReview> reviews = new ArrayList<>();
        for (int i = 1; i <= runs; i++) {
            String id = id(i);
            reviews.add(new RunReview(
                    tally(id, i),
                    sorted.stream().filter(f -> f.run().equals(id)).toList(),
                    List.of(decision()),
                    List.of()));
        }
        Book book = new Book(
                "week",
                List.of(new InputFile("week.xlsx", "0".repeat(64))),
                reviews.stream().map(r -> r.tally().run()).toList(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Limits.defaults(),
                List.of());
        PeriodTotals period = new PeriodTotals(
                2,
                runs,
                0,
                0,
                runs,
                OptionalDouble.of(81.25),
                OptionalDouble.of(82.5),
                OptionalDouble.empty(),
                List.of("R-9: no assay"),
                List.of(solvent(runs)),
                List.of(new PeriodTotals.StreamTotal("aqueous", "aqueous, acid", 2 * runs, 1500.0 * runs, 0)));
        return new Review(
                book,
                reviews,
                period,
                sorted,
                List.of(BasisRow.of(Limit.COVERAGE_FACTOR, "2", "common practice")),
                "0.1.0");
    }

    /** Id of the n-th run. */
    public static String id(int n) {
        return String.format(java.util.Locale.ROOT, "R-%03d", n);
    }

    /** A finding at a cell of a sheet; column from 0. */
    public static Finding finding(Severity severity, String run, String sheet, int row, int column) {
        String cell = (char) ('A' + column) + Integer.toString(row);
        return new Finding(
                FindingCode.TARE_MISSING,
                severity,
                Subject.ofRun(run),
                new Place("week.xlsx", sheet, row, column, cell),
                Phrase.quoted("blank"),
                Phrase.quoted("a mass in g"),
                "form of the book",
                Phrase.quoted("Weigh the empty vessel and enter its tare."));
    }

    private static RunTally tally(String id, int n) {
        Readings readings = new Readings();
        MeasuredValue found = readings.enter("lot", "g", 4.0 + n * 0.001, 0.02, () -> "Isolated!F2");
        MeasuredValue theory = readings.enter("charge", "g", 5.0, 0.01, () -> "Charges!H2");
        MeasuredValue percent = found.over(theory).times(100);
        RowPlace row = new RowPlace(RUNS, n + 1, n + 1);
        Product product = product(row);
        Lot lot = lot(row);
        Run run = new Run(
                new RunHead(
                        id,
                        Optional.empty(),
                        "A. N. Other",
                        "=esterification " + n,
                        Run.Kind.REACTION,
                        "",
                        Run.Status.ISOLATED,
                        Field.NoNumber.BLANK,
                        Notes.NONE,
                        row),
                List.of(product),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(lot),
                List.of());
        Closure closure = new Closure(
                "acid",
                readings.exact(40),
                percent.plus(readings.exact(10)),
                1.2,
                2,
                Closure.Verdict.OPEN,
                4.5,
                9.4,
                0.47,
                "ester",
                List.of(
                        new Closure.Term("F-1", "ester", 1, readings.exact(32), 80.6, Content.Kind.MEASURED),
                        new Closure.Term("A1", "ester", 1, readings.exact(4), 10, Content.Kind.MEASURED)),
                List.of(new Closure.Candidate("A2", 0, 0.31, "bound by HPLC", "an assay of A2")));
        MassBalance balance =
                new MassBalance(readings.exact(100), readings.exact(97), 0.2, 50, 0, 7.5, true, List.of());
        return new RunTally(
                run,
                List.of(),
                Optional.of(new Theory(
                        List.of(),
                        readings.exact(40),
                        List.of(new Theory.ProductTheory(
                                product,
                                readings.exact(40),
                                theory,
                                125,
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty())))),
                List.of(new LotTally(
                        lot,
                        Optional.of(found),
                        Optional.empty(),
                        YieldBasis.ASSAY,
                        Optional.of(found),
                        Optional.of(percent),
                        true)),
                List.of(new ProductYield(
                        product,
                        ProductYield.Stage.WORKUP,
                        true,
                        List.of("F-1"),
                        found,
                        percent,
                        ProductYield.PercentOf.THEORY,
                        YieldBasis.ASSAY,
                        Optional.empty(),
                        Optional.empty())),
                List.of(layer(readings, "A1"), layer(readings, "A2")),
                List.of(closure),
                Optional.of(balance),
                List.of(),
                List.of(solvent(1)),
                List.of(new WasteLine(
                        "A1",
                        "aqueous",
                        "aqueous, acid",
                        "aqueous, pH 1.8",
                        OptionalDouble.of(1500),
                        WasteLine.Standing.KEPT)),
                WorkupEvidence.NONE,
                List.of(new NotComputed("density of A2", "no volume", "Layers, Volume")));
    }

    private static LayerDecision decision() {
        return new LayerDecision(
                "A1",
                LayerDecision.Outcome.KEEP,
                Phrase.quoted("10.0 % of theory is in it."),
                List.of(
                        new LayerDecision.Condition(
                                Criterion.IDENTITY, LayerDecision.State.MET, Phrase.quoted("density 1.02 g/mL")),
                        new LayerDecision.Condition(
                                Criterion.CONTENT_KNOWN, LayerDecision.State.MISSING, Phrase.quoted("tare of A1"))),
                Optional.empty());
    }

    private static SolventUse solvent(int times) {
        return new SolventUse(
                "ethyl acetate",
                Optional.empty(),
                450.0 * times,
                451.0 * times,
                new SolventUse.Purification(0, 0, 0, 0),
                700 * times,
                0,
                80,
                10,
                1,
                110,
                0.901,
                0);
    }

    private static LayerTally layer(Readings readings, String label) {
        return new LayerTally(
                label,
                Optional.empty(),
                Optional.of(Layer.Phase.AQUEOUS),
                true,
                false,
                true,
                Optional.of(readings.exact(104.2)),
                Optional.empty(),
                List.of(new Content(
                        "ester",
                        Content.Kind.MEASURED,
                        Optional.of(readings.enter("assay", "g", 0.5, 0.011, () -> "Assays!F2")),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(10),
                        "HPLC 4.8 mg/mL × 104 mL")));
    }

    private static Product product(RowPlace row) {
        return new Product(
                "ester",
                true,
                "C8H8O2",
                Field.NoNumber.BLANK,
                Field.NoNumber.BLANK,
                List.of(),
                new Field.Entered(new Field.Figure(85, Field.Qualifier.EXACT, 0, "85"), row, "Run"),
                new Product.Partitioning(
                        Optional.empty(), Field.NoNumber.BLANK, Field.NoNumber.BLANK, "", Field.NoNumber.BLANK),
                Field.NoNumber.BLANK,
                "",
                row);
    }

    private static Lot lot(RowPlace row) {
        return new Lot(
                "F-1",
                "ester",
                Optional.of(Lot.Stage.CRUDE),
                List.of(),
                "",
                new Lot.Weighing(
                        Field.NoNumber.BLANK, Field.NoNumber.BLANK, Field.NoNumber.BLANK, Field.NoNumber.BLANK),
                Field.NoNumber.BLANK,
                Field.NoNumber.BLANK,
                LotIdentity.NONE,
                Field.NoNumber.BLANK,
                Notes.NONE,
                row);
    }
}
