package workuptally.report.workbook;

import java.io.IOException;

/** A workbook that can be read but not written again with marks; the message is one sentence with the remedy. */
public final class UnannotatableBookException extends IOException {
    private static final long serialVersionUID = 1L;

    UnannotatableBookException(String message, RuntimeException cause) {
        super(message, cause);
    }
}
