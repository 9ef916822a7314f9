package workuptally.model;

import java.util.List;

/** What stands under Value of a limit. */
public enum LimitKind {
    /** A number. */
    NUMBER,
    /** A standard uncertainty, absolute or relative. */
    UNCERTAINTY,
    /** A day. */
    DAY,
    /** Yes or no. */
    YES_OR_NO(LimitAnswer.YES, LimitAnswer.NO),
    /** A stage of the product. */
    STAGE_OF_YIELD(LimitAnswer.WORKUP, LimitAnswer.PURIFIED),
    /** Words that are repeated as they stand, or names. */
    TEXT;

    private final List<LimitAnswer> answers;

    LimitKind(LimitAnswer... answers) {
        this.answers = List.of(answers);
    }

    /** What may be answered; empty where no answer is asked for. */
    public List<LimitAnswer> answers() {
        return answers;
    }
}
