package workuptally.book;

/**
 * A cell as the file stores it.
 *
 * @param column column from 0
 * @param type what is stored
 * @param text the text; for a number its stored digits, for an error its code
 * @param shownAs how a number is shown
 */
record RawCell(int column, Type type, String text, ShownAs shownAs) {
    /** What a cell stores. */
    enum Type {
        TEXT,
        NUMBER,
        /** A number that a formula gave. */
        COMPUTED_NUMBER,
        ERROR,
        /** A formula without a stored result. */
        NOT_CALCULATED,
        /** Part of merged cells. */
        MERGED
    }

    static RawCell text(int column, String text) {
        return new RawCell(column, Type.TEXT, text, ShownAs.GENERAL);
    }

    RawCell merged() {
        return new RawCell(column, Type.MERGED, text, shownAs);
    }

    boolean isNumber() {
        return type == Type.NUMBER || type == Type.COMPUTED_NUMBER;
    }

    /** True when there is nothing to read. */
    boolean isBlank() {
        return type == Type.TEXT && Words.tidy(text).isEmpty();
    }
}
