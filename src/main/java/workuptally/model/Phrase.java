package workuptally.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collector;

/**
 * What is to be said, before anybody says it: words with gaps, and the names, figures and clauses that fill them. It becomes a sentence
 * where the reader is known. Two phrases are equal where they say the same of the same figures, whatever the words are in the end; nobody
 * looks into the words.
 *
 * @param template words with <code>{}</code> for each part
 * @param parts names, numbers, {@link Figure figures} and phrases, in their order
 */
public record Phrase(String template, List<Object> parts) {
    /** A clause that says nothing. */
    public static final Phrase NONE = new Phrase("", List.of());

    private static final String GAP = "{}";

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there are more gaps than parts or fewer
     */
    public Phrase {
        if (gaps(template) != parts.size()) {
            throw new IllegalArgumentException(parts.size() + " parts for: " + template);
        }
        parts = List.copyOf(parts);
    }

    /** A phrase of a template and its parts. */
    public static Phrase of(String template, Object... parts) {
        return new Phrase(template, Arrays.asList(parts));
    }

    /** A text that is repeated as it stands, such as what somebody typed. */
    public static Phrase quoted(String text) {
        return text.isEmpty() ? NONE : new Phrase(GAP, List.of(text));
    }

    /** Parts in a row. */
    public static Phrase join(String between, List<?> parts) {
        return new Phrase(String.join(between, java.util.Collections.nCopies(parts.size(), GAP)), List.copyOf(parts));
    }

    /** Puts the parts of a stream in a row. */
    public static Collector<Object, ?, Phrase> joining(String between) {
        return Collector.of(
                ArrayList<Object>::new,
                List::add,
                (left, right) -> {
                    left.addAll(right);
                    return left;
                },
                (List<Object> parts) -> join(between, parts));
    }

    /** True for a clause that says nothing. */
    public boolean isEmpty() {
        return template.isEmpty();
    }

    private static int gaps(String template) {
        int gaps = 0;
        for (int at = template.indexOf(GAP); at >= 0; at = template.indexOf(GAP, at + GAP.length())) {
            gaps++;
        }
        return gaps;
    }

    /** Equal in words and parts; see the contributor guide on records as keys. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Phrase phrase && template.equals(phrase.template) && parts.equals(phrase.parts);
    }

    @Override
    public int hashCode() {
        return 31 * template.hashCode() + parts.hashCode();
    }
}
