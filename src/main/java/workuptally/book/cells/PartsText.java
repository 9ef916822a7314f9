package workuptally.book.cells;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.words.NamedNumber;
import workuptally.book.words.NumberWords;
import workuptally.book.words.TypedText;
import workuptally.book.words.Unit;
import workuptally.model.Field.Qualifier;

/** Parts of a mixture or skeleton as people list them: {@code EtOAc 80 %, EtOH 20 %}, {@code 80 % EtOAc; 20 % EtOH}, {@code toluene}. */
public final class PartsText {
    private static final String REST_WORDS = "(?:rest|remainder|balance|bal\\.?|reste|solde|übrige[rs]?)";

    private static final Pattern BETWEEN = Pattern.compile("(?iu) ?; ?|, (?=.*\\d|" + REST_WORDS
            + "(?!\\p{L})|\\p{L}+ \\(?" + REST_WORDS + "\\)?$)|(?<!(?<!\\p{L})[NOSP]),(?=\\p{L})| \\+ | & ");

    /** Words that name no share. */
    private static final Pattern VAGUE = Pattern.compile(
            "(?<!\\p{L})(?:mostly|some|mainly|traces?|hauptsächlich|meist|etwas|wenig|rest|balance|little|plus|or|oder|and|und)(?!\\p{L})|\\?",
            Pattern.CASE_INSENSITIVE);

    /** What is left of a mixture: {@code rest water}, {@code water (rest)}, {@code Rest: Wasser}. */
    private static final Pattern REST = Pattern.compile("(?iu)(?:the )?" + REST_WORDS
            + "(?: (?:is|of|ist|mit))?(?: ?[:=] ?| )(?<name>.+)|(?<before>.+?)(?: ?[:=(] ?| )(?:the )?" + REST_WORDS
            + "\\)?|(?:the )?" + REST_WORDS);

    private static final Pattern RATIO = Pattern.compile("\\d ?: ?\\d");

    /** Liquids mixed by volume, {@code EtOAc/THF 7:3}, {@code 2:1 EtOAc:THF}: one part by its own name, which the tables take apart. */
    private static final Pattern BLEND =
            Pattern.compile("(?<ratio>\\(?\\d[\\d.]*(?: ?: ?\\d[\\d.]*)+\\)?) (?<names>\\p{L}[^;,%]*\\p{L}[)]?)"
                    + "|\\p{L}[^;,%]*\\p{L}\\)? \\(?\\d[\\d.]*(?: ?: ?\\d[\\d.]*)+\\)?(?: \\(?v/v\\)?)?");

    private static final Pattern TWO_NAMES = Pattern.compile("\\p{L}[\\p{L}\\d]*\\)? ?[/:–-] ?\\(?\\p{L}");

    private PartsText() {}

    /** What was not understood, or the parts. */
    public record Read(List<NamedNumber> parts, Optional<String> fault) {}

    /**
     * Reads the parts.
     *
     * @param unit unit wanted, and meant where none is written
     * @param lone number of a part that is only a name, if that is allowed
     */
    public static Read read(String typed, Unit unit, Optional<Double> lone) {
        List<NamedNumber> parts = new ArrayList<>();
        List<String> rests = new ArrayList<>();
        String text = TypedText.plain(typed);
        String[] pieces = BETWEEN.split(text);
        for (String piece : pieces) {
            String part = piece.strip();
            if (part.isEmpty() || NumberWords.meanNothing(part)) {
                continue;
            }
            Matcher rest = REST.matcher(part);
            if (unit == Unit.PERCENT && rest.matches()) {
                rests.add(part);
                continue;
            }
            if (unit == Unit.PERCENT && lone.isPresent() && pieces.length == 1 && isBlend(part)) {
                return new Read(List.of(new NamedNumber(part, lone.get(), false)), Optional.empty());
            }
            Optional<NamedNumber> read = part(part, unit)
                    .or(() -> lone.filter(n -> isName(part) && (unit == Unit.ONE || pieces.length == 1))
                            .map(n -> new NamedNumber(part, n, false)));
            if (read.isEmpty()) {
                return new Read(List.of(), Optional.of(part));
            }
            parts.add(read.get());
        }
        return rests.isEmpty() ? new Read(parts, Optional.empty()) : withRest(parts, rests);
    }

    private static boolean isBlend(String part) {
        return BLEND.matcher(part).matches() && TWO_NAMES.matcher(part).find();
    }

