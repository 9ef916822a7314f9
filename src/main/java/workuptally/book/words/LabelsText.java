package workuptally.book.words;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import workuptally.model.Step;

/** Labels of layers as people join them: {@code O2 + O3}, {@code O2 & O3}, {@code O2/O3}, {@code O2 O3}, {@code O2-O4}. */
public final class LabelsText {
    /** Words for the reaction mixture (common practice). */
    private static final Set<String> MIXTURE = Set.of(
            "rm",
            "reactionmixture",
            "reaction",
            "rxn",
            "rxnmixture",
            "rxnmix",
            "mixture",
            "reaktionsmischung",
            "reaktionsgemisch",
            "rg",
            "ansatz",
            "reactor",
            "crudereactionmixture",
            "mélangeréactionnel");

    private static final Pattern RANGE = Pattern.compile(
            "([\\p{L}]{1,8}[ .]?)(\\d{1,3}) ?(?:-|to|bis|à|\\.\\.\\.?) ?((?:[\\p{L}]{1,8}[ .]?)?)(\\d{1,3})");

    private static final int MOST_OF_A_RANGE = 20;

    private LabelsText() {}

    /**
     * The labels, each once; the reaction mixture is always {@code RM}.
     *
     * @param known whether a text is a label that is written somewhere; a label that is known is never taken apart
     */
    public static List<String> read(String typed, Predicate<String> known) {
        String text = TypedText.plain(typed);
        if (text.isEmpty() || NumberWords.meanNothing(text)) {
            return List.of();
        }
        return Arrays.stream(text.split("[+,;]"))
                .map(String::strip)
                .flatMap(part -> parts(part, known).stream())
                .filter(label -> !label.isEmpty())
                .map(LabelsText::mixture)
                .distinct()
                .toList();
    }

    private static List<String> parts(String part, Predicate<String> known) {
        if (known.test(part) || MIXTURE.contains(BookWords.loose(part))) {
            return List.of(part);
        }
        List<String> range = range(part, known);
        if (!range.isEmpty()) {
            return range;
        }
        for (String between : List.of(" ?& ?", " (?:and|und|et|with|mit) ", " ?/ ?", " ")) {
            List<String> pieces =
                    Arrays.stream(part.split(between)).map(String::strip).toList();
            boolean all = pieces.stream().allMatch(p -> known.test(p) || MIXTURE.contains(BookWords.loose(p)));
            boolean joined = between.contains("&") || between.contains("and");
            if (pieces.size() > 1 && (all || joined)) {
                return pieces;
            }
        }
        return List.of(part);
    }

    /** {@code O2-O4} or {@code O2 to 4}, where every label from the first to the last is written somewhere; else none. */
    private static List<String> range(String part, Predicate<String> known) {
        Matcher ends = RANGE.matcher(part);
        if (!ends.matches() || !(ends.group(3).isEmpty() || ends.group(3).equalsIgnoreCase(ends.group(1)))) {
            return List.of();
        }
        int first = Integer.parseInt(ends.group(2));
        int last = Integer.parseInt(ends.group(4));
        List<String> labels = IntStream.rangeClosed(first, Math.min(last, first + MOST_OF_A_RANGE))
                .mapToObj(number -> ends.group(1) + number)
                .toList();
        return first < last
                        && last <= first + MOST_OF_A_RANGE
                        && labels.stream().allMatch(known)
                ? labels
                : List.of();
    }

    private static String mixture(String label) {
        return MIXTURE.contains(BookWords.loose(label)) ? Step.REACTION_MIXTURE : label;
    }
}
