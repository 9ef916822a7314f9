package workuptally.book;

import java.util.Optional;

/**
 * How a number format shows a stored number.
 *
 * @param kind plain number, date, percentage, or dressed by more than that
 * @param decimals decimals that it always shows, 0 or more
 * @param format the format where it is dressed
 */
record ShownAs(Kind kind, int decimals, Optional<NumberFormat> format) {
    /** What a number format makes of a number. */
    enum Kind {
        PLAIN,
        /** Days counted from 1900. */
        DATE_FROM_1900,
        /** Days counted from 1904. */
        DATE_FROM_1904,
        PERCENT,
        /** With words, marks or other sections, so that what is shown must be looked at number by number. */
        DRESSED
    }

    boolean isDate() {
        return kind == Kind.DATE_FROM_1900 || kind == Kind.DATE_FROM_1904;
    }

    ShownAs(Kind kind, int decimals) {
        this(kind, decimals, Optional.empty());
    }

    /** True where the cell has no number format of its own; the format {@code 0} is one. */
    boolean isGeneral() {
        return this == GENERAL;
    }

    static final ShownAs GENERAL = new ShownAs(Kind.PLAIN, 0);
}
