package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.balance.BecameLot;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.UnlabelledPhase;

/**
 * A layer that a step gives, nothing consumes and no row of Layers records, or a phase of a contact, or the liquid that a solid was
 * parted from, without any label; it holds the balance of the whole run.
 */
public final class LayerNotRecorded implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LAYER_MISSING);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        if (tally.run().status() == Run.Status.PLANNED) {
            return findings.list();
        }
        notInLayers(tally, findings);
        tally.evidence().gaps().unlabelledPhases().forEach(phase -> withoutLabel(phase, findings));
        return findings.list();
    }

    private static void notInLayers(RunTally tally, FindingList findings) {
        LayerGraph graph = LayerGraph.of(tally.run());
        BecameLot becameLot = new BecameLot(graph, tally.layers(), tally.lots());
        for (LayerTally layer : tally.layers()) {
            boolean dryingCake =
                    layer.phase().filter(p -> p == Layer.Phase.SOLID).isPresent();
            if (layer.terminal() && layer.entry().isEmpty() && dryingCake) {
                graph.givenBy(layer.label()).ifPresent(step -> cake(step, layer.label(), findings));
            } else if (layer.terminal() && layer.entry().isEmpty() && !becameLot.is(layer)) {
                graph.givenBy(layer.label())
                        .ifPresent(
                                step -> findings.add(
                                        FindingCode.LAYER_MISSING,
                                        Severity.HOLD,
                                        step.row().at(column(step, layer.label())),
                                        Phrase.of(
                                                "step {} gives {}, which no row of Layers records and no later step takes",
                                                step.number(),
                                                layer.label()),
                                        Phrase.of("a row for every layer that still exists"),
                                        FindingList.PRACTICE,
                                        Phrase.of(
                                                "Find the vessel, weigh it and enter the row; until then the other layers of the run stay too.")));
            }
        }
    }

    private static void withoutLabel(UnlabelledPhase phase, FindingList findings) {
        Step step = phase.step();
        if (phase.isLiquor()) {
            liquor(step, findings);
            return;
        }
        findings.add(
                FindingCode.LAYER_MISSING,
                Severity.HOLD,
                step.row().at(phase.phase() == Layer.Phase.ORGANIC ? "Gives organic" : "Gives aqueous"),
                Phrase.of(
                        "step {} ({}) gives no label to its {} layer",
                        step.number(),
                        step.added().material(),
                        phase.phase().word()),
                Phrase.of("the labels of both layers of a contact"),
                FindingList.PRACTICE,
                Phrase.of(
                        "Find the vessel and enter its label in Workup and its row in Layers; until then the other layers of the"
                                + " run stay too."));
    }

    private static void liquor(Step step, FindingList findings) {
        findings.add(
                FindingCode.LAYER_MISSING,
                Severity.HOLD,
                step.row().at("Gives other"),
                Phrase.of(
                        "step {} ({}) gives {} and no label to the liquid that it was in",
                        step.number(),
                        step.operation().map(Step.Operation::word).orElse(""),
                        String.join(", ", step.gives())),
                Phrase.of("a label for the filtrate as well"),
                FindingList.PRACTICE,
                Phrase.of(
                        "Find the filtrate, enter its label in Workup and its row in Layers; until then the other layers of the run"
                                + " stay too. Where {} is what evaporating left, enter that step.",
                        String.join(", ", step.gives())));
    }

    private static void cake(Step step, String label, FindingList findings) {
        findings.add(
                FindingCode.LAYER_MISSING,
                Severity.CHECK,
                step.row().at(column(step, label)),
                Phrase.of("step {} gives the drying cake {}, which no row of Layers records", step.number(), label),
                Phrase.of("a row with the mass of the cake"),
                FindingList.PRACTICE,
                Phrase.of(
                        "Weigh the cake and enter the row: what it holds of the product cannot be estimated without its mass."));
    }

    private static String column(Step step, String label) {
        if (step.given().organic().contains(label)) {
            return "Gives organic";
        }
        return step.given().aqueous().contains(label) ? "Gives aqueous" : "Gives other";
    }
}
