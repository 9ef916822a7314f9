package workuptally.tally.waste;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

/**
 * Heavy metals in organic liquids. Of 100 mL ethyl acetate, 90 g: 1 g of lead(II) acetate, 325.3 g/mol, brings 0.64 g lead, 0.7 %; 0.2 g of
 * tetrakis(triphenylphosphine)palladium, 1155.6 g/mol, brings 0.018 g palladium, 0.02 %. Molar masses by IUPAC atomic weights.
 */
class HeavyMetalShareTest {
    @ParameterizedTest
    @CsvSource({
        "lead(II) acetate,C4H6O4Pb,1.0,special aqueous-heavy-metal",
        "tetrakis(triphenylphosphine)palladium,C72H60P4Pd,0.2,non-halogenated-organic aqueous-heavy-metal",
        "tributyltin hydride,C12H28Sn,2.9,special aqueous-heavy-metal",
        "imidazole,C3H4N2,2.9,non-halogenated-organic aqueous-neutral"
    })
    void organicLayerWithMuchOfAMetalIsAskedAbout(String material, String formula, String grams, String streams) {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", material, "Formula", formula, "Role", "reagent", "Actual amount", grams)
                .but("charges", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Net", "90.0", "Status", "kept")
                .row("charges", "Material", "water", "Role", "solvent", "Actual amount", "50", "Actual unit", "mL")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "49.9", "Status", "kept")
                .but("layers", "pH", "7");
        assertEquals(
                streams, book.tally().waste().stream().map(WasteLine::stream).collect(Collectors.joining(" ")));
    }
}
