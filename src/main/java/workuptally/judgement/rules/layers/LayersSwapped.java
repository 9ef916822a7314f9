package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerIdentity.PositionCheck;
import workuptally.tally.layers.LayerIdentity.Verdict;

/** Layers whose density, position or step contradicts their label. The label itself is never changed. */
public final class LayersSwapped implements RunRule {

    private static final String SOURCE = "densities of the reference tables; 3u and 0.05 g/mL, common practice";

    @Override
    public List<FindingCode> codes() {
        return List.of(
                FindingCode.LAYERS_SWAPPED,
                FindingCode.LAYER_IDENTITY_UNCLEAR,
                FindingCode.LAYER_POSITION_CONTRADICTION,
                FindingCode.LAYER_PHASE_CONTRADICTION);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (LayerIdentity identity : tally.evidence().identities()) {
            Layer layer = tally.run().layer(identity.label()).orElseThrow();
            if (identity.verdict() == Verdict.SWAPPED) {
                swapped(findings, tally, identity, layer);
            } else if (identity.verdict() == Verdict.CANNOT_TELL && !isChecked(identity.step())) {
                unclear(findings, identity, layer);
            }
            if (identity.position() == PositionCheck.CONTRADICTS && identity.verdict() != Verdict.SWAPPED) {
                position(findings, identity, layer);
            }
            phase(findings, identity, layer);
        }
        return findings.list();
    }

    /** Both layers of a step that were taken for each other are one cause, said at the first of them. */
    private static void swapped(FindingList findings, RunTally tally, LayerIdentity identity, Layer layer) {
        List<LayerIdentity> pair = tally.evidence().identities().stream()
                .filter(i -> i.verdict() == Verdict.SWAPPED && i.step() == identity.step())
                .toList();
        if (pair.get(0) != identity) {
            return;
        }
        findings.add(
                FindingCode.LAYERS_SWAPPED,
                Severity.STOP,
                layer.row().at("Phase"),
                pair.stream().map(LayersSwapped::asRecorded).collect(Collectors.joining("; ")),
                expected(identity),
                SOURCE,
                "Add a drop of water to a drop of the layer, or weigh a known volume again, and correct the label after"
                        + " that; keep both layers.");
    }

    private static String asRecorded(LayerIdentity identity) {
        String position = switch (identity.position()) {
            case AGREES -> "; the recorded position agrees with the density, the phase word does not";
            case CONTRADICTS -> "; the recorded position contradicts the density as well";
            case OPEN -> "";
        };
        return "layer " + identity.label() + " is recorded as "
                + identity.recorded().word() + "; " + density(identity) + position;
    }

    private static void unclear(FindingList findings, LayerIdentity identity, Layer layer) {
        findings.add(
                FindingCode.LAYER_IDENTITY_UNCLEAR,
                Severity.NOTE,
                layer.row().at("Phase"),
                "the density cannot tell which phase layer " + identity.label() + " is: " + density(identity),
                expected(identity),
                SOURCE,
                "Test with a drop of water and enter the result under Checked by.");
    }

    private static void position(FindingList findings, LayerIdentity identity, Layer layer) {
        findings.add(
                FindingCode.LAYER_POSITION_CONTRADICTION,
                Severity.CHECK,
                layer.row().at("Position"),
                "layer " + identity.label() + " is recorded as "
                        + layer.position()
                                .map(p -> p.name().toLowerCase(java.util.Locale.ROOT))
                                .orElse("")
                        + "; " + density(identity),
                "the denser layer below; " + expected(identity),
                SOURCE,
                "Settle which layer was drained first, and correct position or label.");
    }

    private static void phase(FindingList findings, LayerIdentity identity, Layer layer) {
        Step step = identity.step();
        Layer.Phase given = step.givesOrganic().contains(identity.label()) ? Layer.Phase.ORGANIC : Layer.Phase.AQUEOUS;
        if (given != identity.recorded()) {
            findings.add(
                    FindingCode.LAYER_PHASE_CONTRADICTION,
                    Severity.CHECK,
                    layer.row().at("Phase"),
                    "layer " + identity.label() + " is recorded as "
                            + identity.recorded().word() + ", step " + step.number() + " gives it as "
                            + given.word(),
                    "the same phase in Layers and Workup",
                    "the steps of the run",
                    "Correct the wrong entry.");
        }
    }

    private static boolean isChecked(Step step) {
        return step.checkedBy().filter(c -> c != Step.CheckedBy.NOT_CHECKED).isPresent();
    }

    private static String density(LayerIdentity identity) {
        return identity.densityGramsPerMillilitre()
                .map(d -> FindingList.say("density %.3f g/mL (u %.3f)", d.value(), d.standardUncertainty()))
                .orElse("density not measured");
    }

    private static String expected(LayerIdentity identity) {
        return "organic " + range(identity.expectedOrganic()) + ", aqueous " + range(identity.expectedAqueous())
                + " g/mL";
    }

    private static String range(LayerIdentity.Expected expected) {
        String low = FindingList.say("%.2f", expected.lowGramsPerMillilitre());
        String high = FindingList.say("%.2f", expected.highGramsPerMillilitre());
        return low.equals(high) ? low : low + " to " + high;
    }
}
