package workuptally.report.pdf.layout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColumnWidthsTest {
    private static final float TOLERANCE = 0.01f;

    @Test
    void shortColumnsKeepTheirWidthAndTheLongOneTakesTheRest() {
        float[] widths = ColumnWidths.share(
                new float[] {30, 20, 40}, new float[] {30, 60, 500}, List.of(false, false, true), 300);
        assertArrayEquals(new float[] {30, 60, 210}, widths, TOLERANCE);
    }

    @Test
    void spareWidthGoesToTexts() {
        float[] widths = ColumnWidths.share(new float[] {30, 20}, new float[] {100, 100}, List.of(false, true), 300);
        assertArrayEquals(new float[] {100, 200}, widths, TOLERANCE);
    }

    @Test
    void smallTableIsNotStretched() {
        float[] widths = ColumnWidths.share(new float[] {30, 20}, new float[] {30, 40}, List.of(false, true), 300);
        assertArrayEquals(new float[] {30, 40}, widths, TOLERANCE);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void tableNeverExceedsItsWidthAndNoWordIsBrokenWithoutNeed(long seed) {
        Random random = new Random(seed);
        float[] least = new float[6];
        float[] natural = new float[6];
        float sum = 0;
        for (int i = 0; i < 6; i++) {
            least[i] = 10 + 60 * random.nextFloat();
            natural[i] = least[i] + 400 * random.nextFloat();
            sum += least[i];
        }
        float total = 500;
        float[] widths = ColumnWidths.share(least, natural, Collections.nCopies(6, true), total);
        float used = 0;
        for (int i = 0; i < 6; i++) {
            used += widths[i];
            assertTrue(sum > total || widths[i] >= least[i] - TOLERANCE, "column " + i);
        }
        assertTrue(used <= total + TOLERANCE, "width " + used);
    }

    /** Many columns whose headings can give hardly anything, as in a form of ten boxes: the last ones once stood beyond the margin. */
    @Test
    void tightTableNeverExceedsItsWidth() {
        Random random = new Random(7);
        for (int table = 0; table < 500; table++) {
            float[] least = new float[10];
            float[] natural = new float[10];
            float leastSum = 0;
            float naturalSum = 0;
            for (int i = 0; i < 10; i++) {
                least[i] = 20 + 60 * random.nextFloat();
                natural[i] = least[i] + (random.nextBoolean() ? 0 : 30 * random.nextFloat());
                leastSum += least[i];
                naturalSum += natural[i];
            }
            float total = leastSum + random.nextFloat() * (naturalSum - leastSum);
            float[] widths = ColumnWidths.share(least, natural, Collections.nCopies(10, false), total);
            float used = 0;
            for (int i = 0; i < 10; i++) {
                used += widths[i];
                assertTrue(widths[i] >= least[i] - TOLERANCE, "column " + i + " of table " + table);
            }
            assertTrue(used <= total + TOLERANCE, "table " + table + " width " + used + " of " + total);
        }
    }
}
