package workuptally.report.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.Writer;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Copies a sheet part, changing the style number of marked cells and nothing else. A marked cell or row that the sheet does not have
 * is put in, in order; a sheet that gets its first comments is told where they are; an open one is closed, since the copy opens on
 * its summary and two open sheets would be a group that is written in together.
 */
final class SheetStamp {
    /** Attribute of the view of an open sheet: ECMA-376-1:2016, 18.3.1.87. */
    private static final String SELECTED = "tabSelected";

    private static final String RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /** What may follow {@code legacyDrawing} in a sheet: ECMA-376-1:2016, 18.3.1.99. */
    private static final Set<String> AFTER_LEGACY_DRAWING = Set.of(
            "legacyDrawingHF",
            "drawingHF",
            "picture",
            "oleObjects",
            "controls",
            "webPublishItems",
            "tableParts",
            "extLst",
            "AlternateContent");

    private final Markup markup;
    private final SortedMap<Integer, SortedMap<Integer, Integer>> pending;

    private final Set<Integer> rowsWithNewCells;

    private SheetStamp(Markup markup, CellStyles styles) {
        this.markup = markup;
        pending = new TreeMap<>();
        styles.numbers()
                .forEach((mark, style) -> pending.computeIfAbsent(mark.row(), k -> new TreeMap<>())
                        .put(mark.column(), style));
        rowsWithNewCells = styles.missing().stream().map(CellMark::row).collect(Collectors.toSet());
    }

    /**
     * Copies a part.
     *
     * @param part the part as the user saved it
     * @param out where it goes, in UTF-8
     * @param styles new style numbers
     * @param comments id of the relationship to the drawing of the comments, if the sheet gets its first ones
     */
    static void copy(InputStream part, Writer out, CellStyles styles, Optional<String> comments) throws IOException {
        try (Reader text = PartText.open(part)) {
            new SheetStamp(new Markup(text, out), styles).walk(comments);
        }
    }

    private void walk(Optional<String> comments) throws IOException {
        int depth = 0;
        boolean afterCells = false;
        String prefix = "";
        Optional<String> toInsert = comments;
        while (markup.next()) {
            depth += markup.isEnd() ? -1 : 0;
            boolean closesSheet = depth == 0 && markup.isEnd();
            boolean follows = depth == 1 && afterCells && AFTER_LEGACY_DRAWING.contains(markup.localName());
            if (toInsert.isPresent() && (closesSheet || follows)) {
                markup.write("<" + prefix + "legacyDrawing xmlns:tally=\"" + RELATIONSHIPS + "\" tally:id=\""
                        + toInsert.get() + "\"/>");
                toInsert = Optional.empty();
            }
            if (depth == 1 && !markup.isEnd() && markup.is("sheetData")) {
                prefix = markup.prefix();
                sheetData();
                afterCells = true;
                continue;
            }
            depth += markup.isEnd() || markup.isEmpty() ? 0 : 1;
            markup.write(isOpenView(markup) ? markup.with(SELECTED, "0") : markup.text());
        }
    }

    /** True for the tag of a view in which the sheet is open. */
    static boolean isOpenView(Markup markup) {
        return markup.is("sheetView")
                && !markup.isEnd()
                && markup.attribute(SELECTED)
                        .filter(open -> open.equals("1") || open.equals("true"))
                        .isPresent();
    }

    private void sheetData() throws IOException {
        String prefix = markup.prefix();
        if (markup.isEmpty()) {
            if (pending.isEmpty()) {
                markup.keep();
                return;
            }
            markup.write(opened());
            rowsBefore(Integer.MAX_VALUE, prefix);
            markup.write("</" + prefix + "sheetData>");
            return;
        }
        markup.keep();
        int row = 0;
        while (markup.next()) {
            if (markup.is("row") && !markup.isEnd()) {
                row = CellPositions.row(markup, row);
                rowsBefore(row, prefix);
                SortedMap<Integer, Integer> cells = pending.remove(row);
                if (cells == null) {
                    markup.keep();
                } else {
                    row(row, cells);
                }
            } else if (markup.is("sheetData")) {
                rowsBefore(Integer.MAX_VALUE, prefix);
                markup.keep();
                return;
            } else {
                markup.keep();
            }
        }
    }

    private void rowsBefore(int row, String prefix) throws IOException {
        while (!pending.isEmpty() && pending.firstKey() < row) {
            int missing = pending.firstKey();
            markup.write("<" + prefix + "row r=\"" + missing + "\">");
            cellsBefore(Integer.MAX_VALUE, missing, pending.remove(missing), prefix);
            markup.write("</" + prefix + "row>");
        }
    }

    private void row(int row, SortedMap<Integer, Integer> cells) throws IOException {
        String prefix = markup.prefix();
        if (markup.isEmpty()) {
            markup.write(head(row, opened()));
            cellsBefore(Integer.MAX_VALUE, row, cells, prefix);
            markup.write("</" + prefix + "row>");
            return;
        }
        markup.write(head(row, markup.text()));
        int column = -1;
        while (markup.next()) {
            if (markup.is("row")) {
                cellsBefore(Integer.MAX_VALUE, row, cells, prefix);
                markup.keep();
                return;
            }
            if (markup.is("c") && !markup.isEnd()) {
                column = CellPositions.column(markup, column);
                cellsBefore(column, row, cells, prefix);
                Integer style = cells.remove(column);
                markup.write(style == null ? markup.text() : markup.with("s", Integer.toString(style)));
            } else {
                markup.keep();
            }
        }
    }

    private void cellsBefore(int column, int row, SortedMap<Integer, Integer> cells, String prefix) throws IOException {
        while (!cells.isEmpty() && cells.firstKey() < column) {
            int missing = cells.firstKey();
            String reference = new org.apache.poi.ss.util.CellAddress(row - 1, missing).formatAsString();
            markup.write("<" + prefix + "c r=\"" + reference + "\" s=\"" + cells.remove(missing) + "\"/>");
        }
    }

    /** An empty tag as a start tag. */
    private String opened() {
        String text = markup.text();
        return text.substring(0, text.length() - 2).stripTrailing() + ">";
    }

    /**
     * The tag of a row. The hint which columns it uses is dropped where a cell outside them may come in; it is optional (ECMA-376-1:2016,
     * 18.3.1.73).
     */
    private String head(int row, String tag) {
        return rowsWithNewCells.contains(row) ? tag.replaceFirst("\\s+spans\\s*=\\s*(\"[^\"]*\"|'[^']*')", "") : tag;
    }
}
