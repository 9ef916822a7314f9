package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.tally.RunTally;

class NetMassTest {
    @Test
    void netIsGrossLessTare() {
        // 50.00 g − 32.00 g = 18.00 g; two decimals: u = 0.02 g.
        MeasuredValue net = net("Gross", "50.00", "Tare", "32.00").orElseThrow();
        assertEquals(18.00, net.value(), 1e-9);
        assertEquals(0.02, net.standardUncertainty(), 1e-12);
    }

    @Test
    void finerReadingOfThePairDecidesTheUncertainty() {
        // Trailing zeros get lost in a workbook: 50.1 may have been 50.1000. Four decimals: u = 0.0005 g.
        MeasuredValue net = net("Gross", "50.1", "Tare", "32.0012").orElseThrow();
        assertEquals(0.0005, net.standardUncertainty(), 1e-12);
    }

    @Test
    void grossEnteredAsAboutWidensTheNetMass() {
        // 5 % of 50 g = 2.5 g, however fine the tare.
        MeasuredValue net = net("Gross", "ca. 50", "Tare", "32.0012").orElseThrow();
        assertEquals(2.5, net.standardUncertainty(), 1e-9);
    }

    @Test
    void netMassIsTakenAsTyped() {
        assertEquals(17.5, net("Net", "17.5").orElseThrow().value(), 1e-9);
    }

    @Test
    void blankTareLeavesNetMassUncomputed() {
        RunTally tally = tally("Gross", "50.00");
        assertTrue(tally.lots().get(0).netGrams().isEmpty());
        assertTrue(tally.notComputed()
                .contains(new NotComputed("mass of lot C1", "tare not recorded", "Tare of lot C1 in Isolated")));
    }

    @Test
    void grossBelowTareLeavesNetMassUncomputed() {
        RunTally tally = tally("Gross", "31.00", "Tare", "32.00");
        assertTrue(tally.lots().get(0).netGrams().isEmpty());
        assertEquals("mass of lot C1", tally.notComputed().get(0).what());
    }

    @Test
    void unreadableTareLeavesNetMassUncomputed() {
        RunTally tally = tally("Gross", "50.00", "Tare", "smudged");
        assertTrue(tally.lots().get(0).netGrams().isEmpty());
        assertEquals("a weighing cannot be read", tally.notComputed().get(0).because());
    }

    private static Optional<MeasuredValue> net(String... weighing) {
        return tally(weighing).lots().get(0).netGrams();
    }

    private static RunTally tally(String... weighing) {
        SmallBook book = SmallBook.reaction().row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude");
        for (int i = 0; i < weighing.length; i += 2) {
            book.but("isolated", weighing[i], weighing[i + 1]);
        }
        return book.tally();
    }
}
