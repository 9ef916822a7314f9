package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.judgement.Review;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.view.lines.ProposalLine;
import workuptally.report.view.wording.Wording;
import workuptally.tally.waste.WasteLine;

/** What no table knows is said: once a book, in the hazard notes, and with each decision about a layer it can be in. */
class UnlistedMaterialsTest {
    private static final String UNLISTED = "X1,unobtainium dust,additive,,,,,,0.5,g,99,,,,";

    @TempDir
    Path folder;

    @Test
    void aMaterialThatNoTableKnowsIsSaidOnceABookAndHoldsNothing() throws Exception {
        List<Finding> findings = ExampleBook.clean()
                .plus("charges", UNLISTED)
                .plus("charges", UNLISTED)
                .findings(folder, "material-unlisted");
        assertEquals(1, findings.size());
        assertEquals(Severity.CHECK, findings.get(0).severity());
        assertTrue(
                Wording.POINT.of(findings.get(0).seen()).contains("run X1"),
                Wording.POINT.of(findings.get(0).seen()));
    }

    @Test
    void aMaterialOfSeveralTransfersIsSaidOnceAndStandsAgainstEach() throws Exception {
        Review review = ExampleBook.clean()
                .table(
                        "containers",
                        "Container,Waste stream,Capacity (L),Tare (g),Gross then (g),Contents then,Opened\n"
                                + "W1,\"aqueous, neutral\",10,400,3400,water 3000 g,2026-02-02\n")
                .table(
                        "transfers",
                        "Transfer,Run,Layer,Material,Container,Amount (g),Status\n"
                                + "T1,,,blorbium oxide,W1,20,proposed\nT2,,,blorbium oxide,W1,20,proposed\n")
                .review(folder);
        List<String> seen = review.findings().stream()
                .filter(f -> f.code().word().equals("material-unlisted"))
                .map(f -> Wording.POINT.of(f.seen()))
                .toList();
        assertEquals(1, seen.size());
        assertTrue(seen.get(0).contains("(transfers T1, T2)"), seen.get(0));
        for (ProposalLine line : ProposalLine.of(review)) {
            assertTrue(line.reasons().contains("no table knows it: its reactivity is not judged"), line::toString);
        }
    }

    @Test
    void theNearestListedNamesAreNamed() throws Exception {
        Finding finding = ExampleBook.clean()
                .plus("charges", "X1,sodium sulfte,additive,,,,,,0.5,g,99,,,,")
                .findings(folder, "material-unlisted")
                .get(0);
        assertTrue(
                Wording.POINT.of(finding.expected()).contains("Sodium sulfate, Sodium sulfite"),
                Wording.POINT.of(finding.expected()));
    }

    @Test
    void theHazardNotesSayThatNoneIsHeld() throws Exception {
        Review review = ExampleBook.clean().plus("charges", UNLISTED).review(folder);
        assertTrue(review.runs().get(0).hazards().stream()
                .map(HazardNote::subject)
                .anyMatch("no hazard note held for unobtainium dust"::equals));
    }

    @Test
    void everyDecisionAboutALayerItCanBeInSaysWhatIsNotJudged() throws Exception {
        Review review = ExampleBook.clean().plus("charges", UNLISTED).review(folder);
        List<LayerDecision> decisions = review.runs().get(0).decisions();
        assertTrue(!decisions.isEmpty());
        decisions.forEach(d ->
                assertEquals("not judged: reactivity of unobtainium dust", Wording.POINT.of(d.silence()), d.layer()));
    }

    /** The ending tells all that a row would; what else the name tells is asked about still. */
    @ParameterizedTest
    @CsvSource({
        "4-fluorophenylboronic acid, 0",
        "cyclohexylboronic acid pinacol ester, 0",
        "4-Fluorphenylboronsäure, 0",
        "methyl boronate, 0",
        "'10 % Pd/C, 50 % wet', 0",
        "3-azidophenylboronic acid azide, 1",
        "4-fluorophenyl trifluoroborate salt, 1"
    })
    void boronicAcidsAreToldByTheirEnding(String material, int asked) throws Exception {
        Review review = ExampleBook.clean()
                .plus("charges", "X1,\"" + material + "\",reagent,,,,1,g,1.0,g,,,,,")
                .review(folder);
        assertEquals(
                asked,
                review.findings().stream()
                        .filter(f -> f.code() == FindingCode.MATERIAL_UNLISTED)
                        .count());
    }

    @Test
    void aListedRunIsSilent() throws Exception {
        Review review = ExampleBook.clean().review(folder);
        review.runs().get(0).decisions().forEach(d -> assertEquals("", Wording.POINT.of(d.silence()), d.layer()));
        assertTrue(review.runs().get(0).hazards().stream()
                .noneMatch(note -> note.subject().startsWith("no hazard note")));
    }

    @Test
    void aMaterialOfALaterStepIsNoPartOfAnEarlierLayer() throws Exception {
        Review review = ExampleBook.clean()
                .with("workup", "X1,5,rinse,O4,ethyl acetate,1,5,,,0.902", "X1,5,rinse,O4,secret eluent,1,5,,,0.902")
                .review(folder);
        LayerDecision early = review.runs().get(0).decision("A1").orElseThrow();
        assertTrue(early.silence().isEmpty());
    }

    @Test
    void anOwnCompoundIsNamedOnceForTheRunAndIsNoFinding() throws Exception {
        ExampleBook book = ExampleBook.clean().plus("charges", "X1,ketone 7,substrate,C14H18O3,234.29,,,,0.1,g,99,,,,");
        Review review = book.review(folder);
        assertTrue(review.findings().stream().noneMatch(f -> f.code().word().equals("material-unlisted")));
        assertTrue(review.runs().get(0).hazards().stream()
                .map(HazardNote::subject)
                .anyMatch("own compounds: ketone 7"::equals));
    }

