package workuptally.report.view.wording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import workuptally.measure.Rounding;
import workuptally.model.Figure;
import workuptally.model.Phrase;

/**
 * Turns phrases and their figures into sentences for one reader. Here alone figures of sentences are rounded; volumes from 10 000 mL and
 * masses from 10 000 g are told in L to three figures and in kg to four, and nothing in powers of ten.
 */
public final class Wording {
    /** Sentences with a decimal point, as JSON and CSV have them whoever reads. */
    public static final Wording POINT = new Wording('.');

    private static final String GAP = "{}";
    private static final Set<String> AMOUNTS = Set.of("g", "kg", "mL", "L", "mmol");
    private static final BigDecimal LARGE = new BigDecimal(10_000);
    private static final Rounding PLAIN = Rounding.in(Locale.ROOT);

    /** A point before a capital letter ends a sentence, except behind the usual abbreviations of the bench. */
    private static final Pattern SENTENCE_END =
            Pattern.compile("(?<=\\.)(?<!\\b(?:sat|aq|ca|conc|dil|min|max)\\.) (?=\\p{Lu})");

    private final char mark;
    private final UnaryOperator<String> words;

    /**
     * Sentences for one reader.
     *
     * @param mark decimal mark, a point or a comma
     */
    public Wording(char mark) {
        this(mark, UnaryOperator.identity());
    }

    /**
     * Sentences in other words.
     *
     * @param mark decimal mark
     * @param words what is said instead of a template; must keep its gaps
     */
    public Wording(char mark, UnaryOperator<String> words) {
        this.mark = mark;
        this.words = words;
    }

    /** The decimal mark. */
    public char mark() {
        return mark;
    }

    /** The sentence. */
    public String of(Phrase phrase) {
        if (phrase.isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder();
        put(phrase, text);
        return text.toString();
    }

    /**
     * The first sentences of a phrase, as many whole ones as there is room for, at least one.
     *
     * @param most characters that they may have together
     */
    public String inShort(Phrase phrase, int most) {
        String all = of(phrase);
        if (all.length() <= most) {
            return all;
        }
        StringBuilder text = new StringBuilder();
        for (String sentence : SENTENCE_END.split(all)) {
            if (!text.isEmpty() && text.length() + 1 + sentence.length() > most) {
                break;
            }
            text.append(text.isEmpty() ? "" : " ").append(sentence);
        }
        return text.toString();
    }

    private void put(Phrase phrase, StringBuilder text) {
        String template = localised(words.apply(phrase.template()));
        int from = 0;
        for (Object part : phrase.parts()) {
            int gap = template.indexOf(GAP, from);
            text.append(template, from, gap);
            put(part, text);
            from = gap + GAP.length();
        }
        text.append(template, from, template.length());
    }

    /** Figures that stand in our own words, such as a limit of the trade, have the reader's mark as well. */
    private String localised(String template) {
        return FiguresInText.with(mark, template);
    }

    private void put(Object part, StringBuilder text) {
        if (part instanceof Phrase phrase) {
            put(phrase, text);
        } else if (part instanceof Figure figure) {
            text.append(of(figure));
        } else {
            text.append(FiguresInText.with(mark, String.valueOf(part)));
        }
    }

    /** A figure with its unit. */
    public String of(Figure figure) {
        String unit = figure.unit();
        String number = rounded(figure, figure.value());
        if (figure.expandedUncertainty().isPresent()) {
            number += " ± " + rounded(figure, figure.expandedUncertainty().getAsDouble());
        } else if (Double.isFinite(figure.value()) && isLarge(unit, number)) {
            boolean volume = unit.equals("mL");
            number = new BigDecimal(number)
                    .movePointLeft(3)
                    .round(new MathContext(volume ? 3 : 4))
                    .toPlainString();
            unit = volume ? "L" : "kg";
        }
        return (mark == '.' ? number : number.replace('.', mark)) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static boolean isLarge(String unit, String number) {
        return (unit.equals("mL") || unit.equals("g"))
                && new BigDecimal(number).abs().compareTo(LARGE) >= 0;
    }

    /** Milligrams in a sentence with grams keep their digits; a value beside its U has the decimals of that. */
    private static String decimals(Figure figure, double value) {
        return AMOUNTS.contains(figure.unit()) && figure.expandedUncertainty().isEmpty()
                ? PLAIN.toDecimalsThatShow(value, figure.places())
                : PLAIN.toDecimals(value, figure.places());
    }

    private static String rounded(Figure figure, double value) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        int places = figure.places();
        return switch (figure.rounding()) {
            case AMOUNT -> PLAIN.toDecimalsThatShow(value, places);
            case DECIMALS -> decimals(figure, value);
            case SIGNED -> (value < 0 ? "" : "+") + decimals(figure, value);
            case DIGITS -> PLAIN.toSignificant(value, places);
            case BOUND -> value > 0 ? PLAIN.upperBound(value, Rounding.BOUND_DIGITS) : "0";
            case BRIEF ->
                new BigDecimal(value)
                        .round(new MathContext(places))
                        .stripTrailingZeros()
                        .toPlainString();
        };
    }
}
