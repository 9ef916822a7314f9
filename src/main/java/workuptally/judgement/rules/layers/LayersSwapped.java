package workuptally.judgement.rules.layers;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.model.Subject;
import workuptally.model.SubstanceName;
import workuptally.tally.RunTally;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerIdentity.PositionCheck;
import workuptally.tally.layers.LayerIdentity.Verdict;
import workuptally.tally.layers.PartedLiquids;

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
        }
        tally.run().layers().forEach(layer -> phase(findings, tally.run(), layer));
        lowerLayers(findings, tally.evidence().identities());
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
                Subject.ofRun(tally.run().id())
                        .withLayers(pair.stream().map(LayerIdentity::label).toList()),
                layer.row().at("Phase"),
                pair.stream().map(LayersSwapped::asRecorded).collect(Phrase.joining("; ")),
                expected(identity),
                SOURCE,
                Phrase.of(
                        "Add a drop of water to a drop of the layer, or weigh a known volume again, and correct the label after"
                                + " that; keep both layers."));
    }

    private static Phrase asRecorded(LayerIdentity identity) {
        Phrase position = switch (identity.position()) {
            case AGREES -> Phrase.of("; the recorded position agrees with the density, the phase word does not");
            case CONTRADICTS -> Phrase.of("; the recorded position contradicts the density as well");
            case OPEN -> Phrase.NONE;
        };
        return Phrase.of(
                "layer {} is recorded as {}; {}{}",
                identity.label(),
                identity.recorded().word(),
                density(identity),
                position);
    }

    private static void unclear(FindingList findings, LayerIdentity identity, Layer layer) {
        findings.add(
                FindingCode.LAYER_IDENTITY_UNCLEAR,
                Severity.NOTE,
                layer.row().at("Phase"),
                Phrase.of("the density cannot tell which phase layer {} is: {}", identity.label(), density(identity)),
                expected(identity),
                SOURCE,
                Phrase.of("Test with a drop of water and enter the result under Checked by."));
    }

    private static void position(FindingList findings, LayerIdentity identity, Layer layer) {
        findings.add(
                FindingCode.LAYER_POSITION_CONTRADICTION,
                Severity.CHECK,
                layer.row().at("Position"),
                Phrase.of(
                        "layer {} is recorded as {}; {}",
                        identity.label(),
                        layer.position().map(p -> SubstanceName.key(p.name())).orElse(""),
                        density(identity)),
                Phrase.of("the denser layer below; {}", expected(identity)),
                SOURCE,
                Phrase.of("Settle which layer was drained first, and correct position or label."));
    }

    /** The layer typed as lower in Workup; where labels or positions of the contact are already in doubt, that is the same cause. */
    private static void lowerLayers(FindingList findings, List<LayerIdentity> identities) {
        Set<Step> told = new HashSet<>();
        for (LayerIdentity identity : identities) {
            Step step = identity.step();
            boolean inDoubt = identities.stream()
                    .filter(i -> i.step() == step)
                    .anyMatch(i -> i.verdict() == Verdict.SWAPPED || i.position() == PositionCheck.CONTRADICTS);
            Optional<Layer.Phase> typed = step.funnel()
                    .lowerLayer()
                    .map(l -> l == Step.Lower.ORGANIC ? Layer.Phase.ORGANIC : Layer.Phase.AQUEOUS);
            if (!inDoubt
                    && typed.isPresent()
                    && identity.lower().filter(l -> l != typed.get()).isPresent()
                    && told.add(step)) {
                findings.add(
                        FindingCode.LAYER_POSITION_CONTRADICTION,
                        Severity.CHECK,
                        step.row().at("Lower layer"),
                        Phrase.of(
                                "step {}: the {} layer is recorded as the lower one, by density it is the {} one",
                                step.number(),
                                typed.get().word(),
                                identity.lower().get().word()),
                        Phrase.of("the denser layer below; {}", expected(identity)),
                        SOURCE,
                        Phrase.of("Settle which layer was drained first; the labels of both layers rest on it."));
            }
        }
    }

    /** A layer that its contact gives as another liquid than the Layers table says; a rag has no column of its own. */
    private static void phase(FindingList findings, Run run, Layer layer) {
        Optional<Layer.Phase> recorded = layer.phase().filter(p -> p != Layer.Phase.RAG);
        Optional<Step> contact = recorded.flatMap(p -> PartedLiquids.contact(run, layer.label()));
        if (contact.isEmpty()) {
            return;
        }
        Layer.Phase given = PartedLiquids.given(contact.get(), layer.label());
        if (given != recorded.get()) {
            findings.add(
                    FindingCode.LAYER_PHASE_CONTRADICTION,
                    Severity.CHECK,
                    layer.row().at("Phase"),
                    Phrase.of(
                            "layer {} is recorded as {}, step {} gives it as {}",
                            layer.label(),
                            recorded.get().word(),
                            contact.get().number(),
                            given.word()),
                    Phrase.of("the same phase in Layers and Workup"),
                    "the steps of the run",
                    Phrase.of("Correct the wrong entry."));
        }
    }

    private static boolean isChecked(Step step) {
        return step.funnel()
                .checkedBy()
                .filter(c -> c != Step.CheckedBy.NOT_CHECKED)
                .isPresent();
    }

    private static Phrase density(LayerIdentity identity) {
        return identity.densityGramsPerMillilitre()
                .map(d -> Phrase.of(
                        "density {} (u {})",
                        Figure.decimals(d.value(), 3, "g/mL"),
                        Figure.decimals(d.standardUncertainty(), 3, "")))
                .orElse(Phrase.of("density not measured"));
    }

    private static Phrase expected(LayerIdentity identity) {
        return Phrase.of(
                "organic {}, aqueous {} g/mL", range(identity.expectedOrganic()), range(identity.expectedAqueous()));
    }

    private static Phrase range(LayerIdentity.Expected expected) {
        Phrase low = Phrase.of("{}", Figure.decimals(expected.lowGramsPerMillilitre(), 2, ""));
        Phrase high = Phrase.of("{}", Figure.decimals(expected.highGramsPerMillilitre(), 2, ""));
        return low.equals(high) ? low : Phrase.of("{} to {}", low, high);
    }
}
