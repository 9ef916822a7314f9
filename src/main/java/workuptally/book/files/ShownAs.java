package workuptally.book.files;

import java.util.Optional;

/**
 * How a number format shows a stored number.
 *
 * @param kind plain number, date, percentage, or dressed by more than that
 * @param decimals decimals that it always shows, 0 or more
 * @param format the format where it is dressed
 */
public record ShownAs(Kind kind, int decimals, Optional<NumberFormat> format) {
    /** What a number format makes of a number. */
    public enum Kind {
        PLAIN,
        /** Days counted from 1900. */
        DATE_FROM_1900,
        /** Days counted from 1904. */
        DATE_FROM_1904,
        PERCENT,
        /** With words, marks or other sections, so that what is shown must be looked at number by number. */
        DRESSED
    }

    public boolean isDate() {
        return kind == Kind.DATE_FROM_1900 || kind == Kind.DATE_FROM_1904;
    }

    public ShownAs(Kind kind, int decimals) {
        this(kind, decimals, Optional.empty());
    }

    /** True where the cell has no number format of its own; the format {@code 0} is one. */
    public boolean isGeneral() {
        return this == GENERAL;
    }

    static final ShownAs GENERAL = new ShownAs(Kind.PLAIN, 0);
    /** A zero in a sheet that shows none. */
    static final ShownAs HIDDEN_ZERO = new ShownAs(Kind.DRESSED, 0, Optional.of(NumberFormat.of("General;-General;")));
}
