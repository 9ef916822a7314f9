package workuptally.report.pdf.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColumnFitTest {
    private static final TextStyle STYLE = new TextStyle(8, false, Color.BLACK);
    private static final float TOLERANCE = 0.01f;
    private static final String LONG =
            "rinse the cake with a little solvent and weigh what that brings, if the balance is open";
    private static final String SHORT = "assay it";

    private final Typeface typeface;

    ColumnFitTest() throws IOException {
        typeface = new Typeface();
    }

    private List<MeasuredText> texts(String... texts) {
        return List.of(texts).stream()
                .map(t -> new MeasuredText(typeface, t, STYLE))
                .toList();
    }

    private void fit(float[] widths, float[] least, boolean brief) {
        new ColumnFit(widths, least, List.of(0, 1), List.of(texts(LONG, LONG), texts(SHORT, SHORT)), 0, brief)
                .improve();
    }

    @Test
    void widthGoesToTheColumnWhoseLinesMakeTheTableHigh() {
        float[] widths = {120, 120};
        fit(widths, new float[] {40, 40}, false);
        assertTrue(widths[0] > 120, () -> "width " + widths[0]);
        assertEquals(240, widths[0] + widths[1], TOLERANCE);
    }

    @Test
    void noColumnFallsBelowWhatItMustKeep() {
        float[] widths = {120, 120};
        fit(widths, new float[] {40, 118}, false);
        assertTrue(widths[1] >= 118, () -> "width " + widths[1]);
    }

    @Test
    void widthStaysWhereMovingItSavesNothing() {
        float[] widths = {900, 120};
        fit(widths, new float[] {40, 40}, false);
        assertEquals(900, widths[0], TOLERANCE);
    }

    @Test
    void tableThatIsCutLosesAsLittleAsCanBe() {
        float[] widths = {100, 200};
        fit(widths, new float[] {40, 40}, true);
        int lines = new MeasuredText(typeface, LONG, STYLE).lines(widths[0]);
        assertTrue(lines <= TableLayout.BRIEF_LINES, () -> lines + " lines");
    }

    @ParameterizedTest
    @ValueSource(floats = {55, 70, 110, 160, 300})
    void measuredTextCountsTheLinesThatBreakingGives(float width) {
        for (String text : List.of(LONG, SHORT, "one\ntwo\n\nfour", "", "84.5\u00A0±\u00A01.9\u00A0% of theory")) {
            int counted = new MeasuredText(typeface, text, STYLE).lines(width);
            assertEquals(typeface.wrap(text, STYLE, width).size(), counted, text);
        }
    }
}
