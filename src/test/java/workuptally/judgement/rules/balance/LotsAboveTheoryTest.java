package workuptally.judgement.rules.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;

/** Theory is 20.00 g; conservation of mass on invented weighings. */
class LotsAboveTheoryTest {
    private static SmallBook lot(SmallBook book, String label, String stage, String net, String assay) {
        return book.row(
                "isolated", "Lot", label, "Product", "P", "Stage", stage, "From", "RM", "Net", net, "Assay", assay);
    }

    private static List<Finding> told(SmallBook book) {
        return book.review().findings().stream()
                .filter(f -> f.code() == FindingCode.LOT_ABOVE_THEORY)
                .toList();
    }

    private static List<FindingCode> codes(SmallBook book) {
        return book.review().findings().stream().map(Finding::code).toList();
    }

    /** 26.00 g of 20.00 g: 130 %, of which 30/130 = 23.1 % is something else at least. */
    @Test
    void aPurifiedLotWithoutAnAssayIsNotMoreThanTheory() {
        List<Finding> said = told(lot(SmallBook.reaction(), "P1", "purified", "26.00", ""));
        assertEquals(1, said.size());
        assertTrue(
                said.get(0).place().inWords().endsWith(", Net"),
                said.get(0).place().inWords());
        String words = Wording.POINT.of(said.get(0).seen());
        assertTrue(words.contains("130.0") && words.contains("at least 23.1 % of it is not P"), words);
    }

    @Test
    void cropsAreAddedUp() {
        SmallBook crops = lot(lot(SmallBook.reaction(), "C1", "crop", "15.00", ""), "C2", "crop", "9.00", "");
        assertTrue(Wording.POINT.of(told(crops).get(0).seen()).startsWith("lots C1, C2 "));
    }

    @Test
    void whatAnotherFindingTellsIsNotToldTwice() {
        assertEquals(List.of(), told(lot(SmallBook.reaction(), "P1", "purified", "19.90", "")));
        SmallBook assayed = lot(SmallBook.reaction(), "P1", "purified", "26.00", "99");
        assertEquals(List.of(), told(assayed));
        assertTrue(codes(assayed).contains(FindingCode.YIELD_ABOVE_100));
        SmallBook crude = lot(SmallBook.reaction(), "C1", "crude", "26.00", "");
        assertEquals(List.of(), told(crude));
        assertTrue(codes(crude).contains(FindingCode.CRUDE_ABOVE_THEORY));
        SmallBook ofCrude = lot(lot(SmallBook.reaction(), "C1", "crude", "19.00", "95"), "P1", "purified", "23.17", "")
                .but("isolated", "From", "C1");
        assertEquals(List.of(), told(ofCrude));
        assertTrue(codes(ofCrude).contains(FindingCode.PURIFIED_EXCEEDS_SOURCE));
    }

    /** A crude that is above theory as well: both are wet, and the purified lot is no more than the crude. */
    @Test
    void aWetLotOfAWetCrudeIsToldOf() {
        SmallBook both = lot(lot(SmallBook.reaction(), "C1", "crude", "30.00", ""), "P1", "purified", "26.00", "")
                .but("isolated", "From", "C1");
        assertEquals(1, told(both).size());
    }

    /** Nothing is missing where there is too much: no residue to look for. */
    @Test
    void nothingIsLookedForWhereThereIsTooMuch() {
        assertEquals(
                List.of(),
                lot(SmallBook.reaction(), "P1", "purified", "26.00", "")
                        .tally()
                        .closures()
                        .get(0)
                        .candidates());
        assertTrue(
                lot(SmallBook.reaction(), "P1", "purified", "19.90", "").tally().closures().get(0).candidates().stream()
                        .anyMatch(c -> c.settledBy().contains("residue")));
    }
}
