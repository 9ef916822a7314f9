package workuptally.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.examples.SmallBook;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Book;
import workuptally.reference.Reference;
import workuptally.report.json.JsonReport;

/**
 * Pins every figure of the demo week to the sample of the project in one quick test, for the loop while one works and for mutation
 * testing; {@code SamplesTest} does so for all its documents and renews them. Figures of our own program: they show that something moved,
 * not that it is right.
 */
class DemoWeekSampleTest {
    private static final Reference REFERENCE = SmallBook.substances().reference();
    private static final Book BOOK = read(Path.of("input-templates", "demo-week.xlsx"));

    private static Book read(Path workbook) {
        try {
            return new BookReader().read(workbook);
        } catch (IOException | UnreadableBookException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void figuresAreThoseOfTheSample() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JsonReport.write(new ReviewBuilder(REFERENCE, "0.1.0").review(BOOK), out);
        assertArrayEquals(
                lines(Files.readString(Path.of("output-samples", "demo-week-review.json"))),
                lines(out.toString(StandardCharsets.UTF_8)));
    }

    /** Without the version of the program. */
    private static String[] lines(String json) {
        return json.substring(json.indexOf("\"notices\"")).split("\n");
    }
}
