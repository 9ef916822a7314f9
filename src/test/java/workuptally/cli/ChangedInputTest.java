package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Book;
import workuptally.reference.Reference;
import workuptally.report.pdf.layout.PdfOptions;

/** A book that somebody saves while it is reviewed gives no files, since they would not be about one and the same book. */
class ChangedInputTest {
    private static final ReviewSettings SETTINGS = new ReviewSettings(
            ReadingOptions.defaults(),
            PdfOptions.Paper.A4,
            PdfOptions.DecimalMark.POINT,
            EnumSet.of(ReportKind.JSON, ReportKind.CSV));

    @TempDir
    private Path folder;

    @Test
    void aChangedTableOfAFolderIsToldBeforeAnythingIsPlaced() throws Exception {
        Path book = folder.resolve("week");
        assertEquals(0, Call.of("template", book, "--example").code());
        isRefused(book, book.resolve("layers.csv"));
    }

    @Test
    void aChangedWorkbookIsToldBeforeAnythingIsPlaced() throws Exception {
        Path book = folder.resolve("week.xlsx");
        assertEquals(0, Call.of("template", book, "--example").code());
        isRefused(book, book);
    }

    @Test
    void aTableThatIsGoneIsTold() throws Exception {
        Path book = folder.resolve("week");
        assertEquals(0, Call.of("template", book, "--example").code());
        Book read = new BookReader().read(book);
        Files.delete(book.resolve("layers.csv"));
        assertThrows(UnreadableBookException.class, () -> new BookReader().requireUnchanged(book, read));
    }

    private void isRefused(Path book, Path changed) throws Exception {
        Review review = new ReviewBuilder(Reference.load(), "test").review(new BookReader().read(book));
        byte[] bytes = Files.readAllBytes(changed);
        Path out = folder.resolve("out");
        ReviewFiles files = new ReviewFiles(out, new TakenFiles(), SETTINGS);
        byte[] longer = java.util.Arrays.copyOf(bytes, bytes.length + 1);
        longer[bytes.length] = '\n';
        Files.write(changed, longer);
        String message = assertThrows(UnreadableBookException.class, () -> files.write(book, review))
                .getMessage();
        assertTrue(message.contains(changed.getFileName() + " was changed while it was read"), message);
        assertEquals(Map.of(), contentOf(out));
    }

    private static Map<String, String> contentOf(Path out) throws IOException {
        return Files.exists(out) ? Folder.content(out) : Map.of();
    }
}
