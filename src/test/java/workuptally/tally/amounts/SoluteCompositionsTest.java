package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.chemistry.Formula;
import workuptally.reference.Reference;
import workuptally.reference.solutions.Solute;

class SoluteCompositionsTest {
    private static final SoluteCompositions SOLUTES =
            new SoluteCompositions(Reference.load().solutes(), Formula::parse);

    @ParameterizedTest
    @CsvSource({
        // however it is written
        "ClNa, sodium chloride",
        "CHNaO3, sodium hydrogencarbonate",
        "H4NCl, ammonium chloride",
        "CO3Na2, sodium carbonate",
        // isomers of organic matter are many: tartaric acid, citric acid
        "C4H6O6, ''",
        "C6H8O7, ''",
        // a salt of an organic acid has its metal
        "CH3CO2Na, sodium acetate",
        "NaBr, ''"
    })
    void compositionNamesASolute(String formula, String name) {
        Optional<Solute> solute = SOLUTES.of(Formula.parse(formula));
        assertEquals(name, solute.map(Solute::name).orElse(""));
    }
}
