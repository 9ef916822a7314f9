package workuptally.book.sources;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import workuptally.book.files.CsvRows;
import workuptally.book.files.CsvText;
import workuptally.book.files.FileBytes;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawTable;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.schema.Table;
import workuptally.model.FindingCode;
import workuptally.model.InputFile;
import workuptally.model.Place;
import workuptally.model.Severity;

/** A book that is one CSV file: a laboratory's own list. */
public final class CsvFile implements TableSource {
    private static final String ENDING = ".csv";

    /** Characters that spreadsheet programs allow. */
    private static final int LONGEST_SHEET_NAME = 31;

    private final Path path;
    private final ReadingOptions.SizeCaps caps;
    private final Map<String, InputFile> files = new TreeMap<>();

    CsvFile(Path path, ReadingOptions.SizeCaps caps) {
        this.path = path;
        this.caps = caps;
    }

    /** True for a path that ends like a CSV file. */
    public static boolean isOne(Path path) {
        return path.toString().toLowerCase(Locale.ROOT).endsWith(ENDING);
    }

    /**
     * Reads a file.
     *
     * @param sheet name of the table it makes
     * @param read files read so far, to which it is added
     * @throws UnreadableBookException if it is no CSV text
     */
    static RawTable read(
            Path path, String sheet, ReadingOptions.SizeCaps caps, FindingLog log, Map<String, InputFile> read)
            throws UnreadableBookException, IOException {
        FileBytes file = FileBytes.read(path, caps.fileBytes());
        read.put(file.name(), file.asInputFile());
        CsvText csv = CsvText.of(file);
        if (csv.guessedEncoding()) {
            log.add(
                    FindingCode.ENCODING_GUESSED,
                    Severity.NOTE,
                    "",
                    new Place(file.name(), sheet, 0, -1, ""),
                    "a text that is not UTF-8; it was read as Windows Latin-1",
                    "UTF-8",
                    "Look at the letters with accents, µ and °; save as CSV in UTF-8 if they are wrong.");
        }
        return new RawTable(file.name(), sheet, false, CsvRows.of(file.name(), csv.text()));
    }

    @Override
    public String bookName() {
        String name = path.getFileName().toString();
        return isOne(path) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    @Override
    public List<String> names() {
        return List.of(sheetName());
    }

    /** The name of the file as a sheet can bear it. */
    private String sheetName() {
        String name = bookName().replaceAll("[\\\\/?*:\\[\\]']", "_");
        return name.length() <= LONGEST_SHEET_NAME ? name : name.substring(0, LONGEST_SHEET_NAME);
    }

    @Override
    public Optional<String> sheetName(Table table) {
        return Optional.empty();
    }

    @Override
    public Optional<RawTable> table(Table table, FindingLog log) {
        return Optional.empty();
    }

    /** The file, whatever name it goes by: a list is copied and renamed. */
    @Override
    public Optional<RawTable> sheet(String name, FindingLog log) throws UnreadableBookException, IOException {
        return Optional.of(read(path, sheetName(), caps, log, files));
    }

    @Override
    public List<InputFile> files() {
        return List.copyOf(files.values());
    }
}
