package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExtractionTest {
    @Test
    void limitOfEverSmallerPortionsIsExponential() {
        assertEquals(Math.exp(-3), Extraction.fractionLeftAtTheLimit(3, 100, 100), 1e-12);
        assertEquals(
                Extraction.fractionLeftAtTheLimit(3, 100, 100),
                Extraction.fractionLeft(3, 100.0 / 1_000_000, 100, 1_000_000),
                1e-5);
    }

    @Test
    void distributionRatioComesBackFromSuccessiveExtracts() {
        // Made with D = 4: 40 mL layer, 20 mL portions, factor 1 + 4·20/40 = 3: 10 g give 6.6667 and 2.2222 g.
        assertEquals(4, Extraction.distributionRatioFromSuccessiveExtracts(20.0 / 3, 20.0 / 9, 20, 40), 1e-9);
        assertEquals(4, Extraction.distributionRatio(8, 2), 1e-12);
        assertEquals(0, Extraction.distributionRatio(0, 2), 0);
    }

    @Test
    void secondExtractAsRichAsTheFirstHasNoRatio() {
        assertThrows(
                IllegalArgumentException.class, () -> Extraction.distributionRatioFromSuccessiveExtracts(1, 1, 20, 40));
        assertThrows(
                IllegalArgumentException.class, () -> Extraction.distributionRatioFromSuccessiveExtracts(1, 0, 20, 40));
        assertThrows(IllegalArgumentException.class, () -> Extraction.distributionRatio(1, 0));
        assertThrows(IllegalArgumentException.class, () -> Extraction.distributionRatio(-1, 1));
    }

    @Test
    void gainIsWhatThePortionsTake() {
        // By hand: 3.3 g, D = 4, 20 mL to 40 mL, one portion: two thirds.
        assertEquals(2.2, Extraction.gainGrams(3.3, 4, 20, 40, 1), 1e-9);
        assertEquals(3.3 * 8 / 9, Extraction.gainGrams(3.3, 4, 20, 40, 2), 1e-9);
        assertEquals(0, Extraction.gainGrams(0, 4, 20, 40, 1), 0);
        assertEquals(0, Extraction.gainGrams(3.3, 0, 20, 40, 1), 0);
    }

    @Test
    void bestSplitStopsWhereAnotherPortionGainsLittle() {
        // By hand, D·V/Va = 3: left 0.25, 0.16, 0.125, 0.1066; gains 0.09, 0.035, 0.0184.
        assertEquals(2, Extraction.bestSplit(3, 100, 100, 0.04));
        assertEquals(3, Extraction.bestSplit(3, 100, 100, 0.02));
        assertEquals(1, Extraction.bestSplit(3, 100, 100, 0.1));
        assertEquals(100, Extraction.bestSplit(3, 100, 100, 1e-9));
        assertEquals(1, Extraction.bestSplit(0, 100, 100, 0.01));
    }

    @Test
    void portionsNeededAreFewestThatReachTheShare() {
        assertEquals(OptionalInt.of(1), Extraction.portionsNeeded(3, 100, 100, 0.25));
        assertEquals(OptionalInt.of(2), Extraction.portionsNeeded(3, 100, 100, 0.24));
        assertEquals(OptionalInt.empty(), Extraction.portionsNeeded(0, 100, 100, 0.5));
        assertEquals(OptionalInt.empty(), Extraction.portionsNeeded(0.001, 100, 100, 0.9));
        assertEquals(OptionalInt.of(100), Extraction.portionsNeeded(1, 1, 1, Math.pow(2, -100)));
        assertThrows(IllegalArgumentException.class, () -> Extraction.portionsNeeded(3, 100, 100, 0));
        assertThrows(IllegalArgumentException.class, () -> Extraction.portionsNeeded(3, 100, 100, 1));
    }

    @Test
    void chainOfWashesKeepsTheOrganicLayer() {
        // By hand: D 9 and equal volumes leave 90 %, then D 4 leaves 80 % of that.
        List<Extraction.Split> splits = Extraction.chain(
                10,
                List.of(
                        new Extraction.Contact(9, 50, 50, Extraction.Carried.ORGANIC),
                        new Extraction.Contact(4, 50, 50, Extraction.Carried.ORGANIC)));
        assertEquals(1, splits.get(0).aqueousAmount(), 1e-12);
        assertEquals(1.8, splits.get(1).aqueousAmount(), 1e-12);
        assertEquals(7.2, splits.get(1).organicAmount(), 1e-12);
    }

    @Test
    void chainOfExtractionsKeepsTheAqueousLayer() {
        List<Extraction.Split> splits = Extraction.chain(
                9,
                List.of(
                        new Extraction.Contact(4, 20, 40, Extraction.Carried.AQUEOUS),
                        new Extraction.Contact(4, 20, 40, Extraction.Carried.AQUEOUS)));
        assertEquals(6, splits.get(0).organicAmount(), 1e-12);
        assertEquals(2, splits.get(1).organicAmount(), 1e-12);
        assertEquals(1, splits.get(1).aqueousAmount(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void massIsConservedThroughAnyChain(long seed) {
        java.util.Random random = new java.util.Random(seed);
        List<Extraction.Contact> contacts = new java.util.ArrayList<>();
        for (int i = 0; i < 12; i++) {
            contacts.add(new Extraction.Contact(
                    Math.pow(10, 4 * random.nextDouble() - 2),
                    1 + 100 * random.nextDouble(),
                    1 + 100 * random.nextDouble(),
                    random.nextBoolean() ? Extraction.Carried.ORGANIC : Extraction.Carried.AQUEOUS));
        }
        List<Extraction.Split> splits = Extraction.chain(10, contacts);
        double total = 0;
        for (int i = 0; i < splits.size(); i++) {
            boolean last = i == splits.size() - 1;
            boolean organicStays = contacts.get(i).carried() == Extraction.Carried.AQUEOUS;
            total += last || organicStays ? splits.get(i).organicAmount() : 0;
            total += last || !organicStays ? splits.get(i).aqueousAmount() : 0;
        }
        assertEquals(10, total, 1e-9, "seed " + seed);
    }

    @Test
    void argumentsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Extraction.fractionLeft(-1, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Extraction.fractionLeft(1, -1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Extraction.fractionLeft(1, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Extraction.fractionLeft(1, 1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> Extraction.bestSplit(1, 1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> Extraction.gainGrams(-1, 1, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Extraction.chain(-1, List.of()));
        assertThrows(
                IllegalArgumentException.class, () -> new Extraction.Contact(-1, 1, 1, Extraction.Carried.ORGANIC));
        assertThrows(IllegalArgumentException.class, () -> new Extraction.Contact(1, 0, 1, Extraction.Carried.ORGANIC));
        assertThrows(IllegalArgumentException.class, () -> new Extraction.Contact(1, 1, 0, Extraction.Carried.ORGANIC));
        assertTrue(Extraction.chain(0, List.of()).isEmpty());
    }
}
