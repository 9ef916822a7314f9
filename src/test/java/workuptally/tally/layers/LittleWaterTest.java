package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

/** Nitric acid of 7.3 g stays strong with 2 mL of water, so that acetone must not meet it; with 100 mL it is 7 % (common practice: 20 %). */
class LittleWaterTest {
    @ParameterizedTest
    @CsvSource({"2, true", "100, false"})
    void nitricAcidMeetsAcetoneUntilItIsDilute(String millilitres, boolean meets) {
        boolean met = SmallBook.reaction()
                .row("charges", "Material", "nitric acid 65 %", "Role", "reagent", "Formula", "HNO3")
                .but("charges", "Actual amount", "8")
                .but("charges", "Actual unit", "mL")
                .but("charges", "Density", "1.40")
                .but("charges", "Assay", "65")
                .row("workup", "Step", "1", "Operation", "dilute", "From", "RM", "Material", "water")
                .but("workup", "Volume", millilitres)
                .but("workup", "Gives other", "RM")
                .row("workup", "Step", "2", "Operation", "extract", "From", "RM", "Material", "acetone")
                .but("workup", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .tally()
                .evidence()
                .meetings()
                .list()
                .stream()
                .anyMatch(m -> m.with().contains("acetone") && m.holdsItsPortions());
        assertEquals(meets, met);
    }
}
