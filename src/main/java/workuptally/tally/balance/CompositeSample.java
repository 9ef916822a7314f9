package workuptally.tally.balance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.model.SubstanceName;
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
        return labels.contains(label) && SubstanceName.same(substance(), of);
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

    /** True where both tell of one substance in one layer. */
    public boolean overlaps(CompositeSample other) {
        return SubstanceName.same(substance(), other.substance())
                && labels.stream().anyMatch(other.labels::contains);
    }

    /** The content of a single layer by an assay of its own, as a sample of one. */
    static CompositeSample ofOne(String label, Content own) {
        return new CompositeSample(List.of(label), own);
    }

    /** What is there at most, one-sided 95 %, g. */
    double atMostGrams() {
        return together.upperBoundGrams().orElse(Double.POSITIVE_INFINITY);
    }

    /** What was found, g; a non-detect at its limit. */
    double estimateGrams() {
        return isResult() ? measuredGrams() : atMostGrams();
    }

    /** What was found, g; nothing where it was not detected. */
    double measuredGrams() {
        return together.massGrams()
                .filter(m -> isResult())
                .map(MeasuredValue::value)
                .orElse(0.0);
    }

    private boolean isResult() {
        return together.kind() == Content.Kind.MEASURED;
    }

    /**
     * What is left at most for some of its layers, when what the others were found to hold at least, each or several of them together, is
     * taken away, g.
     *
     * @param parts labels of those layers
     * @param others assays of layers, alone or together
     */
    double leftAtMostGrams(List<String> parts, List<CompositeSample> others) {
        List<String> beside = labels.stream().filter(l -> !parts.contains(l)).toList();
        List<CompositeSample> apart =
                OverlappingSamples.mostApart(beside, relevant(others), CompositeSample::atLeastGrams);
        return Math.max(
                0,
                atMostGrams()
                        - apart.stream()
                                .mapToDouble(CompositeSample::atLeastGrams)
                                .sum());
    }

    /** What is there at least, one-sided 95 %, g; nothing where it is disputed or was not detected. */
    private double atLeastGrams() {
        return isResult() && together.isOwnEvidence()
                ? together.massGrams()
                        .map(m -> Math.max(0, m.value() - MeasuredValue.ONE_SIDED_95 * m.standardUncertainty()))
                        .orElse(0.0)
                : 0;
    }

    private List<CompositeSample> relevant(List<CompositeSample> others) {
        return others.stream().filter(o -> o != this && overlaps(o)).toList();
    }

    /**
     * Whether other assays gainsay it: such as lie within its layers found more than all of them together hold, or such as cover its layers
     * less. The differences allowed are those of {@link workuptally.tally.amounts.PooledReadings}.
     *
     * @param all assays of single layers and of several together
     * @param agreeWithin standard uncertainties of their difference within which two results agree
     */
    boolean isGainsaidBy(List<CompositeSample> all, double agreeWithin) {
        List<CompositeSample> others = relevant(all);
        if (together.massGrams().isEmpty() || others.isEmpty()) {
            return false;
        }
        List<CompositeSample> within = OverlappingSamples.mostApart(labels, others, CompositeSample::measuredGrams);
        boolean tooLittle = sum(within) - agreeWithin * uncertaintyBeside(within) > estimateGrams();
        Optional<List<CompositeSample>> around =
                OverlappingSamples.leastCover(labels, others, CompositeSample::estimateGrams);
        boolean tooMuch = isResult()
                && around.filter(c -> measuredGrams() - agreeWithin * uncertaintyBeside(c) > sum(c))
                        .isPresent();
        return tooLittle || tooMuch;
    }

    private static double sum(List<CompositeSample> samples) {
        return samples.stream().mapToDouble(CompositeSample::estimateGrams).sum();
    }

    /** Standard uncertainty of the difference between its result and that of others, g. */
    private double uncertaintyBeside(List<CompositeSample> others) {
        double u = others.stream()
                .filter(CompositeSample::isResult)
                .flatMap(o -> o.together.massGrams().stream())
                .reduce(MeasuredValue::plus)
                .map(MeasuredValue::standardUncertainty)
                .orElse(0.0);
        double own = together.massGrams()
                .filter(m -> isResult())
                .map(MeasuredValue::standardUncertainty)
                .orElse(0.0);
        return Math.hypot(u, own);
    }

    /** The same, gainsaid by another assay. */
    CompositeSample disputed() {
        return new CompositeSample(
                labels,
                new Content(
                        together.substance(),
                        together.kind(),
                        together.massGrams(),
                        together.amountMillimoles(),
                        together.upperBoundGrams(),
                        together.percentOf(),
                        together.evidence(),
                        Content.Rests.DISPUTED_READINGS));
    }

    /** The content of one of its layers, or several, that have no assay of their own. */
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

    /** True where it tells of a substance of this name. */
    public boolean isOf(String name) {
        return SubstanceName.same(substance(), name);
    }
}
