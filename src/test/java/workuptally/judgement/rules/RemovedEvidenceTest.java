package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.report.view.lines.ProposalLine;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;

/** What somebody leaves out or names loosely never makes a layer look settled; invented books. */
class RemovedEvidenceTest {
    @TempDir
    Path folder;

    private RunReview run(ExampleBook book) throws Exception {
        Review review = book.review(folder);
        return review.runs().get(0);
    }

    private static Optional<Outcome> outcome(RunReview run, String layer) {
        return run.decisions().stream()
                .filter(d -> d.layer().equals(layer))
                .findFirst()
                .map(LayerDecision::outcome);
    }

    private static boolean has(RunReview run, String code) {
        return run.findings().stream().anyMatch(f -> f.code().word().equals(code));
    }

    private static ExampleBook liquor(String phase) {
        return ExampleBook.clean()
                .plus("workup", "X1,7,crystallise,CR1,ethanol,1,20,,,0.789,,,,,,,,,,CR2+ML1")
                .plus("layers", "X1,ML1," + phase + ",,E-05,18,74.00,60.00,,,kept")
                .plus("assays", "X1,ML1,acetanilide,,HPLC,19,mg/mL,2.0,")
                .plus("isolated", "X1,CR2,acetanilide,purified,CR1,F-02,95.0,90.0,,99.5,1.0,melting point,,");
    }

    @Test
    void aPhaseThatIsNotRecordedHidesNoLayer() throws Exception {
        assertEquals(Optional.of(Outcome.KEEP), outcome(run(liquor("mother liquor")), "ML1"));
        assertEquals(Optional.of(Outcome.KEEP), outcome(run(liquor("")), "ML1"));
        assertEquals(Optional.of(Outcome.KEEP), outcome(run(liquor("?")), "ML1"));
    }

    @Test
    void productMeasuredInACakeIsKept() throws Exception {
        RunReview cake = run(ExampleBook.clean().plus("assays", "X1,K1,acetanilide,,HPLC,8.1,% w/w,2.0,"));
        assertEquals(Optional.of(Outcome.KEEP), outcome(cake, "K1"));
        assertTrue(has(cake, "layer-holds-product"));
    }

    @Test
    void anAssayWithoutAMethodCountsNoMoreThanOneThatDoesNotCount() throws Exception {
        assertEquals(Optional.of(Outcome.EVIDENCE_COMPLETE), outcome(run(ExampleBook.clean()), "A2"));
        for (String method : new String[] {"", "?", "n/a", "LC-MS"}) {
            RunReview run =
                    run(ExampleBook.clean().with("assays", "X1,A2,acetanilide,,HPLC", "X1,A2,acetanilide,," + method));
            assertTrue(outcome(run, "A2").orElseThrow() != Outcome.EVIDENCE_COMPLETE, method);
        }
    }

    @Test
    void theoryRestsOnNoReagentWhereTheSubstratesCoefficientIsBlank() throws Exception {
        RunReview run = run(ExampleBook.clean().with("charges", "93.13,1,", "93.13,,"));
        assertTrue(has(run, "theory-not-computed"));
        assertTrue(outcome(run, "A2").orElseThrow() != Outcome.EVIDENCE_COMPLETE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "X1,aniline,substrate,C6H7N,93.13,1,4,66,g,4,661,g,99.5,,,,",
                "X1,,substrate,C6H7N,93.13,1,4.66,g,4.661,g,99.5,,,,",
                ",aniline,substrate,C6H7N,93.13,1,4.66,g,4.661,g,99.5,,,,"
            })
    void theoryWaitsForAChargeThatWasLeftOut(String row) throws Exception {
        ExampleBook book = ExampleBook.clean()
                .with("charges", "X1,aniline,substrate,C6H7N,93.13,1,4.66,g,4.661,g,99.5,,,,\n", "")
                .plus("charges", row);
        RunReview run = run(book);
        assertTrue(has(run, "theory-not-computed"));
        assertTrue(run.tally().massBalance().isEmpty());
        assertTrue(outcome(run, "A2").orElseThrow() != Outcome.EVIDENCE_COMPLETE);
    }

