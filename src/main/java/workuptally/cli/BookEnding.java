package workuptally.cli;

import java.nio.file.Path;
import java.util.Locale;

/** The endings of files that hold a book, in either case. */
enum BookEnding {
    /** A workbook. */
    XLSX,
    /** A workbook with macros. */
    XLSM,
    /** A table by itself, or a list with one row a run. */
    CSV;

    /** The ending with its full stop. */
    String text() {
        return "." + name().toLowerCase(Locale.ROOT);
    }

    /** True where the name of the path ends so. */
    boolean isOf(Path path) {
        return path.toString().toLowerCase(Locale.ROOT).endsWith(text());
    }
}
