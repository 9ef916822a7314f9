package workuptally.report.view.firstpage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.report.view.wording.Wording;

class NextMeasurementTest {
    /** 99 of 100 mmol S and of 120 mmol N were found: 21 of 120 mmol N, 4.2 g as P, are no product, since P lacks 1 mmol of S. */
    @Test
    void partnerInExcessLacksNoProductBeyondTheBalanceOnTheSubstrate() {
        List<NextMeasurement> ofPartner = ofN("19.80");
        assertEquals(1, ofPartner.size(), ofPartner::toString);
        assertTrue(ofPartner.get(0).settles().endsWith("g P is missing by that on S"), ofPartner.get(0)::settles);
        assertTrue(ofPartner.get(0).grams() < 1, ofPartner::toString);
    }

    /** Of S, 30 mmol are missing as well: what the balance on N lacks is mostly product. */
    @Test
    void partnerInExcessIsAskedForBesideProductThatTheSubstrateLacks() {
        assertTrue(
                ofN("14.00").stream().allMatch(n -> n.grams() > 3),
                () -> ofN("14.00").toString());
    }

    private static SmallBook book(String lotGrams) {
        return SmallBook.reaction()
                .first("products", "Skeleton", "S; N")
                .row("charges", "Material", "N", "Role", "reagent", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Actual amount", "12.00")
                .but("charges", "Actual unit", "g")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "0.02", "Unit", "g")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", lotGrams, "Assay", "100")
                .but("isolated", "Relative standard uncertainty", "1");
    }

    private static List<NextMeasurement> ofN(String lotGrams) {
        return NextMeasurement.of(book(lotGrams).review(), Wording.POINT).stream()
                .filter(n -> n.test().endsWith(" for N"))
                .toList();
    }
}
