package workuptally.book.cells;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.words.NumberWords;
import workuptally.book.words.TypedText;
import workuptally.book.words.Unit;
import workuptally.model.Field.Qualifier;
import workuptally.model.Severity;

/** Reads one text as a number: symbol, qualifier, number with unit, and what stands behind it. */
final class NumberReader {
    static final Pattern DROPS = Pattern.compile("drops?|gtt\\.?|Tropfen|Tr\\.?", Pattern.CASE_INSENSITIVE);

    /** Longest text that is tried. */
    private static final int LONGEST = 80;

    private static final Pattern PLAIN = Pattern.compile("\\d{1,15}+(?:\\.\\d{1,2})?+|0\\.\\d{1,15}+");
    private static final Pattern MARK = pattern("(?:(?<about>" + NumberWords.ABOUT + ")|(?<below>" + NumberWords.BELOW
            + ")|(?<above>" + NumberWords.ABOVE + ")) ?");
    private static final Pattern SYMBOL =
            pattern("(?<name>\\p{L}[\\p{L}.]*(?: ?\\p{L}+)?|\\+/-)(?: ?(?:[=:]|(?=[<>~+-]|\\d|\\.\\d|ca)| )) ?");
    private static final Pattern LIMIT_IN_BRACKETS = pattern("< ?(?:LO[DQ]|MDL|BG|NWG|RL) ?[(=:]? ?(?=[\\d.,])");
    private static final Pattern NOTHING_BELOW = pattern(
            "(?<found>.+?)[ ,;:]*(?:(?<bracket>[(\\[]) ?)?(?<mark>(?:(?:LO[DQ]|MDL|DL|NWG|BG|RL|limit|Grenze) ?(?:of |[=:] ?)?)?(?:<=?|=<) ?"
                    + "|(?:LO[DQ]|MDL|DL|NWG|BG|RL|limit|Grenze) ?(?:of |[=:] ?)?)?(?<limit>\\d[\\d.,]*[^\\d()\\[\\]]*)[)\\]]?");
    private static final Pattern TRACES = pattern("traces?|Spuren?");
    private static final Pattern HOW_OFTEN = pattern("(?<=[^ ,;(\\[])[ ,;(\\[]{1,2}n ?= ?\\d{1,2}[)\\]]?$");
    private static final Pattern AT_MOST =
            pattern("\\(?(?:max(?:imum|imal|\\.)?|or (?:less|below)|oder weniger|ou moins)(?!\\p{L})\\)?");
    private static final Pattern AT_LEAST = pattern("or (?:more|above)|oder mehr|ou plus");
    private static final Pattern DIGITS_IN_BRACKETS = Pattern.compile("\\(\\d{1,2}\\)");
    private static final Pattern MINUS = pattern("minus (?=\\d)");
    private static final Pattern TO = pattern(" ?(?:-|to|bis|à|until|\\.\\.+) ?");
    private static final Pattern SPACED_MINUS = Pattern.compile(" - ");
    private static final Pattern PLUS = Pattern.compile(" ?\\+ ?");
    private static final Pattern LISTED = Pattern.compile("(?: ?[,;] | ?; ?)(?=\\d)");
    private static final Pattern UNCERTAINTY = Pattern.compile(" ?\\(?\\+/- ?");
    private static final Pattern MEAN =
            pattern(".*?(?:mean|average|avg\\.?|Mittelwert|Mittel|MW|moyenne|Ø)[ :=]*(?<mean>\\d.*?)\\)?");

    private final String text;
    private final NumberText.Marks marks;
    private final NumberSymbols symbols;

