package workuptally.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import workuptally.book.BookReader;
import workuptally.model.Book;
import workuptally.model.Run;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.Substances;

/** The demo week is invented: this pins what its authors planted and computed by hand, and checks no chemistry against the world. */
class DemoWeekKeyTest {
    private static final Path FOLDER = Path.of("input-templates", "demo-week");
    private static Map<String, RunTally> tallies;
    private static Book book;

    @BeforeAll
    static void tallyTheWeek() throws Exception {
        book = new BookReader().read(FOLDER);
        RunTallying tallying = new RunTallying(book.limits(), new Substances(Reference.load()));
        tallies = new LinkedHashMap<>();
        for (Run run : book.runs()) {
            tallies.put(run.id(), tallying.tally(run));
        }
    }

    @Test
    void theWeekHasTwelveRunsAndNoFaultOfForm() {
        assertEquals(12, book.runs().size());
        assertEquals(List.of(), book.findings());
    }

    @ParameterizedTest
    @MethodSource("figures")
    void figureOfTheKeyComesOutWithinItsTolerance(KeyFigure figure) {
        RunTally tally = tallies.get(figure.run());
        assertTrue(tally != null, () -> "no run " + figure.run());
        if (figure.isText()) {
            assertEquals(figure.expected(), DemoFigures.text(tally, figure));
        } else {
            assertEquals(
                    Double.parseDouble(figure.expected()),
                    DemoFigures.number(tally, figure),
                    Double.parseDouble(figure.tolerance()),
                    figure::toString);
        }
    }

    static Stream<KeyFigure> figures() {
        List<KeyFigure> figures = new ArrayList<>();
        try (InputStream in = DemoWeekKeyTest.class.getResourceAsStream("key.csv");
                CSVParser parser = CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (CSVRecord row : parser) {
                figures.add(new KeyFigure(
                        row.get("run"),
                        row.get("figure"),
                        row.get("subject"),
                        row.get("expected"),
                        row.get("tolerance"),
                        row.get("row")));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return figures.stream();
    }
}
