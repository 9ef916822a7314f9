package workuptally.tally.balance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/**
 * One assay of aliquots of several layers, each diluted in proportion to its volume: c·ΣV is what the layers hold together, and none of
 * them can hold more.
 *
 * <p>The aliquots are measured by the volumes read at the bench, so that what a layer of true volume v holds counts V/v times, V its
 * reading. In which of the layers it is nobody knows: ΣV has the relative uncertainty of the volume that is known worst (JCGM 100:2008,
 * 5.1, for the largest of the possible factors).
 *
 * @param labels labels of the layers, two or more, in order
 * @param together what the layers hold together of one substance
 */
public record CompositeSample(List<String> labels, Content together) {
    /** Copies the list. */
    public CompositeSample {
        labels = List.copyOf(labels);
    }

    /** The labels as in the Assays table: {@code A1 + A2 + A3}. */
    public String name() {
        return String.join(" + ", labels);
    }

    /** The substance looked for. */
    public String substance() {
        return together.substance();
    }

    /** True where it tells of a substance in a layer. */
    public boolean covers(String label, String of) {
        return labels.contains(label) && substance().equalsIgnoreCase(of);
    }

    /** ΣV with the relative uncertainty of the volume that is known worst, mL; empty where a layer has no volume. */
    public static Optional<MeasuredValue> volumeMillilitres(List<LayerTally> layers) {
        if (layers.isEmpty()
                || layers.stream().anyMatch(l -> l.volumeMillilitres().isEmpty())) {
            return Optional.empty();
        }
        List<MeasuredValue> volumes =
                layers.stream().map(l -> l.volumeMillilitres().orElseThrow()).toList();
        double sum = volumes.stream().mapToDouble(MeasuredValue::value).sum();
        MeasuredValue worst = volumes.stream()
                .max(Comparator.comparingDouble(MeasuredValue::relativeStandardUncertainty))
                .orElseThrow();
        return Optional.of(worst.times(sum / worst.value()));
    }

    /**
     * The result below which the layers together hold at most so much, one-sided 95 %: x = m / (ΣV·(1 + 1.645·u)), mg/mL of the layers as
     * they are, u the relative uncertainty of x·ΣV and of the limit.
     *
     * @param mostGrams the most that they may hold together, g, above 0
     * @param volumeMillilitres ΣV
     * @param relativeStandardUncertainty of the method and of the limit together, 1
     */
    public static double mustBeBelowMilligramsPerMillilitre(
            double mostGrams, MeasuredValue volumeMillilitres, double relativeStandardUncertainty) {
        double u = Math.hypot(relativeStandardUncertainty, volumeMillilitres.relativeStandardUncertainty());
        return 1000 * mostGrams / (volumeMillilitres.value() * (1 + MeasuredValue.ONE_SIDED_95 * u));
    }

    /**
     * What is left at most for a layer, or several, when what the other layers were found to hold at least on their own is taken away, g.
     *
     * @param others contents of the other layers by assays of their own
     */
    public double leftAtMostGrams(List<Content> others) {
        double most = together.upperBoundGrams().orElse(Double.POSITIVE_INFINITY);
        return Math.max(
                0,
                most
                        - others.stream()
                                .mapToDouble(CompositeSample::atLeastGrams)
                                .sum());
    }

    /** What an assay shows to be there at least, one-sided 95 %, g; nothing where it is disputed or did not detect it. */
    private static double atLeastGrams(Content content) {
        return content.kind() == Content.Kind.MEASURED && content.isOwnEvidence()
                ? content.massGrams()
                        .map(m -> Math.max(0, m.value() - MeasuredValue.ONE_SIDED_95 * m.standardUncertainty()))
                        .orElse(0.0)
                : 0;
    }

    /**
     * Whether assays of single layers gainsay it: they found more than all layers together hold, or, where each of them has one, less. The
     * differences allowed are those of {@link workuptally.tally.amounts.PooledReadings}.
     *
     * @param own contents of layers of the sample by assays of their own
     */
    boolean isGainsaidBy(List<Content> own) {
        List<MeasuredValue> results = own.stream()
                .filter(c -> c.kind() == Content.Kind.MEASURED)
                .flatMap(c -> c.massGrams().stream())
                .toList();
        if (together.massGrams().isEmpty() || own.isEmpty()) {
            return false;
        }
        double found = results.stream().mapToDouble(MeasuredValue::value).sum();
        double u = results.stream()
                .reduce(MeasuredValue::plus)
                .map(MeasuredValue::standardUncertainty)
                .orElse(0.0);
        MeasuredValue sum = together.massGrams().get();
        boolean isResult = together.kind() == Content.Kind.MEASURED;
        double apart = 2 * Math.hypot(u, isResult ? sum.standardUncertainty() : 0);
        double most = isResult ? sum.value() : together.upperBoundGrams().orElse(Double.POSITIVE_INFINITY);
        double nonDetects = own.stream()
                .filter(c -> c.kind() == Content.Kind.BOUND)
                .map(Content::upperBoundGrams)
                .mapToDouble(b -> b.orElse(Double.POSITIVE_INFINITY))
                .sum();
        boolean allAssayed = own.size() == labels.size();
        return found - apart > most || isResult && allAssayed && sum.value() - apart > found + nonDetects;
    }

    /** The content of one of its layers that has no assay of its own. */
    Content ofPart(double atMostGrams, String words) {
        return new Content(
                substance(),
                Content.Kind.BOUND,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(atMostGrams),
                OptionalDouble.empty(),
                words,
                together.rests() == Content.Rests.DISPUTED_READINGS
                        ? Content.Rests.DISPUTED_READINGS
                        : Content.Rests.COMPOSITE_SAMPLE);
    }
}
