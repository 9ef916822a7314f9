package workuptally.cli;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import workuptally.book.schema.Schema;
import workuptally.report.view.ledgers.Ledgers;

/**
 * Finds the books in a folder and its subfolders: workbooks, and folders that hold a table of runs as CSV. Hidden files and folders and
 * the lock files of spreadsheet programs are passed over; links are not followed.
 */
final class BookFinder extends SimpleFileVisitor<Path> {
    private static final int DEEPEST = 8;
    private static final Pattern LEDGER =
            Pattern.compile("(.+)-(?:" + String.join("|", Ledgers.NAMES) + ")" + Pattern.quote(BookEnding.CSV.text()));

    /** What the table of runs may be named in a folder. */
    private static final List<String> RUNS = Stream.of(BookEnding.CSV.text(), ".tsv", ".txt")
            .map(ending -> Schema.RUNS.csvFileName().replace(BookEnding.CSV.text(), ending))
            .toList();

    private final List<Path> books = new ArrayList<>();
    private final Path root;
    private final boolean lists;

    private BookFinder(Path root, boolean lists) {
        this.root = root;
        this.lists = lists;
    }

    /**
     * The books, in order of their paths.
     *
     * @param lists whether a CSV file alone is a book, as a headings file says for lists
     */
    static List<Path> in(Path folder, boolean lists) throws IOException {
        BookFinder finder = new BookFinder(folder, lists);
        Files.walkFileTree(folder, EnumSet.noneOf(java.nio.file.FileVisitOption.class), DEEPEST, finder);
        return finder.books.stream()
                .sorted(Comparator.comparing(Path::toString))
                .toList();
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) throws IOException {
        if (isHidden(folder)) {
            return FileVisitResult.SKIP_SUBTREE;
        }
        if (holdsRuns(folder)) {
            books.add(folder);
            return FileVisitResult.SKIP_SUBTREE;
        }
        return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
        boolean workbook = BookEnding.XLSX.isOf(file)
                || BookEnding.XLSM.isOf(file)
                || lists && BookEnding.CSV.isOf(file) && !isLedger(file);
        if (workbook && attributes.isRegularFile() && !isHidden(file)) {
            books.add(file);
        }
        return FileVisitResult.CONTINUE;
    }

    /** A folder that may not be opened may hold books: it is read as one, and so named among those that cannot be read. */
    @Override
    public FileVisitResult visitFileFailed(Path file, IOException failure) throws IOException {
        if (file.equals(root)) {
            throw failure;
        }
        if (!isHidden(file)) {
            books.add(file);
        }
        return FileVisitResult.CONTINUE;
    }

    /** A ledger that this program wrote beside a review or for a period. */
    private static boolean isLedger(Path file) {
        Matcher ledger = LEDGER.matcher(name(file));
        return ledger.matches()
                && (ledger.group(1).equals("period")
                        || Files.exists(file.resolveSibling(ReportKind.jsonName(
                                file.getFileName().toString().substring(0, ledger.end(1))))));
    }

    private static boolean holdsRuns(Path folder) throws IOException {
        try (Stream<Path> content = Files.list(folder)) {
            return content.anyMatch(f -> RUNS.contains(name(f)) && Files.isRegularFile(f));
        }
    }

    private static boolean isHidden(Path path) {
        String name = name(path);
        return name.length() > 2 && name.startsWith(".") && !name.startsWith("..") || name.startsWith("~$");
    }

    private static String name(Path path) {
        Path last = path.getFileName();
        return last == null ? "" : last.toString().toLowerCase(Locale.ROOT);
    }
}
