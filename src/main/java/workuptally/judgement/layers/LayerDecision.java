package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import workuptally.model.Phrase;
import workuptally.model.SubstanceName;

/**
 * What the evidence about one layer amounts to. A person decides; this lays out what there is.
 *
 * @param layer label
 * @param outcome keep, measure first, or evidence complete
 * @param reason the outcome's reason in a sentence
 * @param conditions conditions R1 to R12 in order
 * @param atMost the most it holds of a wanted product; empty where that cannot be told
 * @param departure how it has left the bench, if it has
 * @param notJudged materials it can hold whose reactivity no table tells, as typed
 * @param unreadNotes notes of the layer and its assays that were not understood, as typed; none where the layer is kept anyway
 */
public record LayerDecision(
        String layer,
        Outcome outcome,
        Phrase reason,
        List<Condition> conditions,
        Optional<AtMost> atMost,
        Optional<Departure> departure,
        List<String> notJudged,
        List<String> unreadNotes) {
    /** Copies the lists. */
    public LayerDecision {
        conditions = List.copyOf(conditions);
        notJudged = List.copyOf(notJudged);
        unreadNotes = List.copyOf(unreadNotes);
    }

    /** A decision about a layer that is there, and all of whose materials are listed. */
    public LayerDecision(
            String layer, Outcome outcome, Phrase reason, List<Condition> conditions, Optional<AtMost> atMost) {
        this(layer, outcome, reason, conditions, atMost, Optional.empty(), List.of(), List.of());
    }

    /** True where it was let go, all of it, before its evidence was complete: nothing is left to keep or to measure. */
    public boolean isGoneEarly() {
        return outcome != Outcome.EVIDENCE_COMPLETE && isGone();
    }

    /** True where all of it has left the bench: it is no kept layer any more, whatever its evidence. */
    public boolean isGone() {
        return departure.filter(Departure::whole).isPresent();
    }

    /** What the decision says nothing about: {@code not judged: reactivity of X}, {@code note not read: '…'}; empty where nothing is left out. */
    public Phrase silence() {
        List<Phrase> left = new ArrayList<>();
        if (!notJudged.isEmpty()) {
            left.add(Phrase.of("not judged: reactivity of {}", String.join(", ", notJudged)));
        }
        unreadNotes.forEach(note -> left.add(Phrase.of("note not read: '{}'", note)));
        return left.isEmpty() ? Phrase.NONE : Phrase.join("; ", left);
    }

    /** The reason, and behind it what the decision says nothing about. */
    public Phrase reasonAndSilence() {
        Phrase silence = silence();
        return silence.isEmpty() ? reason : reason.isEmpty() ? silence : Phrase.of("{}; {}", reason, silence);
    }

    /** What is missing, as short phrases. */
    public List<Phrase> missing() {
        return conditions.stream()
                .map(Condition::missing)
                .filter(m -> !m.isEmpty())
                .toList();
    }

    /**
     * The largest share that a layer may hold of a wanted product, one-sided 95 %.
     *
     * @param product product
     * @param grams mass, g
     * @param percentOfTheory the same, % of theory
     */
    public record AtMost(String product, double grams, double percentOfTheory) {
        /** True for the bound on a product of this name. */
        public boolean isOf(String name) {
            return SubstanceName.same(product, name);
        }
    }

    /**
     * One condition.
     *
     * @param criterion what is asked
     * @param state met, not met, missing, or not asked
     * @param evidence the figure or entry it rests on, or what is missing
     * @param missing what was not measured, also where the condition is met without it; empty if nothing
     */
    public record Condition(Criterion criterion, State state, Phrase evidence, Phrase missing) {
        /** A condition whose evidence says what is missing. */
        public Condition(Criterion criterion, State state, Phrase evidence) {
            this(criterion, state, evidence, state == State.MISSING ? evidence : Phrase.NONE);
        }

        /** Its number, {@code R1} to {@code R12}. */
        public String id() {
            return criterion.id();
        }

        /** Equal in every part; see the contributor guide on records as keys. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Condition condition
                    && criterion == condition.criterion
                    && state == condition.state
                    && evidence.equals(condition.evidence)
                    && missing.equals(condition.missing);
        }

        @Override
        public int hashCode() {
            return 31 * criterion.hashCode() + evidence.hashCode();
        }
    }

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
