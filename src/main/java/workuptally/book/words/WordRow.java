package workuptally.book.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A row of one of the lists of words that come with the program: a meaning, and the words for it. */
public final class WordRow {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();

    private final CSVRecord row;

    private WordRow(CSVRecord row) {
        this.row = row;
    }

    /**
     * The rows of a list.
     *
     * @param list file name of a list that comes with the program, such as {@code heading-words.csv}
     */
    public static List<WordRow> all(String list) {
        return all(WordRow.class.getResourceAsStream("/workuptally/book/" + list));
    }

    /**
     * The rows of a file; lines that begin with # are comments, the first other line names the columns.
     *
     * @param file closed afterwards
     */
    static List<WordRow> all(InputStream file) {
        try (file;
                CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, FORMAT)) {
            return rows.stream().map(WordRow::new).toList();
        } catch (IOException damaged) {
            throw new UncheckedIOException(damaged);
        }
    }

    /**
     * What stands in a column.
     *
     * @throws IllegalArgumentException if the list has no such column
     */
    public String cell(String column) {
        return row.get(column);
    }

    /** The words of a column, which are parted by semicolons. */
    public List<String> words(String column) {
        return List.of(cell(column).split(";"));
    }
}
