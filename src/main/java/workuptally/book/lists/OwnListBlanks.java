package workuptally.book.lists;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.headings.OwnListFeed;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.schema.SchemaColumn;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.model.Severity;

/** Columns of a list that a table takes and that no row fills: what depends on them is not computed, and the list looks as if nothing was wrong. */
final class OwnListBlanks {
    /** Columns of the form that stand for each other: where one of them is filled, the others may be blank. */
    private static final List<Set<String>> INSTEAD = List.of(
            Set.of("Actual amount", "Planned amount", "Amount of substance"),
            Set.of("Formula", "Molar mass"),
            Set.of("Molarity", "Titre"),
            Set.of("Net", "Gross", "Stated yield"));

    /** What a column of a table unlocks. */
    private static final Map<String, Map<String, String>> UNLOCKS = Map.of(
            "Charges",
                    Map.of(
                            "Actual amount", "the amount charged, and theory where it is that of the substrate",
                            "Amount of substance", "the amount charged, and theory where it is that of the substrate",
                            "Formula", "the molar mass, and with it the amount in mmol of what was weighed",
                            "Molar mass", "the amount in mmol of what was weighed",
                            "Coefficient", "which material limits, and theory",
                            "Density", "mass and amount of what was measured by volume",
                            "Molarity", "the amount in mmol of a solution",
                            "Titre", "the amount in mmol of a titrated solution",
                            "Assay", "the pure amount of what was weighed"),
            "Products",
                    Map.of(
                            "Formula", "theory in g, and the yield",
                            "Molar mass", "theory in g, and the yield",
                            "Coefficient", "theory of a product that is not formed one to one"),
            "Isolated",
                    Map.of(
                            "Net", "crude over theory, and the yield",
                            "Gross", "the weight of the product, and the yield",
                            "Tare", "the weight of the product, and the yield",
                            "Assay", "a yield in place of what it is at most"));

    private final RawTable raw;
    private final OwnListHeader header;
    private final Set<Integer> leftOut;
    private final FindingLog log;

    /**
     * For one list.
     *
     * @param leftOut rows that are no runs
     */
    OwnListBlanks(RawTable raw, OwnListHeader header, Set<Integer> leftOut, FindingLog log) {
        this.raw = raw;
        this.header = header;
        this.leftOut = leftOut;
        this.log = log;
    }

    /** Names each heading that is blank throughout, with what an entry would unlock. */
    void report(OwnListLayout layout) {
        Map<OwnListHeader.Heading, Set<String>> blank = new LinkedHashMap<>();
        for (OwnListFeed feed : layout.feeds()) {
            feed.columns()
                    .forEach((column, names) -> unlocks(feed, column)
                            .ifPresent(words -> names.stream()
                                    .flatMap(name -> header.heading(name).stream())
                                    .forEach(heading -> blank.computeIfAbsent(heading, h -> new LinkedHashSet<>())
                                            .add(words))));
        }
        if (raw.rows().stream().noneMatch(this::isRun)) {
            return;
        }
        blank.forEach((heading, words) -> log.add(
                FindingCode.LIST_COLUMN_BLANK,
                Severity.CHECK,
                "",
                new Place(raw.file(), raw.sheet(), header.lastRow().row(), -1, ""),
                "no row has an entry under '" + heading.key() + "'",
                "an entry for each run; it unlocks " + String.join("; ", words),
                "Fill the column, or name the heading that holds it in the headings file, and run again."));
    }

    /** What a column that no row fills would unlock; nothing where it, or another that stands for it, is filled. */
    private Optional<String> unlocks(OwnListFeed feed, SchemaColumn column) {
        Set<String> instead = INSTEAD.stream()
                .filter(all -> all.contains(column.heading()))
                .findFirst()
                .orElse(Set.of(column.heading()));
        boolean filled = feed.constants().keySet().stream().anyMatch(c -> instead.contains(c.heading()))
                || feed.columns().entrySet().stream()
                        .filter(entry -> instead.contains(entry.getKey().heading()))
                        .flatMap(entry -> entry.getValue().stream())
                        .flatMap(name -> header.heading(name).stream())
                        .anyMatch(this::isFilled);
        return filled
                ? Optional.empty()
                : Optional.ofNullable(
                        UNLOCKS.getOrDefault(feed.table().name(), Map.of()).get(column.heading()));
    }

    private boolean isRun(RawRow row) {
        return row.row() > header.lastRow().row() && !leftOut.contains(row.row());
    }

    private boolean isFilled(OwnListHeader.Heading heading) {
        return raw.rows().stream()
                .filter(this::isRun)
                .flatMap(row -> row.cell(heading.column()).stream())
                .anyMatch(OwnListBlanks::holdsSomething);
    }

    private static boolean holdsSomething(RawCell cell) {
        return !cell.isBlank() && !(CellNumber.read(cell) instanceof NumberText.Nothing);
    }
}
