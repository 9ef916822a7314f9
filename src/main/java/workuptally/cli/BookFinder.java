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
import java.util.stream.Stream;

/**
 * Finds the books in a folder and its subfolders: workbooks, and folders that hold a table of runs as CSV. Hidden files and folders and
 * the lock files of spreadsheet programs are passed over; links are not followed.
 */
final class BookFinder extends SimpleFileVisitor<Path> {
    private static final int DEEPEST = 8;

    private final List<Path> books = new ArrayList<>();

    private BookFinder() {}

    /** The books, in order of their paths. */
    static List<Path> in(Path folder) throws IOException {
        BookFinder finder = new BookFinder();
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
        String name = name(file);
        boolean workbook = name.endsWith(".xlsx") || name.endsWith(".xlsm");
        if (workbook && attributes.isRegularFile() && !isHidden(file)) {
            books.add(file);
        }
        return FileVisitResult.CONTINUE;
    }

    private static boolean holdsRuns(Path folder) throws IOException {
        try (Stream<Path> content = Files.list(folder)) {
            return content.anyMatch(f -> name(f).equals("runs.csv") && Files.isRegularFile(f));
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
