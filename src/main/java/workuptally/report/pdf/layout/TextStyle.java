package workuptally.report.pdf.layout;

import java.awt.Color;

/**
 * How a text is set.
 *
 * @param size font size, points
 * @param bold bold or regular
 * @param colour colour
 */
public record TextStyle(float size, boolean bold, Color colour) {
    /** Distance of base lines, points. */
    public float leading() {
        return size * 1.22f;
    }

    /** From the top of a line to its base line, points. */
    public float rise() {
        return size * 0.98f;
    }

    public TextStyle inBold() {
        return new TextStyle(size, true, colour);
    }

    public TextStyle in(Color other) {
        return new TextStyle(size, bold, other);
    }
}
