package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Skeletons;

/** 100 mmol of S, 20.0 g of P in theory, and a by-product D of two S. */
class ContentSharesTest {
    private static OptionalDouble percent(String substance, Double grams, Double millimoles) {
        RunTally tally = SmallBook.reaction()
                .row("products", "Product", "D", "Wanted", "no", "Molar mass", "300", "Skeleton", "S 2")
                .tally();
        ContentShares shares = new ContentShares(tally.theory(), new Skeletons(tally.run(), tally.amounts()), 0.5);
        Content content = new Content(
                substance,
                Content.Kind.MEASURED,
                Optional.ofNullable(grams).map(FollowedRun::exactly),
                Optional.ofNullable(millimoles).map(FollowedRun::exactly),
                OptionalDouble.of(7),
                OptionalDouble.empty(),
                "HPLC");
        Content with = shares.of(List.of(content)).get(0);
        assertEquals(OptionalDouble.of(7), with.upperBoundGrams());
        assertEquals(content.massGrams(), with.massGrams());
        assertEquals(substance, with.substance());
        return with.percentOf();
    }

    @Test
    void aWantedProductIsAPartOfTheory() {
        assertEquals(25, percent("p", 5.0, 25.0).orElseThrow(), 1e-9);
    }

    @Test
    void anotherSubstanceIsAPartOfWhatWasCharged() {
        // 10 mmol of D bind 20 of 100 mmol of S
        assertEquals(20, percent("D", 3.0, 10.0).orElseThrow(), 1e-9);
        assertEquals(4, percent("S", 0.4, 4.0).orElseThrow(), 1e-9);
    }

    @Test
    void withoutAmountOrPartnerThereIsNoShare() {
        assertTrue(percent("D", 3.0, null).isEmpty());
        assertTrue(percent("Q", 3.0, 10.0).isEmpty());
        assertTrue(percent("P", null, null).isEmpty());
    }

    /** A quarter of the layer limit of 2 % is 0.5 % of 20.0 g, 0.10 g: below it the larger of two readings counts, and nobody need choose. */
    @ParameterizedTest
    @CsvSource({
        "0.010, 0.012, READINGS_APART",
        "0.010, 0.090, READINGS_APART",
        "0.010, 0.110, DISPUTED_READINGS",
        "0.010, 0.0101, OWN_READING"
    })
    void readingsFarBelowTheLimitAreNoDispute(String hplc, String gc, Content.Rests rests) {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "From", "O1", "Net", "19.8", "Assay", "100")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", hplc, "Unit", "g")
                .but("assays", "Relative standard uncertainty", "2")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "GC", "Result", gc, "Unit", "g")
                .but("assays", "Relative standard uncertainty", "2");
        RunReview run = book.reviewOfRun();
        Content content = run.tally().layer("A1").orElseThrow().contents().get(0);
        assertEquals(rests, content.rests());
        assertEquals(rests != Content.Rests.DISPUTED_READINGS, content.isOwnEvidence());
        if (rests == Content.Rests.READINGS_APART) {
            assertEquals(
                    Double.parseDouble(gc), content.massGrams().orElseThrow().value(), 1e-12);
            assertTrue(run.findings().stream()
                    .filter(f -> f.code() == FindingCode.COMPONENT_COUNTED_TWICE)
                    .anyMatch(f -> Wording.POINT.of(f.seen()).endsWith("the larger counts")));
        }
        assertEquals(
                rests == Content.Rests.DISPUTED_READINGS,
                run.findings().stream().anyMatch(f -> f.code() == FindingCode.ASSAYS_DISAGREE));
    }

    @Test
    void aPartnerOfWhichNothingWasChargedGivesNone() {
        RunTally tally =
                SmallBook.reaction().but("charges", "Actual amount", "").tally();
        ContentShares shares = new ContentShares(tally.theory(), new Skeletons(tally.run(), tally.amounts()), 0.5);
        Content content = new Content(
                "S",
                Content.Kind.MEASURED,
                Optional.of(FollowedRun.exactly(1)),
                Optional.of(FollowedRun.exactly(10)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "");
        assertTrue(shares.of(List.of(content)).get(0).percentOf().isEmpty());
    }
}
