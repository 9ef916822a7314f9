package workuptally.tally.amounts;

import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.model.SubstanceName;

/**
 * How much of a substance a layer or lot holds.
 *
 * @param substance the substance
 * @param kind how it is known
 * @param massGrams best estimate, g: the assay, or half the limit of a non-detect; empty where only a bound is known
 * @param amountMillimoles the same as amount of substance, mmol; empty without a molar mass
 * @param upperBoundGrams one-sided 95 % upper bound, g; of a content not looked for, what the run lacks of it at most
 * @param percentOf mass over theory (wanted products) or over the amount charged (others), %
 * @param evidence the evidence in words, for example {@code HPLC 31.4 mg/mL × 104 mL}
 * @param rests what the figure rests on
 */
public record Content(
        String substance,
        Kind kind,
        Optional<MeasuredValue> massGrams,
        Optional<MeasuredValue> amountMillimoles,
        OptionalDouble upperBoundGrams,
        OptionalDouble percentOf,
        String evidence,
        Rests rests) {
    /** Many contents rest on the same words. */
    public Content {
        evidence = evidence.intern();
    }

    /** A content that rests on readings of its own portion. */
    public Content(
            String substance,
            Kind kind,
            Optional<MeasuredValue> massGrams,
            Optional<MeasuredValue> amountMillimoles,
            OptionalDouble upperBoundGrams,
            OptionalDouble percentOf,
            String evidence) {
        this(substance, kind, massGrams, amountMillimoles, upperBoundGrams, percentOf, evidence, Rests.OWN_READING);
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
                evidence,
                Rests.NOTHING);
    }

    /** The same, where nobody looked for the substance, at most what the run lacks of it, g. */
    public Content atMostByConservation(Kind as, double grams, String words) {
        return new Content(
                substance,
                as,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(grams),
                OptionalDouble.empty(),
                words,
                Rests.CONSERVATION);
    }

    /** The same, where nobody looked for the substance, at most what the partition model leaves there, g. */
    public Content atMostByPrediction(double grams, String words) {
        return new Content(
                substance,
                Kind.BOUND,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(grams),
                OptionalDouble.empty(),
                words,
                Rests.PREDICTION);
    }

    /** The same with other words of evidence. */
    public Content saying(String words) {
        return new Content(substance, kind, massGrams, amountMillimoles, upperBoundGrams, percentOf, words, rests);
    }

    /** True where a reading of the portion, alone or in a composite sample, tells it, and no other reading gainsays it. */
    public boolean isOwnEvidence() {
        return rests == Rests.COMPOSITE_SAMPLE
                || massGrams.isPresent() && (rests == Rests.OWN_READING || rests == Rests.READINGS_APART);
    }

    /**
     * True for a bound by conservation: what all such layers of a run hold together is within the same bound, since it is theory less what
     * was found.
     */
    public boolean isBoundedByConservation() {
        return rests == Rests.CONSERVATION;
    }

    /** True for what is held of a substance of this name. */
    public boolean isOf(String name) {
        return SubstanceName.same(substance, name);
    }

    /** What a content rests on. */
    public enum Rests {
        /** A reading of the portion. */
        OWN_READING,
        /** Readings of the portion that do not agree, all of them far below what a layer may hold: the larger counts. */
        READINGS_APART,
        /** Readings of the portion that do not agree: the larger counts meanwhile. */
        DISPUTED_READINGS,
        /** A reading of aliquots of this and other portions together: none of them holds more than all. */
        COMPOSITE_SAMPLE,
        /** What was read in the portion it was made from. */
        PARENT,
        /** What earlier batches of the series held in it, where the laboratory takes that for evidence. */
        EXPERIENCE,
        /** The partition model, where the laboratory takes it for evidence. */
        PREDICTION,
        /** Theory less what was found elsewhere. */
        CONSERVATION,
        /** Nothing. */
        NOTHING;

        /** The words in JSON, for example {@code own reading}. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
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
