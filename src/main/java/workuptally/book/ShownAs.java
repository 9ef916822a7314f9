package workuptally.book;

/**
 * How a number format shows a stored number.
 *
 * @param kind plain number, date or percentage
 * @param decimals decimals that it always shows, 0 or more
 * @param unitText unit that the format appends, {@code mL}; empty if none
 */
record ShownAs(Kind kind, int decimals, String unitText) {
    /** What a number format makes of a number. */
    enum Kind {
        PLAIN,
        /** Days counted from 1900. */
        DATE_FROM_1900,
        /** Days counted from 1904. */
        DATE_FROM_1904,
        PERCENT
    }

    boolean isDate() {
        return kind == Kind.DATE_FROM_1900 || kind == Kind.DATE_FROM_1904;
    }

    /** True where the cell has no number format of its own; the format {@code 0} is one. */
    boolean isGeneral() {
        return this == GENERAL;
    }

    static final ShownAs GENERAL = new ShownAs(Kind.PLAIN, 0, "");
}
