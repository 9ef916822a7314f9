package workuptally.material;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A material named twice with its strength between, {@code Bleiche 12 % NaOCl}: the second name and the strength say it all. */
final class RepeatedName {
    private static final Pattern STRENGTH_BETWEEN = Pattern.compile("(.+?)\\s+(\\d+(?:[.,]\\d+)?\\s*%)\\s+(.+)");

    private RepeatedName() {}

    /** The text with each material named once; as it is where the two names mean different ones. */
    static String once(String text, SubstanceIndex index) {
        Matcher twice = STRENGTH_BETWEEN.matcher(text.strip());
        if (!twice.matches()) {
            return text;
        }
        List<Substance> first = index.find(twice.group(1)).substances();
        List<Substance> second = index.find(twice.group(3)).substances();
        boolean same = first.stream().anyMatch(second::contains);
        return same ? twice.group(2) + " " + twice.group(3) : text;
    }
}
