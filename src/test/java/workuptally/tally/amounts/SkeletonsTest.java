package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Run;

class SkeletonsTest {
    @Test
    void blankSkeletonIsOneUnitOfTheSubstrate() {
        Skeletons skeletons = of(SmallBook.reaction());
        assertEquals(List.of("S"), skeletons.partners());
        assertEquals(1, skeletons.units("P", "S"), 1e-12);
    }

    @Test
    void everyPartnerNamedHasItsUnits() {
        Skeletons skeletons = of(SmallBook.reaction().but("products", "Skeleton", "S 1; R 2"));
        assertEquals(List.of("S", "R"), skeletons.partners());
        assertEquals(2, skeletons.units("P", "R"), 1e-12);
    }

    @Test
    void partnerHoldsOneUnitOfItself() {
        assertEquals(1, of(SmallBook.reaction()).units("s", "S"), 1e-12);
    }

    @Test
    void substanceOfWhichNothingIsKnownHoldsNone() {
        assertEquals(0, of(SmallBook.reaction()).units("tar", "S"), 1e-12);
    }

    @Test
    void amountChargedIsTheSumOfItsRows() {
        // 100 mmol + 20 mmol.
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "S", "Molar mass", "100", "Actual amount", "2.00", "Actual unit", "g");
        assertEquals(120, of(book).chargedMillimoles("S").orElseThrow().value(), 1e-9);
    }

    @Test
    void amountChargedIsNotKnownWhereOneOfItsRowsIsNot() {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "S", "Molar mass", "100", "Actual amount", "", "Actual unit", "g");
        assertTrue(of(book).chargedMillimoles("S").isEmpty());
    }

    @Test
    void componentOfASeparationIsItsOwnPartner() {
        SmallBook book = SmallBook.empty()
                .but("runs", "Kind", "separation")
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200")
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150");
        assertEquals(List.of("P", "Q"), of(book).partners());
    }

    private static Skeletons of(SmallBook book) {
        Run run = book.run();
        return new Skeletons(run, book.tally().amounts());
    }
}
