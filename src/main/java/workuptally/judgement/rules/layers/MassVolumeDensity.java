package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.Optional;
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
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerTally;

/**
 * Mass, volume and density that do not go together: in a step that gives all three, and in a layer whose mass over volume fits no phase of
 * its contact. For a typed density 3 % from 20 mL up, 8 % below (common practice, from the tolerance of cylinders); for an estimated one
 * 8 % beyond 3u.
 */
public final class MassVolumeDensity implements RunRule {
    private static final Set<Layer.Phase> LIQUIDS =
            Set.of(Layer.Phase.ORGANIC, Layer.Phase.AQUEOUS, Layer.Phase.MOTHER_LIQUOR, Layer.Phase.DISTILLATE);

    private final Substances substances;

    /** With the reference data in force. */
    public MassVolumeDensity(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.MASS_VOLUME_DENSITY, FindingCode.LAYER_DENSITY_UNEXPECTED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        tally.run().orderedSteps().stream()
                .filter(step -> !step.isOfPartOf(tally.run()))
                .forEach(step -> judge(findings, step));
        tally.evidence()
                .identities()
                .forEach(identity -> judge(
                        findings, identity, tally.run().layer(identity.label()).orElseThrow()));
        LiquidsOfRun.of(tally.run(), substances)
                .ifPresent(liquids -> tally.layers().stream()
                        .filter(l -> l.entry().isPresent()
                                && l.densityGramsPerMillilitre().isPresent()
                                && tally.evidence().identities().stream()
                                        .noneMatch(i -> i.label().equals(l.label())))
                        .forEach(l -> judge(findings, l, liquids)));
        return findings.list();
    }

    /** A layer of which no phase can be expected, held where its density is far from that of every liquid it may be made of. */
    private void judge(FindingList findings, LayerTally layer, LiquidsOfRun liquids) {
        boolean liquid = layer.phase().filter(LIQUIDS::contains).isPresent();
        MeasuredValue density = layer.densityGramsPerMillilitre().orElseThrow();
        double off = liquids.distance(density.value());
        if (liquid
                && off
                        > substances.value(Threshold.DENSITY_FAR)
                                * substances.value(Threshold.SMALL_VOLUME_TOLERANCE)
                                * density.value()
                && off > substances.value(Threshold.DENSITY_FIT) * density.standardUncertainty()) {
            findings.add(
                    FindingCode.LAYER_DENSITY_UNEXPECTED,
                    Severity.HOLD,
                    layer.entry().orElseThrow().row().at("Volume"),
                    Phrase.of(
                            "layer {}: net mass over volume is {} (u {}), {} off every liquid of the run",
                            layer.label(),
                            Figure.decimals(density.value(), 3, "g/mL"),
                            Figure.decimals(density.standardUncertainty(), 3, ""),
                            Figure.decimals(off, 2, "g/mL")),
                    Phrase.of(
                            "{} to {}, as charged and added",
                            Figure.decimals(liquids.lowGramsPerMillilitre(), 2, ""),
                            Figure.decimals(liquids.highGramsPerMillilitre(), 2, "g/mL")),
                    "densities as entered or of the reference tables; 8 % common practice",
                    Phrase.of("Read the volume and weigh the vessel again; check the tare."));
        }
    }

    private void judge(FindingList findings, Step step) {
        Optional<Double> mass = step.added().massGrams().entered().map(Entered::value);
        Optional<Double> volume =
                step.added().volumeMillilitres().entered().map(Entered::value).filter(v -> v > 0);
        Optional<Double> density = step.added()
                .densityGramsPerMillilitre()
                .entered()
                .map(Entered::value)
                .filter(d -> d > 0);
        if (mass.isEmpty() || volume.isEmpty() || density.isEmpty()) {
            return;
        }
        double measured = mass.get() / volume.get();
        double allowed = volume.get() >= substances.value(Threshold.LARGE_VOLUME)
                ? substances.value(Threshold.LARGE_VOLUME_TOLERANCE)
                : substances.value(Threshold.SMALL_VOLUME_TOLERANCE);
        if (Math.abs(measured / density.get() - 1) > allowed) {
            findings.add(
                    FindingCode.MASS_VOLUME_DENSITY,
                    Severity.CHECK,
                    step.row().at("Density"),
                    Phrase.of(
                            "step {}: {} in {} is {}; the density entered is {}",
                            step.number(),
                            Figure.digits(mass.get(), 4, "g"),
                            Figure.digits(volume.get(), 4, "mL"),
                            Figure.decimals(measured, 3, "g/mL"),
                            Figure.decimals(density.get(), 3, "g/mL")),
                    Phrase.of("within {}", Figure.decimals(100 * allowed, 0, "%")),
                    FindingList.PRACTICE,
                    Phrase.of("Check which of the three was measured and correct the others."));
        }
    }

    private void judge(FindingList findings, LayerIdentity identity, Layer layer) {
        if (identity.densityGramsPerMillilitre().isEmpty()
                || identity.fitsEither(substances.value(Threshold.DENSITY_FIT))) {
            return;
        }
        MeasuredValue density = identity.densityGramsPerMillilitre().get();
        double off = Math.min(
                identity.expectedOrganic().distance(density.value()),
                identity.expectedAqueous().distance(density.value()));
        if (off > substances.value(Threshold.SMALL_VOLUME_TOLERANCE) * density.value()) {
            findings.add(
                    FindingCode.LAYER_DENSITY_UNEXPECTED,
                    off
                                    > substances.value(Threshold.DENSITY_FAR)
                                            * substances.value(Threshold.SMALL_VOLUME_TOLERANCE)
                                            * density.value()
                            ? Severity.HOLD
                            : Severity.CHECK,
                    layer.row().at("Volume"),
                    Phrase.of(
                            "layer {}: net mass over volume is {} (u {}), {} off either phase",
                            identity.label(),
                            Figure.decimals(density.value(), 3, "g/mL"),
                            Figure.decimals(density.standardUncertainty(), 3, ""),
                            Figure.decimals(off, 2, "g/mL")),
                    Phrase.of(
                            "organic {} to {}, aqueous {} to {} (estimate)",
                            Figure.decimals(identity.expectedOrganic().lowGramsPerMillilitre(), 2, ""),
                            Figure.decimals(identity.expectedOrganic().highGramsPerMillilitre(), 2, ""),
                            Figure.decimals(identity.expectedAqueous().lowGramsPerMillilitre(), 2, ""),
                            Figure.decimals(identity.expectedAqueous().highGramsPerMillilitre(), 2, "g/mL")),
                    "densities of the reference tables; 8 % common practice",
                    Phrase.of("Read the volume and weigh the vessel again; check the tare."));
        }
    }
}
