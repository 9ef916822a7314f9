package workuptally.tally.amounts;

import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;

/**
 * How much of a substance a layer or lot holds.
 *
 * @param substance the substance
 * @param kind how it is known
 * @param massGrams best estimate, g: the assay, or half the limit of a non-detect; empty where only a bound is known
 * @param amountMillimoles the same as amount of substance, mmol; empty without a molar mass
 * @param upperBoundGrams one-sided 95 % upper bound, g
 * @param percentOf mass over theory (wanted products) or over the amount charged (others), %
 * @param evidence the evidence in words, for example {@code HPLC 31.4 mg/mL × 104 mL}
 */
public record Content(
        String substance,
        Kind kind,
        Optional<MeasuredValue> massGrams,
        Optional<MeasuredValue> amountMillimoles,
        OptionalDouble upperBoundGrams,
        OptionalDouble percentOf,
        String evidence) {
    /** Many contents rest on the same words. */
    public Content {
        evidence = evidence.intern();
    }

    /** Evidence of a bound by conservation. */
    public static final String BY_CONSERVATION = "not assayed; at most theory less what was found elsewhere";

    /**
     * True for a bound by conservation: what all such layers of a run hold together is within the same bound, since it is theory less what
     * was found.
     */
    public boolean isBoundedByConservation() {
        return evidence.equals(BY_CONSERVATION);
    }

    /** A content of which nothing is known but why. */
    public static Content unknown(String substance, String evidence) {
        return new Content(
                substance,
                Kind.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                evidence);
    }

    /** How a content is known. */
    public enum Kind {
        /** By its own assay. */
        MEASURED,
        /** Below a detection limit or another bound. */
        BOUND,
        /** Assayed in the parent and in no child: an estimate. */
        CARRIED,
        /** By a partition model: an estimate. */
        PREDICTED,
        /** Not known. */
        UNKNOWN;

        /** The word in reports and JSON. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
