package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

/** Densities that a layer should have at the temperature at which its volume was read. */
class LayerTemperatureTest {
    @ParameterizedTest
    @CsvSource({
        // Solvent table: toluene 0.8668 g/mL and −0.00090 per kelvin: (0.8668 − 0.0090)/0.8668.
        "toluene, 30, 0.989617",
        "toluene, 20, 1",
        // No slope listed, 0.0012 per kelvin by common practice: 1/1.012, and 1/0.976 at 0 °C.
        "dichloromethane, 30, 0.988142",
        "dichloromethane, 0, 1.024590",
        // Salt goes with water, 0.9982 g/mL and −0.00023 per kelvin: (0.9982 − 0.0023)/0.9982.
        "water, 30, 0.997696",
        "sodium chloride, 30, 0.997696"
    })
    void liquidsBecomeLighterWhenTheyAreWarm(String name, double celsius, double ratio) {
        assertEquals(ratio, SmallBook.substances().densityOver20(name, celsius), 1e-6);
    }

    @Test
    void layerIsHeldAgainstTheDensitiesAtItsTemperature() {
        LayerIdentity cold = identity("20");
        LayerIdentity warm = identity("40");
        // Dichloromethane 1/1.024; no other liquid in the organic phase but dissolved water, 0.2 % of it.
        double ratio = warm.expectedOrganic().lowGramsPerMillilitre()
                / cold.expectedOrganic().lowGramsPerMillilitre();
        assertEquals(0.97656, ratio, 1e-3);
        assertEquals(cold.expectedOrganic(), identity("").expectedOrganic());
        assertEquals(cold.expectedOrganic(), identity("400").expectedOrganic());
    }

    private static LayerIdentity identity(String celsius) {
        return SmallBook.empty()
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .row(
                        "charges",
                        "Material",
                        "dichloromethane",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "100",
                        "Actual unit",
                        "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Net", "131.00", "Status", "kept")
                .but("layers", "Temperature", celsius)
                .tally()
                .identity("O1")
                .orElseThrow();
    }
}
