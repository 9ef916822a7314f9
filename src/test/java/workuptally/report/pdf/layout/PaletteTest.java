package workuptally.report.pdf.layout;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Fills that stand beside each other differ where there is no colour: by a quarter of the scale of grey, or by their hatch. */
class PaletteTest {
    private static final Palette PALETTE = new Palette();

    /** Luma of Rec. ITU-R BT.601, as printers and {@code pdftoppm -gray} take it. */
    private static double grey(Color colour) {
        return (0.299 * colour.getRed() + 0.587 * colour.getGreen() + 0.114 * colour.getBlue()) / 255;
    }

    private static boolean differ(Palette.Fill one, Palette.Fill other) {
        return one.hatch() != other.hatch() || Math.abs(grey(one.ground()) - grey(other.ground())) >= 0.25;
    }

    private static void assertAllDiffer(List<Palette.Fill> fills) {
        for (int i = 0; i < fills.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertTrue(differ(fills.get(i), fills.get(j)), fills.get(i) + " and " + fills.get(j));
            }
        }
    }

    @Test
    void partsOfTheRecoveryDifferInGrey() {
        assertAllDiffer(List.of(PALETTE.isolated(), PALETTE.inLayers(), PALETTE.notKnown(), PALETTE.unaccounted()));
    }

    /** A layer, the next one, what was isolated and what was not found touch each other in a balance. */
    @Test
    void neighboursInABalanceDifferInGrey() {
        IntStream.range(0, 7)
                .forEach(i -> assertAllDiffer(List.of(
                        PALETTE.portion(i), PALETTE.portion(i + 1), PALETTE.isolated(), PALETTE.unaccounted())));
    }
}
