package workuptally.report.pdf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.examples.DemoReview;
import workuptally.judgement.BasisRow;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.layers.Criterion;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Amount;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Container;
import workuptally.model.Correction;
import workuptally.model.Dimension;
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
import workuptally.model.Step;
import workuptally.model.Subject;
import workuptally.model.TablePlace;
import workuptally.model.Transfer;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.NotComputed;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.YieldBasis;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.Reextraction;
import workuptally.tally.bench.WorkupEvidence;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.waste.SolventUse;
import workuptally.tally.waste.WasteLine;

/** Reviews made by hand for the tests of the report. All figures are invented and need not agree with each other. */
public final class InventedReviews {
    private static final TablePlace TABLE = new TablePlace("week.xlsx", "Layers", true, Map.of("Gross", 6, "Tare", 7));
    private static final RowPlace ROW = new RowPlace(TABLE, 7, 7);
    private static final Readings READINGS = new Readings();
    private static final Field BLANK = Field.NoNumber.BLANK;
    static final String HASH = "3f5a".repeat(16);

    private InventedReviews() {}

    static MeasuredValue value(double value, double standardUncertainty) {
        return READINGS.enter("invented", "", value, standardUncertainty, () -> "nowhere");
    }

    static Field number(double value) {
        return new Field.Entered(
                new Field.Figure(value, Field.Qualifier.EXACT, 2, Double.toString(value)), ROW, "Gross");
    }

    /** The demo week, read and computed by the program itself, once for all tests. */
    public static Review demoWeek() {
        return DemoReview.review();
    }

    static Review empty() {
        return review(List.of(), List.of());
    }

