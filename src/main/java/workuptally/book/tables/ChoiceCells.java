package workuptally.book.tables;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.BookWords;
import workuptally.book.words.MethodWords;
import workuptally.book.words.NumberWords;
import workuptally.book.words.TestWords;
import workuptally.book.words.TypedText;
import workuptally.book.words.YesNo;
import workuptally.model.Assay;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/** Reads the cells of one row in which a word of a list is expected; a word near one is taken for it and said so. */
final class ChoiceCells {
    private static final int MOST_CHOICES_NAMED = 8;

    private static final Pattern WORDS = Pattern.compile("[\\p{L} -]+");

    /** What stands for yes and for no beside the plain words where a product is said to be wanted. */
    private static final Set<String> WANTED = Set.of("wanted", "target", "desired", "product", "mainproduct");

    private static final Set<String> UNWANTED =
            Set.of("byproduct", "sideproduct", "impurity", "recovered", "unwanted", "nebenprodukt", "tracked");

    private final TableRow row;
    private final MatchedHeadings headings;

    ChoiceCells(TableRow row, MatchedHeadings headings) {
        this.row = row;
        this.headings = headings;
    }

    /** One of a choice; nothing where blank or not understood. */
    <E extends Enum<E>> Optional<E> choice(SchemaColumn column, E[] values) {
        String text = row.text(column.heading());
        Optional<E> found = BookWords.find(values, headings.word(text));
        if (found.isEmpty() && !text.isEmpty() && !isNothing(text)) {
            Optional<String> ask = BookWords.ask(values, text);
            if (ask.isPresent()) {
                reportUnknown(column, text, "Write " + ask.get() + ", and run again.");
                return found;
            }
            Optional<E> guess =
                    WORDS.matcher(text).matches() ? BookWords.guess(values, headings.word(text)) : Optional.empty();
            if (guess.isEmpty()) {
                reportUnknown(column, text);
            } else {
                row.report(
                        FindingCode.CHOICE_GUESSED,
                        Severity.CHECK,
                        column.heading(),
                        "read '" + text + "' as " + BookWords.word(guess.get()),
                        column.expected(),
                        "Correct the word if that is meant; it was used so.");
            }
            return guess;
        }
        return found;
    }

    /** The result of a test: a mere dash could mean one, and more than the plain word could take {@code clear} back; both are asked about. */
    <E extends Enum<E>> Optional<E> result(SchemaColumn column, E[] values, E clear) {
        String text = TypedText.plain(row.text(column.heading()));
        String word = headings.word(text);
        boolean doubtful = BookWords.find(values, word).filter(clear::equals).isPresent()
                && (!TestWords.leaveNegative(word) || saysOther(values, word, clear));
        if (text.matches("-{1,3}") || doubtful) {
            reportUnknown(column, text);
            return Optional.empty();
        }
        boolean clearly = BookWords.find(values, word).isEmpty() && TestWords.sayNegative(word);
        return clearly ? Optional.of(clear) : choice(column, values);
    }

    /** The method of an assay; one whose calibration a word beside it takes back is asked about. */
    Optional<Assay.Method> method(SchemaColumn column) {
        String text = row.text(column.heading());
        String word = headings.word(text);
        boolean takenBack = BookWords.find(Assay.Method.values(), word)
                .filter(method -> !MethodWords.leave(method, word))
                .isPresent();
        if (takenBack) {
            reportUnknown(
                    column,
                    text,
                    "Write the method alone where the result was calibrated with the substance, area % as the Unit where it was not, and run again.");
            return Optional.empty();
        }
        return choice(column, Assay.Method.values());
    }

    private static <E extends Enum<E>> boolean saysOther(E[] values, String text, E clear) {
        return Stream.of(text.split("[^\\p{L}]+"))
                .anyMatch(word -> BookWords.find(values, word)
                        .filter(other -> other != clear)
                        .isPresent());
    }

    private void reportUnknown(SchemaColumn column, String text) {
        reportUnknown(
                column,
                text,
                (column.choices().size() > MOST_CHOICES_NAMED
                                ? "Write a word of the column's list"
                                : "Write " + String.join(", ", column.choices()))
                        + ", or map your own in the headings file, and run again.");
    }

    private void reportUnknown(SchemaColumn column, String text, String action) {
        row.report(
                FindingCode.CHOICE_UNKNOWN,
                column.need().severity(),
                column.heading(),
                "read '" + text + "'",
                column.expected(),
                action);
    }

    private static boolean isNothing(String text) {
        return NumberWords.meanNothing(TypedText.plain(text));
    }

    /** Yes or no; nothing where blank or not understood. */
    Optional<Boolean> yesOrNo(SchemaColumn column) {
        String text = row.text(column.heading());
        String word = BookWords.loose(headings.word(text));
        Optional<Boolean> said = YesNo.of(word);
        if (said.isPresent()) {
            return said;
        }
        if (WANTED.contains(word) || UNWANTED.contains(word)) {
            return Optional.of(WANTED.contains(word));
        }
        if (!word.isEmpty() && !isNothing(text)) {
            reportUnknown(column, text);
        }
        return Optional.empty();
    }
}
