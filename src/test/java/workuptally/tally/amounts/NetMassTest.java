package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Limits;
import workuptally.model.Lot;
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

    @Test
    void emptyVesselHoldsNothing() {
        assertEquals(0, net("Gross", "32.00", "Tare", "32.00").orElseThrow().value(), 0);
    }

    @ParameterizedTest
    @CsvSource({
        "'', '', '', not weighed",
        "'', 32.00, '', gross not recorded",
        "50.00, '', '', tare not recorded",
        // the reader says why, and keeps neither
        "31.00, 32.00, '', a weighing cannot be read",
        "smudged, 32.00, '', a weighing cannot be read",
        "50.00, smudged, '', a weighing cannot be read",
        "'', '', smudged, a weighing cannot be read"
    })
    void whatIsMissingIsSaid(String gross, String tare, String net, String because) {
        Lot lot = lot(gross, tare, net);
        assertEquals(
                because,
                NetMass.whyMissing(
                        lot.weighing().grossGrams(),
                        lot.weighing().tareGrams(),
                        lot.weighing().netGrams()));
    }

    @Test
    void anotherTareThatIsAboveTheGrossLeavesNothing() {
        Lot light = lot("31.00", "30.00", "");
        Lot heavy = lot("50.00", "32.00", "");
        assertEquals(
                "gross is below tare",
                NetMass.whyMissing(
                        light.weighing().grossGrams(),
                        heavy.weighing().tareGrams(),
                        light.weighing().netGrams()));
        assertEquals(
                Optional.empty(),
                new NetMass(new Readings(), new InstrumentUncertainty(Limits.defaults()))
                        .of(
                                "C1",
                                light.weighing().grossGrams(),
                                heavy.weighing().tareGrams(),
                                light.weighing().netGrams()));
    }

    @ParameterizedTest
    @CsvSource({"50.00, '', true", "50.00, 32.00, false", "50.00, smudged, false", "'', '', false"})
    void grossMayWaitForItsTareAlone(String gross, String tare, boolean waits) {
        Lot lot = lot(gross, tare, "");
        assertEquals(
                waits,
                NetMass.lacksOnlyTheTare(
                        lot.weighing().grossGrams(), lot.weighing().tareGrams()));
    }

    @Test
    void readingsNameTheirCells() {
        assertEquals("isolated.csv line 2, Gross, line 2, Tare", place(net("Gross", "50.00", "Tare", "32.00")));
        assertEquals("isolated.csv line 2, Net", place(net("Net", "17.5")));
    }

    private static String place(Optional<MeasuredValue> mass) {
        return mass.orElseThrow().budget().get(0).reading().source().get();
    }

    private static Lot lot(String gross, String tare, String net) {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Gross", gross, "Tare", tare, "Net", net)
                .but("isolated", "Stated yield", "80")
                .run()
                .lots()
                .get(0);
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
