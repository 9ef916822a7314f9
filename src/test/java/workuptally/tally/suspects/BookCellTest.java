package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import workuptally.model.RowPlace;
import workuptally.model.TablePlace;

/** Which cell is which, also where one row of a list holds a substrate and a solvent. */
class BookCellTest {
    private static RowPlace row(int column, String heading) {
        TablePlace table = new TablePlace(
                "list.csv", "list", false, Map.of("Actual amount", column), Map.of("Actual amount", heading));
        return new RowPlace(table, 43, 43);
    }

    @Test
    void amountsOfTwoChargesInOneRowAreTwoCells() {
        BookCell volume = new BookCell(row(8, "Volume (mL)"), "Actual amount");
        assertTrue(volume.isIn(row(5, "mg")));
        assertFalse(volume.is(row(5, "mg"), "Actual amount"));
        assertTrue(volume.is(row(8, "Volume (mL)"), "Actual amount"));
    }
}
