package workuptally.book.words;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is written for "the same as in the row above" (common practice; English, German, French). */
public final class DittoMark {
    private static final Set<String> MARKS = Set.of("\"", "''", "„", "“", "”", "″", "〃", "´´", "``", ",,");
    private static final Set<String> WORDS = Stream.of(
                    "ditto", "do.", "dito", "dto.", "idem", "id.", "same", "as above", "wie oben", "s. o.", "ci-dessus")
            .map(BookWords::loose)
            .collect(Collectors.toUnmodifiableSet());

    private static final Set<String> DASHES = Set.of("-", "–", "—", "--");

    private DittoMark() {}

    /** True for a mark or word that repeats the cell above. */
    public static boolean is(String text) {
        String plain = TypedText.plain(text).strip();
        return MARKS.contains(plain) || WORDS.contains(BookWords.loose(plain));
    }

    /** True where a cell may be meant as one: a dash stands for the cell above where a table is written in blocks, else for nothing. */
    public static boolean isDash(String text) {
        return DASHES.contains(TypedText.plain(text).strip());
    }
}
