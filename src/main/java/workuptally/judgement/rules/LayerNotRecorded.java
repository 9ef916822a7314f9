package workuptally.judgement.rules;

import java.util.List;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.LayerGraph;
import workuptally.tally.LayerTally;
import workuptally.tally.RunTally;

/** A layer that a step gives, nothing consumes and no row of Layers records; it holds the balance of the whole run. */
final class LayerNotRecorded implements RunRule {
    static final String CODE = "layer-missing";

    @Override
    public List<String> codes() {
        return List.of(CODE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        if (tally.run().status() == Run.Status.PLANNED) {
            return findings.list();
        }
        LayerGraph graph = LayerGraph.of(tally.run());
        for (LayerTally layer : tally.layers()) {
            if (layer.terminal() && layer.entry().isEmpty() && !becameLot(tally, graph, layer)) {
                graph.givenBy(layer.label())
                        .ifPresent(
                                step -> findings.add(
                                        CODE,
                                        Severity.HOLD,
                                        step.row().at(column(step, layer.label())),
                                        "step " + step.number() + " gives " + layer.label()
                                                + ", which no row of Layers records and no later step takes",
                                        "a row for every layer that still exists",
                                        FindingList.PRACTICE,
                                        "Find the vessel, weigh it and enter the row; until then the other layers of the run stay too."));
            }
        }
        for (Step step : tally.run().orderedSteps()) {
            boolean shaken = step.operation()
                    .filter(o ->
                            o == Step.Operation.WASH || o == Step.Operation.EXTRACT || o == Step.Operation.BACK_EXTRACT)
                    .isPresent();
            if (shaken && step.gives().isEmpty()) {
                findings.add(
                        CODE,
                        Severity.HOLD,
                        step.row().at("Gives aqueous"),
                        "step " + step.number() + " (" + step.material() + ") gives no layer",
                        "the layers that the contact gave",
                        FindingList.PRACTICE,
                        "Enter the labels of both layers and their rows in Layers.");
            }
        }
        return findings.list();
    }

    /** An organic layer of which a lot without a stated origin was made. */
    private static boolean becameLot(RunTally tally, LayerGraph graph, LayerTally layer) {
        boolean organic = layer.phase().filter(p -> p == Layer.Phase.ORGANIC).isPresent();
        return organic
                && tally.lots().stream()
                        .anyMatch(l -> l.lot().from().isEmpty()
                                && graph.givenBy(l.lot().label()).isEmpty());
    }

    private static String column(Step step, String label) {
        if (step.givesOrganic().contains(label)) {
            return "Gives organic";
        }
        return step.givesAqueous().contains(label) ? "Gives aqueous" : "Gives other";
    }
}
