package workuptally.book.files;

import workuptally.book.words.BookWords;

/**
 * A cell as the file stores it.
 *
 * @param column column from 0
 * @param type what is stored
 * @param text the text; for a number its stored digits, for an error its code
 * @param shownAs how a number is shown
 */
public record RawCell(int column, Type type, String text, ShownAs shownAs) {
    /** What a cell stores. */
    public enum Type {
        TEXT,
        NUMBER,
        /** A number that a formula gave. */
        COMPUTED_NUMBER,
        ERROR,
        /** A formula without a stored result. */
        NOT_CALCULATED,
        /** Part of merged cells. */
        MERGED,
        /** Struck out, by the font of the cell or of all its text; the text is what was there. */
        STRUCK
    }

    public static RawCell text(int column, String text) {
        return new RawCell(column, Type.TEXT, text, ShownAs.GENERAL);
    }

    public RawCell merged() {
        return new RawCell(column, Type.MERGED, text, shownAs);
    }

    /** The same, struck out; a blank cell stays blank. */
    RawCell struck() {
        return isBlank() ? this : new RawCell(column, Type.STRUCK, text, shownAs);
    }

    public boolean isStruck() {
        return type == Type.STRUCK;
    }

    public boolean isNumber() {
        return type == Type.NUMBER || type == Type.COMPUTED_NUMBER;
    }

    /** True when there is nothing to read. */
    public boolean isBlank() {
        return type == Type.TEXT && BookWords.tidy(text).isEmpty();
    }
}
