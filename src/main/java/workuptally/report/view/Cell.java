package workuptally.report.view;

import java.util.OptionalDouble;
import workuptally.model.Place;

/** One cell of a result table. */
public sealed interface Cell permits Cell.Text, Cell.Number, Cell.Missing, Cell.Link {

    /** A text. */
    static Cell of(String text) {
        return text.isEmpty() ? new Missing("") : new Text(text);
    }

    /** A number. */
    static Cell of(double value) {
        return new Number(value);
    }

    /** A number, or an empty cell. */
    static Cell of(OptionalDouble value) {
        return value.isPresent() ? new Number(value.getAsDouble()) : new Missing("");
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
     */
    record Number(double value) implements Cell {
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
}
