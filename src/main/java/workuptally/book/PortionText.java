package workuptally.book;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Portions as benches write them: {@code 3 x 30 mL}, {@code 3 x} or {@code x3}.
 *
 * @param count number of portions, 1 or more
 * @param each what stands behind the count; empty if nothing
 */
record PortionText(int count, String each) {
    private static final Pattern COUNT_FIRST =
            Pattern.compile("(\\d{1,3}) ?[x\u00d7*] ?(.*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern COUNT_LAST = Pattern.compile("[x\u00d7*] ?(\\d{1,3})", Pattern.CASE_INSENSITIVE);

    static Optional<PortionText> of(RawCell cell) {
        if (cell.type() != RawCell.Type.TEXT) {
            return Optional.empty();
        }
        String text = Words.tidy(cell.text());
        Matcher first = COUNT_FIRST.matcher(text);
        if (first.matches()) {
            return Optional.of(new PortionText(Integer.parseInt(first.group(1)), first.group(2)));
        }
        Matcher last = COUNT_LAST.matcher(text);
        return last.matches() ? Optional.of(new PortionText(Integer.parseInt(last.group(1)), "")) : Optional.empty();
    }
}
