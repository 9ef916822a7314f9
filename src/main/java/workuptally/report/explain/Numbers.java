package workuptally.report.explain;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import workuptally.measure.Contribution;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Rounding;
import workuptally.model.Field;
import workuptally.model.Field.Entered;

/**
 * Numbers as an explanation shows them: entries as typed with their place, intermediate figures with five significant digits so that a
 * reader who goes on with them meets the rounded result, results rounded by their uncertainty.
 */
final class Numbers {
    private static final int INTERMEDIATE_DIGITS = 5;
    private static final int UNCERTAINTY_DIGITS = 2;
    private static final int SENSITIVITY_DIGITS = 3;
    private static final int MOLAR_MASS_DECIMALS = 3;
    private static final double SAME_NUMBER = 1e-9;

    /** Readings with a smaller share of the variance than this, in %, are gathered in one line. */
    private static final double SMALLEST_SHARE_PERCENT = 0.1;

    private final Rounding rounding = Rounding.in(Locale.ROOT);
    private final double coverageFactor;

    Numbers(double coverageFactor) {
        this.coverageFactor = coverageFactor;
    }

    /** An intermediate figure: five significant digits, without zeros at its end. */
    String plain(double value) {
        BigDecimal shown = new BigDecimal(rounding.toSignificant(value, INTERMEDIATE_DIGITS));
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }

    String plain(MeasuredValue value) {
        return plain(value.value());
    }

    /** An intermediate figure with its unit, or a dash. */
    String plain(Optional<MeasuredValue> value) {
        return value.map(this::plain).orElse("-");
    }

    /** A molar mass, three decimals. */
    String molarMass(double gramsPerMole) {
        return decimals(gramsPerMole, MOLAR_MASS_DECIMALS);
    }

    /** To a number of decimals. */
    String decimals(double value, int decimals) {
        return rounding.toDecimals(value, decimals);
    }

    /** Value ± U with the unit and the coverage factor. */
    String withUnit(MeasuredValue value, String unit) {
        return withUnit(
                value.value(), value.expandedUncertainty(coverageFactor), unit, value.coverageFactor(coverageFactor));
    }

    /** With the factor of Student's distribution where few repeats stand behind U. */
    private String withUnit(double value, double expandedUncertainty, String unit, double factor) {
        return expandedUncertainty > 0
                ? "(" + rounding.withUncertainty(value, expandedUncertainty) + ") " + unit + ", k = " + plain(factor)
                : plain(value) + " " + unit;
    }

    /** An entry as typed with its place; one that was typed in another unit as the figure in this unit, with what was typed. */
    String entry(Entered entered, String unit) {
        String typed = entered.asTyped().strip();
        String where = entered.place().inWords();
        if (isThisNumber(typed, entered.value())) {
            return (typed + " " + unit).strip() + " [" + where + "]";
        }
        String sign = entered.qualifier() == Field.Qualifier.BELOW ? "<" : "";
        return (sign + plain(entered.value()) + " " + unit).strip() + " [" + where + ", entered as " + typed + "]";
    }

    private static boolean isThisNumber(String typed, double value) {
        String digits = typed.startsWith("<") || typed.startsWith(">") ? typed.substring(1) : typed;
        try {
            double number = Double.parseDouble(digits.strip().replace(',', '.'));
            return Math.abs(number - value) <= SAME_NUMBER * Math.abs(value);
        } catch (NumberFormatException notPlain) {
            return false;
        }
    }

    /** An entry as typed with its place, or nothing. */
    Optional<String> entry(Field field, String unit) {
        return field.entered().map(e -> entry(e, unit));
    }

    /** The readings of a result, the largest share first. */
    List<Explanation.BudgetLine> budget(MeasuredValue value) {
        List<Explanation.BudgetLine> lines = new ArrayList<>();
        int small = 0;
        double smallShare = 0;
        for (Contribution part : value.budget()) {
            if (part.variancePercent() < SMALLEST_SHARE_PERCENT) {
                small++;
                smallShare += part.variancePercent();
            } else {
                lines.add(line(part));
            }
        }
        if (small > 0) {
            lines.add(new Explanation.BudgetLine(
                    small + (small == 1 ? " reading" : " readings") + " below " + plain(SMALLEST_SHARE_PERCENT)
                            + " % each",
                    "",
                    "",
                    "",
                    decimals(smallShare, 1),
                    ""));
        }
        return lines;
    }

    private Explanation.BudgetLine line(Contribution part) {
        String unit =
                part.reading().unit().equals("1") ? "" : " " + part.reading().unit();
        return new Explanation.BudgetLine(
                part.reading().name(),
                rounding.toDecimals(
                                part.reading().value(),
                                Math.max(0, Rounding.decimals(part.reading().standardUncertainty())))
                        + unit,
                rounding.toSignificant(part.reading().standardUncertainty(), UNCERTAINTY_DIGITS),
                rounding.toSignificant(part.sensitivity(), SENSITIVITY_DIGITS),
                decimals(part.variancePercent(), 1),
                part.reading().where());
    }
}