    /**
     * A reader of one text.
     *
     * @param text the text with its signs folded, see {@link TypedText}
     */
    NumberReader(String text, NumberText.Marks marks, NumberSymbols symbols) {
        this.text = HOW_OFTEN.matcher(text).replaceAll("");
        this.marks = marks;
        this.symbols = symbols;
    }

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    NumberText read() {
        if (PLAIN.matcher(text).matches() && (text.length() == 1 || text.charAt(0) != '0' || text.charAt(1) == '.')) {
            BigDecimal value = new BigDecimal(text);
            return new NumberText.Number(value, Qualifier.EXACT, value.scale(), Optional.empty());
        }
        if (NumberWords.meanNothing(text)) {
            return new NumberText.Nothing();
        }
        if (NumberWords.meanNotDetected(text)) {
            return new NumberText.NotDetected();
        }
        Optional<NumberText> nothingFound = nothingFound();
        if (nothingFound.isPresent()) {
            return nothingFound.get();
        }
        if (text.length() > LONGEST || text.indexOf('?') >= 0) {
            return NumberText.unreadable();
        }
        Matcher limit = LIMIT_IN_BRACKETS.matcher(text);
        if (limit.lookingAt()) {
            String inner = text.substring(limit.end());
            return qualified(
                    new NumberReader(
                                    inner.endsWith(")") ? inner.substring(0, inner.length() - 1) : inner,
                                    marks,
                                    symbols)
                            .from(0, Qualifier.EXACT),
                    Qualifier.BELOW);
        }
        return from(0, Qualifier.EXACT);
    }

    /** {@code n.d. (<0.1)}, {@code ND (LOD 0.1)}, {@code traces <0.1}: below the limit; {@code n.d. (HPLC)}: not detected. */
    private Optional<NumberText> nothingFound() {
        if (text.length() > LONGEST || text.isEmpty() || Character.isDigit(text.charAt(0))) {
            return Optional.empty();
        }
        Matcher below = NOTHING_BELOW.matcher(text);
        if (below.matches()) {
            boolean marked = below.group("mark") != null;
            boolean nothing =
                    NumberWords.meanNotDetected(below.group("found")) && (marked || below.group("bracket") != null);
            return nothing || marked && TRACES.matcher(below.group("found")).matches()
                    ? Optional.of(qualified(
                            new NumberReader(below.group("limit").strip(), marks, symbols).from(0, Qualifier.EXACT),
                            Qualifier.BELOW))
                    : Optional.empty();
        }
        int end = text.indexOf(" (") > 0 ? text.indexOf(" (") : text.indexOf(" by ");
        return end > 0 && NumberWords.meanNotDetected(text.substring(0, end)) && Remarks.harmless(text.substring(end))
                ? Optional.of(new NumberText.NotDetected())
                : Optional.empty();
    }

    /** Symbol and qualifier, in either order, then the number. */
    private NumberText from(int start, Qualifier first) {
        int at = afterSymbol(start);
        Qualifier qualifier = first;
        Matcher mark = MARK.matcher(text).region(at, text.length());
        if (mark.lookingAt()) {
            qualifier = mark.group("about") != null
                    ? Qualifier.ABOUT
                    : mark.group("below") != null ? Qualifier.BELOW : Qualifier.ABOVE;
            at = afterSymbol(mark.end());
        }
        Matcher minus = MINUS.matcher(text).region(at, text.length());
        if (minus.lookingAt()) {
            String negative = text.substring(0, at) + "-" + text.substring(minus.end());
            return new NumberReader(negative, marks, symbols).from(at, qualifier);
        }
        NumberToken.Found found = NumberToken.at(text, at, marks, true);
        if (found.state() == NumberToken.State.TWO_WAYS) {
            return twoWays();
        }
        Qualifier mine = qualifier;
        return found.token().map(token -> qualified(behind(token), mine)).orElseGet(NumberText::unreadable);
    }

    /** A mark for both readings; the caller reads the text anew with either. */
    private static NumberText twoWays() {
        return new NumberText.Ambiguous(NumberText.unreadable(), NumberText.unreadable());
    }

    private int afterSymbol(int start) {
        Matcher symbol = SYMBOL.matcher(text).region(start, text.length());
        return symbol.lookingAt() && symbols.name(symbol.group("name")) ? symbol.end() : start;
    }

    private static NumberText qualified(NumberText read, Qualifier qualifier) {
        if (qualifier == Qualifier.EXACT) {
            return read;
        }
        if (!(read instanceof NumberText.Number number)) {
            return read instanceof NumberText.Several ? NumberText.unreadable() : read;
        }
        boolean limitThatSpreads =
                qualifier != Qualifier.ABOUT && number.halfWidth().signum() > 0;
        return switch (number.qualifier()) {
            case EXACT, ABOUT -> limitThatSpreads ? NumberText.unreadable() : number.qualified(qualifier);
            case DROPS -> number;
            case RANGE -> qualifier == Qualifier.ABOUT ? number : NumberText.unreadable();
            default -> NumberText.unreadable();
        };
    }

