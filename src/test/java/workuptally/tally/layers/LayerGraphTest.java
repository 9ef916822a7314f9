package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.tally.layers.GraphFault.Kind;

class LayerGraphTest {
    @Test
    void portionThatNoStepConsumesIsTerminal() {
        LayerGraph graph = graph(washed());
        assertTrue(graph.isTerminal("A1"));
        assertTrue(graph.isTerminal("O2"));
        assertFalse(graph.isTerminal("O1"));
        assertEquals("step 2", graph.consumedBy("O1").orElseThrow());
        assertEquals(List.of(), graph.faults());
    }

    @Test
    void parentsAndChildrenFollowTheSteps() {
        LayerGraph graph = graph(washed());
        assertEquals(Set.of("O1"), graph.parents("A2"));
        assertEquals(List.of("O2", "A2"), graph.children("O1"));
        assertEquals(List.of("O1", "A1", "O2", "A2"), graph.layerLabels());
    }

    @Test
    void lotConsumesTheLayerItCameFrom() {
        LayerGraph graph = graph(washed().row("isolated", "Lot", "C1", "Product", "P", "From", "O2"));
        assertEquals("lot C1", graph.consumedBy("O2").orElseThrow());
    }

    @Test
    void sampleDoesNotConsumeItsSource() {
        LayerGraph graph =
                graph(washed().row("workup", "Step", "3", "Operation", "sample", "From", "O2", "Gives other", "Q1"));
        assertTrue(graph.isTerminal("O2"));
        assertTrue(graph.isAliquot("Q1"));
    }

