package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Field.Entered;

class TareRegisterTest {
    private static final TareRegister REGISTER = new TareRegister(SmallBook.empty()
            .row("vessels", "Vessel", "F-1", "Date", "2026-03-05", "Clean dry tare", "84.20")
            .row("vessels", "Vessel", "F-2", "Date", "2026-01-05", "Clean dry tare", "60.00")
            .row("vessels", "Vessel", "f-1", "Date", "2026-02-05", "Clean dry tare", "84.10")
            .row("vessels", "Vessel", "F-1", "Date", "", "Clean dry tare", "84.00")
            .book()
            .vesselTares());

    @Test
    void theLatestTareOfAVesselStandsLastAndUndatedOnesFirst() {
        assertEquals(
                List.of(84.00, 84.10, 84.20),
                REGISTER.of("F-1").stream().map(Entered::value).toList());
        assertEquals(84.20, REGISTER.latest(" F-1 ").orElseThrow().value(), 0);
    }

    @Test
    void aVesselThatIsNotThereHasNone() {
        assertEquals(List.of(), REGISTER.of("F-9"));
        assertTrue(REGISTER.latest("F-9").isEmpty());
        assertEquals(List.of(), REGISTER.of(" "));
    }

    @Test
    void aMassIsOfAnotherVesselWithinATolerance() {
        assertTrue(REGISTER.isOfAnother("F-1", 60.05, 0.0500001));
        assertFalse(REGISTER.isOfAnother("F-1", 60.05, 0.0499999));
        assertFalse(REGISTER.isOfAnother("F-2", 60.00, 0.05));
        assertFalse(REGISTER.isOfAnother("f-1 ", 84.10, 0.05));
        assertTrue(REGISTER.isOfAnother("", 84.10, 0.05));
    }

    @Test
    void allTaresAreOneList() {
        assertEquals(84.00 + 84.10 + 84.20 + 60.00, REGISTER.all().sum(), 1e-9);
    }
}
