package workuptally.judgement.rules;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Volumes from 10 000 mL and masses from 10 000 g in sentences, told in L to three figures and in kg to four; never a power of ten. */
final class LargeFigures {
    private static final Pattern FIGURE =
            Pattern.compile("(?<![\\w.,-])(\\d+(?:\\.\\d+)?(?:e[+-]?\\d+)?) (mL|g)(?![\\w/·])");

    private static final BigDecimal FROM = new BigDecimal(10_000);

    private LargeFigures() {}

    /** The same sentence; smaller figures stay as they are. */
    static String in(String sentence) {
        return FIGURE.matcher(sentence)
                .replaceAll(figure -> Matcher.quoteReplacement(retold(figure.group(1), figure.group(2))));
    }

    private static String retold(String number, String unit) {
        BigDecimal value = new BigDecimal(number);
        if (value.compareTo(FROM) < 0) {
            return (number.contains("e") ? value.toPlainString() : number) + " " + unit;
        }
        boolean volume = unit.equals("mL");
        BigDecimal thousands = value.movePointLeft(3).round(new MathContext(volume ? 3 : 4));
        return thousands.toPlainString() + (volume ? " L" : " kg");
    }
}
