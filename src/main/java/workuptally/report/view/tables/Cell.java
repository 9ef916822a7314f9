package workuptally.report.view.tables;

import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Place;

/** One cell of a result table. */
public sealed interface Cell permits Cell.Text, Cell.Number, Cell.Missing, Cell.Link, Cell.Jump {

    /** A text. */
    static Cell of(String text) {
        return text.isEmpty() ? new Missing("") : new Text(text);
    }

    /** Yes or no. */
    static Cell yesNo(boolean yes) {
        return of(yes ? "yes" : "no");
    }

    /** A number with the decimals of its column. */
    static Cell of(double value) {
        return new Number(value, Number.AS_COLUMN, Optional.empty());
    }

    /** A number with the decimals of its column that follows from other cells. */
    static Cell of(double value, Live live) {
        return new Number(value, Number.AS_COLUMN, Optional.of(live));
    }

    /** A number, or an empty cell. */
    static Cell of(OptionalDouble value) {
        return value.isPresent() ? of(value.getAsDouble()) : new Missing("");
    }

    /** What is shown when no number format applies. */
    String shown();

    /**
     * A text.
     *
     * @param shown the text
     */
    record Text(String shown) implements Cell {}

    /**
     * A number.
     *
     * @param value the value, unrounded
     * @param decimals decimals to show; {@link #AS_COLUMN} for those of the column
     * @param live how it follows from other cells, where it does
     */
    record Number(double value, int decimals, Optional<Live> live) implements Cell {
        /** The decimals of the column apply. */
        public static final int AS_COLUMN = -1;

        @Override
        public String shown() {
            return Double.toString(value);
        }
    }

    /**
     * Nothing, with a reason where there is one to show.
     *
     * @param shown the reason, or empty
     */
    record Missing(String shown) implements Cell {}

    /**
     * A link to a cell of the user's own sheets.
     *
     * @param shown text
     * @param place target
     */
    record Link(String shown, Place place) implements Cell {}

    /**
     * A link to a row of another result table.
     *
     * @param shown text
     * @param title title of that table
     * @param row row of that table, from 0
     */
    record Jump(String shown, String title, int row) implements Cell {}
}
