package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.CompositionPart;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Ingredients;

/** An estimate of 80 g of toluene, 100 mL, and 20 g of water, brought to what was measured. Toluene 0.8668 g/mL at 20 °C (CRC Handbook). */
class MeasuredPortionsTest {
    private static final double EPSILON = 1e-9;
    private static final double TOLUENE = 0.8668;
    private static final Ingredients ESTIMATE =
            Ingredients.of("toluene", 80, 100).plus(Ingredients.of("water", 20, 20));

    private final Map<String, LayerTally> layers = new LinkedHashMap<>();

    private MeasuredPortionsTest layer(String label, Double grams, Double millilitres, Content... contents) {
        layers.put(
                label,
                new LayerTally(
                        label,
                        Optional.empty(),
                        Optional.of(Layer.Phase.ORGANIC),
                        true,
                        false,
                        true,
                        Optional.ofNullable(grams).map(FollowedRun::exactly),
                        Optional.ofNullable(millilitres).map(FollowedRun::exactly),
                        List.of(contents)));
        return this;
    }

    private MeasuredPortions portions() {
        return new MeasuredPortions(SmallBook.empty().run(), SmallBook.substances(), layers);
    }

    /** Of which so much toluene went in. */
    private MeasuredPortions portions(double toluene) {
        MeasuredPortions portions = portions();
        portions.put(Ingredients.of("toluene", toluene / 2, 0));
        portions.put(Ingredients.of("toluene", toluene / 2, 0));
        return portions;
    }

    private static Content product(double grams) {
        return new Content(
                "P",
                Content.Kind.MEASURED,
                Optional.of(FollowedRun.exactly(grams)),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "");
    }

    @Test
    void withoutAMassTheEstimateStands() {
        assertEquals(ESTIMATE, layer("O1", null, 110.0).portions(200).of("O1", ESTIMATE));
        assertEquals(ESTIMATE, portions(200).of("O9", ESTIMATE));
        assertEquals(Ingredients.EMPTY, layer("O1", 50.0, null).portions(200).of("O1", Ingredients.EMPTY));
    }

    @Test
    void aMassIsMadeUpByTheMainLiquid() {
        Ingredients more = layer("O1", 120.0, null).portions(200).of("O1", ESTIMATE);
        assertEquals(100, more.grams("toluene"), EPSILON);
        assertEquals(20, more.grams("water"), EPSILON);
        assertEquals(100 / TOLUENE + 20, more.millilitres(), EPSILON);
        Ingredients less = layer("O1", 70.0, null).portions(200).of("O1", ESTIMATE);
        assertEquals(50, less.grams("toluene"), EPSILON);
        assertEquals(70, less.totalGrams(), EPSILON);
    }

    @Test
    void whatWasAssayedIsNoSolvent() {
        Ingredients left = layer("O1", 90.0, null, product(15)).portions(200).of("O1", ESTIMATE);
        assertEquals(55, left.grams("toluene"), EPSILON);
        assertEquals(75, left.totalGrams(), EPSILON);
    }

    @Test
    void noPortionHoldsMoreOfASolventThanWentIn() {
        Ingredients rest = layer("O1", 150.0, null).portions(85).of("O1", ESTIMATE);
        assertEquals(85, rest.grams("toluene"), EPSILON);
        assertEquals(45, rest.grams(LayerFlow.UNSTATED), EPSILON);
        assertEquals(150, rest.totalGrams(), EPSILON);
        // exactly as much leaves no rest
        assertEquals(
                List.of("toluene", "water"),
                layer("O1", 105.0, null).portions(85).of("O1", ESTIMATE).parts().keySet().stream()
                        .sorted()
                        .toList());
    }

    @Test
    void waterHasNoLimit() {
        Ingredients wet = Ingredients.of("water", 60, 60).plus(Ingredients.of("sodium chloride", 10, 0));
        Ingredients more = layer("A1", 100.0, null).portions(0).of("A1", wet);
        assertEquals(90, more.grams("water"), EPSILON);
        assertEquals(10, more.grams("sodium chloride"), EPSILON);
    }

    @Test
    void theMainLiquidIsTheHeaviestThatHasAVolumeAndAMass() {
        // salt has no volume of its own, a reactant no mass
        Ingredients three = Ingredients.of("sodium chloride", 90, 0)
                .plus(Ingredients.of("toluene", 30, 35))
                .plus(Ingredients.of("water", 20, 20))
                .plus(Ingredients.of(IngredientAccount.REACTANTS, 0, 40));
        Ingredients more = layer("O1", 150.0, null).portions(200).of("O1", three);
        assertEquals(40, more.grams("toluene"), EPSILON);
        assertEquals(90, more.grams("sodium chloride"), EPSILON);
        Ingredients other = Ingredients.of("water", 40, 40).plus(Ingredients.of("toluene", 30, 35));
        assertEquals(50, layer("O1", 80.0, null).portions(200).of("O1", other).grams("water"), EPSILON);
    }

