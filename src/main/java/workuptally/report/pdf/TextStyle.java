package workuptally.report.pdf;

import java.awt.Color;

/**
 * How a text is set.
 *
 * @param size font size, points
 * @param bold bold or regular
 * @param colour colour
 */
record TextStyle(float size, boolean bold, Color colour) {
    /** Distance of base lines, points. */
    float leading() {
        return size * 1.22f;
    }

    /** From the top of a line to its base line, points. */
    float rise() {
        return size * 0.98f;
    }

    TextStyle inBold() {
        return new TextStyle(size, true, colour);
    }

    TextStyle in(Color other) {
        return new TextStyle(size, bold, other);
    }
}
