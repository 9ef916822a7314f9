package workuptally.tally.layers;

import java.util.List;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.tally.amounts.Content;

/**
 * One layer: its place in the workup, its mass and what it holds.
 *
 * @param label label
 * @param entry its row in the Layers table, if there is one
 * @param phase phase as recorded, else as the step gives it; the latter also where a liquid from a funnel cannot be what is recorded
 * @param terminal true where no later step consumes it
 * @param aliquot true for a sample taken for analysis
 * @param endsWorkup false for liquors of a purification, which belong to that second balance
 * @param massGrams mass, g
 * @param volumeMillilitres volume, mL, above 0
 * @param contents what it holds
 * @param taken what aliquots for its own assays took out of a layer that was worked up further, where no sample of the steps counts it
 */
public record LayerTally(
        String label,
        Optional<Layer> entry,
        Optional<Layer.Phase> phase,
        boolean terminal,
        boolean aliquot,
        boolean endsWorkup,
        Optional<MeasuredValue> massGrams,
        Optional<MeasuredValue> volumeMillilitres,
        List<Content> contents,
        List<Content> taken) {
    /** Copies the lists. */
    public LayerTally {
        contents = List.copyOf(contents);
        taken = List.copyOf(taken);
    }

    /** A layer from which no aliquot was taken that counts by itself. */
    public LayerTally(
            String label,
            Optional<Layer> entry,
            Optional<Layer.Phase> phase,
            boolean terminal,
            boolean aliquot,
            boolean endsWorkup,
            Optional<MeasuredValue> massGrams,
            Optional<MeasuredValue> volumeMillilitres,
            List<Content> contents) {
        this(label, entry, phase, terminal, aliquot, endsWorkup, massGrams, volumeMillilitres, contents, List.of());
    }

    /** Density, g/mL; empty where mass or volume is not known. */
    public Optional<MeasuredValue> densityGramsPerMillilitre() {
        return massGrams.isPresent() && volumeMillilitres.isPresent()
                ? Optional.of(massGrams.get().over(volumeMillilitres.get()))
                : Optional.empty();
    }

    /**
     * True where a balance of the workup counts the layer: nothing consumed it, or its status says against the steps that it is still
     * there. The contradiction stops the run, and the balance shows it by reading over.
     */
    public boolean counts() {
        return endsWorkup && (terminal || saidToBeThere());
    }

    private boolean saidToBeThere() {
        return entry.flatMap(l -> l.custody().status())
                .filter(s -> s == Layer.Status.KEPT || s == Layer.Status.TO_REUSE)
                .isPresent();
    }

    /** True for a portion that was spilled or went without a record. */
    public boolean isLost() {
        return entry.flatMap(l -> l.custody().status())
                .filter(s -> s == Layer.Status.LOST)
                .isPresent();
    }

    /** The same layer with other contents. */
    public LayerTally withContents(List<Content> other) {
        return new LayerTally(
                label, entry, phase, terminal, aliquot, endsWorkup, massGrams, volumeMillilitres, other, taken);
    }

    /** The same layer with what aliquots took out of it. */
    LayerTally withTaken(List<Content> aliquots) {
        return new LayerTally(
                label, entry, phase, terminal, aliquot, endsWorkup, massGrams, volumeMillilitres, contents, aliquots);
    }
}
