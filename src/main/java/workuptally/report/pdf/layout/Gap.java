package workuptally.report.pdf.layout;

/**
 * White space that vanishes at the top of a page.
 *
 * @param height height, points
 */
public record Gap(float height) implements Block {
    @Override
    public float leastHeight() {
        return 0;
    }

    @Override
    public boolean keepsWithNext() {
        return true;
    }

    @Override
    public void draw(PageFlow flow) {
        if (!flow.atTop()) {
            flow.move(Math.min(height, flow.remaining()));
        }
    }
}