    @Test
    void lessThanTheOthersScalesEverything() {
        Ingredients little = layer("O1", 10.0, null).portions(200).of("O1", ESTIMATE);
        assertEquals(8, little.grams("toluene"), EPSILON);
        assertEquals(2, little.grams("water"), EPSILON);
        // as much as the others leaves none of the main one by itself
        Ingredients equal = layer("O1", 20.0, null).portions(200).of("O1", ESTIMATE);
        assertEquals(16, equal.grams("toluene"), EPSILON);
        // no more product than all of it: nothing is left for the solvent
        assertEquals(
                0,
                layer("O1", 10.0, null, product(12))
                        .portions(200)
                        .of("O1", ESTIMATE)
                        .totalGrams(),
                EPSILON);
    }

    @Test
    void aSampleIsItsShareOfTheSource() {
        Ingredients byMass = layer("Q1", 5.0, 50.0).portions(200).aliquot("Q1", ESTIMATE);
        assertEquals(4, byMass.grams("toluene"), EPSILON);
        assertEquals(1, byMass.grams("water"), EPSILON);
        Ingredients byVolume = layer("Q2", null, 6.0).portions(200).aliquot("Q2", ESTIMATE);
        // 6 of 120 mL
        assertEquals(4, byVolume.grams("toluene"), EPSILON);
        assertEquals(0, portions(200).aliquot("Q3", ESTIMATE).totalGrams(), EPSILON);
        Ingredients volumeOnly = Ingredients.of(IngredientAccount.REACTANTS, 0, 40);
        assertEquals(
                10,
                layer("Q4", null, 10.0).portions(200).aliquot("Q4", volumeOnly).millilitres(),
                EPSILON);
        assertEquals(
                0,
                layer("Q5", 1.0, null)
                        .portions(200)
                        .aliquot("Q5", Ingredients.EMPTY)
                        .totalGrams(),
                EPSILON);
    }

    private static double share(Map<String, Ingredients> shared, String label) {
        return shared.get(label).totalGrams() / 100;
    }

    @Test
    void labelsThatWereAllWeighedShareByMass() {
        Map<String, Ingredients> shared =
                layer("O1", 30.0, 90.0).layer("O2", 60.0, 10.0).portions(200).shared(List.of("O1", "O2"), ESTIMATE);
        assertEquals(1.0 / 3, share(shared, "O1"), EPSILON);
        assertEquals(2.0 / 3, share(shared, "O2"), EPSILON);
    }

    @Test
    void labelsThatWereAllReadShareByVolume() {
        Map<String, Ingredients> shared =
                layer("O1", 30.0, 90.0).layer("O2", null, 10.0).portions(200).shared(List.of("O1", "O2"), ESTIMATE);
        assertEquals(0.9, share(shared, "O1"), EPSILON);
        assertEquals(0.1, share(shared, "O2"), EPSILON);
    }

    @Test
    void elseTheWeighedOnesTakeTheirMassAndTheLargestOtherTheRest() {
        Map<String, Ingredients> shared = layer("O1", 30.0, null)
                .layer("O2", null, 10.0)
                .layer("O3", null, 20.0)
                .layer("O4", null, null)
                .portions(200)
                .shared(List.of("O1", "O2", "O3", "O4"), ESTIMATE);
        assertEquals(0.3, share(shared, "O1"), EPSILON);
        assertEquals(0, share(shared, "O2"), EPSILON);
        assertEquals(0.7, share(shared, "O3"), EPSILON);
        assertEquals(0, share(shared, "O4"), EPSILON);
        // of two that nobody measured the first has all of it
        Map<String, Ingredients> unmeasured = portions(200).shared(List.of("O8", "O9"), ESTIMATE);
        assertEquals(1, share(unmeasured, "O8"), EPSILON);
        assertEquals(0, share(unmeasured, "O9"), EPSILON);
        // more than there is leaves nothing
        Map<String, Ingredients> more = layer("O5", 130.0, null).portions(200).shared(List.of("O5", "O9"), ESTIMATE);
        assertEquals(1, share(more, "O5"), EPSILON);
        assertEquals(0, share(more, "O9"), EPSILON);
    }

    @Test
    void withoutAMassTheFirstUnweighedHasTheVolume() {
        Ingredients volumeOnly = Ingredients.of(IngredientAccount.REACTANTS, 0, 40);
        Map<String, Ingredients> shared = layer("O1", 30.0, null).portions(0).shared(List.of("O1", "O9"), volumeOnly);
        assertEquals(0, shared.get("O1").millilitres(), EPSILON);
        assertEquals(40, shared.get("O9").millilitres(), EPSILON);
    }

