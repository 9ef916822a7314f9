package workuptally.report.pdf.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Number and unit, value and uncertainty, sheet and cell end no line between them (ISO 80000-1, 7.1.4: number and unit are one). */
class KeptTogetherTest {
    private static Typeface typeface;

    @BeforeAll
    static void load() throws IOException {
        typeface = new Typeface();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "11.4 %",
                "0.43 g",
                "2.1 mg/mL",
                "20 °C",
                "2.806 ± 0.056",
                "≤ 0.031",
                "Workup!D98",
                "line 26",
                "step 3",
                "−0.66",
                "3,5",
                "(N3)2)."
            })
    void aLineNeverEndsInsideOf(String piece) {
        for (int end : typeface.breaks(piece)) {
            assertEquals(piece.length(), end, piece);
        }
    }

    @Test
    void wordsThatStandByThemselvesAreParted() {
        assertEquals(
                List.of("2", "layers", "and", "3", "lots,", "or", "one!", "Now"),
                pieces("2 layers and 3 lots, or one! Now"));
    }

    private static List<String> pieces(String text) {
        List<String> pieces = new ArrayList<>();
        int from = 0;
        for (int end : typeface.breaks(text)) {
            pieces.add(text.substring(from, end).strip());
            from = end;
        }
        return pieces;
    }
}
