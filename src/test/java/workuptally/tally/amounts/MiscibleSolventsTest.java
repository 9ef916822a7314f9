package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/** Ratios of methanol and acetone by the partition table and the bench rules, whose rows are tested against their sources elsewhere. */
class MiscibleSolventsTest {
    private final MiscibleSolvents solvents = new MiscibleSolvents(SmallBook.substances());

    @Test
    void severalSolventsCountByTheirVolumes() {
        double toluene = solvents.ratio("acetone", Map.of("toluene", 100.0));
        double hexane = solvents.ratio("acetone", Map.of("hexane", 50.0));
        assertEquals(
                0.25 * toluene + 0.75 * hexane,
                solvents.ratio("acetone", Map.of("toluene", 10.0, "hexane", 30.0)),
                1e-12);
    }

    @Test
    void volumeOfASingleSolventDoesNotMatter() {
        assertEquals(
                solvents.ratio("methanol", Map.of("toluene", 1.0)),
                solvents.ratio("methanol", Map.of("toluene", 500.0)),
                1e-12);
    }

    @Test
    void rowOfTheSolventItselfOrOfItsClassGoesBeforeOctanol() {
        // acetone: log P 0.72 in chloroform (Leo 1971, from memory), −0.22 in aromatic and −1.03 in other hydrocarbons
        // (Abraham 1994, from memory)
        assertEquals(5.248, solvents.ratio("acetone", Map.of("Chloroform", 10.0)), 0.001);
        assertEquals(0.603, solvents.ratio("acetone", Map.of("toluene", 10.0)), 0.001);
        assertEquals(0.0933, solvents.ratio("acetone", Map.of("hexane", 10.0)), 0.0001);
    }

    @Test
    void withoutARowAndOctanolTheBenchRuleHolds() {
        // methanol prefers water to octanol, log P −0.74 (CRC Handbook): 0.3 by common practice
        assertEquals(0.3, solvents.ratio("methanol", Map.of()), 1e-12);
        assertEquals(0.3, solvents.ratio("unobtainium", Map.of("toluene", 10.0)), 1e-12);
    }

    @Test
    void octanolStandsInWhereItIsPreferred() {
        // tetrahydrofuran, log P 0.46 (CRC Handbook): 10^0.46 = 2.88
        assertEquals(2.88, solvents.ratio("tetrahydrofuran", Map.of()), 0.05);
    }
}
