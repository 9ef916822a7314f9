package workuptally.book.headings;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.words.Unit;

/**
 * The unit in a heading of a laboratory's own list: in brackets, behind a slash, behind {@code in}, or as the last or first word: {@code m (SM) /
 * mg}, {@code Masse in mg}, {@code Product: mg}, {@code mg product}.
 *
 * @param text the unit as typed
 * @param unit the unit
 * @param rest the heading without it
 */
public record OwnHeadingUnit(String text, Unit unit, String rest) {
    private static final Pattern IN_BRACKETS = Pattern.compile("(?<rest>.*?)\\s*[(\\[](?<unit>[^()\\[\\]]+)[)\\]]\\s*");
    private static final Pattern BEHIND_SLASH = Pattern.compile("(?<rest>.*?)\\s*/\\s*(?<unit>.+)");
    /** {@code M(SM) g/mol}, whose slash is the unit's own. */
    private static final Pattern LAST_RATIO = Pattern.compile("(?<rest>.*[^\\s/])\\s+(?<unit>[^\\s/]+/[^\\s/]+)");

    /** A yield in per cent of theory, {@code % d. Th.}. */
    private static final Pattern OF_THEORY = Pattern.compile(
            "(?i)%\\s*(?:d\\.?\\s*th(?:eorie)?\\.?|(?:of )?th(?:eory|eor)?\\.?|th\u00e9?o(?:rique)?\\.?)");

    private static final Pattern LAST_WORDS =
            Pattern.compile("(?<rest>.*?(?:^|[\\s,]))(?:in\\s+)?(?<unit>\\S+(?: \\S+)?)");
    private static final Pattern LAST_WORD = Pattern.compile("(?<rest>.*?(?:^|[\\s,]))(?:in\\s+)?(?<unit>\\S+)");

    private static final Pattern FIRST_WORD = Pattern.compile("(?<unit>\\S+)\\s+(?<rest>.+)");

    /** Units of one letter that a bare last word can be; a lone M may as well be a molar mass, a lone d a density. */
    private static final List<String> SHORT = List.of("g", "%");

    /** In German lists the molar mass, in lists all in capitals the milligram: no unit by itself. */
    public static final String MOLAR_MASS_OR_MILLIGRAM = "MG";

    /** The unit, if the heading names one. */
    public static Optional<OwnHeadingUnit> of(String heading) {
        int colon = heading.lastIndexOf(": ");
        String upper = colon < 0 ? "" : heading.substring(0, colon) + " ";
        String lower = colon < 0 ? heading : heading.substring(colon + 2);
        Optional<OwnHeadingUnit> alone = bare(lower, upper.strip());
        if (alone.isPresent()) {
            return alone;
        }
        for (Pattern form : List.of(IN_BRACKETS, LAST_RATIO, BEHIND_SLASH, LAST_WORDS, LAST_WORD, FIRST_WORD)) {
            Matcher match = form.matcher(lower);
            if (match.matches()) {
                String rest = (upper + match.group("rest")).strip();
                Optional<OwnHeadingUnit> found = form == IN_BRACKETS || form == BEHIND_SLASH
                        ? read(match.group("unit"), rest)
                        : bare(match.group("unit"), rest);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<OwnHeadingUnit> bare(String unit, String rest) {
        boolean doubtful = unit.strip().length() < 2 && !SHORT.contains(unit.strip())
                || unit.strip().equals(MOLAR_MASS_OR_MILLIGRAM);
        return doubtful ? Optional.empty() : read(unit, rest);
    }

    private static Optional<OwnHeadingUnit> read(String inside, String rest) {
        int comma = inside.indexOf(',');
        String typed = (comma < 0 ? inside : inside.substring(0, comma)).strip();
        String unit = OF_THEORY.matcher(typed).matches() ? "%" : typed;
        return Unit.named(unit).map(found -> new OwnHeadingUnit(unit, found, rest));
    }
}