    @ParameterizedTest
    @CsvSource({
        "xyzol 80 %; ethanol 18 %, material-unlisted, no table knows 'xyzol'",
        "EDC 98 %, material-ambiguous, 'EDC' (run X1) is not certain",
        "heptane/EtOAc 98 %, material-ambiguous, 'heptane/EtOAc' (run X1) is a mixture"
    })
    void aPartOfACompositionThatIsNotKnownIsNamedAndTheStreamNotDecided(String composition, String code, String words)
            throws Exception {
        ExampleBook book = ExampleBook.clean().with("layers", "ethyl acetate 98 %", composition);
        Finding finding = book.findings(folder, code).get(0);
        String seen = Wording.POINT.of(finding.seen());
        assertTrue(seen.startsWith(words) && seen.endsWith("nor the stream of D1"), seen);
        WasteLine distillate = book.review(folder).runs().get(0).tally().waste().stream()
                .filter(line -> line.layer().equals("D1"))
                .findFirst()
                .orElseThrow();
        assertEquals("special", distillate.stream());
        assertTrue(distillate.why().contains("in its composition not understood"), distillate.why());
    }

    @Test
    void aLayerReadByVolumeHasNoMassWhereAPartOfItIsNotKnown() throws Exception {
        // Taken as water, its 53 mL would weigh about 51 g.
        Review review = ExampleBook.clean()
                .with("layers", "X1,D1,distillate,,,,,,48.15,ethyl acetate 98 %", "X1,D1,distillate,,,53,,,,xyzol 98 %")
                .review(folder);
        assertTrue(review.runs().get(0).tally().waste().stream()
                .filter(line -> line.layer().equals("D1"))
                .allMatch(line -> line.massGrams().isEmpty()));
    }

    @Test
    void anOwnCompoundInACompositionLeavesTheStreamDecided() throws Exception {
        Review review = ExampleBook.clean()
                .with("layers", "ethyl acetate 98 %", "ethyl acetate 90 %; acetanilide 8 %")
                .review(folder);
        assertTrue(review.runs().get(0).tally().waste().stream()
                .anyMatch(line -> line.layer().equals("D1") && line.stream().equals("non-halogenated-organic")));
    }

    @Test
    void aFormulaBesideAReagentDescribesItsMassOnly() throws Exception {
        Finding finding = ExampleBook.clean()
                .plus("charges", "X1,reagent Q,reagent,C14H18O3,234.29,,,,0.1,g,99,,,,")
                .findings(folder, "material-unlisted")
                .get(0);
        assertTrue(
                Wording.POINT.of(finding.seen()).contains("its formula gives its mass, not what it does"),
                Wording.POINT.of(finding.seen()));
    }

    @Test
    void aNameOfTwoMeaningsIsAskedBack() throws Exception {
        Finding finding = ExampleBook.clean()
                .plus("charges", "X1,DMS,reagent,,,,,,0.5,g,99,,,,")
                .findings(folder, "material-ambiguous")
                .get(0);
        assertTrue(Wording.POINT.of(finding.expected()).contains("Dimethyl sulfide")
                && Wording.POINT.of(finding.expected()).contains("Dimethyl sulfate"));
    }

    @Test
    void anAssayOfASolventFitsAnySample() throws Exception {
        assertTrue(ExampleBook.clean()
                .plus("assays", "X1,CR1,EtOAc,,NMR,0.5,% w/w,5,")
                .findings(folder, "assay-substance-unknown")
                .isEmpty());
    }

    @Test
    void anAssayThatFitsNothingNamesTheNearest() throws Exception {
        Finding finding = ExampleBook.clean()
                .plus("assays", "X1,A1,acetanilid,,HPLC,0.20,mg/mL,2.0,")
                .findings(folder, "assay-substance-unknown")
                .get(0);
        assertTrue(Wording.POINT.of(finding.expected()).contains("acetanilide"), Wording.POINT.of(finding.expected()));
    }

    private static ExampleBook container(String contents, String charge) {
        ExampleBook book = ExampleBook.clean()
                .table(
                        "containers",
                        "Container,Waste stream,Capacity (L),Tare (g),Gross then (g),Contents then,Opened\n"
                                + "W1,\"aqueous, neutral\",10,400,5400," + contents + ",2026-02-02\n")
                .table(
                        "transfers",
                        "Transfer,Run,Layer,Material,Container,Amount (g),Status\nT1,X1,A1,,W1,34.5,proposed\n");
        return charge.isEmpty() ? book : book.plus("charges", charge);
    }

    @Test
    void nothingFitsAContainerWithAContentThatNoTableKnows() throws Exception {
        Review review = container("water 4900 g; phlogiston salt 100 g", "").review(folder);
        assertEquals(
                1,
                review.findings().stream()
                        .filter(f -> f.code() == FindingCode.CONTAINER_CONTENT_UNKNOWN)
                        .count());
        ProposalLine line = ProposalLine.of(review).get(0);
        assertEquals(ProposalLine.Group.ASK, line.group());
        assertTrue(line.reasons().contains("what the container holds is not known"), () -> "" + line.reasons());
    }

    /** Common practice: what a wash has left of a sulfonyl chloride stands in that water already. */
    @Test
    void whatStandsInWaterMeetsNothingNewInTheWaterOfAContainer() throws Exception {
        String chloride = "X1,4-toluenesulfonyl chloride,reagent,,,,,,0.5,g,99,,,,";
        assertTrue(container("water 5000 g", chloride)
                .findings(folder, "proposal-incompatible")
                .isEmpty());
    }
}
