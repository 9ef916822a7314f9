package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.files.ReadingOptions;
import workuptally.book.template.Template;
import workuptally.model.Book;
import workuptally.model.Limit;

/** The invented example week, which comes with the program as CSV, is understood whole and alike in both forms. */
@Tag("slow")
class ExampleWeekTest {
    private static final Path CSV = Path.of("input-templates/demo-week");

    @TempDir
    private Path folder;

    @Test
    void everyCellIsUnderstood() throws Exception {
        Book book = new BookReader().read(CSV);
        assertEquals(List.of(), book.findings());
        assertEquals(13, book.runs().size());
        assertTrue(book.limits().isSetByBook(Limit.FUNNEL_FILL));
    }

    @Test
    void exampleWorkbookSaysTheSame() throws Exception {
        Path workbook = folder.resolve("example.xlsx");
        new Template().writeExample(workbook);
        Book read = new BookReader().read(workbook);
        assertEquals(List.of(), read.findings());
        Book csv = new BookReader().read(CSV);
        assertEquals(BookContent.of(csv), BookContent.of(read));
        for (Limit limit : Limit.values()) {
            assertEquals(csv.limits().optional(limit), read.limits().optional(limit));
            assertEquals(csv.limits().text(limit), read.limits().text(limit));
        }
    }

    @Test
    void workbookFromTheCsvKeepsThePlacesOfTheRows() throws Exception {
        Path workbook = folder.resolve("from.xlsx");
        new Template().writeWorkbookFrom(CSV, ReadingOptions.defaults(), workbook);
        Book csv = new BookReader().read(CSV);
        Book read = new BookReader().read(workbook);
        for (int run = 0; run < csv.runs().size(); run++) {
            for (int layer = 0; layer < csv.runs().get(run).layers().size(); layer++) {
                var expected = csv.runs().get(run).layers().get(layer).row().at("Gross");
                var actual = read.runs().get(run).layers().get(layer).row().at("Gross");
                assertEquals(expected.sheet(), actual.sheet());
                assertEquals(expected.row(), actual.row());
                assertEquals(expected.column(), actual.column());
            }
        }
    }
}
