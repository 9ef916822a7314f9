package workuptally.property;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import workuptally.property.CsvTables.Row;

/** The rows of one run, with the containers its transfers name, to be put into a book as often as wanted, each time under another name. */
final class RowsOfRun {
    private static final List<String> OF_THE_BOOK =
            List.of("limits.csv", "vessels.csv", "history.csv", "corrections.csv");

    private final String run;
    private final CsvTables book;
    private final Map<String, List<List<String>>> rows = new LinkedHashMap<>();

    private RowsOfRun(CsvTables book, String run) {
        this.run = run;
        this.book = book;
        for (String table : book.names()) {
            if (!OF_THE_BOOK.contains(table) && !table.equals("containers.csv")) {
                rows.put(table, cells(table, "Run", List.of(run)));
            }
        }
        if (book.names().contains("containers.csv")) {
            List<String> used = book.rows("transfers.csv").stream()
                    .filter(r -> r.is("Run", run))
                    .map(r -> r.get("Container"))
                    .distinct()
                    .toList();
            rows.put("containers.csv", cells("containers.csv", "Container", used));
        }
    }

    static List<RowsOfRun> of(CsvTables book) {
        return book.rows("runs.csv").stream()
                .map(r -> new RowsOfRun(book, r.get("Run")))
                .toList();
    }

    String run() {
        return run;
    }

    private List<List<String>> cells(String table, String heading, List<String> wanted) {
        return book.rows(table).stream()
                .filter(r -> wanted.contains(r.get(heading)))
                .map(Row::cells)
                .toList();
    }

    /** Everything that can happen to one of its readings. */
    List<WorsenedReading> readings() {
        List<WorsenedReading> readings = new ArrayList<>();
        Map<String, List<String>> columns = new TreeMap<>(WorsenedReading.COLUMNS);
        WorsenedReading.DECLARED.forEach((table, headings) -> columns.merge(
                table,
                headings,
                (one, other) -> Stream.concat(one.stream(), other.stream()).toList()));
        columns.forEach((table, headings) -> {
            List<List<String>> cells = rows.getOrDefault(table, List.of());
            for (int row : IntStream.range(0, cells.size()).toArray()) {
                Row typed = new Row(book.headings(table), cells.get(row));
                boolean deleted = false;
                for (String heading : headings) {
                    for (WorsenedReading.Worse worse : WorsenedReading.Worse.values()) {
                        WorsenedReading reading = new WorsenedReading(table, row, heading, worse);
                        boolean again = worse == WorsenedReading.Worse.DELETED && deleted;
                        if (!again && !isOnlyAssayOfASolid(reading, typed) && reading.applies(typed)) {
                            readings.add(reading);
                            deleted |= worse == WorsenedReading.Worse.DELETED;
                        }
                    }
                }
            }
        });
        readings.sort(java.util.Comparator.comparing(WorsenedReading::table).thenComparing(WorsenedReading::row));
        return readings;
    }

    /** What nobody assayed in a cake is estimated and decides nothing, so that its assay may not go without a word but may go. */
    private boolean isOnlyAssayOfASolid(WorsenedReading reading, Row assay) {
        return reading.table().equals("assays.csv")
                && reading.worse() == WorsenedReading.Worse.DELETED
                && rows.getOrDefault("layers.csv", List.of()).stream()
                        .map(cells -> new Row(book.headings("layers.csv"), cells))
                        .anyMatch(layer -> layer.get("Layer").equals(assay.get("Sample"))
                                && layer.get("Phase").equals("solid"));
    }

    /** Puts the run into a book under another name, with containers and a series of its own. */
    void addTo(CsvTables target, String name, List<WorsenedReading> worsened) {
        for (Map.Entry<String, List<List<String>>> table : rows.entrySet()) {
            List<String> headings = book.headings(table.getKey());
            List<List<String>> copies = new ArrayList<>();
            table.getValue().forEach(cells -> copies.add(new ArrayList<>(cells)));
            List<Row> as =
                    copies.stream().map(cells -> new Row(headings, cells)).toList();
            worsened.stream().filter(w -> w.table().equals(table.getKey())).forEach(w -> w.worsen(as, copies));
            for (List<String> cells : copies) {
                Row row = new Row(headings, cells);
                rename(row, name);
                target.add(table.getKey(), cells);
            }
        }
        if (book.names().contains("corrections.csv")) {
            for (Row row : book.rows("corrections.csv")) {
                if (row.get("Record").contains(run)) {
                    Row copy = new Row(row.headings(), new ArrayList<>(row.cells()));
                    copy.set("Record", row.get("Record").replace(run, name));
                    target.add("corrections.csv", copy.cells());
                }
            }
        }
    }

    private void rename(Row row, String name) {
        if (row.headings().contains("Run")) {
            row.set("Run", name);
        }
        for (String own : List.of("Series", "Container", "Transfer")) {
            if (row.headings().contains(own) && !row.get(own).isBlank()) {
                row.set(own, row.get(own) + "~" + name);
            }
        }
    }

    String describe(WorsenedReading reading) {
        List<String> cells = rows.get(reading.table()).get(reading.row());
        return run + " " + reading + " of " + cells;
    }
}
