package workuptally.tally.suspects;

import workuptally.model.Field.Entered;
import workuptally.model.Place;
import workuptally.model.RowPlace;

/**
 * A cell of a row, whether filled or not.
 *
 * @param row its row
 * @param heading heading of the schema under which it stands
 * @param part which of several numbers in it, by its name; empty where it holds one
 */
record BookCell(RowPlace row, String heading, String part) {
    /** A cell of one number. */
    BookCell(RowPlace row, String heading) {
        this(row, heading, "");
    }

    static BookCell of(Entered entered) {
        return new BookCell(entered.row(), entered.heading());
    }

    Place place() {
        return row.at(heading);
    }

    /** Of heading and row; see the contributor guide on records as keys. */
    @Override
    public int hashCode() {
        return 31 * row.row() + heading.hashCode();
    }

    /** True for the same cell of the same book. */
    @Override
    public boolean equals(Object other) {
        return other instanceof BookCell cell && cell.is(row, heading, part);
    }

    boolean isIn(RowPlace other) {
        return row.row() == other.row()
                && row.table().sheet().equals(other.table().sheet());
    }

    boolean is(RowPlace other, String otherHeading) {
        return is(other, otherHeading, "");
    }

    boolean is(RowPlace other, String otherHeading, String otherPart) {
        // a list of the laboratory has several charges in one row, each with its amount in a column of its own
        return part.equals(otherPart)
                && heading.equals(otherHeading)
                && isIn(other)
                && (row == other || place().equals(other.at(otherHeading)));
    }
}
