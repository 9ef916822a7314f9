package workuptally.book;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.sources.WorkbookFile;

/** Tells a workbook that this program wrote from a book: its result sheets are no entries. */
public final class WrittenReview {
    private static final List<String> RESULT_SHEETS = List.of("Basis", "Findings");
    private static final String SUFFIX = " (review)";

    private WrittenReview() {}

    /**
     * True for a workbook that holds our result sheets, under their names or with the suffix they take beside a sheet of the user's.
     *
     * @param workbook workbook file
     * @throws UnreadableBookException if it is no workbook or is damaged
     * @throws IOException if it cannot be accessed
     */
    public static boolean is(Path workbook) throws UnreadableBookException, IOException {
        try (WorkbookFile file = WorkbookFile.open(
                workbook, HeadingAliases.NONE, ReadingOptions.defaults().sizeCaps())) {
            List<String> names = file.names();
            return RESULT_SHEETS.stream().allMatch(s -> names.contains(s) || names.contains(s + SUFFIX));
        }
    }
}
