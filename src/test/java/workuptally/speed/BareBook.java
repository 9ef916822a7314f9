package workuptally.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.template.Template;

/**
 * A book of very many runs of which next to nothing is recorded. What has to be done for each of them is so little that a look at all
 * others, done for each, shows; among the work of a real run it would hide.
 */
final class BareBook {
    private final int runs;
    private final boolean layers;

    private BareBook(int runs, boolean layers) {
        this.runs = runs;
        this.layers = layers;
    }

    /** Runs with an id, a date and a status. */
    static BareBook ofRuns(int runs) {
        return new BareBook(runs, false);
    }

    /** Runs that have a kept layer each, and three times as many waste containers. */
    static BareBook ofLayersAndContainers(int runs) {
        return new BareBook(runs, true);
    }

    /** Writes the book as a workbook; the CSV files go to a folder beside it. */
    Path writeWorkbook(Path target) throws IOException, UnreadableBookException {
        Path csv = target.resolveSibling(target.getFileName() + "-csv");
        new Template().writeWorkbookFrom(writeCsv(csv), ReadingOptions.defaults(), target);
        return target;
    }

    /** Writes the book as a folder of CSV files. */
    Path writeCsv(Path folder) throws IOException {
        Files.createDirectories(folder);
        write(folder, "runs", "Run,Date,Chemist,Reaction,Status", "R%06d,2026-03-02,C1,hydrolysis,in workup", runs);
        write(folder, "products", "Run,Product", "", 0);
        write(folder, "charges", "Run,Material", "", 0);
        write(folder, "isolated", "Run,Lot", "", 0);
        if (layers) {
            write(folder, "layers", "Run,Layer,Phase,Volume (mL),Net (g),Status", "R%06d,A1,aqueous,63,66,kept", runs);
            write(
                    folder,
                    "containers",
                    "Container,Waste stream,Capacity (L),Tare (g)",
                    "W%06d,aqueous,10,412",
                    3 * runs);
        }
        return folder;
    }

    private static void write(Path folder, String table, String headings, String row, int rows) throws IOException {
        List<String> lines = IntStream.range(0, rows)
                .mapToObj(i -> String.format(Locale.ROOT, row, i))
                .toList();
        Files.writeString(folder.resolve(table + ".csv"), headings + "\n" + String.join("\n", lines) + "\n");
    }
}
