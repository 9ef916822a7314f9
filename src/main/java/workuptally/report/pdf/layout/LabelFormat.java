package workuptally.report.pdf.layout;

import java.util.Locale;

/**
 * A common sheet of self-adhesive labels: two side by side in rows that touch, alike margins left and right, above and below.
 *
 * @param widthPoints width of a label
 * @param heightPoints its height
 * @param sidePoints margin left and right of the labels
 * @param topPoints margin above and below them
 * @param rows rows of two
 * @param size size of a label in words
 */
record LabelFormat(float widthPoints, float heightPoints, float sidePoints, float topPoints, int rows, String size) {
    private static final float POINTS_PER_MILLIMETRE = 72 / 25.4f;
    private static final float POINTS_PER_INCH = 72;

    /** For A4 twelve of 99.1 mm × 42.3 mm, for Letter fourteen of 4 in × 1⅓ in: usual sizes of the trade (common practice). */
    static LabelFormat of(PdfOptions.Paper paper) {
        return paper == PdfOptions.Paper.A4
                ? sheet(
                        paper,
                        99.1f * POINTS_PER_MILLIMETRE,
                        42.3f * POINTS_PER_MILLIMETRE,
                        2.5f * POINTS_PER_MILLIMETRE,
                        6,
                        "99.1 mm × 42.3 mm")
                : sheet(
                        paper,
                        4 * POINTS_PER_INCH,
                        4 / 3f * POINTS_PER_INCH,
                        3 / 16f * POINTS_PER_INCH,
                        7,
                        "4 in × 1⅓ in");
    }

    private static LabelFormat sheet(
            PdfOptions.Paper paper, float width, float height, float between, int rows, String size) {
        return new LabelFormat(
                width,
                height,
                (paper.widthPoints() - 2 * width - between) / 2,
                (paper.heightPoints() - rows * height) / 2,
                rows,
                size);
    }

    /** Labels on one sheet. */
    int count() {
        return 2 * rows;
    }

    /** Left edge of a label, points from that of the page. */
    float left(PdfOptions.Paper paper, int place) {
        return place % 2 == 0 ? sidePoints : paper.widthPoints() - sidePoints - widthPoints;
    }

    /** Upper edge of a label, points from that of the page. */
    float top(int place) {
        return topPoints + place / 2 * heightPoints;
    }

    /** For the head of a sheet. */
    String words() {
        return String.format(Locale.ROOT, "%d a sheet, %s", count(), size);
    }
}
