package workuptally.report.pdf.layout;

/** A piece of a page that knows its height and draws itself, tagged, at the cursor of a flow. */
public interface Block {
    /** Height when not broken over pages, points. */
    float height();

    /** Least height that is worth starting on a page, points; at most {@link #height}. */
    default float leastHeight() {
        return height();
    }

    /** True for a heading or lead-in that must not stand last on a page. */
    default boolean keepsWithNext() {
        return false;
    }

    /** Draws from the cursor on and moves the cursor below; turns pages where needed. */
    void draw(PageFlow flow);
}