    @Test
    void stripThatGivesADistillateAloneLeavesTheRestUnderItsLabel() {
        LayerGraph graph =
                graph(washed().row("workup", "Step", "3", "Operation", "strip", "From", "O2", "Gives other", "D1")
                        .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "40.00"));
        assertTrue(graph.isTerminal("O2"));
    }

    @Test
    void stepThatTakesALabelAndGivesItAgainGoesOnUnderThatLabel() {
        LayerGraph graph = graph(washed().row(
                        "workup",
                        "Step",
                        "3",
                        "Operation",
                        "rinse",
                        "From",
                        "O2",
                        "Material",
                        "ether",
                        "Gives other",
                        "O2"));
        assertTrue(graph.isTerminal("O2"));
        assertEquals(List.of(), graph.faults());
    }

    /** A lot is weighed when it is finished: what washes its cake was there before, however the step is written (common practice). */
    @ParameterizedTest
    @ValueSource(strings = {"C1, W1", "W1"})
    void washingsOfALotComeFromWhereTheLotComesFrom(String given) {
        LayerGraph graph = graph(washed().row("isolated", "Lot", "C1", "Product", "P", "From", "O2")
                .row("workup", "Step", "3", "Operation", "filter", "From", "O2", "Gives other", "C1, ML1")
                .row(
                        "workup",
                        "Step",
                        "4",
                        "Operation",
                        "rinse",
                        "From",
                        "C1",
                        "Material",
                        "water",
                        "Gives other",
                        given)
                .row("workup", "Step", "5", "Operation", "combine", "From", "ML1, W1", "Gives other", "ML2"));
        assertEquals(Set.of("O2"), graph.parents("W1"));
        assertFalse(graph.descendsFromLot("W1"));
        assertFalse(graph.descendsFromLot("ML2"));
        assertEquals(List.of(), graph.faults());
    }

    @Test
    void washingsOfALotWithoutAStepOfItsOwnComeFromWhatItsRowNames() {
        LayerGraph graph = graph(washed().row("isolated", "Lot", "C1", "Product", "P", "From", "O2")
                .row("workup", "Step", "3", "Operation", "wash", "From", "C1", "Gives other", "C1, W1"));
        assertEquals(Set.of("O2"), graph.parents("W1"));
    }

    @Test
    void washingsOfARecrystallisedLotBelongToItsPurification() {
        LayerGraph graph = graph(washed().row("isolated", "Lot", "C1", "Product", "P", "From", "O2")
                .row("isolated", "Lot", "P1", "Product", "P", "From", "C1")
                .row("workup", "Step", "3", "Operation", "crystallise", "From", "C1", "Gives other", "P1, ML1")
                .row("workup", "Step", "4", "Operation", "rinse", "From", "P1", "Gives other", "P1, W1"));
        assertTrue(graph.descendsFromLot("W1"));
        assertTrue(graph.isPurification(graph.givenBy("W1").orElseThrow()));
    }

    @Test
    void rinseDoesNotUseUpTheCake() {
        LayerGraph graph =
                graph(washed().row("workup", "Step", "3", "Operation", "filter", "From", "O2", "Gives other", "F1, K1")
                        .row(
                                "workup",
                                "Step",
                                "4",
                                "Operation",
                                "rinse",
                                "From",
                                "K1",
                                "Material",
                                "ether",
                                "Gives other",
                                "F1")
                        .row("layers", "Layer", "K1", "Phase", "solid", "Status", "kept")
                        .row("layers", "Layer", "F1", "Phase", "organic", "Status", "kept"));
        assertTrue(graph.isTerminal("K1"));
        assertEquals(
                List.of(),
                graph.faults().stream().filter(f -> f.kind() == Kind.SAID_KEPT).toList());
    }

    @Test
    void portionOfAPurificationDescendsFromALot() {
        LayerGraph graph = graph(washed().row("isolated", "Lot", "C1", "Product", "P", "From", "O2")
                .row("workup", "Step", "3", "Operation", "crystallise", "From", "C1", "Gives other", "ML1"));
        assertTrue(graph.descendsFromLot("ML1"));
        assertFalse(graph.descendsFromLot("A1"));
    }

    @Test
    void unknownSourceIsAFault() {
        assertFault(
                Kind.UNKNOWN_SOURCE,
                "O9",
                washed().row("workup", "Step", "3", "Operation", "dry", "From", "O9", "Gives other", "O3"));
    }

    @Test
    void lotFromAnUnknownLayerIsAFault() {
        assertFault(Kind.UNKNOWN_SOURCE, "O9", washed().row("isolated", "Lot", "C1", "Product", "P", "From", "O9"));
    }

    @Test
    void layerTakenBeforeItIsGivenIsAFault() {
        assertFault(
                Kind.TAKEN_BEFORE_GIVEN,
                "O4",
                washed().row("workup", "Step", "3", "Operation", "dry", "From", "O4", "Gives other", "O3")
                        .row("workup", "Step", "4", "Operation", "combine", "From", "O2", "Gives other", "O4"));
    }

    @Test
    void layerTakenAfterItIsUsedUpIsAFault() {
        assertFault(
                Kind.TAKEN_AFTER_CONSUMED,
                "O1",
                washed().row("workup", "Step", "3", "Operation", "dry", "From", "O1", "Gives other", "O3"));
    }

    @Test
    void labelGivenTwiceIsAFault() {
        assertFault(
                Kind.GIVEN_TWICE,
                "A1",
                washed().row("workup", "Step", "3", "Operation", "wash", "From", "O2", "Material", "water")
                        .but("workup", "Gives organic", "O3")
                        .but("workup", "Gives aqueous", "A1"));
    }

    @Test
    void layerThatNoStepGivesIsAFault() {
        assertFault(Kind.NEVER_GIVEN, "A9", washed().row("layers", "Layer", "A9", "Phase", "aqueous"));
    }

    @Test
    void layerSaidToBeConsumedThatNoStepConsumesIsAFault() {
        assertFault(
                Kind.SAID_CONSUMED,
                "A1",
                washed().row("layers", "Layer", "A1", "Phase", "aqueous", "Status", "consumed"));
    }

    @Test
    void layerSaidToBeKeptThatAStepConsumedIsAFault() {
        assertFault(Kind.SAID_KEPT, "O1", washed().row("layers", "Layer", "O1", "Phase", "organic", "Status", "kept"));
    }

    @Test
    void ringOfPortionsIsOneFaultHoweverManyDescendFromIt() {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "filter", "From", "RM", "Gives organic", "F1")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "F1", "Gives other", "D1+RM")
                .row("workup", "Step", "3", "Operation", "wash", "From", "RM", "Gives organic", "O1")
                .row("workup", "Step", "4", "Operation", "dry", "From", "O1", "Gives organic", "O2");
        assertEquals(
                List.of("F1 ← RM ← F1"),
                graph(book).faults().stream()
                        .filter(f -> f.kind() == Kind.CYCLE)
                        .map(GraphFault::label)
                        .toList());
    }

    @Test
    void portionMadeFromItselfIsAFaultAndEndsTheReading() {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "combine", "From", "X", "Gives other", "Y")
                .row("workup", "Step", "2", "Operation", "combine", "From", "Y", "Gives other", "X");
        assertTrue(graph(book).faults().stream().anyMatch(f -> f.kind() == Kind.CYCLE));
        assertFalse(graph(book).descendsFromLot("X"));
    }

    @Test
    void statusDecidesWhereNoStepsAreRecorded() {
        LayerGraph graph = graph(SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Status", "consumed")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Status", "kept"));
        assertFalse(graph.isTerminal("A1"));
        assertTrue(graph.isTerminal("A2"));
        assertEquals(List.of(), graph.faults());
    }

    @Test
    void whatAnotherStreamJoinedIsNotMadeFromOneAlone() {
        LayerGraph graph = graph(washed().row("workup", "Step", "3", "Operation", "combine", "From", "A1+A2")
                .but("workup", "Gives other", "A3")
                .row("workup", "Step", "4", "Operation", "dry", "From", "O2", "Gives other", "O3")
                .row("isolated", "Lot", "C1", "Product", "P", "From", "O3"));
        assertEquals(Set.of("O2", "A2", "O3", "C1"), graph.madeFromAlone("O1"));
        assertEquals(Set.of("O1", "A1", "O2", "A2", "A3", "O3", "C1"), graph.madeFromAlone("RM"));
        assertEquals(Set.of(), graph.madeFromAlone("C1"));
    }

    @Test
    void aPortionIsQuenchedByAStepThatTakesIt() {
        LayerGraph graph = graph(washed().row("workup", "Step", "3", "Operation", "quench", "From", "O2")
                .but("workup", "Gives other", "O3"));
        assertTrue(graph.isQuenched(Set.of("A1", "O2")));
        assertFalse(graph.isQuenched(Set.of("A1", "O1")));
        assertFalse(graph.isQuenched(Set.of()));
    }

    @Test
    void stripThatNamesItsRestConsumesItsSource() {
        LayerGraph graph =
                graph(washed().row("workup", "Step", "3", "Operation", "strip", "From", "O2", "Gives other", "D1+B1")
                        .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "40.00")
                        .row("layers", "Layer", "B1", "Phase", "organic", "Net", "10.00"));
        assertEquals("step 3", graph.consumedBy("O2").orElseThrow());
        LayerGraph rowless =
                graph(washed().row("workup", "Step", "3", "Operation", "distil", "From", "O2", "Gives other", "B1"));
        assertEquals("step 3", rowless.consumedBy("O2").orElseThrow());
    }

    @Test
    void lotThatALotCameFromIsItsParent() {
        LayerGraph graph = graph(washed().row("isolated", "Lot", "C1", "Product", "P", "From", "O2")
                .row("isolated", "Lot", "P1", "Product", "P", "From", "C1"));
        assertEquals(Set.of("C1"), graph.parents("P1"));
        assertEquals(Set.of("O2"), graph.parents("C1"));
        assertTrue(graph.descendsFromLot("P1"));
        assertFalse(graph.descendsFromLot("C1"));
        assertTrue(graph.consumedBy("C1").isEmpty());
    }

    @Test
    void reactionMixtureBesideALabelThatNothingGivesIsNoFaultOfItsOwn() {
        // step 1 used the mixture up; step 3 takes it beside a label that nothing gives
        assertFault(
                Kind.UNKNOWN_SOURCE,
                "O9",
                washed().row("workup", "Step", "3", "Operation", "dry", "From", "RM+O9", "Gives other", "O3"));
        assertFault(
                Kind.TAKEN_AFTER_CONSUMED,
                "RM",
                washed().row("workup", "Step", "3", "Operation", "dry", "From", "RM+O2", "Gives other", "O3"));
        assertFault(
                Kind.TAKEN_AFTER_CONSUMED,
                "RM",
                washed().row("isolated", "Lot", "C1", "Product", "P", "From", "O2")
                        .row("workup", "Step", "3", "Operation", "dry", "From", "RM+C1", "Gives other", "O3"));
    }

    @Test
    void rinseMayGiveALabelAgain() {
        assertEquals(
                List.of(),
                graph(washed().row("workup", "Step", "3", "Operation", "rinse", "From", "A1", "Gives other", "O2"))
                        .faults());
    }

    @Test
    void aSampleThatWasUsedUpIsNoContradiction() {
        SmallBook sampled =
                washed().row("workup", "Step", "3", "Operation", "sample", "From", "O2", "Gives other", "Q1");
        assertEquals(
                List.of(),
                graph(sampled.row("layers", "Layer", "Q1", "Phase", "organic", "Status", "used up"))
                        .faults());
        assertFault(
                Kind.SAID_CONSUMED,
                "A1",
                washed().row("layers", "Layer", "A1", "Phase", "aqueous", "Status", "used up"));
        assertFault(
                Kind.SAID_KEPT, "O1", washed().row("layers", "Layer", "O1", "Phase", "organic", "Status", "to reuse"));
        assertEquals(
                List.of(),
                graph(washed().row("layers", "Layer", "O1", "Phase", "organic", "Status", "lost"))
                        .faults());
    }

    @Test
    void aFaultSaysWhereItShows() {
        List<GraphFault> faults = graph(SmallBook.reaction()
                        .row("workup", "Step", "1", "Operation", "combine", "From", "X", "Gives other", "Y")
                        .row("workup", "Step", "2", "Operation", "combine", "From", "Y", "Gives other", "X"))
                .faults();
        GraphFault cycle =
                faults.stream().filter(f -> f.kind() == Kind.CYCLE).findFirst().orElseThrow();
        assertEquals("Y ← X ← Y", cycle.label());
        assertEquals("2", cycle.by());
        assertEquals("workup.csv line 3, From", cycle.place().inWords());
        GraphFault unknown = graph(washed().row("isolated", "Lot", "C1", "Product", "P", "From", "O9"))
                .faults()
                .get(0);
        assertEquals("lot C1", unknown.by());
        assertEquals("isolated.csv line 2, From", unknown.place().inWords());
    }

    private static void assertFault(Kind kind, String label, SmallBook book) {
        List<GraphFault> faults = graph(book).faults();
        assertEquals(List.of(kind), faults.stream().map(GraphFault::kind).toList());
        assertEquals(label, faults.get(0).label());
    }

    private static LayerGraph graph(SmallBook book) {
        return LayerGraph.of(book.run());
    }

    private static SmallBook washed() {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2");
    }
}
