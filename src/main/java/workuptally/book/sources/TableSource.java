package workuptally.book.sources;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawTable;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.schema.Table;
import workuptally.model.InputFile;

/** Where the tables of a book come from. */
public interface TableSource {
    /** Name for outputs. */
    String bookName();

    /** Names of all sheets or files that the source has, for messages. */
    List<String> names();

    /** The name of a sheet or file as that of a table would be compared: a file's without its ending. */
    default String ownName(String name) {
        return name;
    }

    /** The name under which a table stands in the book, if it has one. */
    Optional<String> sheetName(Table table);

    /**
     * One table, read from the file.
     *
     * @param log where remarks on the reading go
     * @throws UnreadableBookException if the file is damaged
     * @throws IOException if the file cannot be accessed
     */
    Optional<RawTable> table(Table table, FindingLog log) throws UnreadableBookException, IOException;

    /**
     * A sheet or file by its own name, for a list of the laboratory's own.
     *
     * @param name as in {@link #names()}, for a file without its ending; compared loosely
     * @return the sheet, or nothing if there is none of that name
     * @throws UnreadableBookException if the file is damaged
     * @throws IOException if the file cannot be accessed
     */
    Optional<RawTable> sheet(String name, FindingLog log) throws UnreadableBookException, IOException;

    /** The files read, in name order. */
    List<InputFile> files();
}
