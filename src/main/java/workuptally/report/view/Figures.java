package workuptally.report.view;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import workuptally.measure.MeasuredValue;

/**
 * How many decimals a figure is shown with, and the figure as text. The one place of rounding for tables: half up, as
 * spreadsheets show numbers. Expanded uncertainties are shown with two significant digits, values to match (JCGM 100:2008, 7.2.6).
 */
public final class Figures {
    private static final int LARGEST = 6;

    private Figures() {}

    /**
     * Decimals that show an expanded uncertainty with two significant digits.
     *
     * @param expandedUncertainty U, in the unit of the value, 0 or more
     * @param otherwise decimals for a value without uncertainty
     * @return 0 to 6
     */
    public static int decimals(double expandedUncertainty, int otherwise) {
        if (!(expandedUncertainty > 0) || Double.isInfinite(expandedUncertainty)) {
            return otherwise;
        }
        return Math.max(0, Math.min(LARGEST, places(expandedUncertainty)));
    }

    /** Decimal places of the second significant digit of an uncertainty; negative for tens and more. */
    private static int places(double expandedUncertainty) {
        int exponent = (int) Math.floor(Math.log10(expandedUncertainty));
        int places = 1 - exponent;
        // 0.0996 is shown as 0.10, not 0.100.
        return rounded(expandedUncertainty, places).doubleValue() >= Math.pow(10, exponent + 1.0) ? places - 1 : places;
    }

    /**
     * A value with its expanded uncertainty, {@code 66.9 ± 1.4}.
     *
     * @param value the value
     * @param expandedUncertainty U in the same unit
     * @param otherwise decimals for a value without uncertainty
     */
    public static String plusMinus(double value, double expandedUncertainty, int otherwise) {
        if (!(expandedUncertainty > 0) || Double.isInfinite(expandedUncertainty)) {
            return plain(value, otherwise);
        }
        int places = Math.min(LARGEST, places(expandedUncertainty));
        return plain(value, places) + " ± " + plain(expandedUncertainty, places);
    }

    /** A number with fixed decimals and a decimal point; negative decimals round to tens and more. */
    public static String plain(double value, int decimals) {
        String shown = rounded(value, decimals).toPlainString();
        return shown.replaceFirst("^-(0(\\.0*)?)$", "$1").replace('-', '−');
    }

    /** A measured value as a cell whose decimals follow its expanded uncertainty. */
    static Cell cell(MeasuredValue value, double coverageFactor) {
        return cell(value.value(), value.expandedUncertainty(coverageFactor));
    }

    /** A measured value as a cell, or an empty one. */
    static Cell cell(Optional<MeasuredValue> value, double coverageFactor) {
        return value.map(v -> cell(v, coverageFactor)).orElseGet(() -> new Cell.Missing(""));
    }

    /** A value as a cell whose decimals follow its expanded uncertainty. */
    static Cell cell(double value, double expandedUncertainty) {
        return new Cell.Number(value, decimals(expandedUncertainty, Cell.Number.AS_COLUMN));
    }

    /** An expanded uncertainty as a cell: empty where there is none. */
    static Cell uncertaintyCell(double expandedUncertainty) {
        return expandedUncertainty > 0 ? cell(expandedUncertainty, expandedUncertainty) : new Cell.Missing("");
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
