package workuptally.report.view.tables;

import java.util.OptionalDouble;
import workuptally.model.Place;

/** Where cells stand and what they hold, as seen from one row of one table. */
public interface LiveSheets {
    /** Address of an entry, {@code 'Layers'!G7}. */
    String address(Place entry);

    /** The number in the cell of an entry, in the unit of the cell; empty if it holds no number. */
    OptionalDouble value(Place entry);

    /** Address of a cell in the same row. */
    String address(String column);

    /** Number in a cell of the same row. */
    OptionalDouble value(String column);

    /** Address of a cell of another table. */
    String address(String table, int row, String column);

    /** Number in a cell of another table. */
    OptionalDouble value(String table, int row, String column);

    /** Address of all values of a column of another table. */
    String range(String table, String column);

    /** Sum of a column of another table over the rows whose key has the text that the key column of this row has. */
    double sumWhere(String table, String column, String keyColumn, String ownKeyColumn);

    /** The name by which formulas find a named number. */
    String nameOf(String name);

    /** The number of that name; empty if no table has one. */
    OptionalDouble named(String name);
}
