package workuptally.book.sources;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawTable;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.schema.Table;
import workuptally.book.words.BookWords;
import workuptally.model.InputFile;

/** A book that is a folder of CSV files, one for each table. */
final class CsvFolder implements TableSource {
    private static final String ENDING = ".csv";

    /** Other endings that a table may have; a file of such a name that is no table is somebody else's. */
    private static final List<String> OTHER_ENDINGS = List.of(".tsv", ".txt");

    private final Path folder;
    private final ReadingOptions.SizeCaps caps;
    private final List<String> names = new ArrayList<>();
    private final Map<String, Path> files = new HashMap<>();
    private final Map<String, InputFile> read = new TreeMap<>();

    CsvFolder(Path folder, HeadingAliases aliases, ReadingOptions.SizeCaps caps)
            throws UnreadableBookException, IOException {
        this.folder = folder;
        this.caps = caps;
        for (Path file : csvFiles(folder, aliases)) {
            String name = file.getFileName().toString();
            names.add(name);
            Optional<Table> table = aliases.table(name.substring(0, name.length() - ENDING.length()));
            if (table.isPresent()) {
                Path earlier = files.putIfAbsent(table.get().name(), file);
                if (earlier != null) {
                    throw new UnreadableBookException("The files " + earlier.getFileName() + " and " + name
                            + " both hold the table " + table.get().name() + ": keep one of them in the folder.");
                }
            }
        }
    }

    private static List<Path> csvFiles(Path folder, HeadingAliases aliases) throws IOException {
        try (Stream<Path> content = Files.list(folder)) {
            return content.filter(Files::isRegularFile)
                    .filter(file -> mayBeATable(file.getFileName().toString(), aliases))
                    .sorted(Comparator.comparing(file -> file.getFileName().toString()))
                    .toList();
        }
    }

    private static boolean mayBeATable(String name, HeadingAliases aliases) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.endsWith(ENDING)
                || OTHER_ENDINGS.stream().anyMatch(lower::endsWith)
                        && aliases.table(name.substring(0, name.length() - ENDING.length()))
                                .isPresent();
    }

    @Override
    public String bookName() {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return name == null ? "book" : name.toString();
    }

    @Override
    public List<String> names() {
        return List.copyOf(names);
    }

    @Override
    public String ownName(String name) {
        return name.substring(0, name.length() - ENDING.length());
    }

    @Override
    public Optional<String> sheetName(Table table) {
        return Optional.ofNullable(files.get(table.name())).map(file -> table.name());
    }

    @Override
    public Optional<RawTable> table(Table table, FindingLog log) throws UnreadableBookException, IOException {
        Path path = files.get(table.name());
        if (path == null) {
            return Optional.empty();
        }
        return Optional.of(CsvFile.read(path, table.name(), caps, log, read));
    }

    @Override
    public Optional<RawTable> sheet(String name, FindingLog log) throws UnreadableBookException, IOException {
        for (String file : names) {
            String own = file.substring(0, file.length() - ENDING.length());
            if (BookWords.loose(own).equals(BookWords.loose(name))
                    || BookWords.loose(file).equals(BookWords.loose(name))) {
                return Optional.of(CsvFile.read(folder.resolve(file), own, caps, log, read));
            }
        }
        return Optional.empty();
    }

    @Override
    public List<InputFile> files() {
        return List.copyOf(read.values());
    }
}
