package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.tally.amounts.Ingredients;

/** Volume in the funnel at each shake, by addition before mixing. */
class FunnelShakesTest {
    private static final Ingredients TOLUENE = Ingredients.of("toluene", 86.68, 100);
    private static final Ingredients WATER = Ingredients.of("water", 50, 50);

    private final Map<String, LayerTally> layers = new LinkedHashMap<>();

    private List<Double> volumes(
            String from, String material, String portions, Ingredients source, double addedMillilitres) {
        Run run = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", from, "Material", material)
                .but("workup", "Portions", portions)
                .but("workup", "Volume", "20")
                .row("layers", "Layer", "O1", "Phase", "organic")
                .row("layers", "Layer", "O2", "Phase", "organic")
                .row("layers", "Layer", "O3", "Phase", "organic")
                .row("layers", "Layer", "O9", "Phase", "organic")
                .run();
        Step step = run.steps().get(0);
        FunnelShakes shakes =
                new FunnelShakes(SmallBook.substances(), new MeasuredPortions(run, SmallBook.substances(), layers));
        Ingredients added = addedMillilitres == 0
                ? Ingredients.EMPTY
                : Ingredients.of(material, addedMillilitres, addedMillilitres);
        return shakes.volumes(step, source, added);
    }

    private void read(String label, double millilitres) {
        layers.put(
                label,
                new LayerTally(
                        label,
                        Optional.empty(),
                        Optional.of(Layer.Phase.ORGANIC),
                        false,
                        false,
                        true,
                        Optional.empty(),
                        Optional.of(FollowedRun.exactly(millilitres)),
                        List.of()));
    }

    @Test
    void firstAllOfTheSourceThenThePhaseThatStays() {
        // toluene stays: 150 + 20, then 100 + 20
        assertEquals(List.of(170.0, 120.0, 120.0), volumes("RM", "water", "3", TOLUENE.plus(WATER), 60));
        // water stays where toluene is added
        assertEquals(List.of(170.0, 70.0), volumes("RM", "toluene", "2", TOLUENE.plus(WATER), 40));
    }

    @Test
    void oneLiquidThatTakesUpThePortionStaysWhole() {
        assertEquals(List.of(120.0, 120.0), volumes("RM", "toluene", "2", TOLUENE, 40));
    }

    @Test
    void withoutAPortionItIsTheSource() {
        assertEquals(List.of(150.0), volumes("RM", "water", "3", TOLUENE.plus(WATER), 0));
        assertEquals(List.of(120.0), volumes("RM", "water", "", TOLUENE, 20));
    }

    @Test
    void volumesThatWereReadGoBeforeEstimates() {
        read("O1", 90);
        read("O2", 30);
        assertEquals(List.of(140.0), volumes("O1+O2", "water", "1", TOLUENE, 20));
        // no more stays than was there
        read("O3", 40);
        assertEquals(List.of(60.0, 60.0), volumes("O3", "water", "2", TOLUENE, 40));
        // one that was not read leaves the estimate
        assertEquals(List.of(120.0), volumes("O1+O9", "water", "1", TOLUENE, 20));
    }

    @Test
    void whatIsDissolvedIsNotPoured() {
        Ingredients with = TOLUENE.plus(Ingredients.of(IngredientAccount.SOLIDS, 0, 8));
        assertEquals(List.of(120.0, 120.0), volumes("RM", "water", "2", with, 40));
    }
}
