package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.Present.Share;

class PresentTest {
    private static final Substances SUBSTANCES = SmallBook.substances();

    private static Present present(String name) {
        return PortionContents.presents(name, SUBSTANCES.material(name), OptionalDouble.empty(), Optional.empty())
                .get(0);
    }

    @Test
    void aSolutionIsNamedAsWrittenAsListedAndAsDissolved() {
        Present acid = present("conc. HCl");
        assertTrue(acid.isNamed("CONC. HCl"));
        assertTrue(acid.isNamed(acid.listedName()));
        assertTrue(acid.isNamed("hydrogen chloride"));
        assertEquals("hydrogen chloride", acid.dissolvedName());
        assertFalse(acid.isNamed("sulfuric acid"));
        assertEquals(
                present("secret powder").listedName(), present("secret powder").dissolvedName());
    }

    @ParameterizedTest
    @CsvSource({
        // name, goes both ways, prefers organic, persists, listed solvent, drying agent
        "sodium azide, false, false, true, false, false",
        "acetic acid, true, true, false, true, false",
        "toluene, false, true, false, true, false",
        "sodium sulfate, false, false, false, false, true",
        "copper(I) iodide, true, false, true, false, false",
        "sodium chloride, false, false, false, false, false"
    })
    void whatAMaterialIsTellsWhereItGoes(
            String name, boolean bothWays, boolean organic, boolean persists, boolean solvent, boolean agent) {
        Present present = present(name);
        assertEquals(bothWays, present.goesBothWays(), "both ways");
        assertEquals(organic, present.prefersOrganic(), "organic");
        assertEquals(persists, present.persists(), "persists");
        assertEquals(solvent, present.isListedSolvent(), "solvent");
        assertEquals(agent, present.isDryingAgent(), "agent");
    }

    @Test
    void onACakeIsDissolvedWhatIsNeitherAgentNorLiquidNorThereForGood() {
        assertTrue(present("sodium chloride").isDissolvedOnCake());
        assertFalse(present("sodium sulfate").isDissolvedOnCake());
        assertFalse(present("toluene").isDissolvedOnCake());
        assertFalse(present("sodium azide").isDissolvedOnCake());
        assertTrue(present("sodium azide").as(Share.TRACE).isDissolvedOnCake());
        assertEquals(Share.TRACE, present("sodium azide").as(Share.TRACE).share());
    }

    @Test
    void waterPutsAnEndToSomeMaterials() {
        assertTrue(present("sodium hydride").isDestroyedByWater());
        assertFalse(present("sodium chloride").isDestroyedByWater());
    }
}
