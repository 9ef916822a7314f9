package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static workuptally.tally.suspects.TypedCells.entry;
import static workuptally.tally.suspects.TypedCells.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.tally.suspects.Entry.Sort;

class EntryTest {
    private static final Entry GROSS = entry(Sort.GROSS, "120.00", row("layers", 4), "Gross");
    private static final Entry TARE = entry(Sort.TARE, "70.00", row("layers", 4), "Tare");

    @ParameterizedTest
    @CsvSource({
        "PERCENT, 0, false",
        "PERCENT, 102, true",
        "PERCENT, 102.1, false",
        "DENSITY, 0.5, false",
        "DENSITY, 0.51, true",
        "DENSITY, 3.5, true",
        "DENSITY, 3.6, false",
        "STRENGTH, 25.1, false",
        "MOLAR_MASS, 1, false",
        "MOLAR_MASS, 1.008, true"
    })
    void aKindOfFigureHasARange(Sort sort, double value, boolean allowed) {
        assertEquals(allowed, sort.allows(value));
    }

    @Test
    void massesAndVolumesComeInUnitsAThousandApart() {
        assertEquals(
                List.of(Sort.AMOUNT, Sort.LIQUID, Sort.GROSS, Sort.TARE, Sort.NET, Sort.VOLUME),
                List.of(Sort.values()).stream().filter(Sort::hasUnits).toList());
    }

    @Test
    void grossAndTareOfOneRowAreOneWeighing() {
        assertTrue(GROSS.isOneWeighingWith(TARE));
        assertTrue(TARE.isOneWeighingWith(GROSS));
        assertFalse(GROSS.isOneWeighingWith(GROSS));
        assertFalse(GROSS.isOneWeighingWith(entry(Sort.TARE, "70.00", row("layers", 5), "Tare")));
        assertFalse(GROSS.isOneWeighingWith(entry(Sort.TARE, "70.00", row("isolated", 4), "Tare")));
        assertFalse(GROSS.isOneWeighingWith(entry(Sort.NET, "50.00", row("layers", 4), "Net")));
        assertFalse(entry(Sort.NET, "50.00", row("layers", 4), "Net").isOneWeighingWith(GROSS));
    }

    @Test
    void theRowsAboveAndBelowAreNeighboursInOneColumnOfOneSheet() {
        assertTrue(GROSS.isNeighbourOf(entry(Sort.GROSS, "1", row("layers", 3), "Gross")));
        assertTrue(GROSS.isNeighbourOf(entry(Sort.GROSS, "1", row("layers", 5), "Gross")));
        assertFalse(GROSS.isNeighbourOf(entry(Sort.GROSS, "1", row("layers", 6), "Gross")));
        assertFalse(GROSS.isNeighbourOf(entry(Sort.GROSS, "1", row("isolated", 5), "Gross")));
        assertFalse(GROSS.isNeighbourOf(entry(Sort.TARE, "1", row("layers", 5), "Tare")));
        assertTrue(GROSS.isInColumnOf(entry(Sort.GROSS, "1", row("layers", 9), "Gross")));
        assertFalse(GROSS.isInColumnOf(TARE));
    }

    @Test
    void aCellIsKnownByRowHeadingAndPart() {
        BookCell part = new BookCell(row("containers", 2), "Contents then", "acetone");
        assertTrue(part.is(row("containers", 2), "Contents then", "acetone"));
        assertFalse(part.is(row("containers", 2), "Contents then", "heptane"));
        assertFalse(part.is(row("containers", 2), "Contents then"));
        assertFalse(part.is(row("containers", 3), "Contents then", "acetone"));
        assertFalse(part.is(row("containers", 2), "Tare", "acetone"));
        assertTrue(new BookCell(row("layers", 2), "Net").is(row("layers", 2), "Net"));
        assertFalse(new BookCell(row("layers", 2), "Net").is(row("isolated", 2), "Net"));
        assertEquals("layers.csv line 4, Gross", GROSS.cell().place().inWords());
        assertEquals(GROSS.cell(), BookCell.of(GROSS.number()));
    }
}
