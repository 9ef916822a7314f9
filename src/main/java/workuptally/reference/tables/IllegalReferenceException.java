package workuptally.reference.tables;

import java.io.IOException;

/** A reference file that cannot be used. The message is one sentence naming file, line and what is wrong. */
public final class IllegalReferenceException extends IOException {
    private static final long serialVersionUID = 1L;

    IllegalReferenceException(String file, long line, String what) {
        super(file + ", line " + line + ": " + what);
    }

    /** A fault of a whole file. */
    public IllegalReferenceException(String file, String what) {
        super(file + ": " + what);
    }

    IllegalReferenceException(String file, String what, IOException cause) {
        super(file + ": " + what, cause);
    }
}
