package workuptally.report.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.TableView;

class TableSurveyTest {
    private static final int ROWS = 3 * TableSurvey.FIRST_ROWS;
    private static final List<Integer> PLACES =
            List.of(0, TableSurvey.FIRST_ROWS - 1, TableSurvey.FIRST_ROWS, ROWS - 1);

    private static TableView lots(int rows) {
        return TableView.of(
                "Lots",
                "",
                List.of(Column.text("Lot", 10), Column.number("Net", "g", 2), Column.number("Tare", "g", 2)),
                IntStream.range(0, rows)
                        .mapToObj(i -> new TableView.Row(
                                List.of(
                                        Cell.of("L" + i),
                                        i % 2 == 0 ? new Cell.Missing("") : Cell.of(0.5 * i),
                                        Cell.of(100.0 + i)),
                                java.util.Optional.empty()))
                        .toList());
    }

    private static TableView yields() {
        return TableView.of(
                "Yields",
                "",
                List.of(Column.number("Found", "g", 2)),
                List.of(new TableView.Row(
                        List.of(Cell.of(2.0, Live.percent(new Live.InTable("Lots", 3, "Net"), new Live.Fixed(100)))),
                        java.util.Optional.empty())));
    }

    @Test
    void holdsWhatOtherRowsLookAtAndFindsTheRestAnew() {
        TableView lots = lots(ROWS);
        LookedAt lookedAt = new LookedAt();
        TableSurvey survey = new TableSurvey(lots);
        survey.ask(lookedAt);
        new TableSurvey(yields()).ask(lookedAt);
        assertEquals(true, lookedAt.has("Lots", "Net"));
        assertEquals(false, lookedAt.has("Lots", "Tare"));
        assertEquals(ROWS, survey.take(lookedAt).toList().size());
        assertEquals(ROWS, survey.rows());
        for (int row : PLACES) {
            assertEquals(
                    row % 2 == 0 ? OptionalDouble.empty() : OptionalDouble.of(0.5 * row),
                    survey.number(row, 1),
                    "" + row);
            assertEquals(OptionalDouble.of(100.0 + row), survey.number(row, 2), "" + row);
            assertEquals(OptionalDouble.empty(), survey.number(row, 0), "" + row);
        }
    }

    @Test
    void passesOverAShortTableOnce() {
        TableSurvey survey = new TableSurvey(lots(7));
        assertEquals(7, survey.take(new LookedAt()).toList().size());
        assertEquals(7, survey.rows());
        assertEquals(OptionalDouble.of(2.5), survey.number(5, 1));
        assertEquals(OptionalDouble.of(103), survey.number(3, 2));
    }
}