    private static NumberText.Number number(NumberToken token) {
        NumberText.Number number =
                new NumberText.Number(token.value(), Qualifier.EXACT, token.decimals(), token.unit());
        return token.drops() ? number.ofDrops() : number;
    }

    /** What stands behind the first number: nothing, a mark, another number, or words. */
    private NumberText behind(NumberToken token) {
        String tail = text.substring(token.end()).strip();
        NumberText.Number number = number(token);
        if (tail.isEmpty()) {
            return number;
        }
        if (DIGITS_IN_BRACKETS.matcher(tail).matches() && !text.contains(" (")) {
            return HalfWidth.ofDigits(number, tail.substring(1, tail.length() - 1), text);
        }
        Matcher most = AT_MOST.matcher(tail);
        if (most.lookingAt() && (most.end() == tail.length() || Remarks.harmless(tail.substring(most.end())))) {
            return qualified(number, Qualifier.BELOW);
        }
        if (tail.equals("+") || AT_LEAST.matcher(tail).matches()) {
            return number.qualified(Qualifier.ABOVE);
        }
        if (NumberWords.meanAbout(tail)) {
            return number.qualified(Qualifier.ABOUT);
        }
        Matcher mean = MEAN.matcher(tail);
        if (mean.matches()) {
            return mean(number, mean.group("mean"));
        }
        NumberText several = several(token, number);
        return several == null ? Remarks.beside(number, tail, text, symbols) : several;
    }

    /** {@code 4.18, 4.22 (mean 4.20)}: the mean, if it is one of what was written. */
    private NumberText mean(NumberText.Number first, String written) {
        NumberText mean = new NumberReader(written, marks, symbols).from(0, Qualifier.EXACT);
        if (mean instanceof NumberText.Number number
                && number.remark().isEmpty()
                && number.qualifier() == Qualifier.EXACT
                && number.value()
                                .subtract(first.value())
                                .abs()
                                .multiply(BigDecimal.TEN)
                                .compareTo(number.value().abs())
                        <= 0) {
            return number.in(number.unit().or(first::unit)).with(new NumberText.Remark(Severity.NOTE, text));
        }
        return mean instanceof NumberText.Ambiguous ? mean : NumberText.unreadable();
    }

    /** Two or more numbers that belong together; null where no second number follows. */
    private NumberText several(NumberToken first, NumberText.Number number) {
        Matcher uncertainty = UNCERTAINTY.matcher(text).region(first.end(), text.length());
        if (uncertainty.lookingAt()) {
            NumberToken.Found found = NumberToken.at(text, uncertainty.end(), marks, false);
            return found.state() == NumberToken.State.TWO_WAYS
                    ? twoWays()
                    : found.token()
                            .flatMap(token -> HalfWidth.beside(number, token, text))
                            .map(NumberText.class::cast)
                            .orElseGet(NumberText::unreadable);
        }
        for (Link link : Link.values()) {
            Matcher match = link.pattern.matcher(text).region(first.end(), text.length());
            if (!match.lookingAt() || link == Link.BRACKET && (first.unit().isPresent() || first.decimals() > 0)) {
                continue;
            }
            NumberToken.Found second = NumberToken.at(
                    text, match.end(), marks, link == Link.TO && match.group().contains("to"));
            if (second.state() == NumberToken.State.TWO_WAYS) {
                return twoWays();
            }
            if (second.token().isPresent()) {
                return joined(link, number, second.token().get());
            }
        }
        return null;
    }

    private enum Link {
        DIFFERENCE(SPACED_MINUS),
        TO(NumberReader.TO),
        TIMES(pattern(" ?(?:[x*·]|mal|fois|times|(?:portions?|Portionen)(?: (?:of|à|a|de|von|zu))?)(?= ?[\\d.,]) ?")),
        BRACKET(Pattern.compile("\\(")),
        PLUS(NumberReader.PLUS),
        LIST(LISTED),
        SLASH(Pattern.compile(" ?/ ?")),
        COLON(Pattern.compile(" ?: ?"));

