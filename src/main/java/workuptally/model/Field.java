package workuptally.model;

import java.util.Optional;

/** A cell that should hold a number: entered, blank, or not understood. These three are never confused; blank is not zero. */
public sealed interface Field permits Field.Entered, Field.NoNumber {

    /** The number, if one was entered. */
    default Optional<Entered> entered() {
        return Optional.empty();
    }

    /** True when the cell was left empty. */
    default boolean isBlank() {
        return false;
    }

    /** True when the cell holds something that is no number; the reader has reported it. */
    default boolean isUnreadable() {
        return false;
    }

    /**
     * A number and how it was written; many cells may share one.
     *
     * @param value the number in the unit of the field's name; for {@code NOT_DETECTED} 0, with the limit to be taken from the method
     * @param qualifier how it was entered
     * @param decimals decimals shown by the entry or its number format, counted in the unit of the field's name (123.4 mg in a field in g
     *     has 4), 0 or more
     * @param asTyped the text as a reader of the book sees it
     * @param digitsKnown false for a number cell without a number format, which loses its trailing zeros
     * @param halfWidth half of what the entry spans, in the unit of the field's name: 0.5 for {@code 1-2} and {@code 1.5 ± 0.5}; 0 for one number
     */
    record Figure(
            double value, Qualifier qualifier, int decimals, String asTyped, boolean digitsKnown, double halfWidth) {
        /** A number whose digits stand as typed. */
        public Figure(double value, Qualifier qualifier, int decimals, String asTyped) {
            this(value, qualifier, decimals, asTyped, true, 0);
        }

        /** Equal numbers written alike; see the contributor guide on records as keys. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Figure figure
                    && Double.compare(value, figure.value) == 0
                    && qualifier == figure.qualifier
                    && decimals == figure.decimals
                    && Double.compare(halfWidth, figure.halfWidth) == 0
                    && digitsKnown == figure.digitsKnown
                    && asTyped.equals(figure.asTyped);
        }

        @Override
        public int hashCode() {
            return 31 * asTyped.hashCode() + Double.hashCode(value);
        }
    }

    /**
     * An entered number.
     *
     * @param figure the number as written
     * @param row its row
     * @param heading heading of the schema under which it stands
     */
    record Entered(Figure figure, RowPlace row, String heading) implements Field {
        /** The number, see {@link Figure#value}. */
        public double value() {
            return figure.value;
        }

        /** How it was entered. */
        public Qualifier qualifier() {
            return figure.qualifier;
        }

        /** Decimals shown, see {@link Figure#decimals}. */
        public int decimals() {
            return figure.decimals;
        }

        /** Whether these are the digits that were typed, see {@link Figure#digitsKnown}. */
        public boolean digitsKnown() {
            return figure.digitsKnown;
        }

        /** The text as a reader of the book sees it. */
        public String asTyped() {
            return figure.asTyped;
        }

        /** Half of what the entry spans, see {@link Figure#halfWidth}. */
        public double halfWidth() {
            return figure.halfWidth;
        }

        /** Where the cell is; made when it is asked for, since a large book has a million cells and few are ever spoken of. */
        public Place place() {
            return row.at(heading);
        }

        @Override
        public Optional<Entered> entered() {
            return Optional.of(this);
        }
    }

    /** A cell without a number. Where it is, its row tells; more than half of the cells of a book are blank. */
    enum NoNumber implements Field {
        /** Left empty, or in a column that the book lacks. */
        BLANK,
        /** Not understood. */
        UNREADABLE;

        @Override
        public boolean isBlank() {
            return this == BLANK;
        }

        @Override
        public boolean isUnreadable() {
            return this == UNREADABLE;
        }
    }

    /** How a number was entered. */
    enum Qualifier {
        /** A plain number. */
        EXACT,
        /** {@code ca. 40}: a wider uncertainty applies. */
        ABOUT,
        /** {@code 1-2}: a range, of which the value is the middle. */
        RANGE,
        /** {@code 3 drops}: a volume counted in drops, known only roughly. */
        DROPS,
        /** {@code <0.10}: an upper limit. */
        BELOW,
        /** {@code >12}: a lower limit. */
        ABOVE,
        /** {@code n.d.}: not detected, at the limit of the method. */
        NOT_DETECTED
    }
}