    /** A distillate with a stated composition, of a book. */
    private static MeasuredPortions stated(String composition, String net, String volume) {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", net, "Volume", volume, "Status", "kept")
                .but("layers", "Composition", composition);
        Run run = book.run();
        Map<String, LayerTally> layers = new LinkedHashMap<>();
        book.tally().layers().forEach(l -> layers.put(l.label(), l));
        return new MeasuredPortions(run, SmallBook.substances(), layers);
    }

    @Test
    void aStatedCompositionGoesBeforeAnEstimate() {
        Ingredients parts = stated("toluene 75 %; water 15 %", "40.00", "").of("D1", ESTIMATE);
        assertEquals(30, parts.grams("toluene"), EPSILON);
        assertEquals(6, parts.grams("water"), EPSILON);
        assertEquals(4, parts.grams(LayerFlow.UNSTATED), EPSILON);
        assertEquals(30 / TOLUENE + 6 / 0.9982, parts.millilitres(), 0.01);
        assertTrue(stated("toluene 75 %; water 25 %", "40.00", "")
                .of("D1", ESTIMATE)
                .parts()
                .containsKey("water"));
        assertEquals(
                2,
                stated("toluene 75 %; water 25 %", "40.00", "")
                        .of("D1", ESTIMATE)
                        .parts()
                        .size());
    }

    /** 7 volumes of 0.9003 and 3 of 0.889 g/mL (densities of the tables): 70.27 % by mass. */
    @Test
    void aRatioOfLiquidsIsByVolume() {
        for (String composition : List.of("EtOAc/THF 7:3", "7:3 EtOAc:THF")) {
            Ingredients parts = stated(composition, "40.00", "").of("D1", ESTIMATE);
            double ethylAcetate = 0.7 * 0.9003 / (0.7 * 0.9003 + 0.3 * 0.889);
            assertEquals(40 * ethylAcetate, parts.grams("ethyl acetate"), 0.01, composition);
            assertEquals(40 * (1 - ethylAcetate), parts.grams("tetrahydrofuran"), 0.01, composition);
        }
    }

    @Test
    void massesAreSharesOfWhatTheLayerWeighs() {
        Ingredients parts = stated("EtOAc 34 g, THF 14 g", "50.00", "").of("D1", ESTIMATE);
        assertEquals(34, parts.grams("ethyl acetate"), EPSILON);
        assertEquals(14, parts.grams("tetrahydrofuran"), EPSILON);
        assertEquals(2, parts.grams(LayerFlow.UNSTATED), EPSILON);
        // without a weight of the whole they are shares of each other, and one alone says nothing
        assertEquals(
                2,
                stated("EtOAc 30 g, THF 10 g", "", "50")
                        .of("D1", ESTIMATE)
                        .parts()
                        .size());
        assertEquals(List.of(), composition("EtOAc 34 g", ""));
        assertEquals(List.of(), composition("EtOAc 34 g, THF 14 g", "40.00"));
        assertEquals(75, composition("EtOAc 30 g, THF 10 g", "").get(0).massPercent(), EPSILON);
    }

    private static List<CompositionPart> composition(String composition, String net) {
        return SmallBook.reaction()
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", net, "Composition", composition)
                .run()
                .layers()
                .get(0)
                .composition();
    }

    @Test
    void aVolumeWithACompositionIsAMassByTheDensitiesOfItsParts() {
        // 100 g of it are 75/0.8668 + 25/0.9982 mL
        double grams = 50 / (0.75 / TOLUENE + 0.25 / 0.9982);
        Ingredients parts = stated("toluene 75 %; water 25 %", "", "50").of("D1", ESTIMATE);
        assertEquals(0.75 * grams, parts.grams("toluene"), 0.01);
        assertEquals(50, parts.millilitres(), 1e-6);
    }

    @Test
    void aPartOfAnUnknownNameHasNoDensity() {
        // by mass it is there, without a volume; by volume nothing is known
        Ingredients byMass = stated("toluene 75 %; gloopene 25 %", "40.00", "").of("D1", ESTIMATE);
        assertEquals(10, byMass.grams("gloopene"), EPSILON);
        assertEquals(30 / TOLUENE, byMass.millilitres(), EPSILON);
        assertEquals(
                Ingredients.EMPTY,
                stated("toluene 75 %; gloopene 25 %", "", "50").of("D1", ESTIMATE));
    }

    @Test
    void aSolidIsWhatItsRowStatesElseTheAgent() {
        Ingredients agent = Ingredients.of("sodium sulfate", 5, 0);
        assertEquals(agent, stated("", "8.00", "").solid("D1", agent));
        assertEquals(4, stated("toluene 50 %", "8.00", "").solid("D1", agent).grams("toluene"), EPSILON);
    }
}
