package workuptally.report.pdf.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.report.pdf.PdfText;

class TypefaceTest {
    private static final TextStyle STYLE = new TextStyle(8, false, Color.BLACK);

    private final Typeface typeface;

    TypefaceTest() throws IOException {
        typeface = new Typeface();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "αβγδΔμµΩ",
                "₀₁₂₃₄₅₆₇₈₉",
                "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻",
                "− ± × · ≤ ≥ ≈ ≠ → ⇌ ° ‰",
                "■ ▲ ● ○ – … “ ” ’",
                "äöüß éèç Łódź Å"
            })
    void signsOfTheTradeAreShown(String signs) {
        assertEquals(signs, typeface.line(signs));
        assertEquals(0, typeface.replaced());
    }

    @Test
    void unknownCharactersAreCounted() {
        assertEquals("a\uFFFDb\uFFFD", typeface.line("a\u6F22b\uD83E\uDDEA"));
        assertEquals(2, typeface.replaced());
    }

    @Test
    void invisibleCharactersLeaveNoTraceAndControlsBecomeSpaces() {
        assertEquals("ab c d", typeface.line("\uFEFFa\u200Bb\tc\u0007d"));
        assertEquals(0, typeface.replaced());
    }

    @Test
    void linesNeverExceedTheirWidthAndLoseNothing() {
        String text = "N-[2-(4-methoxyphenyl)-2-oxoethyl] " + "x".repeat(200) + " and some words more";
        List<String> lines = typeface.wrap(text, STYLE, 60);
        for (String line : lines) {
            assertTrue(typeface.width(line, STYLE) <= 60, line);
        }
        assertEquals(PdfText.dense(text), PdfText.dense(String.join("", lines)));
    }

    @Test
    void longNameIsPartedAtAJointAndNotInsideASyllable() {
        List<String> lines = typeface.wrap("1-(4-methoxybenzoyl)piperidine-4-carboxamide", STYLE, 90);
        assertEquals(List.of("1-(4-methoxybenzoyl)", "piperidine-4-", "carboxamide"), lines);
    }

    @Test
    void lineFeedsBreakLines() {
        assertEquals(List.of("a", "", "b"), typeface.wrap("a\r\n\nb", STYLE, 100));
    }

    @Test
    void cutTextEndsWithAnEllipsisInsideItsWidth() {
        String cut = typeface.fit("a text that is far too long", STYLE, 50);
        assertTrue(cut.endsWith("…"), cut);
        assertTrue(typeface.width(cut, STYLE) <= 50, cut);
    }

    @Test
    void namesThatDifferAtTheirEndStayApart() {
        String one = typeface.fitEnds("Wäss-Spülphase-1", STYLE, 50);
        assertTrue(typeface.width(one, STYLE) <= 50, one);
        assertTrue(one.startsWith("Wä") && one.endsWith("-1"), one);
        assertEquals("A1", typeface.fitEnds("A1", STYLE, 50));
    }
}