        private final Pattern pattern;

        Link(Pattern pattern) {
            this.pattern = pattern;
        }
    }

    private NumberText joined(Link link, NumberText.Number a, NumberToken token) {
        NumberText.Number b = number(token);
        String tail = text.substring(token.end()).strip();
        if (link == Link.BRACKET && b.unit().isEmpty()) {
            return Remarks.beside(a, text.substring(text.indexOf('(')), text, symbols);
        }
        if (link == Link.BRACKET && tail.equals(")")) {
            tail = "";
        }
        if (link == Link.PLUS || link == Link.LIST) {
            return sum(a, token);
        }
        boolean about = NumberWords.meanAbout(tail);
        if (!tail.isEmpty() && !about && !Remarks.harmless(tail)) {
            return NumberText.unreadable();
        }
        boolean descending = a.value().compareTo(b.value()) > 0;
        return switch (link) {
            case DIFFERENCE, TO -> descending ? pair(NumberText.Together.DIFFERENCE, a, b) : range(a, b);
            case TIMES ->
                a.unit().isPresent() && b.unit().isEmpty()
                        ? pairAsIs(NumberText.Together.PORTIONS, b, a)
                        : pairAsIs(NumberText.Together.PORTIONS, a, b);
            case BRACKET -> pairAsIs(NumberText.Together.PORTIONS, a, b);
            case SLASH -> pair(NumberText.Together.SLASH, a, b);
            default -> pair(NumberText.Together.COLON, a, b);
        };
    }

    /** {@code 80 + 40}, {@code 50, 50}: all of them, or unreadable where anything else follows. */
    private NumberText sum(NumberText.Number first, NumberToken second) {
        List<NumberText.Number> all = new ArrayList<>(List.of(first));
        Optional<NumberToken> next = Optional.of(second);
        int end = 0;
        while (next.isPresent()) {
            all.add(number(next.get()));
            end = next.get().end();
            Matcher plus = Pattern.compile(" ?(?:\\+|[,;]) ?").matcher(text).region(end, text.length());
            if (!plus.lookingAt()) {
                break;
            }
            NumberToken.Found found = NumberToken.at(text, plus.end(), marks, false);
            if (found.state() == NumberToken.State.TWO_WAYS) {
                return twoWays();
            }
            next = found.token();
        }
        if (!text.substring(end).isBlank()) {
            return NumberText.unreadable();
        }
        return new NumberText.Several(NumberText.Together.SUM, inOneUnit(all));
    }

    private static NumberText pair(NumberText.Together together, NumberText.Number a, NumberText.Number b) {
        return new NumberText.Several(together, inOneUnit(List.of(a, b)));
    }

    private static NumberText pairAsIs(NumberText.Together together, NumberText.Number a, NumberText.Number b) {
        return a.unit().isEmpty() ? new NumberText.Several(together, List.of(a, b)) : NumberText.unreadable();
    }

    /** A unit written once counts for all. */
    private static List<NumberText.Number> inOneUnit(List<NumberText.Number> numbers) {
        List<Unit> units =
                numbers.stream().flatMap(n -> n.unit().stream()).distinct().toList();
        return units.size() == 1
                ? numbers.stream().map(n -> n.in(Optional.of(units.get(0)))).toList()
                : numbers;
    }

    private NumberText range(NumberText.Number a, NumberText.Number b) {
        List<NumberText.Number> ends = inOneUnit(List.of(a, b));
        Optional<Unit> unit = ends.get(1).unit();
        if (!ends.get(0).unit().equals(unit)) {
            return NumberText.unreadable();
        }
        BigDecimal half = b.value().subtract(a.value()).divide(BigDecimal.valueOf(2));
        int decimals = Math.max(a.decimals(), b.decimals());
        BigDecimal middle = a.value().add(half);
        return new NumberText.Number(middle, Qualifier.RANGE, decimals, unit, half, Optional.empty());
    }
}
