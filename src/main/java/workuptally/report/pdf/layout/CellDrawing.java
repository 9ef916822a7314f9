package workuptally.report.pdf.layout;

/** A small picture inside a table cell. */
interface CellDrawing {
    /** What it shows, for readers who do not see it. */
    String alternative();

    /** Draws inside the cell. */
    void draw(PageFlow flow, float left, float top, float width, float height);
}
