package workuptally.report.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SheetNumbersTest {
    private final SheetNumbers numbers = new SheetNumbers();

    @Test
    void everyNumberIsFoundInItsCellAndNowhereElse() {
        for (int row = 2; row < 300; row += 2) {
            for (int column = 1; column < 20; column += 3) {
                numbers.add(row, column, 100 * row + column);
            }
        }
        for (int row = 0; row < 302; row++) {
            for (int column = 0; column < 22; column++) {
                boolean written = row > 0 && row < 300 && row % 2 == 0 && column % 3 == 1 && column < 20;
                assertEquals(
                        written ? OptionalDouble.of(100 * row + column) : OptionalDouble.empty(),
                        numbers.at(row, column),
                        row + ", " + column);
            }
        }
    }

    @Test
    void cellsOutOfOrderOrOutsideASheetArePassedOver() {
        numbers.add(0, 0, 1);
        numbers.add(3, 5, 2);
        numbers.add(3, 5, 3);
        numbers.add(3, 2, 4);
        numbers.add(2, 7, 5);
        numbers.add(4, -1, 6);
        numbers.add(4, 70_000, 7);
        assertEquals(OptionalDouble.of(2), numbers.at(3, 5));
        assertEquals(OptionalDouble.empty(), numbers.at(3, 2));
        assertEquals(OptionalDouble.empty(), numbers.at(2, 7));
        assertEquals(OptionalDouble.empty(), numbers.at(0, 0));
        assertEquals(OptionalDouble.empty(), numbers.at(4, 70_000));
        assertEquals(OptionalDouble.empty(), numbers.at(4, 70_000 - 65_536));
    }
}
