package workuptally.book.words;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.words.NoteWords.Of;
import workuptally.model.Notes.Said;

/** Words of the bench that speak against a figure (common practice), and everyday notes that do not. */
class NoteWordsTest {
    private static String said(String note, Of of) {
        return NoteWords.read(note, of).says().stream()
                .filter(said -> said != Said.PERCENT && said != Said.NOTHING)
                .map(Said::name)
                .sorted()
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/workuptally/book/written-notes.csv", numLinesToSkip = 1)
    void notesSayWhatCounts(String of, String note, String said) {
        assertEquals(said == null ? "" : said, said(note, Of.valueOf(of.toUpperCase(Locale.ROOT))));
    }

    /** Each word of the list is understood in each table it is for, by itself and capitalised. */
    @Test
    void everyWordOfTheListIsUnderstood() {
        assertAll(WordRow.all("note-words.csv").stream()
                .flatMap(row -> row.words("words").stream()
                        .flatMap(word -> Stream.of(written(word), written(word).toUpperCase(Locale.ROOT)))
                        .flatMap(note -> row.words("of").stream()
                                .map(of -> () -> assertTrue(
                                        NoteWords.read(note, Of.valueOf(of.toUpperCase(Locale.ROOT)))
                                                .say(NoteWords.said(row)),
                                        of + ": " + note)))));
    }

    private static String written(String word) {
        return (word.startsWith("=") ? word.substring(1) : word)
                .replace("##", "25")
                .replace("#", "10")
                .replace("*", "")
                .replace(" .. ", " of it was ");
    }

    @ParameterizedTest
    @CsvSource({"no %s", "not %s", "keine %s", "pas de %s", "sans %s", "%s: none", "no visible %s"})
    void aDenialTakesAWordBack(String denial) {
        assertEquals("", said(denial.formatted("emulsion"), Of.LAYER));
        assertEquals("", said(denial.formatted("precipitate"), Of.LAYER));
    }
}
