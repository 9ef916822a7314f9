package workuptally.judgement.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.model.Severity;

/** Findings about one run, in the order in which they are met. */
public final class FindingList {
    /** Source of a threshold that the trade uses without a single origin. */
    public static final String PRACTICE = "common practice";

    private final String run;
    private final List<Finding> findings = new ArrayList<>();

    /** @param run run id; empty for findings about no run */
    public FindingList(String run) {
        this.run = run;
    }

    public void add(
            FindingCode code,
            Severity severity,
            Place place,
            String seen,
            String expected,
            String source,
            String action) {
        findings.add(new Finding(code, severity, run, place, seen, expected, source, action));
    }

    public List<Finding> list() {
        return List.copyOf(findings);
    }

    /** A sentence with numbers put in, with a decimal point whatever the locale; large volumes and masses in L and kg. */
    public static String say(String format, Object... numbers) {
        return LargeFigures.in(String.format(Locale.ROOT, format, numbers));
    }

    /** An upper bound, rounded up to so many decimals. */
    public static String atMost(double bound, int decimals) {
        return new java.math.BigDecimal(bound)
                .setScale(decimals + 6, java.math.RoundingMode.HALF_UP)
                .setScale(decimals, java.math.RoundingMode.UP)
                .toPlainString();
    }

    /** A number with up to four digits and no trailing zeros. */
    public static String plain(double number) {
        return new java.math.BigDecimal(number)
                .round(new java.math.MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }
}
