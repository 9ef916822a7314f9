package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Field.Entered;
import workuptally.model.Run;
import workuptally.model.SubstanceName;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.InstrumentUncertainty;
import workuptally.tally.amounts.Omissions;

/**
 * What aliquots for assays took out of layers that were worked up further: m·Va/V, m the content of the layer by its own assay, Va the
 * aliquot and V the layer, mL. It never reaches a lot, so that a balance counts it, once: not where a sample of the steps was taken from the
 * layer and assayed itself, and the larger aliquot where two rows are about one substance. A layer that nothing consumed counts whole.
 */
final class AliquotContents {
    private final Run run;
    private final Readings readings;
    private final InstrumentUncertainty uncertainty;
    private final LayerGraph graph;
    private final Omissions omissions;

    AliquotContents(
            Run run, Readings readings, InstrumentUncertainty uncertainty, LayerGraph graph, Omissions omissions) {
        this.run = run;
        this.readings = readings;
        this.uncertainty = uncertainty;
        this.graph = graph;
        this.omissions = omissions;
    }

    /** The volume of a sample by the aliquot of its own assays, the largest, mL; empty where none was entered. */
    Optional<Entered> ofSample(String label) {
        return run.assays().stream()
                .filter(a -> a.sample().equals(label))
                .flatMap(a -> a.aliquotMillilitres().entered().stream())
                .filter(a -> a.value() > 0)
                .max(Comparator.comparingDouble(Entered::value));
    }

    /** A layer with what was taken out of it. */
    LayerTally taken(LayerTally layer, Map<String, LayerTally> layers) {
        if (layer.terminal() || layer.aliquot() || layer.volumeMillilitres().isEmpty()) {
            return layer;
        }
        List<Content> taken = new ArrayList<>();
        for (Content content : layer.contents()) {
            boolean measured = content.kind() == Content.Kind.MEASURED && content.isOwnEvidence();
            if (measured && !isSampled(layer.label(), content.substance(), layers)) {
                aliquot(layer.label(), content.substance())
                        .flatMap(a -> taken(layer, content, a))
                        .ifPresent(taken::add);
            }
        }
        return layer.withTaken(taken);
    }

    private boolean isSampled(String label, String substance, Map<String, LayerTally> layers) {
        return graph.children(label).stream()
                .filter(graph::isAliquot)
                .flatMap(child -> Optional.ofNullable(layers.get(child)).stream())
                .flatMap(sample -> sample.contents().stream())
                .anyMatch(c -> c.isOf(substance) && c.massGrams().isPresent());
    }

    private Optional<Entered> aliquot(String label, String substance) {
        return run.assays().stream()
                .filter(a -> a.sample().equals(label) && SubstanceName.same(run.countsAs(a.substance()), substance))
                .flatMap(a -> a.aliquotMillilitres().entered().stream())
                .filter(a -> a.value() > 0)
                .max(Comparator.comparingDouble(Entered::value));
    }

    private Optional<Content> taken(LayerTally layer, Content content, Entered aliquot) {
        MeasuredValue volume = layer.volumeMillilitres().orElseThrow();
        if (aliquot.value() > volume.value()) {
            omissions.add(
                    "aliquot of " + layer.label(),
                    "it is larger than the layer",
                    "Aliquot in Assays and Volume of " + layer.label() + " in Layers");
            return Optional.empty();
        }
        MeasuredValue share = readings.enter(
                        "aliquot of layer " + layer.label(),
                        "mL",
                        aliquot.value(),
                        uncertainty.deliveredVolumeMillilitres(aliquot),
                        () -> aliquot.place().inWords())
                .over(volume);
        return Optional.of(new Content(
                content.substance(),
                content.kind(),
                content.massGrams().map(share::times),
                content.amountMillimoles().map(share::times),
                scaled(content.upperBoundGrams(), share.value()),
                scaled(content.percentOf(), share.value()),
                "aliquot of " + aliquot.asTyped() + " mL, " + content.evidence(),
                content.rests()));
    }

    private static OptionalDouble scaled(OptionalDouble figure, double factor) {
        return figure.isPresent() ? OptionalDouble.of(figure.getAsDouble() * factor) : OptionalDouble.empty();
    }
}