    /** A second lot of 0.75 g would move the yield from 96 to 107 %; an assay of A1 beside the first one may show ten times as much. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "isolated|X1,CR2,acetanilide,crude,O4,F-02,91,2,90.45,,99.1,1.5,melting point,,",
                "isolated|,CR2,acetanilide,crude,O4,F-02,91.2,90.45,,99.1,1.5,melting point,,",
                "isolated|X1,,acetanilide,crude,O4,F-02,91.2,90.45,,99.1,1.5,melting point,,",
                "isolated|X1,CR1,acetanilide,crude,O4,F-02,91.2,90.45,,99.1,1.5,melting point,,",
                "assays|X1,CR1,acetanilide,,HPLC,80,1,% w/w,1,"
            })
    void yieldWaitsForARowOfWhatWasIsolated(String table, String row) throws Exception {
        RunReview run = run(ExampleBook.clean().plus(table, row));
        assertEquals(List.of(), run.tally().yields());
        assertTrue(run.tally().notComputed().stream()
                .anyMatch(n -> n.what().equals("yield of acetanilide")
                        && n.unlockedBy().matches("line \\d+ of " + table + ".csv")));
        assertWaitsFor(run, table);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "assays|X1,A1,acetanilide,,HPLC,15,1,mg/mL,2,0,",
                "assays|X1,,acetanilide,,HPLC,15.1,mg/mL,2.0,",
                "layers|X1,A3,aqueous,lower,E-03,34,5,97.63,63.11,,,kept",
                "layers|,A3,aqueous,lower,E-03,34,97.63,63.11,,,kept",
                "workup|X1,7,wash,O4,water,1,30,5,,,0.998,250,1,,,aqueous,density,none,O5,A3,",
                "products|X1,aniline salt,yes,C6H8ClN,129,59,1,aniline 1,neutral,,,304"
            })
    void layersAndBalancesWaitForARowThatWasLeftOut(String table, String row) throws Exception {
        assertWaitsFor(run(ExampleBook.clean().plus(table, row)), table);
    }

    private static void assertWaitsFor(RunReview run, String table) {
        assertTrue(run.decisions().stream().noneMatch(d -> d.outcome() == Outcome.EVIDENCE_COMPLETE));
        Closure closure = run.tally().closures().get(0);
        assertEquals(Closure.Verdict.CANNOT_DECIDE, closure.verdict());
        assertTrue(closure.candidates().get(0).settledBy().matches("correct line \\d+ of " + table + ".csv"));
        assertTrue(run.tally().massBalance().stream().noneMatch(MassBalance::complete));
        assertTrue(run.tally().run().leftOut().stream()
                .allMatch(r -> r.inWords().matches("line \\d+ of " + table + ".csv")));
    }

    @Test
    void aTotalIsNoRowLeftOut() throws Exception {
        RunReview run = run(
                ExampleBook.clean().plus("isolated", "X1,Total,,,,,,,6.57,,,,,").plus("layers", "X1,,,,,,,,,,,"));
        assertEquals(List.of(), run.tally().run().leftOut());
        assertEquals(1, run.tally().yields().size());
    }

    @Test
    void theoryRestsOnNoSolventThatWasLeftOut() throws Exception {
        RunReview run = run(ExampleBook.clean().plus("charges", "X1,toluene,solvent,C7H8,,,,,10,0,mL,,,,,0.87,"));
        assertTrue(!has(run, "theory-not-computed"));
        assertTrue(run.tally().massBalance().isEmpty());
    }

    @Test
    void aQuestionMarkIsNoOperation() throws Exception {
        RunReview run = run(ExampleBook.clean().with("workup", "X1,2,wash", "X1,2,?"));
        assertTrue(has(run, "operation-missing"));
    }

    @Test
    void aCakeThatNoStepGivesIsNamed() throws Exception {
        RunReview run = run(ExampleBook.clean().plus("layers", "X1,K9,solid,,,,,,3.00,,kept"));
        assertTrue(has(run, "layer-never-given"));
    }

    @Test
    void whatALiquorIsMadeOfWentIn() throws Exception {
        String workup = "X1,6,concentrate,O4,,,,,,,,,,,,,,,,D1+C1\n"
                + "X1,7,crystallise,C1,heptane,1,30,,,0.684,,,,,,,,,,CR1+ML1";
        RunReview run = run(ExampleBook.clean()
                .with("workup", "X1,6,concentrate,O4,,,,,,,,,,,,,,,,D1+CR1", workup)
                .plus("layers", "X1,ML1,mother liquor,,E-05,29,80.00,60.00,,heptane 99 %,kept"));
        double in = run.tally().massBalance().orElseThrow().inGrams().value();
        RunReview without = run(ExampleBook.clean());
        assertEquals(
                30 * 0.684,
                in - without.tally().massBalance().orElseThrow().inGrams().value(),
                1e-6);
    }

    @Test
    void aLimitNobodyCanReadIsNotReplacedByALaxerOne() throws Exception {
        for (String value : new String[] {"half a percent", "<0.5", "?", "tbd"}) {
            RunReview run = run(ExampleBook.clean().table("limits", "Name,Value\nLayer limit," + value + "\n"));
            assertTrue(outcome(run, "A2").orElseThrow() != Outcome.EVIDENCE_COMPLETE, value);
        }
        assertEquals(
                Optional.of(Outcome.EVIDENCE_COMPLETE),
                outcome(run(ExampleBook.clean().table("limits", "Name,Value\nLayer limit,\n")), "A2"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "X1",
                "x-1",
                "x 1",
                "x–1",
                "Y9; x1",
                "X1 (discuss)",
                "'X1'",
                "run X1",
                "Y9/X1",
                "all",
                "yes",
                "X2",
                "?",
                "X1 to X3"
            })
    void aHoldHoldsHoweverItIsWrittenAndAllWaitWhereItNamesNoRun(String held) throws Exception {
        ExampleBook book = ExampleBook.clean().table("limits", "Name,Value\nHold runs," + held + "\n");
        assertTrue(outcome(run(book), "A2").orElseThrow() != Outcome.EVIDENCE_COMPLETE);
        boolean unknown =
                List.of("Y9; x1", "Y9/X1", "yes", "X2", "?", "X1 to X3").contains(held);
        assertEquals(unknown ? 1 : 0, book.findings(folder, "hold-run-unknown").size());
    }

    @ParameterizedTest
    @CsvSource({
        "Layer limit (%), layer-holds-product",
        "Layer limit % of theory, layer-holds-product",
        "Layer limits, layer-holds-product",
        "layer-limit [%], layer-holds-product",
        "Limit per layer, layer-waits",
        "Layer limmit, layer-waits",
        "Max. layer limit, layer-waits",
        "Layer limit (dry), layer-waits",
        "Fridge number, ''"
    })
    void aLimitUnderAnotherNameIsNotReplacedByALaxerOne(String name, String code) throws Exception {
        RunReview run = run(ExampleBook.clean().table("limits", "Name,Value\n" + name + ",0.02\n"));
        assertEquals(
                code.isEmpty() ? Outcome.EVIDENCE_COMPLETE : Outcome.KEEP,
                outcome(run, "A2").orElseThrow());
        assertTrue(code.isEmpty() || has(run, code));
    }

    @Test
    void ofTwoLimitsThatDifferNoneIsTakenForGranted() throws Exception {
        RunReview run = run(ExampleBook.clean().table("limits", "Name,Value\nLayer limit,2\nLayer limit,0.1\n"));
        assertTrue(outcome(run, "A2").orElseThrow() != Outcome.EVIDENCE_COMPLETE);
    }

    @ParameterizedTest
    @CsvSource({"Layer limit,100", "Run limit,1e9", "Coverage factor,0.001", "Detection limit HPLC,0"})
    void aLimitThatNoLaboratoryCanMeanCompletesNothing(String name, String value) throws Exception {
        ExampleBook book = ExampleBook.clean().table("limits", "Name,Value\n" + name + "," + value + "\n");
        assertEquals(1, book.findings(folder, "value-impossible").size());
        assertTrue(outcome(run(book), "A2").orElseThrow() != Outcome.EVIDENCE_COMPLETE);
    }

    @Test
    void aLayerThatNoStepTookIsNotUsedUp() throws Exception {
        RunReview run = run(ExampleBook.clean().with("layers", "85.02,60.26,,,kept", "85.02,60.26,,,used up"));
        assertTrue(outcome(run, "A2").isPresent());
        assertTrue(has(run, "layer-said-consumed"));
    }

    @Test
    void wordsBehindAShareAreNoPartOfTheName() throws Exception {
        Review review = ExampleBook.clean()
                .with("layers", "ethyl acetate 98 %", "ethyl acetate 90 % hydrogen peroxide")
                .review(folder);
        assertTrue(review.findings().stream().anyMatch(f -> f.code().word().equals("parts-unreadable")));
    }

    @Test
    void aContainerWithoutCapacityIsAskedAbout() throws Exception {
        assertEquals(ProposalLine.Group.FITS, proposal("10"));
        assertEquals(ProposalLine.Group.ASK, proposal(""));
    }

    private ProposalLine.Group proposal(String capacityLitres) throws Exception {
        Review review = ExampleBook.clean()
                .with("layers", "ethyl acetate 98 %,to reuse", "ethyl acetate 98 %,kept")
                .table(
                        "containers",
                        "Container,Waste stream,Capacity (L),Tare (g),Gross then (g),Contents then,Opened\n"
                                + "W-1,non-halogenated solvents," + capacityLitres
                                + ",400,2400,ethyl acetate 2000 g,2026-03-01\n")
                .table("transfers", "Transfer,Run,Layer,Container,Amount (g),Status\nT1,X1,D1,W-1,48.15,proposed\n")
                .review(folder);
        return ProposalLine.of(review).get(0).group();
    }
}