    static Review ofRuns(int count) {
        List<RunReview> runs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String id = "R26-%03d".formatted(41 + i);
            runs.add(
                    switch (i % 5) {
                        case 0 -> openRun(id);
                        case 1 -> plainRun(id);
                        case 2 -> missingTare(id);
                        case 3 -> plannedRun(id);
                        default -> separation(id);
                    });
        }
        return review(
                runs,
                List.of(new Finding(
                        FindingCode.LIMIT_UNKNOWN,
                        Severity.CHECK,
                        Subject.ofRun(""),
                        new Place("week.xlsx", "Limits", 9, 0, "A9"),
                        Phrase.quoted("'Fume hood number' is no limit of the Limits table"),
                        Phrase.quoted("a name from the template's list"),
                        "",
                        Phrase.quoted("correct the name or move the row to a sheet of your own"))));
    }

    /** A book whose runs are all planned. */
    static Review planned(int count) {
        List<RunReview> runs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            runs.add(plannedRun("R26-%03d".formatted(41 + i)));
        }
        return review(runs, List.of());
    }

    static Review review(List<RunReview> runs, List<Finding> others) {
        List<Finding> findings = new ArrayList<>(others);
        runs.forEach(r -> findings.addAll(r.findings()));
        findings.sort(java.util.Comparator.comparing(Finding::severity));
        Book book = new Book(
                "week-10",
                List.of(new InputFile("week-10.xlsx", HASH)),
                runs.stream().map(r -> r.tally().run()).toList(),
                runs.isEmpty() ? List.of() : containers(),
                runs.isEmpty() ? List.of() : transfers(),
                List.of(),
                List.of(),
                runs.isEmpty() ? List.of() : corrections(),
                new Limits(
                        Map.of(),
                        runs.isEmpty()
                                ? Map.of()
                                : Map.of(
                                        Limit.GROUP, "Preparations Group K",
                                        Limit.SITE, "Bench 4",
                                        Limit.AS_OF, "2026-03-06",
                                        Limit.REVIEWERS, "A. Chemist; B. Supervisor; C. Safety contact",
                                        Limit.LOCAL_RULE_WASTE,
                                                "Collection on Fridays at ten; labels need full names.")),
                List.of());
        return new Review(book, runs, totals(runs), findings, basis(), "0.1.0");
    }

    private static PeriodTotals totals(List<RunReview> runs) {
        if (runs.isEmpty()) {
            return new PeriodTotals(
                    2,
                    0,
                    0,
                    0,
                    0,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    List.of(),
                    List.of(),
                    List.of());
        }
        return new PeriodTotals(
                2,
                runs.size(),
                0,
                1,
                3,
                OptionalDouble.of(83.24),
                OptionalDouble.of(84.1),
                OptionalDouble.of(82.6),
                List.of("R26-043: yield not computed, the tare of lot F-07 is missing"),
                List.of(
                        new SolventUse(
                                "tert-butyl methyl ether",
                                Optional.empty(),
                                0,
                                1702,
                                new SolventUse.Purification(0, 0, 0, 0),
                                1340,
                                0,
                                41.2,
                                22,
                                0.4,
                                298.4,
                                0.7404,
                                0),
                        new SolventUse(
                                "ethyl acetate",
                                Optional.empty(),
                                72.2,
                                351.8,
                                new SolventUse.Purification(40, 0, 0, 30),
                                0,
                                0,
                                388,
                                9,
                                1.1,
                                25.9,
                                0.9003,
                                0),
                        new SolventUse(
                                "dichloromethane",
                                Optional.empty(),
                                66.3,
                                0,
                                new SolventUse.Purification(0, 0, 0, 0),
                                0,
                                0,
                                61,
                                0,
                                0,
                                5.3,
                                1.3266,
                                0)),
                List.of(
                        new PeriodTotals.StreamTotal("aqueous-acid", "Aqueous, acidic", 4, 812.4, 0),
                        new PeriodTotals.StreamTotal("halogenated", "Halogenated organic", 1, 66.3, 0)));
    }

    private static List<BasisRow> basis() {
        List<BasisRow> rows = new ArrayList<>();
        for (Limit limit : Limit.values()) {
            limit.defaultValue().ifPresent(v -> rows.add(BasisRow.of(limit, Double.toString(v), limit.origin())));
        }
        rows.add(new BasisRow(
                BasisRow.Kind.REFERENCE, "density of ethyl acetate at 20 °C", "0.9003", "g/mL", "invented source"));
        rows.add(new BasisRow(BasisRow.Kind.EQUATION, "closure", "B = 100·Σ aⱼ·nⱼ / n₀", "", "definition"));
        return rows;
    }

    private static List<Container> containers() {
        return List.of(new Container(
                "W-3",
                "Aqueous, acidic",
                number(5),
                number(310),
                Optional.of(LocalDate.of(2026, 3, 2)),
                number(1210),
                List.of(new Container.Content("water", 850), new Container.Content("hydrogen chloride", 50)),
                Optional.of(LocalDate.of(2026, 2, 24)),
                "hood 2",
                "C. Safety contact",
                ROW));
    }

    private static List<Transfer> transfers() {
        return List.of(new Transfer(
                "T-1",
                "R26-041",
                List.of("A1", "A2"),
                "",
                "W-3",
                number(212.5),
                Transfer.Status.PROPOSED,
                "C1",
                Optional.of(LocalDate.of(2026, 3, 6)),
                ROW));
    }

    private static List<Correction> corrections() {
        return List.of(new Correction(
                "2026-03-04 16:10", "C2", "R26-042 gross of F-05", "84.21", "84.12", "digits swapped", Set.of(), ROW));
    }

    static Product product(String name, double plannedPercent) {
        return new Product(
                name,
                true,
                "C7H6O2",
                BLANK,
                number(1),
                List.of(),
                number(plannedPercent),
                new Product.Partitioning(Optional.of(Product.Character.ACID), number(4.2), BLANK, "", BLANK),
                BLANK,
                "",
                ROW);
    }

    static Run run(String id, String reaction, Run.Status status, List<Product> products) {
        return new Run(
                new RunHead(
                        id,
                        Optional.of(LocalDate.of(2026, 3, 3)),
                        "C2",
                        reaction,
                        Run.Kind.REACTION,
                        "M-02",
                        status,
                        BLANK,
                        Notes.NONE,
                        ROW),
                products,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    static Finding finding(String run, Severity severity, String code, String seen, String action) {
        return new Finding(
                FindingCode.valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_')),
                severity,
                Subject.ofRun(run),
                ROW.at("Tare"),
                Phrase.quoted(seen),
                Phrase.quoted("a figure that the rest of the record supports"),
                "common practice",
                Phrase.quoted(action));
    }

    static Content measured(String substance, double grams, double u, double percent) {
        return new Content(
                substance,
                Content.Kind.MEASURED,
                Optional.of(value(grams, u)),
                Optional.of(value(grams / 0.12212, u / 0.12212)),
                OptionalDouble.empty(),
                OptionalDouble.of(percent),
                "HPLC 31.4 mg/mL × 104 mL");
    }

    static Content bound(String substance, double grams, double percent) {
        return new Content(
                substance,
                Content.Kind.BOUND,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(grams),
                OptionalDouble.of(percent),
                "HPLC < 0.10 mg/mL × 78 mL");
    }

    static LayerTally layer(String label, Layer.Phase phase, double grams, double millilitres, List<Content> contents) {
        return new LayerTally(
                label,
                Optional.empty(),
                Optional.of(phase),
                true,
                false,
                true,
                Optional.of(value(grams, 0.02)),
                Optional.of(value(millilitres, 0.8)),
                contents);
    }

    static LotTally lot(String label, String product, Lot.Stage stage, double grams, double overTheoryPercent) {
        Lot entry = new Lot(
                label,
                product,
                Optional.of(stage),
                List.of("O1"),
                "F-05",
                new Lot.Weighing(number(84.12), number(84.12 - grams), BLANK, BLANK),
                number(97.5),
                BLANK,
                LotIdentity.shownBy("¹H NMR"),
                BLANK,
                Notes.NONE,
                ROW);
        return new LotTally(
                entry,
                Optional.of(value(grams, 0.0007)),
                Optional.of(value(0.975, 0.01)),
                YieldBasis.ASSAY,
                Optional.of(value(grams * 0.975, 0.04)),
                Optional.of(value(overTheoryPercent, 0.3)),
                stage == Lot.Stage.CRUDE);
    }

    static ProductYield yieldOf(Product product, String lot, double grams, double percent, double u, YieldBasis basis) {
        return new ProductYield(
                product,
                ProductYield.Stage.WORKUP,
                true,
                List.of(lot),
                value(grams, grams * 0.01),
                value(percent, u),
                ProductYield.PercentOf.THEORY,
                basis,
                Optional.empty(),
                Optional.empty());
    }

    static Theory theory(String limiting, Product product, double millimoles, double grams) {
        return new Theory(
                List.of(new Theory.Limiting(limiting, value(millimoles, millimoles * 0.003))),
                value(millimoles, millimoles * 0.003),
                List.of(new Theory.ProductTheory(
                        product,
                        value(millimoles, millimoles * 0.003),
                        value(grams, grams * 0.003),
                        grams / millimoles * 1000,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
    }

    static HazardNote hazard() {
        return new HazardNote(
                "diethyl ether",
                List.of("H224 Extremely flammable liquid and vapour.", "EUH019 May form explosive peroxides."),
                "Cool before shaking; vent at once and often.",
                "supplier label",
                true,
                List.of());
    }

    /** A hydrolysis whose product stayed partly in the aqueous layer. */
    static RunReview openRun(String id) {
        Product product = product("benzoic acid", 90);
        Closure.Term term = term("F-05", "benzoic acid", 64.2);
        Closure closure = new Closure(
                "methyl benzoate",
                value(99.5, 0.4),
                value(70.2, 0.8),
                1.6,
                2,
                Closure.Verdict.OPEN,
                37,
                29.8,
                3.63,
                "benzoic acid",
                List.of(term, term("O0", "methyl benzoate", 1.8), term("A2", "benzoic acid", 4.2)),
                List.of(
                        new Closure.Candidate(
                                "A1",
                                0,
                                3.3,
                                "pH 5.6 against pKa 4.2: most of the acid is ionised",
                                "HPLC of A1, or acidify to pH 2 and extract once more"),
                        new Closure.Candidate(
                                "cake K1",
                                0.05,
                                0.2,
                                "solution held by 8 g of wet agent",
                                "rinse the cake and weigh")));
        RunTally tally = new RunTally(
                run(
                        id,
                        "Hydrolysis of methyl benzoate; extraction of benzoic acid",
                        Run.Status.ISOLATED,
                        List.of(product)),
                List.of(),
                Optional.of(theory("methyl benzoate", product, 99.54, 12.156)),
                List.of(lot("F-05", "benzoic acid", Lot.Stage.CRUDE, 8.002, 65.83)),
                List.of(yieldOf(product, "F-05", 7.80, 64.2, 0.7, YieldBasis.ASSAY)),
                List.of(
                        layer(
                                "O0",
                                Layer.Phase.ORGANIC,
                                22.1,
                                30,
                                List.of(measured("methyl benzoate", 0.245, 0.006, 1.8))),
                        layer("A1", Layer.Phase.AQUEOUS, 108.3, 104, List.of()),
                        layer(
                                "A2",
                                Layer.Phase.AQUEOUS,
                                24.41,
                                20.5,
                                List.of(measured("benzoic acid", 0.511, 0.012, 4.2))),
                        layer("K1", Layer.Phase.SOLID, 9.84, 7.4, List.of(bound("benzoic acid", 0.031, 0.26)))),
                List.of(closure),
                Optional.of(new MassBalance(value(255.1, 0.9), value(248.4, 0.3), 0, 81.4, 0, 12.2, true, List.of())),
                List.of(contact(120, 60, true)),
                List.of(),
                List.of(
                        new WasteLine(
                                "A1",
                                "aqueous-acid",
                                "Aqueous, acidic",
                                "aqueous, pH 5.6",
                                OptionalDouble.of(108.3),
                                WasteLine.Standing.KEPT),
                        new WasteLine(
                                "O0",
                                "non-halogenated",
                                "Non-halogenated organic",
                                "tert-butyl methyl ether",
                                OptionalDouble.of(22.1),
                                WasteLine.Standing.KEPT)),
                new WorkupEvidence(
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new Reextraction(
                                "A1",
                                "benzoic acid",
                                new Reextraction.Extractant("tert-butyl methyl ether", 1, 40, 29.6),
                                new Reextraction.Partition(11.3, OptionalDouble.empty(), "P = 60"),
                                new Reextraction.PhSetting(OptionalDouble.of(2), 31, 6, 0, List.of()),
                                new Reextraction.Gain(3.2, 26.3))),
                        List.of(),
                        List.of()),
                List.of(new NotComputed(
                        "content of layer A1", "no assay and no bound", "an assay of A1 in the Assays table")));
        return new RunReview(
                tally,
                List.of(
                        finding(
                                id,
                                Severity.HOLD,
                                "closure-open",
                                "closure 70.2 ± 1.6 %: 3.6 g benzoic acid unaccounted; layer A1 may hold 3.3 g (27 %)",
                                "assay A1, or acidify A1 to pH 2 and extract once more"),
                        finding(
                                id,
                                Severity.CHECK,
                                "content-against-ph",
                                "pH 5.6 after acidification, pKa 4.2",
                                "acidify further and record the pH")),
                List.of(decision()),
                List.of(hazard()));
    }

    static LayerDecision decision() {
        return new LayerDecision(
                "A1",
                LayerDecision.Outcome.MEASURE_FIRST,
                Phrase.quoted("no assay and no bound; the open part of the closure can be here"),
                List.of(
                        new LayerDecision.Condition(
                                Criterion.IDENTITY, LayerDecision.State.MET, Phrase.quoted("density 1.041 g/mL")),
                        new LayerDecision.Condition(
                                Criterion.CONTENT_KNOWN, LayerDecision.State.MISSING, Phrase.quoted("an assay of A1"))),
                Optional.empty());
    }

    static Closure.Term term(String place, String substance, double percent) {
        return new Closure.Term(place, substance, 1, value(percent, percent * 0.01), percent, Content.Kind.MEASURED);
    }

    static Contact contact(double millilitres, double fill, boolean gas) {
        Step step = new Step(
                "3",
                Optional.of(Step.Operation.WASH),
                List.of("O1"),
                new Step.Addition("sat. NaHCO₃", number(1), number(50), BLANK, BLANK, BLANK),
                new Step.Funnel(number(125), BLANK, Optional.empty(), Optional.empty(), Optional.empty()),
                BLANK,
                BLANK,
                Optional.empty(),
                new Step.Given(List.of("O2"), List.of("A2"), List.of()),
                Notes.NONE,
                ROW);
        return new Contact(
                step,
                1,
                millilitres,
                125,
                false,
                fill,
                50,
                1,
                2,
                gas,
                OptionalDouble.of(0.31),
                OptionalDouble.of(1.32));
    }

    static RunReview plainRun(String id) {
        Product product = product("triphenylmethanol", 85);
        Closure closed = new Closure(
                "benzophenone",
                value(49.49, 0.2),
                value(98.9, 1.1),
                2.2,
                2,
                Closure.Verdict.CLOSES,
                1.0,
                1.1,
                0.14,
                "triphenylmethanol",
                List.of(
                        term("F-06", "triphenylmethanol", 92.1),
                        term("A1", "triphenylmethanol", 2.8),
                        term("A2", "triphenylmethanol", 1.6),
                        term("O9", "benzophenone", 1.2),
                        term("K1", "triphenylmethanol", 1.2)),
                List.of());
        Closure over = new Closure(
                "phenylmagnesium bromide",
                value(55.0, 0.4),
                value(104.6, 1.5),
                3.0,
                2,
                Closure.Verdict.OVER,
                -3.1,
                -4.6,
                -0.66,
                "triphenylmethanol",
                List.of(term("F-06", "triphenylmethanol", 83.4), term("O9", "biphenyl", 21.2)),
                List.of());
        ProductYield purified = new ProductYield(
                product,
                ProductYield.Stage.PURIFIED,
                false,
                List.of("P-1", "P-2"),
                value(10.61, 0.0007),
                value(82.3, 0.3),
                ProductYield.PercentOf.THEORY,
                YieldBasis.ASSAY_NOT_RECORDED,
                Optional.of(value(86.4, 0.5)),
                Optional.of(value(83.0, 0.3)));
        RunTally tally = new RunTally(
                run(
                        id,
                        "Phenylmagnesium bromide + benzophenone; ammonium chloride quench",
                        Run.Status.ISOLATED,
                        List.of(product)),
                List.of(),
                Optional.of(theory("benzophenone", product, 49.49, 12.884)),
                List.of(
                        lot("F-06", "triphenylmethanol", Lot.Stage.CRUDE, 12.17, 94.5),
                        lot("P-1", "triphenylmethanol", Lot.Stage.CROP, 9.21, 71.5),
                        lot("P-2", "triphenylmethanol", Lot.Stage.CROP, 1.40, 10.9)),
                List.of(yieldOf(product, "F-06", 11.87, 92.1, 1.0, YieldBasis.ASSAY), purified),
                List.of(
                        layer(
                                "A1",
                                Layer.Phase.AQUEOUS,
                                71.2,
                                66,
                                List.of(measured("triphenylmethanol", 0.36, 0.01, 2.8))),
                        layer("A2", Layer.Phase.AQUEOUS, 36.6, 31, List.of(bound("triphenylmethanol", 0.0031, 0.024)))),
                List.of(closed, over),
                Optional.of(new MassBalance(value(241.3, 0.9), value(220.9, 0.3), 0, 107, 0, 32.1, false, List.of())),
                List.of(),
                List.of(),
                List.of(new WasteLine(
                        "A1",
                        "aqueous-acid",
                        "Aqueous, acidic",
                        "aqueous, pH 4.9",
                        OptionalDouble.of(71.2),
                        WasteLine.Standing.KEPT)),
                WorkupEvidence.NONE,
                List.of());
        return new RunReview(
                tally,
                List.of(finding(
                        id, Severity.NOTE, "titre-differs", "titre 2.62 mol/L, label 3 mol/L (−12.7 %)", "none")),
                List.of(),
                List.of());
    }

    static RunReview missingTare(String id) {
        Product product =
                product("N-[2-(4-methoxyphenyl)-2-oxoethyl]-4-methyl-N-(prop-2-yn-1-yl)benzenesulfonamide", 78);
        RunTally tally = new RunTally(
                run(id, "Benzyl p-tolyl ether from p-cresol and benzyl bromide", Run.Status.ISOLATED, List.of(product)),
                List.of(),
                Optional.of(theory("p-cresol", product, 19.8, 3.926)),
                List.of(new LotTally(
                        lot("F-07", "benzyl p-tolyl ether", Lot.Stage.CRUDE, 3.6, 91)
                                .lot(),
                        Optional.empty(),
                        Optional.empty(),
                        YieldBasis.NONE,
                        Optional.empty(),
                        Optional.empty(),
                        true)),
                List.of(),
                List.of(layer("A1", Layer.Phase.AQUEOUS, 44.2, 42, List.of())),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                WorkupEvidence.NONE,
                List.of(
                        new NotComputed("net mass of lot F-07", "its tare is blank", "the tare in Isolated!H8"),
                        new NotComputed(
                                "closure of p-cresol",
                                "the lot that holds the product has no mass",
                                "the tare in Isolated!H8")));
        return new RunReview(
                tally,
                List.of(finding(
                        id,
                        Severity.STOP,
                        "tare-missing",
                        "gross 87.4411 g, tare blank",
                        "find the tare of flask F-07, or weigh it clean and dry")),
                List.of(),
                List.of());
    }

    static RunReview plannedRun(String id) {
        Product product = product("isopentyl acetate", 80);
        Charge charge = new Charge(
                "isopentyl alcohol",
                Optional.of(Charge.Role.SUBSTRATE),
                "C5H12O",
                BLANK,
                number(1),
                new Charge.Quantity(
                        Optional.of(new Amount(number(8.82), Dimension.MASS, "g")), Optional.empty(), BLANK, BLANK),
                new Charge.Goods(number(99), BLANK, BLANK, BLANK, BLANK, Optional.empty(), number(0.81), ""),
                Charge.Reading.READ,
                ROW);
        RunTally tally = new RunTally(
                run(id, "Isopentyl acetate by acid-catalysed esterification", Run.Status.PLANNED, List.of(product)),
                List.of(new ChargeAmount(
                        charge,
                        true,
                        Optional.of(value(99.06, 0.3)),
                        OptionalDouble.empty(),
                        Optional.of(value(8.82, 0.02)),
                        Optional.of(value(10.9, 0.05)),
                        OptionalDouble.of(88.15),
                        OptionalDouble.empty(),
                        "n = m·w/M")),
                Optional.of(theory("isopentyl alcohol", product, 99.06, 12.896)),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(contact(122, 98, true)),
                List.of(),
                List.of(),
                WorkupEvidence.NONE,
                List.of());
        return new RunReview(
                tally,
                List.of(finding(
                        id,
                        Severity.STOP,
                        "funnel-overfull",
                        "122 mL in a 125 mL funnel: 98 % full, gas expected",
                        "take a 250 mL funnel or shake in two loads")),
                List.of(),
                List.of());
    }

    static RunReview separation(String id) {
        Product acid = product("benzoic acid", 95);
        Product base = product("benzocaine", 95);
        Product neutral = product("naphthalene", 95);
        RunTally tally = new RunTally(
                run(
                        id,
                        "Separation of a three-component mixture (acid, weak base, neutral)",
                        Run.Status.ISOLATED,
                        List.of(acid, base, neutral)),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(
                        yieldOf(acid, "F-01", 2.84, 94.6, 1.0, YieldBasis.ASSAY),
                        yieldOf(base, "F-02", 2.67, 88.9, 0.9, YieldBasis.MOLE_RATIO_UPPER_BOUND),
                        yieldOf(neutral, "F-03", 3.09, 103.1, 0.06, YieldBasis.ASSAY)),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                WorkupEvidence.NONE,
                List.of());
        return new RunReview(tally, List.of(), List.of(), List.of());
    }
}
