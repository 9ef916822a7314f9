package workuptally.chemistry;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Brings a formula as people type it, on a keyboard or from a printed page, to the one form in which it is read. */
final class FormulaText {
    /** A molar mass behind a formula; it changes no atom. */
    private static final Pattern MASS_BEHIND = Pattern.compile("\\s+\\(\\d{2,4}[.,]\\d{1,4}\\)$");

    /** Times, with a space on both sides and no dot; {@code xH2O} is water that was not counted. */
    private static final Pattern TIMES = Pattern.compile("(?<=[A-Za-z0-9)\\]])\\s+x\\s+(?=(?:[\\d.]+\\s*)?[A-Z])");

    /** Half a water, {@code · 1/2 H2O}. */
    private static final Pattern HALF = Pattern.compile("(?<=\\*)\\s*1/2\\s*(?=[A-Z(])");

    /** What says of an isomer only which it is; it changes no atom. */
    private static final Pattern ISOMER_BEHIND = Pattern.compile(
            "\\s+\\((?:rac\\.?|racemic|racemate|±|[RSEZ]|[DL]|cis|trans)\\)$", Pattern.CASE_INSENSITIVE);

    /** A bond between two groups that both hold carbon, {@code C6H5-COOH}; {@code Pd-C} is none. */
    private static final Pattern BOND = Pattern.compile("(?<=[A-Za-z0-9)])-(?=[A-Z(])");

    /** A formula of common elements in the order of Hill, carbon and hydrogen first, typed without capitals; that order leaves one reading. */
    private static final Pattern SMALL_LETTERS =
            Pattern.compile("(c\\d*)(h\\d*)(br\\d*)?(cl\\d*)?(f\\d*)?(i\\d*)?(n\\d*)?(o\\d*)?(p\\d*)?(s\\d*)?");

    private static final Pattern DIGITS_APART = Pattern.compile("\\d\\s+\\d");

    /** No count begins with 0: it is the O of {@code F02}. */
    private static final Pattern ZERO_BEFORE_A_COUNT = Pattern.compile("[A-Za-z)\\]}]\\s*(0\\d+)");

    /** Carbon with iodine, which looks like chlorine. */
    private static final Pattern CARBON_IODINE = Pattern.compile("C\\s*I(?![a-z])");

    /** Formulas in the order of Hill in which iodine does stand behind one carbon: its tetraiodide and cyanide. */
    private static final Pattern ONE_CARBON_WITH_IODINE = Pattern.compile("CI4|CIN");

    /** One carbon by a count of 1, which looks like chlorine where it stands behind something. */
    private static final Pattern COUNT_OF_ONE =
            Pattern.compile("(?<=[A-Za-z0-9)\\]}])\\s*C1(?!\\d)|C1(?!\\d)(?=.*C(?![a-z]))");

    private FormulaText() {}

    /**
     * Why a formula is not what it looks like, where signs that look alike were typed one for the other: 0 for O, a capital I or a 1 for the
     * l of chlorine. Empty if nothing speaks for that.
     */
    static Optional<String> doubt(String formula) {
        Matcher zero = ZERO_BEFORE_A_COUNT.matcher(formula);
        if (DIGITS_APART.matcher(formula).find()) {
            return Optional.of("a space stands between two digits");
        }
        if (zero.find()) {
            return Optional.of("the count " + zero.group(1) + " begins with 0, which may stand for O");
        }
        boolean iodine = CARBON_IODINE.matcher(formula).find()
                && !ONE_CARBON_WITH_IODINE.matcher(formula).matches();
        if (iodine) {
            return Optional.of("CI may stand for Cl, chlorine; carbon with iodine is written C[I]");
        }
        return COUNT_OF_ONE.matcher(formula).find()
                ? Optional.of("C1 may stand for Cl, chlorine; one carbon is written C")
                : Optional.empty();
    }

    /** Unicode subscripts become digits, superscripts a marked charge, the many dots one, dashes and minus signs a hyphen. */
    static String plain(String formula) {
        StringBuilder plain = new StringBuilder();
        boolean raised = false;
        for (char c : formula.toCharArray()) {
            int superscript = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻".indexOf(c);
            if (superscript >= 0) {
                plain.append(raised ? "" : "^").append("0123456789+-".charAt(superscript));
                raised = true;
                continue;
            }
            raised = false;
            if (c >= '₀' && c <= '₉') {
                plain.append((char) ('0' + (c - '₀')));
            } else if ("·•∙⋅‧*×".indexOf(c) >= 0) {
                plain.append('*');
            } else if ("−–‐‑".indexOf(c) >= 0) {
                plain.append('-');
            } else if (c == '½') {
                plain.append("0.5");
            } else {
                plain.append(c);
            }
        }
        return plain.toString();
    }

    /** What people type around and within a formula, brought to the form of the rest. */
    static String tidied(String plain) {
        String formula = MASS_BEHIND.matcher(plain).replaceFirst("");
        formula = ISOMER_BEHIND.matcher(formula).replaceFirst("");
        formula = TIMES.matcher(formula).replaceAll("*");
        formula = HALF.matcher(formula).replaceAll("0.5");
        String[] groups = BOND.split(formula);
        if (groups.length > 1 && Arrays.stream(groups).allMatch(FormulaText::holdsCarbon)) {
            formula = String.join("", groups);
        }
        Matcher small = SMALL_LETTERS.matcher(formula);
        if (!small.matches()) {
            return formula;
        }
        StringBuilder capitals = new StringBuilder();
        for (int i = 1; i <= small.groupCount(); i++) {
            String element = small.group(i);
            if (element != null) {
                capitals.append(Character.toUpperCase(element.charAt(0))).append(element, 1, element.length());
            }
        }
        return capitals.toString();
    }

    private static boolean holdsCarbon(String group) {
        return group.matches(".*C(?![a-z]).*");
    }
}
