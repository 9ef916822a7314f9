package workuptally.cli;

import workuptally.judgement.Review;
import workuptally.model.Severity;

/** What a command tells its caller; of several books the highest counts. */
enum ExitCode {
    /** The files were written, or there is nothing to settle. */
    DONE(0),
    /** Stops or holds were found: {@code check}, and {@code review --strict}. */
    TO_SETTLE(1),
    /** Unreadable input, wrong use or unwritable output. */
    UNUSABLE(2),
    /** A fault of the program. */
    FAULT(3);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    int number() {
        return number;
    }

    /** The higher of two. */
    ExitCode and(ExitCode other) {
        return number >= other.number ? this : other;
    }

    /** Whether a review holds stops or holds. */
    static ExitCode of(Review review) {
        return review.findings().stream().anyMatch(f -> f.severity().compareTo(Severity.HOLD) <= 0) ? TO_SETTLE : DONE;
    }
}
