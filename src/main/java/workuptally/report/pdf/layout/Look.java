package workuptally.report.pdf.layout;

import java.util.Optional;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;

/**
 * What all blocks of one document share.
 *
 * @param typeface fonts
 * @param palette colours
 * @param figures numbers
 * @param widthPoints width of the text area, points
 */
public record Look(Typeface typeface, Palette palette, ReadableNumbers figures, float widthPoints) {
    /** A heading inside a section. */
    public Heading subheading(String text) {
        return new Heading(this, Heading.Level.SUBSECTION, text, Optional.empty());
    }

    /** A heading of a section without a place that links lead to. */
    public Heading heading(String text) {
        return new Heading(this, Heading.Level.SECTION, text, Optional.empty());
    }

    TextStyle title() {
        return new TextStyle(18, true, palette.ink());
    }

    TextStyle section() {
        return new TextStyle(12.5f, true, palette.ink());
    }

    TextStyle subsection() {
        return new TextStyle(10, true, palette.ink());
    }

    public TextStyle body() {
        return new TextStyle(9.5f, false, palette.ink());
    }

    public TextStyle table() {
        return new TextStyle(8.5f, false, palette.ink());
    }

    public TextStyle caption() {
        return new TextStyle(8.5f, false, palette.soft());
    }

    /** Words in a picture: the smallest that is printed. */
    public TextStyle chart() {
        return new TextStyle(7.5f, false, palette.ink());
    }

    /** Sentences with the decimal mark of the numbers. */
    public Wording wording() {
        return new Wording(figures.mark());
    }
}
