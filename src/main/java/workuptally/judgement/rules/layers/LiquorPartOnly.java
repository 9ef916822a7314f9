package workuptally.judgement.rules.layers;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;

/**
 * Mother liquors of a step entered with less than half of the liquid that was added since something was last evaporated or came off as a liquor: what they hold
 * counts by their volume, and the rest stands elsewhere. Counted is only what steps added by volume; where a contact of two liquids or a
 * step without a readable operation lies between, nothing is said.
 */
public final class LiquorPartOnly implements RunRule {
    private final Substances substances;

    /** With the reference data in force. */
    public LiquorPartOnly(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LAYER_PART_ONLY);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        Run run = tally.run();
        FindingList findings = new FindingList(run.id());
        LayerGraph graph = LayerGraph.of(run);
        Map<Step, List<LayerTally>> byStep = new LinkedHashMap<>();
        for (LayerTally layer : tally.layers()) {
            boolean liquor = layer.terminal()
                    && !layer.aliquot()
                    && !layer.isLost()
                    && layer.entry().isPresent()
                    && layer.phase().filter(p -> p == Layer.Phase.MOTHER_LIQUOR).isPresent();
            if (liquor) {
                graph.givenBy(layer.label())
                        .ifPresent(step -> byStep.computeIfAbsent(step, s -> new ArrayList<>())
                                .add(layer));
            }
        }
        byStep.forEach((step, liquors) -> judge(run, step, liquors, findings));
        return findings.list();
    }

    private void judge(Run run, Step step, List<LayerTally> liquors, FindingList findings) {
        OptionalDouble added = addedMillilitres(run, step, new HashSet<>());
        double found = 0;
        for (LayerTally liquor : liquors) {
            // by mass as if of 1 g/mL, as little as the lighter solvents weigh: half leaves room for that
            found += liquor.volumeMillilitres()
                    .or(liquor::massGrams)
                    .map(MeasuredValue::value)
                    .orElse(Double.POSITIVE_INFINITY);
        }
        if (added.isEmpty() || found >= substances.value(Threshold.LAYER_PART_LEAST) * added.getAsDouble()) {
            return;
        }
        findings.add(
                FindingCode.LAYER_PART_ONLY,
                Severity.HOLD,
                liquors.get(0).entry().orElseThrow().row().at("Volume"),
                Phrase.of(
                        "{}: {} of {} that were added until step {}",
                        String.join(
                                " + ", liquors.stream().map(LayerTally::label).toList()),
                        Figure.decimals(found, 0, "mL"),
                        Figure.decimals(added.getAsDouble(), 0, "mL"),
                        step.number()),
                Phrase.of("{} of it at least", Figure.brief(100 * substances.value(Threshold.LAYER_PART_LEAST), "%")),
                FindingList.PRACTICE,
                Phrase.of(
                        "Read the volume again, or give what stands elsewhere a row of its own, the distillate too."));
    }

    /** Volume added in a step and before it, mL; empty where it cannot be followed. */
    private static OptionalDouble addedMillilitres(Run run, Step step, Set<Step> seen) {
        if (!seen.add(step)) {
            return OptionalDouble.of(0);
        }
        if (isTakingOff(step)) {
            return OptionalDouble.of(0);
        }
        boolean followed = step.operation().isPresent()
                && step.given().organic().isEmpty()
                && step.given().aqueous().isEmpty();
        if (!followed) {
            return OptionalDouble.empty();
        }
        double sum = step.added().portionCount()
                * step.added().volumeMillilitres().entered().map(Entered::value).orElse(0.0);
        for (String source : step.from()) {
            for (Step before : givingBackwards(run, source, step)) {
                if (tookLiquorOff(run, before, source)) {
                    break;
                }
                OptionalDouble more = addedMillilitres(run, before, seen);
                if (more.isEmpty()) {
                    return OptionalDouble.empty();
                }
                sum += more.getAsDouble();
                if (isTakingOff(before)) {
                    break;
                }
            }
        }
        return OptionalDouble.of(sum);
    }

    /** Steps in front of one that gave a label, the last of them first: something may be added again and again under one label. */
    private static List<Step> givingBackwards(Run run, String label, Step step) {
        List<Step> giving = new ArrayList<>();
        for (Step before : run.orderedSteps()) {
            if (before == step) {
                break;
            }
            if (before.gives().contains(label)) {
                giving.add(0, before);
            }
        }
        return giving;
    }

    /** True where what was added came off a solid as a liquor of its own. */
    private static boolean tookLiquorOff(Run run, Step step, String solid) {
        return step.gives().stream()
                .filter(label -> !label.equals(solid))
                .flatMap(label -> run.layer(label).stream())
                .anyMatch(l ->
                        l.phase().filter(p -> p == Layer.Phase.MOTHER_LIQUOR).isPresent());
    }

    private static boolean isTakingOff(Step step) {
        return step.operation().filter(Operation::takesSolventOff).isPresent();
    }
}
