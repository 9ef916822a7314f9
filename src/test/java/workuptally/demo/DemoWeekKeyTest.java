package workuptally.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import workuptally.book.BookReader;
import workuptally.book.template.Template;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Book;
import workuptally.reference.Reference;
import workuptally.report.json.JsonReport;

/**
 * The demo week is invented: this pins what its authors planted and computed by hand, and checks no chemistry against the world. Figures
 * are read from the JSON, as another program would.
 */
class DemoWeekKeyTest {
    private static final Path FOLDER = Path.of("input-templates", "demo-week");

    @TempDir
    private static Path temporary;

    private static Book book;
    private static JsonNode fromFolder;
    private static JsonNode fromWorkbook;

    @BeforeAll
    static void reviewTheWeek() throws Exception {
        book = new BookReader().read(FOLDER);
        fromFolder = jsonOf(book);
        Path workbook = temporary.resolve("demo-week.xlsx");
        new Template().writeExample(workbook);
        fromWorkbook = jsonOf(new BookReader().read(workbook));
    }

    private static JsonNode jsonOf(Book book) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JsonReport.write(new ReviewBuilder(Reference.load(), "test").review(book), out);
        return new JsonMapper().readTree(out.toByteArray());
    }

    @Test
    void theWeekHasThirteenRunsAndNoFaultOfForm() {
        assertEquals(13, fromFolder.required("runs").size());
        assertEquals(List.of(), book.findings());
    }

    @Test
    void folderAndWorkbookGiveTheSameResultsApartFromPlaces() {
        assertEquals(
                withoutPlaces(fromFolder.required("runs")).toPrettyString(),
                withoutPlaces(fromWorkbook.required("runs")).toPrettyString());
        assertEquals(codes(fromFolder), codes(fromWorkbook));
    }

    private static JsonNode withoutPlaces(JsonNode node) {
        JsonNode copy = node.deepCopy();
        copy.findParents("variancePercent").forEach(part -> ((ObjectNode) part).remove("place"));
        copy.findParents("standardisedAdjustment").forEach(value -> ((ObjectNode) value).remove("place"));
        copy.findParents("slip").forEach(suspect -> ((ObjectNode) suspect).remove(List.of("place", "together")));
        return copy;
    }

    private static List<String> codes(JsonNode json) {
        return json.required("findings")
                .valueStream()
                .map(f -> f.required("severity").asString() + " "
                        + f.path("run").asString("") + " " + f.required("code").asString())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("figures")
    void figureOfTheKeyComesOutWithinItsToleranceFromTheFolder(KeyFigure figure) {
        check(fromFolder, figure);
    }

    @ParameterizedTest
    @MethodSource("figures")
    void figureOfTheKeyComesOutWithinItsToleranceFromTheWorkbook(KeyFigure figure) {
        check(fromWorkbook, figure);
    }

    private static void check(JsonNode json, KeyFigure figure) {
        JsonNode run = json.required("runs")
                .valueStream()
                .filter(r -> r.required("run").asString().equals(figure.run()))
                .findFirst()
                .orElseThrow();
        if (figure.isText()) {
            assertEquals(figure.expected(), DemoFigures.text(run, figure));
        } else {
            assertEquals(
                    Double.parseDouble(figure.expected()),
                    DemoFigures.number(run, figure),
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
