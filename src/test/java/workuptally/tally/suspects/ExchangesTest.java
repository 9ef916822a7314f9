package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static workuptally.tally.suspects.TypedCells.entry;
import static workuptally.tally.suspects.TypedCells.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.model.Field.Entered;
import workuptally.model.Place;
import workuptally.tally.suspects.Entry.Sort;

class ExchangesTest {
    private static List<Hypothesis> of(Entry... entries) {
        return new Exchanges(List.of(entries)).list();
    }

    private static Entry tare(String typed, int row) {
        return entry(Sort.TARE, typed, row("layers", row), "Tare");
    }

    @Test
    void numbersOfOneKindInNeighbouringRowsMayStandForEachOther() {
        Hypothesis swapped = of(
                        entry(Sort.NET, "12.50", row("layers", 3), "Net"),
                        entry(Sort.NET, "31.00", row("layers", 4), "Net"))
                .get(0);
        assertEquals(UsualSlip.CELLS_SWAPPED, swapped.slip());
        assertEquals("12.50 and 31.00", swapped.typed());
        assertEquals("31.00 and 12.50", swapped.suggested());
        assertEquals("Net of row 3 and Net of row 4", swapped.what());
        assertEquals(
                List.of("layers.csv line 3, Net", "layers.csv line 4, Net"),
                swapped.places().stream().map(Place::inWords).toList());
        assertEquals(
                List.of(31.00, 12.50),
                swapped.changes().numbers().stream()
                        .map(n -> n.field().entered().map(Entered::value).orElseThrow())
                        .toList());
        assertEquals(1, swapped.alternatives(), 0);
    }

    @Test
    void otherNumbersMayNot() {
        assertEquals(0, of(tare("70.00", 3), tare("70.00", 4)).size());
        assertEquals(
                0,
                of(entry(Sort.NET, "12.50", row("layers", 3), "Net"), entry(Sort.NET, "31.00", row("layers", 5), "Net"))
                        .size());
        assertEquals(
                0,
                of(
                                entry(Sort.MOLAR_MASS, "122.12", row("charges", 3), "Molar mass"),
                                entry(Sort.MOLAR_MASS, "165.19", row("charges", 4), "Molar mass"))
                        .size());
        assertEquals(
                0,
                of(
                                entry(Sort.GROSS, "122.12", row("layers", 3), "Gross"),
                                entry(Sort.TARE, "65.19", row("layers", 4), "Tare"))
                        .size());
    }

    @Test
    void taresMayBeOfAnyTwoVesselsOfATable() {
        List<Hypothesis> all = of(tare("70.00", 3), tare("80.00", 5), tare("90.00", 8));
        assertEquals(3, all.size());
        // each of three could have been taken
        assertEquals(3, all.get(0).alternatives(), 0);
        assertEquals(
                0,
                of(tare("70.00", 3), entry(Sort.TARE, "80.00", row("isolated", 7), "Tare"))
                        .size());
        assertEquals(
                1,
                of(tare("70.00", 3), tare("80.00", 4), tare("90.00", 9)).get(0).alternatives(),
                0);
    }

    @Test
    void volumeAndMassOfOneLayerMayStandForEachOther() {
        Entry volume = entry(Sort.VOLUME, "50.0", row("layers", 3), "Volume", "E-1");
        assertEquals(
                1,
                of(volume, entry(Sort.NET, "45.0", row("layers", 3), "Net", "E-1"))
                        .size());
        assertEquals(
                0,
                of(volume, entry(Sort.NET, "45.0", row("layers", 4), "Net", "E-1"))
                        .size());
        assertEquals(
                0,
                of(volume, entry(Sort.GROSS, "45.0", row("layers", 3), "Gross", "E-1"))
                        .size());
        assertEquals(
                0,
                of(volume, entry(Sort.NET, "45.0", row("layers", 3), "Net", "E-2"))
                        .size());
    }
}
