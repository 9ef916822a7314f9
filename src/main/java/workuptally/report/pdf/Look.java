package workuptally.report.pdf;

/**
 * What all blocks of one document share.
 *
 * @param typeface fonts
 * @param palette colours
 * @param figures numbers
 * @param widthPoints width of the text area, points
 */
record Look(Typeface typeface, Palette palette, Figures figures, float widthPoints) {
    TextStyle title() {
        return new TextStyle(17, true, palette.ink());
    }

    TextStyle section() {
        return new TextStyle(11.5f, true, palette.ink());
    }

    TextStyle subsection() {
        return new TextStyle(8.8f, true, palette.ink());
    }

    TextStyle body() {
        return new TextStyle(8.5f, false, palette.ink());
    }

    TextStyle table() {
        return new TextStyle(7.6f, false, palette.ink());
    }

    TextStyle caption() {
        return new TextStyle(7.2f, false, palette.soft());
    }
}
