package workuptally.book.headings;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.words.BookWords;
import workuptally.book.words.Unit;

/**
 * A heading taken apart.
 *
 * @param name loosely spelled name without unit
 * @param unitText what stands in brackets or behind a slash or comma, up to a comma; empty if nothing
 */
public record HeadingText(String name, String unitText) {
    private static final Pattern WITH_UNIT =
            Pattern.compile("(?<name>[^(\\[/]+?)\\s*(?:\\((?<round>.*)\\)|\\[(?<square>.*)\\]|/\\s*(?<slash>.+))\\s*");

    /** {@code Gross, g} and {@code Assay %}. */
    private static final Pattern UNIT_BEHIND = Pattern.compile("(?<name>.{2,}?)(?:, ?| )(?<unit>[^ ,]+|% w/w)");

    public static HeadingText of(String typed) {
        String text = BookWords.tidy(typed);
        Matcher match = WITH_UNIT.matcher(text);
        if (!match.matches()) {
            Matcher behind = UNIT_BEHIND.matcher(text);
            boolean unit = behind.matches()
                    && (behind.group("unit").equals("%")
                            || Unit.named(behind.group("unit")).isPresent());
            return unit
                    ? new HeadingText(BookWords.loose(behind.group("name")), behind.group("unit"))
                    : new HeadingText(BookWords.loose(text), "");
        }
        String unit = Optional.ofNullable(match.group("round"))
                .or(() -> Optional.ofNullable(match.group("square")))
                .orElseGet(() -> match.group("slash"));
        int comma = unit.indexOf(',');
        return new HeadingText(
                BookWords.loose(match.group("name")), (comma < 0 ? unit : unit.substring(0, comma)).strip());
    }
}
