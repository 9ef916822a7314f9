package workuptally.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.DemoReview;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/** The invented demo week raises the stops that its authors planted, and no other. */
class DemoWeekFindingsTest {
    private static Review review;

    @BeforeAll
    static void reviewTheWeek() throws Exception {
        review = DemoReview.review();
    }

    /** Of the runs; what belongs to containers and proposals is checked beside their figures. */
    private static Set<String> runsAndCodes(Severity severity) {
        Set<String> found = new TreeSet<>();
        review.findings().stream()
                .filter(f -> f.severity() == severity && !f.run().isEmpty())
                .forEach(f -> found.add(f.run() + " " + f.code().word()));
        return found;
    }

    @Test
    void stopsAreThePlantedOnesAndNoOther() {
        assertEquals(
                Set.of(
                        "R26-044 molar-mass-mismatch",
                        "R26-045 layers-swapped",
                        "R26-047 tare-missing",
                        "R26-049 funnel-overfull",
                        "R26-049 wash-too-small",
                        "R26-053 materials-must-not-meet"),
                runsAndCodes(Severity.STOP));
    }

    /** Azide into dichloromethane, and into the acid of the wash: both are told before anything is weighed. */
    @Test
    void planThatBringsAzideToDichloromethaneAndAcidIsStopped() {
        List<String> seen = review.findings().stream()
                .filter(f -> f.run().equals("R26-053") && f.code().word().equals("materials-must-not-meet"))
                .map(f -> Wording.POINT.of(f.seen()))
                .toList();
        assertTrue(
                seen.stream().anyMatch(s -> s.contains("sodium azide") && s.contains("dichloromethane")),
                seen::toString);
        assertTrue(seen.stream().anyMatch(s -> s.contains("sodium azide") && s.contains("HCl")), seen::toString);
    }

    @Test
    void whatNoTableKnowsIsSaidOnce() {
        List<String> seen = review.findings().stream()
                .filter(f -> f.code().word().equals("material-unlisted"))
                .map(f -> Wording.POINT.of(f.seen()))
                .toList();
        assertEquals(1, seen.size(), seen::toString);
        assertTrue(seen.get(0).contains("transfer salt PT-9"), seen::toString);
    }

    @Test
    void holdsOfTheRecordAreTheRagLayerAlone() {
        Set<String> holds = runsAndCodes(Severity.HOLD);
        holds.removeIf(h -> h.endsWith("layer-holds-product") || h.endsWith("layer-waits"));
        assertEquals(Set.of("R26-048 rag-not-assayed"), holds);
    }

    @ParameterizedTest
    @CsvSource({
        "R26-041, mass-gap-large, NOTE",
        "R26-042, closure-open, NOTE",
        "R26-042, product-on-cake, NOTE",
        "R26-042, mass-gap-large, NOTE",
        "R26-043, titre-differs, NOTE",
        "R26-043, crude-not-a-yield, CHECK",
        "R26-043, mass-gap-large, NOTE",
        "R26-044, mass-gap-large, NOTE",
        "R26-046, crude-above-theory, CHECK",
        "R26-046, mass-gap-large, NOTE",
        "R26-048, record-corrected, NOTE",
        "R26-051, aliquots-taken, NOTE",
        "R26-051, mass-gap-large, NOTE",
        "R26-052, mass-gap-large, NOTE"
    })
    void plantedCheckOrNoteIsRaised(String run, String code, Severity severity) {
        List<Severity> raised = review.findings().stream()
                .filter(f -> f.run().equals(run) && f.code().word().equals(code))
                .map(Finding::severity)
                .toList();
        assertTrue(raised.contains(severity), () -> run + " " + code + " " + raised);
    }

    @Test
    void onlyRunsBeyondTheirEvaporationAllowanceAreNoted() {
        Set<String> noted = new TreeSet<>();
        review.findings().stream()
                .filter(f -> f.code().word().equals("mass-gap-large"))
                .forEach(f -> noted.add(f.run()));
        assertEquals(Set.of("R26-041", "R26-042", "R26-043", "R26-044", "R26-046", "R26-051", "R26-052"), noted);
    }

    @Test
    void theChartOfTheRepeatedPreparationDoesNotSignal() {
        assertTrue(review.findings().stream().noneMatch(f -> f.code().word().equals("series-out-of-control")));
    }

    @Test
    void theRegisterTareIsOfferedAsAnEstimateAndNothingIsComputedFromIt() {
        Finding tare = review.findings().stream()
                .filter(f -> f.code().word().equals("tare-missing"))
                .findFirst()
                .orElseThrow();
        assertTrue(
                Wording.POINT.of(tare.action()).contains("Estimate only")
                        && Wording.POINT.of(tare.action()).contains("3.824 g"),
                tare::toString);
        assertTrue(review.runs().stream()
                .filter(r -> r.id().equals("R26-047"))
                .allMatch(r -> r.tally().yields().isEmpty()));
    }

    @Test
    void noFindingTellsAnybodyToLetALayerGo() {
        for (Finding finding : review.findings()) {
            String text = (Wording.POINT.of(finding.seen())
                            + Wording.POINT.of(finding.expected())
                            + Wording.POINT.of(finding.action()))
                    .toLowerCase(Locale.ROOT);
            assertTrue(
                    Stream.of("discard", "dispose", "throw away", "safe to", "bin it")
                            .noneMatch(text::contains),
                    finding::toString);
        }
    }
}
