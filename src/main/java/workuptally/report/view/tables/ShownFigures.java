package workuptally.report.view.tables;

import java.util.Locale;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Rounding;
import workuptally.model.Limit;

/** How many decimals a figure is shown with in a table, and the figure as text; the rounding itself is {@link Rounding}'s. */
public final class ShownFigures {
    private static final Rounding ROUNDING = Rounding.in(Locale.ROOT);
    private static final int LARGEST = 6;

    private ShownFigures() {}

    /**
     * Decimals that show an expanded uncertainty with two significant digits.
     *
     * @param expandedUncertainty U, in the unit of the value, 0 or more
     * @param otherwise decimals for a value without uncertainty
     * @return 0 to 6
     */
    static int decimals(double expandedUncertainty, int otherwise) {
        return isStated(expandedUncertainty)
                ? Math.max(0, Math.min(LARGEST, Rounding.decimals(expandedUncertainty)))
                : otherwise;
    }

    /** A number with fixed decimals, a decimal point and a true minus. */
    public static String plain(double value, int decimals) {
        return withMinus(ROUNDING.toDecimals(value, decimals));
    }

    /** A number with that many significant digits. */
    public static String significant(double value, int digits) {
        return value == 0 ? "0" : withMinus(ROUNDING.toSignificant(value, digits));
    }

    /** What a coverage factor means, for the note above a table. */
    public static String coverage(double coverageFactor) {
        return "U is the expanded uncertainty, k = " + plain(coverageFactor, coverageFactor % 1 == 0 ? 0 : 2) + ".";
    }

    private static boolean isStated(double expandedUncertainty) {
        return expandedUncertainty > 0 && Double.isFinite(expandedUncertainty);
    }

    private static String withMinus(String number) {
        return number.replace('-', '−');
    }

    /** A measured value as a cell whose decimals follow its expanded uncertainty. */
    public static Cell cell(MeasuredValue value, double coverageFactor) {
        return cell(value.value(), value.expandedUncertainty(coverageFactor));
    }

    /** A measured value as a cell, or an empty one. */
    public static Cell cell(Optional<MeasuredValue> value, double coverageFactor) {
        return value.map(v -> cell(v, coverageFactor)).orElseGet(() -> new Cell.Missing(""));
    }

    /** A value as a cell whose decimals follow its expanded uncertainty. */
    public static Cell cell(double value, double expandedUncertainty) {
        return new Cell.Number(value, decimals(expandedUncertainty, Cell.Number.AS_COLUMN), Optional.empty());
    }

    /** A measured value that follows from other cells, or an empty cell. */
    public static Cell cell(Optional<MeasuredValue> value, double coverageFactor, Optional<Live> live) {
        return value.map(v -> cell(v.value(), v.expandedUncertainty(coverageFactor), live))
                .orElseGet(() -> new Cell.Missing(""));
    }

    /** A value that follows from other cells, with decimals by its expanded uncertainty. */
    public static Cell cell(double value, double expandedUncertainty, Optional<Live> live) {
        return new Cell.Number(value, decimals(expandedUncertainty, Cell.Number.AS_COLUMN), live);
    }

    /**
     * An expanded uncertainty as a cell, empty where there is none: it follows the coverage factor.
     *
     * @param coverageFactor k in force in the book
     */
    public static Cell uncertaintyCell(double expandedUncertainty, double coverageFactor) {
        return uncertaintyCell(
                expandedUncertainty, coverageFactor, new Live.Fixed(expandedUncertainty / coverageFactor));
    }

    /**
     * The expanded uncertainty of a figure in the same row, which it follows in proportion: exact where the relative uncertainties are the
     * data, near it where a balance's reading is.
     *
     * @param coverageFactor k in force in the book
     * @param value the figure
     * @param column its column
     */
    public static Cell uncertaintyCell(double expandedUncertainty, double coverageFactor, double value, String column) {
        return uncertaintyCell(
                expandedUncertainty,
                coverageFactor,
                value == 0
                        ? new Live.Fixed(expandedUncertainty / coverageFactor)
                        : Live.times(
                                new Live.Fixed(expandedUncertainty / coverageFactor / value), new Live.InRow(column)));
    }

    private static Cell uncertaintyCell(double expandedUncertainty, double coverageFactor, Live standard) {
        return expandedUncertainty > 0
                ? cell(
                        expandedUncertainty,
                        expandedUncertainty,
                        Optional.of(Live.times(Live.Named.of(Limit.COVERAGE_FACTOR), standard)))
                : new Cell.Missing("");
    }
}
