package workuptally.report.view.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import workuptally.examples.DemoReview;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Finding;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.report.view.firstpage.NextMeasurement;
import workuptally.report.view.firstpage.UrgentAction;
import workuptally.report.view.lines.RunFindings;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;

/** Every word of every sentence changed: no decision, table, order or count moves. */
class ChangedWordsTest {
    private static final Set<String> SENTENCES =
            Set.of("Evidence", "Seen", "Expected", "Action", "Action asked", "Reason", "Missing", "Not met");
    private static final Pattern LOOKS_INTO_WORDS = Pattern.compile("\\.template\\(\\)|Phrase::template");

    /** Every letter another one, gaps kept; no two templates become one. */
    private static final Wording CHANGED = new Wording('.', ChangedWordsTest::changed);

    private static Review week;

    @BeforeAll
    static void review() throws Exception {
        week = DemoReview.review();
    }

    private static String changed(String template) {
        StringBuilder text = new StringBuilder();
        for (char c : template.toCharArray()) {
            char base = Character.isUpperCase(c) ? 'A' : 'a';
            text.append(c < 128 && Character.isLetter(c) ? (char) (base + (c - base + 13) % 26) : c);
        }
        return text.toString();
    }

    @Test
    void everyTableKeepsItsRowsOrderFiguresAndSeverities() {
        List<TableView> plain = ReviewTables.of(week, Wording.POINT);
        List<TableView> changed = ReviewTables.of(week, CHANGED);
        assertEquals(
                plain.stream().map(TableView::title).toList(),
                changed.stream().map(TableView::title).toList());
        for (int i = 0; i < plain.size(); i++) {
            assertEquals(
                    shape(plain.get(i)), shape(changed.get(i)), plain.get(i).title());
        }
    }

    /** All of a table but its sentences, of which only is told whether there is one. */
    private static List<String> shape(TableView table) {
        List<String> shape = new ArrayList<>();
        for (TableView.Row row : table.rows()) {
            StringBuilder line = new StringBuilder().append(row.severity());
            for (int i = 0; i < row.cells().size(); i++) {
                boolean sentence = SENTENCES.contains(table.columns().get(i).heading());
                Cell cell = row.cells().get(i);
                line.append(" | ")
                        .append(sentence ? Boolean.toString(cell.shown().isEmpty()) : cell.shown());
            }
            shape.add(line.toString());
        }
        return shape;
    }

    @Test
    void everySentenceOfARuleIsInOtherWords() {
        for (Finding finding : week.findings()) {
            if (isOfARule(finding)) {
                assertNotEquals(Wording.POINT.of(finding.action()), CHANGED.of(finding.action()), finding::toString);
            }
        }
        for (RunReview run : week.runs()) {
            run.decisions().stream()
                    .filter(d -> !d.reason().isEmpty())
                    .forEach(d -> assertNotEquals(Wording.POINT.of(d.reason()), CHANGED.of(d.reason()), d::toString));
        }
    }

    /** The reader of a book quotes what it found as it stands. */
    private static boolean isOfARule(Finding finding) {
        return !finding.action().equals(Phrase.quoted(Wording.POINT.of(finding.action())));
    }

    @Test
    void whatIsToBeDoneFirstIsTheSameInTheSameOrder() {
        ReadableNumbers numbers = new ReadableNumbers('.');
        List<UrgentAction> actions = UrgentAction.of(week, numbers, Integer.MAX_VALUE);
        assertFalse(actions.isEmpty());
        assertEquals(
                NextMeasurement.of(week, Wording.POINT).stream()
                        .map(n -> n.run() + n.grams())
                        .toList(),
                NextMeasurement.of(week, CHANGED).stream()
                        .map(n -> n.run() + n.grams())
                        .toList());
        for (RunReview run : week.runs()) {
            assertEquals(
                    kinds(RunFindings.toSettle(run.findings(), Wording.POINT)),
                    kinds(RunFindings.toSettle(run.findings(), CHANGED)));
        }
    }

    private static List<String> kinds(List<RunFindings> lines) {
        return lines.stream()
                .map(l -> l.severity() + " " + l.code() + " " + l.findings().size() + " " + l.places())
                .toList();
    }

    /** Decisions, counts and exit codes are made before there are words: nothing before the views can ask for them. */
    @Test
    void nobodyButTheWordingLooksIntoAPhrase() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
            List<String> looking = files.filter(f -> f.toString().endsWith(".java"))
                    .filter(ChangedWordsTest::looksIntoWords)
                    .map(f -> f.getFileName().toString())
                    .sorted()
                    .toList();
            assertEquals(List.of("Wording.java"), looking);
        }
    }

    private static boolean looksIntoWords(Path file) {
        try {
            String code = Files.readString(file);
            return code.contains("Phrase") && LOOKS_INTO_WORDS.matcher(code).find();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** A phrase that is put into a text without the wording shows as what it is. */
    @Test
    void noTableShowsAPhraseThatNobodyPutIntoWords() {
        for (TableView table : ReviewTables.of(week, Wording.POINT)) {
            for (TableView.Row row : table.rows()) {
                assertTrue(
                        row.cells().stream()
                                .map(Cell::shown)
                                .noneMatch(s -> s.contains("Phrase[") || s.contains("Figure[")),
                        () -> table.title() + row);
            }
        }
        assertTrue(week.findings().stream().anyMatch(f -> f.severity() == Severity.STOP));
    }
}
