package workuptally.chemistry;

/** A molecular formula that cannot be read. The message is one sentence saying why and what to write instead. */
public final class IllegalFormulaException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    IllegalFormulaException(String message) {
        super(message);
    }
}
