package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Skeletons;

/** 100 mmol of S, 20.0 g of P in theory, and a by-product D of two S. */
class ContentSharesTest {
    private static OptionalDouble percent(String substance, Double grams, Double millimoles) {
        RunTally tally = SmallBook.reaction()
                .row("products", "Product", "D", "Wanted", "no", "Molar mass", "300", "Skeleton", "S 2")
                .tally();
        ContentShares shares = new ContentShares(tally.theory(), new Skeletons(tally.run(), tally.amounts()));
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

    @Test
    void aPartnerOfWhichNothingWasChargedGivesNone() {
        RunTally tally =
                SmallBook.reaction().but("charges", "Actual amount", "").tally();
        ContentShares shares = new ContentShares(tally.theory(), new Skeletons(tally.run(), tally.amounts()));
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