    /** The rest of 100 % goes to what is named for it; nothing does where more than one thing is, or where the others leave nothing. */
    private static Read withRest(List<NamedNumber> parts, List<String> rests) {
        Matcher rest = REST.matcher(rests.get(0));
        boolean one = rest.matches() && rests.size() == 1 && !parts.isEmpty();
        String name = !one ? "" : rest.group("name") != null ? rest.group("name") : rest.group("before");
        if (one && (name == null || NumberWords.meanNothing(name))) {
            return new Read(parts, Optional.empty()); // nobody said what the rest is
        }
        double others = parts.stream().mapToDouble(NamedNumber::value).sum();
        boolean fractions = parts.stream().anyMatch(NamedNumber::bare) && others <= 1;
        if (!one || !isName(name) || fractions || others >= 100) {
            return new Read(List.of(), Optional.of(rests.get(0)));
        }
        parts.add(new NamedNumber(name.strip(), 100 - others, false));
        return new Read(parts, Optional.empty());
    }

    private static boolean isName(String part) {
        return !VAGUE.matcher(part).find()
                && !RATIO.matcher(part).find()
                && !part.matches(".*\\s[\\d.,]+ ?%?|.*\\d ?%.*");
    }

    private static Optional<NamedNumber> part(String part, Unit unit) {
        if (VAGUE.matcher(part).find() || RATIO.matcher(part).find()) {
            return Optional.empty();
        }
        return nameFirst(part, unit).or(() -> numberFirst(part, unit));
    }

    /** {@code acetone 1950 g}, {@code acetone: 80}, {@code acetone (1950 g)}, {@code acid x2}. */
    private static Optional<NamedNumber> nameFirst(String part, Unit unit) {
        for (int at = 1; at < part.length(); at++) {
            if (" :=(".indexOf(part.charAt(at)) < 0) {
                continue;
            }
            String number = part.substring(at).replaceFirst("^[ :=]+", "");
            boolean bracket = number.startsWith("(") && number.endsWith(")");
            String inner = bracket ? number.substring(1, number.length() - 1) : number;
            String counted = unit == Unit.ONE ? inner.replaceFirst("^[x*·] ?(?=\\d)", "") : inner;
            Optional<NamedNumber> value = value(counted, unit);
            if (value.isPresent()) {
                return named(part.substring(0, at), value.get());
            }
        }
        return Optional.empty();
    }

    /** {@code 80 % EtOAc}, {@code 2 x aniline}. */
    private static Optional<NamedNumber> numberFirst(String part, Unit unit) {
        NumberToken.Found found = NumberToken.at(part, 0, NumberText.Marks.UNKNOWN, false);
        if (found.token().isEmpty()) {
            return Optional.empty();
        }
        NumberToken token = found.token().get();
        String rest = part.substring(token.end()).strip();
        String name = unit == Unit.ONE ? rest.replaceFirst("^[x*·] ", "") : rest;
        boolean spaced = token.unit().isPresent() || part.startsWith(" ", token.end());
        return spaced && name.matches(".*\\p{L}.*") && !name.matches("[x*·].*")
                ? value(part.substring(0, token.end()), unit).flatMap(v -> named(name, v))
                : Optional.empty();
    }

    private static Optional<NamedNumber> named(String name, NamedNumber value) {
        String bare = name.replaceFirst("[ :=x]*$", name.strip().endsWith("x") && name.endsWith(" x") ? "" : "$0")
                .replaceFirst("[ :=]+$", "")
                .strip();
        return bare.isEmpty()
                        || !bare.matches(".*\\p{L}.*")
                        || RATIO.matcher(bare).find()
                ? Optional.empty()
                : Optional.of(new NamedNumber(bare, value.value(), value.bare()));
    }

    /** True where words follow the number that may be another part: {@code 90 % hydrogen peroxide}. */
    private static boolean namesMore(String text) {
        int digit = 0;
        while (digit < text.length() && !Character.isDigit(text.charAt(digit))) {
            digit++;
        }
        Optional<NumberToken> token =
                NumberToken.at(text, digit, NumberText.Marks.UNKNOWN, false).token();
        String rest = token.map(t -> text.substring(t.end()).strip()).orElse("");
        return rest.matches(".*\\p{L}.*") && !Remarks.harmless(rest);
    }

    /** A value without its name. */
    private static Optional<NamedNumber> value(String text, Unit unit) {
        if (!(NumberText.parse(text) instanceof NumberText.Number number)
                || number.qualifier() == Qualifier.BELOW
                || number.qualifier() == Qualifier.ABOVE
                || number.remark().isPresent()
                || namesMore(text)) {
            return Optional.empty();
        }
        Unit typed = number.unit().orElse(unit);
        return typed.quantity() == unit.quantity() && number.value().signum() > 0
                ? Optional.of(new NamedNumber(
                        "",
                        typed.convert(number.value(), unit).doubleValue(),
                        number.unit().isEmpty()))
                : Optional.empty();
    }
}
