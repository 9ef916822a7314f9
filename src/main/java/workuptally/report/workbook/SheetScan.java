package workuptally.report.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.Writer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reads a sheet part once: copies it without its cells, and notes the style numbers that the cells to be marked have now.
 */
final class SheetScan {
    private final SheetMarks marks;
    private final Map<CellMark, Integer> styles = new HashMap<>();
    private final Set<CellMark> missing = new HashSet<>();
    private final SheetNumbers numbers = new SheetNumbers();
    private final List<int[]> columnStyles = new ArrayList<>();
    private boolean selected;

    private SheetScan(SheetMarks marks) {
        this.marks = marks;
    }

    /**
     * Scans a part.
     *
     * @param part the part
     * @param stub where the part without its cells goes
     * @param marks marks of the sheet
     * @return style numbers of the marked cells (of the cell, else of its row or column, else 0), the numbers of all cells, and
     *     whether the sheet is open
     */
    static ScannedSheet scan(InputStream part, Writer stub, SheetMarks marks) throws IOException {
        SheetScan scan = new SheetScan(marks);
        try (Reader text = PartText.open(part)) {
            scan.walk(new Markup(text, stub));
        }
        return new ScannedSheet(new CellStyles(scan.styles, scan.missing), scan.numbers, scan.selected);
    }

    private void walk(Markup markup) throws IOException {
        while (markup.next()) {
            selected |= SheetStamp.isOpenView(markup);
            if (markup.is("col") && !markup.isEnd()) {
                columnStyle(markup);
            }
            if (markup.is("sheetData") && !markup.isEnd() && !markup.isEmpty()) {
                markup.write("<" + markup.prefix() + "sheetData/>");
                markup.silent(true);
                cells(markup);
                markup.silent(false);
            } else {
                markup.keep();
            }
        }
        // Whatever is still unmarked belongs to rows that the sheet does not have.
        marks.rows().forEach((row, cells) -> missing(cells, Optional.empty()));
    }

    private void columnStyle(Markup markup) {
        Optional<String> style = markup.attribute("style");
        if (style.isPresent()) {
            columnStyles.add(new int[] {
                Integer.parseInt(markup.attribute("min").orElse("0")),
                Integer.parseInt(markup.attribute("max").orElse("0")),
                Integer.parseInt(style.get())
            });
        }
    }

    private void cells(Markup markup) throws IOException {
        int row = 0;
        int column = -1;
        SortedMap<Integer, CellMark> wanted = new TreeMap<>();
        boolean numeric = false;
        Optional<Integer> rowStyle = Optional.empty();
        while (markup.next()) {
            if (markup.is("sheetData")) {
                return;
            }
            if (markup.is("row")) {
                if (markup.isEnd()) {
                    missing(wanted, rowStyle);
                    continue;
                }
                row = CellPositions.row(markup, row);
                column = -1;
                wanted = marks.rows().getOrDefault(row, new TreeMap<>());
                rowStyle = wanted.isEmpty()
                        ? Optional.empty()
                        : markup.attribute("s").map(Integer::valueOf);
                if (markup.isEmpty()) {
                    missing(wanted, rowStyle);
                }
            } else if (markup.is("c") && !markup.isEnd()) {
                column = CellPositions.column(markup, column);
                numeric = markup.attribute("t").orElse("n").equals("n");
                CellMark mark = wanted.get(column);
                if (mark != null) {
                    styles.put(mark, markup.attribute("s").map(Integer::valueOf).orElse(0));
                }
            } else if (numeric && markup.is("v") && !markup.isEnd()) {
                number(row, column, markup.textAhead());
                numeric = false;
            }
        }
    }

    private void number(int row, int column, String text) {
        OptionalDouble value = value(text.trim());
        if (value.isPresent()) {
            numbers.add(row, column, value.getAsDouble());
        }
    }

    /** Empty where no number stands, whatever the type of the cell says: then no formula refers to it. */
    private static OptionalDouble value(String text) {
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    private void missing(SortedMap<Integer, CellMark> cells, Optional<Integer> rowStyle) {
        for (CellMark mark : cells.values()) {
            if (!styles.containsKey(mark)) {
                styles.put(mark, rowStyle.orElseGet(() -> ofColumn(mark.column() + 1)));
                missing.add(mark);
            }
        }
    }

    private int ofColumn(int number) {
        for (int[] range : columnStyles) {
            if (range[0] <= number && number <= range[1]) {
                return range[2];
            }
        }
        return 0;
    }
}
