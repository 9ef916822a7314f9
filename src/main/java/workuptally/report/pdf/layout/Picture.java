package workuptally.report.pdf.layout;

/** Something drawn in vectors that a sentence can stand for. */
public interface Picture {
    /** Height at the width of the text area, points. */
    float height();

    /** What it shows, with the numbers, for readers who do not see it. */
    String alternative();

    /** Draws with its top left corner at the point given. */
    void draw(PageFlow flow, float left, float top);
}
