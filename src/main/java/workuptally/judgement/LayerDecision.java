package workuptally.judgement;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the evidence about one layer amounts to. A person decides; this lays out what there is.
 *
 * @param layer label
 * @param outcome keep, measure first, or evidence complete
 * @param reason the outcome's reason in a sentence
 * @param conditions conditions R1 to R12 in order
 * @param reextraction gain of the cheapest further extraction, where it can be computed
 */
public record LayerDecision(
        String layer, Outcome outcome, String reason, List<Condition> conditions, Optional<Reextraction> reextraction) {
    /** Copies the list. */
    public LayerDecision {
        conditions = List.copyOf(conditions);
    }

    /** What is missing, as short phrases. */
    public List<String> missing() {
        return conditions.stream()
                .filter(c -> c.state() == State.MISSING)
                .map(Condition::evidence)
                .toList();
    }

    /**
     * One condition.
     *
     * @param id {@code R1} to {@code R12}
     * @param title what it asks, in a few words
     * @param state met, not met, missing, or not asked
     * @param evidence the figure or entry it rests on, or what is missing
     */
    public record Condition(String id, String title, State state, String evidence) {}

    /**
     * Gain of a further extraction.
     *
     * @param solvent solvent
     * @param portions number of portions
     * @param volumeMillilitres volume of each, mL
     * @param distributionRatio D used
     * @param origin where D comes from
     * @param gainGrams product it would bring, g
     * @param gainPercentOfTheory the same, % of theory
     * @param acidMillimoles acid needed first to bring the product into its neutral form, mmol; negative for base; 0 if none
     */
    public record Reextraction(
            String solvent,
            int portions,
            double volumeMillilitres,
            double distributionRatio,
            String origin,
            double gainGrams,
            double gainPercentOfTheory,
            double acidMillimoles) {}

    /** Outcomes. */
    public enum Outcome {
        /** The evidence does not support letting the layer go. */
        KEEP("keep"),
        /** Something is missing that a measurement would give. */
        MEASURE_FIRST("measure first"),
        /** Every condition is met; a person decides under local rules. */
        EVIDENCE_COMPLETE("evidence complete");

        private final String word;

        Outcome(String word) {
            this.word = word;
        }

        /** The words in reports and JSON. */
        public String word() {
            return word;
        }
    }

    /** State of a condition. */
    public enum State {
        MET,
        NOT_MET,
        MISSING,
        /** Asked only where the book calls for it. */
        NOT_ASKED;

        /** The words in reports and JSON. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}
