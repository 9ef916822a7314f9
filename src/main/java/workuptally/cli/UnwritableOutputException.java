package workuptally.cli;

import java.io.IOException;

/** Files that could not be put where they belong; the message is one sentence with the remedy. */
final class UnwritableOutputException extends IOException {
    private static final long serialVersionUID = 1L;

    UnwritableOutputException(String message) {
        super(message);
    }

    UnwritableOutputException(String message, IOException cause) {
        super(message, cause);
    }
}
