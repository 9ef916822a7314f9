package workuptally.tally.suspects;

import java.math.BigDecimal;
import java.util.Map;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Figure;
import workuptally.model.Field.Qualifier;
import workuptally.model.RowPlace;
import workuptally.model.TablePlace;
import workuptally.tally.suspects.Entry.Sort;

/** Cells of invented tables with a number typed in them. */
final class TypedCells {
    private TypedCells() {}

    /** A row of a CSV table. */
    static RowPlace row(String sheet, int row) {
        return new RowPlace(new TablePlace(sheet + ".csv", sheet, false, Map.of()), row, row);
    }

    /** A number in the unit of its field. */
    static Entered number(String typed, RowPlace row, String heading) {
        BigDecimal value = new BigDecimal(typed);
        return new Entered(
                new Figure(value.doubleValue(), Qualifier.EXACT, Math.max(0, value.scale()), typed), row, heading);
    }

    /** Milligrams typed in a field that counts grams. */
    static Entered milligrams(String typed) {
        BigDecimal grams = new BigDecimal(typed).movePointLeft(3);
        return new Entered(
                new Figure(grams.doubleValue(), Qualifier.EXACT, grams.scale(), typed), row("layers", 2), "Net");
    }

    /** An entry without a vessel. */
    static Entry entry(Sort sort, String typed, RowPlace row, String heading) {
        return entry(sort, typed, row, heading, "");
    }

    /** An entry; what it is, tells its place. */
    static Entry entry(Sort sort, String typed, RowPlace row, String heading, String vessel) {
        return new Entry(
                new BookCell(row, heading),
                number(typed, row, heading),
                heading + " of row " + row.row(),
                sort,
                vessel);
    }
}
