package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/** 100 mL of ethyl acetate with 10.00 g S, a solid that no fill counts, shaken with 60 mL of water. */
class ContactAccountTest {
    @Test
    void fillIsTheSumOfTheVolumesOverTheFunnel() {
        // (100 + 60) mL / 250 mL = 64 %, within two thirds: one load.
        Contact contact = contacts(washed("250")).get(0);
        assertEquals(160, contact.volumeMillilitres(), 0.01);
        assertEquals(64, contact.fillPercent(), 0.01);
        assertEquals(200.0 / 3, contact.fillLimitPercent(), 1e-9);
        assertEquals(1, contact.loadsNeeded());
        assertTrue(contact.funnelRecorded());
    }

    @Test
    void overfullFunnelNeedsMoreLoads() {
        // 160 mL / (2/3 × 100 mL) = 2.4: three loads.
        Contact contact = contacts(washed("100")).get(0);
        assertEquals(160, contact.fillPercent(), 0.01);
        assertEquals(3, contact.loadsNeeded());
    }

    @Test
    void loadsShareTheVolume() {
        // 160 mL in two loads of 80 mL in 125 mL: 64 %.
        Contact contact = contacts(washed("125").but("workup", "Loads", "2")).get(0);
        assertEquals(64, contact.fillPercent(), 0.01);
        assertEquals(2, contact.loads());
    }

    @Test
    void smallestFunnelThatFitsIsNamedWhereNoneIsRecorded() {
        // 160 mL needs 240 mL nominal at two thirds: 250 mL of the usual 25, 50, 100, 250, 500 mL.
        Contact contact = contacts(washed("")).get(0);
        assertEquals(250, contact.funnelMillilitres(), 1e-9);
        assertFalse(contact.funnelRecorded());
    }

    @Test
    void aQuenchInANamedFunnelHasToFitIntoIt() {
        // all that was charged, 100 mL of it solvent, and 60 mL in 100 mL; without a funnel the quench is made in an
        // open flask
        Contact contact = contacts(quenched("100")).get(0);
        assertEquals(160, contact.fillPercent(), 0.01);
        assertEquals(
                220,
                contacts(quenched("100").but("workup", "Portions", "2")).get(0).volumeMillilitres(),
                0.01);
        assertEquals(List.of(), contacts(quenched("")));
        assertEquals(List.of(), contacts(quenched("100").but("workup", "Volume", "")));
    }

    @Test
    void everyPortionIsAShakeOfItsOwn() {
        List<Contact> contacts = contacts(washed("500").but("workup", "Portions", "2"));
        assertEquals(List.of(1, 2), contacts.stream().map(Contact::portion).toList());
    }

    @Test
    void measuredVolumeOfTheLayerGoesBeforeTheEstimate() {
        // O1 measured 110 mL: 110 + 60 = 170 mL in the second wash.
        SmallBook book = washed("500")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "60")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "110", "Net", "99.00");
        assertEquals(170, contacts(book).get(1).volumeMillilitres(), 1e-9);
    }

    @Test
    void gasHalvesTheFill() {
        // 5 mmol of acid is found in the bicarbonate layer: gas is expected, and 160 mL / (0.5 × 250 mL) = 1.28: two
        // loads.
        SmallBook book = washed("250")
                .but("workup", "Material", "sat. NaHCO3")
                .but("products", "Character", "acid")
                .but("products", "pKa", "4.2")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "60", "Net", "63.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "5", "Unit", "mmol");
        Contact contact = contacts(book).get(0);
        assertTrue(contact.gasExpected());
        assertEquals(50, contact.fillLimitPercent(), 1e-9);
        assertEquals(2, contact.loadsNeeded());
    }

    @Test
    void fullToTheLimitIsOneLoad() {
        // 160 mL is two thirds of 240 mL; a millilitre more is not
        assertEquals(1, contacts(washed("240")).get(0).loadsNeeded());
        assertEquals(
                2, contacts(washed("240").but("workup", "Volume", "61")).get(0).loadsNeeded());
    }

    @Test
    void funnelThatIsNotRecordedTakesOneLoad() {
        // 160 mL in four loads of 40 mL: 60 mL nominal, 100 mL of the usual ones
        Contact contact = contacts(washed("").but("workup", "Loads", "4")).get(0);
        assertEquals(100, contact.funnelMillilitres(), 1e-9);
        assertEquals(40, contact.fillPercent(), 0.01);
        // 100 + 105 mL at half with gas ask for 410 mL: 500 mL; 100 + 150 mL fill that to the limit, 1 mL more asks for
        // 1000
        assertEquals(500, contacts(gas("", "105")).get(0).funnelMillilitres(), 1e-9);
        assertEquals(500, contacts(gas("", "150")).get(0).funnelMillilitres(), 1e-9);
        assertEquals(1000, contacts(gas("", "151")).get(0).funnelMillilitres(), 1e-9);
    }

    @Test
    void whereNoFunnelFitsItIsTheLargest() {
        // 4100 mL at two thirds would take 6150 mL
        assertEquals(
                5000,
                contacts(washed("").but("workup", "Volume", "4000")).get(0).funnelMillilitres(),
                1e-9);
    }

    @Test
    void gasIsThatOfItsStepInLitresOfTheRoom() {
        // 5 mmol × 24.0551 L/mol at 20 °C and 101.325 kPa; nothing was charged that could give more
        SmallBook book = gas("500", "60")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "60")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2");
        List<Contact> contacts = contacts(book);
        assertTrue(contacts.get(0).gasExpected());
        assertEquals(0.120276, contacts.get(0).gasLitresExpected().orElseThrow(), 1e-5);
        assertEquals(0.120276, contacts.get(0).gasLitresWorst().orElseThrow(), 1e-5);
        assertFalse(contacts.get(1).gasExpected());
        assertTrue(contacts.get(1).gasLitresExpected().isEmpty());
        assertTrue(contacts.get(1).gasLitresWorst().isEmpty());
        assertEquals(200.0 / 3, contacts.get(1).fillLimitPercent(), 1e-9);
    }

    @Test
    void neutralisationWithoutGasKeepsTheUsualLimit() {
        Contact contact =
                contacts(gas("500", "60").but("workup", "Material", "1 M NaOH")).get(0);
        assertFalse(contact.gasExpected());
        assertEquals(200.0 / 3, contact.fillLimitPercent(), 1e-9);
    }

    /** 5 mmol of the acid P are found in the hydrogencarbonate that was shaken with 100 mL of ethyl acetate. */
    private static SmallBook gas(String funnel, String millilitres) {
        return washed(funnel)
                .but("workup", "Material", "sat. NaHCO3")
                .but("workup", "Volume", millilitres)
                .but("products", "Character", "acid")
                .but("products", "pKa", "4.2")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "60", "Net", "63.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "5", "Unit", "mmol");
    }

    private static SmallBook quenched(String funnel) {
        return washed(funnel)
                .but("workup", "Operation", "quench")
                .but("workup", "Gives organic", "")
                .but("workup", "Gives aqueous", "")
                .but("workup", "Gives other", "RM");
    }

    private static List<Contact> contacts(SmallBook book) {
        return book.tally().contacts();
    }

    private static SmallBook washed(String funnel) {
        return SmallBook.reaction()
                .row(
                        "charges",
                        "Material",
                        "ethyl acetate",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "100",
                        "Actual unit",
                        "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "60")
                .but("workup", "Funnel", funnel)
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
    }
}
