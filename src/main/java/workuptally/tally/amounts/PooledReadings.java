package workuptally.tally.amounts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import workuptally.measure.MeasuredValue;
import workuptally.reference.bench.Threshold;

/**
 * Several readings of one substance in one portion, made one content.
 *
 * <p>Readings agree where no two differ by more than {@link Threshold#READINGS_AGREE k}·√(u₁² + u₂²), and a non-detect agrees with what may lie below its
 * limit. Agreeing results give their mean; a non-detect beside a result adds no figure, and of several non-detects the one with the highest
 * limit counts. The bound is the largest that any of them gives alone, so that a second reading never lets a portion pass that the first did
 * not. Readings that do not agree are disputed: the largest counts until someone settles which is right.
 */
public final class PooledReadings {
    private final Substances substances;

    /** With the reference data in force. */
    public PooledReadings(Substances substances) {
        this.substances = substances;
    }

    /** One content of all readings of a substance in a portion, at least one. */
    Content of(List<Content> readings) {
        if (readings.size() == 1) {
            return readings.get(0);
        }
        List<Content> results = ofKind(readings, Content.Kind.MEASURED);
        List<Content> counted = results.isEmpty() ? List.of(highest(readings)) : results;
        boolean agree = agree(readings);
        Content largest = largest(counted);
        String words = readings.stream().map(Content::evidence).collect(Collectors.joining(" and "));
        double bound = readings.stream()
                .flatMap(c -> c.upperBoundGrams().stream().boxed())
                .max(Double::compare)
                .orElse(0.0);
        return new Content(
                largest.substance(),
                largest.kind(),
                agree ? mean(counted.stream().map(Content::massGrams).toList()) : largest.massGrams(),
                agree ? mean(counted.stream().map(Content::amountMillimoles).toList()) : largest.amountMillimoles(),
                OptionalDouble.of(bound),
                OptionalDouble.empty(),
                agree ? words : words + ", which do not agree",
                agree ? Content.Rests.OWN_READING : Content.Rests.DISPUTED_READINGS);
    }

    /**
     * A content beside a reading that does not count for it, such as an uncalibrated one: the same, unless that finds clearly more, by more
     * than such a method may be off. Then both are disputed and the larger counts.
     */
    Content gainsaid(Content counted, Content shown) {
        double atMost = Math.max(counted.upperBoundGrams().orElse(Double.POSITIVE_INFINITY), value(counted));
        double found = value(shown);
        if (found / substances.value(Threshold.SCREENING_OFF_BY) <= atMost) {
            return counted;
        }
        return new Content(
                counted.substance(),
                Content.Kind.MEASURED,
                shown.massGrams(),
                shown.amountMillimoles(),
                OptionalDouble.of(Math.max(atMost, shown.upperBoundGrams().orElse(found))),
                OptionalDouble.empty(),
                counted.evidence() + " and " + shown.evidence() + ", which do not agree",
                Content.Rests.DISPUTED_READINGS);
    }

    /** True where two results differ by no more than their uncertainties explain. */
    public boolean agree(MeasuredValue one, MeasuredValue other) {
        double apart = Math.abs(one.value() - other.value());
        return apart
                <= substances.value(Threshold.READINGS_AGREE)
                        * Math.hypot(one.standardUncertainty(), other.standardUncertainty());
    }

    private boolean agree(List<Content> readings) {
        for (Content one : readings) {
            for (Content other : readings) {
                if (one.kind() == Content.Kind.MEASURED && !agree(one, other)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean agree(Content result, Content other) {
        MeasuredValue mass = result.massGrams().orElseThrow();
        if (other.kind() == Content.Kind.MEASURED) {
            return agree(mass, other.massGrams().orElseThrow());
        }
        return mass.value() - substances.value(Threshold.READINGS_AGREE) * mass.standardUncertainty()
                <= other.upperBoundGrams().orElse(Double.POSITIVE_INFINITY);
    }

    private static List<Content> ofKind(List<Content> readings, Content.Kind kind) {
        return readings.stream().filter(c -> c.kind() == kind).toList();
    }

    private static Content highest(List<Content> nonDetects) {
        return nonDetects.stream()
                .reduce((a, b) ->
                        b.upperBoundGrams().orElse(0) > a.upperBoundGrams().orElse(0) ? b : a)
                .orElseThrow();
    }

    private static Content largest(List<Content> contents) {
        return contents.stream().reduce((a, b) -> value(b) > value(a) ? b : a).orElseThrow();
    }

    private static double value(Content content) {
        return content.massGrams().map(MeasuredValue::value).orElse(0.0);
    }

    private static Optional<MeasuredValue> mean(List<Optional<MeasuredValue>> values) {
        return values.stream().allMatch(Optional::isPresent)
                ? values.stream()
                        .map(Optional::orElseThrow)
                        .reduce(MeasuredValue::plus)
                        .map(sum -> sum.over(values.size()))
                : Optional.empty();
    }
}
