package workuptally.book.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.model.Charge;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/** A row of Charges that was left out stands for something charged, under no name. */
class UnreadChargeTest {
    private static SmallBook nameless() {
        return SmallBook.reaction().row("charges", "Material", "", "Actual amount", "5.0", "Actual unit", "g");
    }

    @Test
    void chargeWithoutANameIsOneThatWasLeftOut() {
        List<Charge> charges = nameless().run().charges();
        assertEquals(Charge.Reading.READ, charges.get(0).reading());
        assertEquals(Charge.Reading.LEFT_OUT, charges.get(1).reading());
        assertTrue(nameless().tally().theory().isEmpty());
    }

    @Test
    void whatStandsForItIsNoNameThatAnybodyCanType() {
        String words = nameless().run().charges().get(1).material();
        SmallBook typed = SmallBook.reaction()
                .row("charges", "Material", words, "Actual amount", "5.0", "Actual unit", "g")
                .but("charges", "Role", "reagent");
        Charge charge = typed.run().charges().get(1);
        assertEquals(Charge.Reading.READ, charge.reading());
        assertFalse(charge.material().equals(words), words);
    }

    @Test
    void nobodyIsAskedWhatTheRowMeantTwice() {
        Review review = nameless().review();
        assertTrue(review.findings().stream()
                .noneMatch(f ->
                        f.code() == FindingCode.MATERIAL_UNLISTED && f.place().row() == 3));
        assertTrue(review.findings().stream().anyMatch(f -> f.place().row() == 3 && f.severity() == Severity.STOP));
    }
}
