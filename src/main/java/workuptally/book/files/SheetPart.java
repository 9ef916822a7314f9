package workuptally.book.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the rows of one sheet of a workbook, raw values as stored, in a single pass. */
public final class SheetPart {
    /** Columns that a sheet has at most in spreadsheet programs. */
    private static final int MOST_COLUMNS = 16_384;

    private static final Pattern CELL = Pattern.compile("\\$?([A-Za-z]{1,3})\\$?(\\d{1,9})");

    private static final Pattern ZERO = Pattern.compile("-?0*\\.?0*(?:[eE].*)?");

    private final String file;
    private final String sheet;
    private final XmlPart xml;
    private final SharedStrings strings;
    private final NumberFormats formats;
    private final List<RawRow> rows = new ArrayList<>();
    private final List<RawTable.MergedRegion> merged = new ArrayList<>();
    private final List<Integer> struckRows = new ArrayList<>();
    private int hiddenRows;
    private final List<String> conditionalCells = new ArrayList<>();
    private boolean zerosHidden;
    private boolean stale;
    private boolean staleFormulas;
    private int lastRow;

    public SheetPart(String file, String sheet, XmlPart xml, SharedStrings strings, NumberFormats formats) {
        this.file = file;
        this.sheet = sheet;
        this.xml = xml;
        this.strings = strings;
        this.formats = formats;
    }

    /**
     * Reads to the end.
     *
     * @param formulasAreStale true where no result of a formula of the book counts, since it was not calculated when it was saved
     * @throws UnreadableBookException if the part is damaged or a cell lies outside the sheet
     */
    public RawTable read(boolean formulasAreStale) throws UnreadableBookException {
        stale = formulasAreStale;
        while (xml.next()) {
            if (xml.isStart("row")) {
                readRow();
            } else if (xml.isStart("sheetView")) {
                zerosHidden |= xml.attribute("showZeros")
                        .filter(shown -> !isTrue(shown))
                        .isPresent();
            } else if (xml.isStart("conditionalFormatting")) {
                readConditions();
            } else if (xml.isStart("mergeCell")) {
                xml.attribute("ref").flatMap(SheetPart::region).ifPresent(merged::add);
            }
        }
        return new RawTable(file, sheet, true, rows, merged, hiddenRows, struckRows);
    }

    /** True where results of formulas do not count because none of the book does. */
    public boolean hasStaleFormulas() {
        return staleFormulas;
    }

    /** Cells that a condition strikes out or shows otherwise, as the sheet names them, {@code C2:C40}. */
    public List<String> conditionalCells() {
        return conditionalCells;
    }

    private void readConditions() throws UnreadableBookException {
        String cells = xml.attribute("sqref").orElse("");
        boolean changing = false;
        while (xml.next() && !xml.isEnd("conditionalFormatting")) {
            changing |= xml.isStart("cfRule")
                            && xml.attribute("dxfId")
                                    .map(NumberFormats::index)
                                    .filter(formats::changesLook)
                                    .isPresent()
                    || ConditionalLooks.changes(xml);
            if (xml.isStart("sqref")) {
                cells = xml.ownText();
            }
        }
        if (changing) {
            conditionalCells.add(cells.strip());
        }
    }

    private void readRow() throws UnreadableBookException {
        int row = NumberFormats.number(xml.attribute("r"));
        row = row > 0 ? row : lastRow + 1;
        lastRow = row;
        if (row > CsvRows.MOST_ROWS) {
            throw outside("row " + row);
        }
        boolean hidden = xml.attribute("hidden").filter(SheetPart::isTrue).isPresent();
        List<RawCell> cells = new ArrayList<>();
        int lastColumn = -1;
        while (xml.next() && !xml.isEnd("row")) {
            if (xml.isStart("c")) {
                int column = column(xml.attribute("r"), lastColumn + 1);
                lastColumn = column;
                Optional<RawCell> cell = readCell(column);
                if (cell.isPresent() && !cell.get().isBlank()) {
                    cells.add(cell.get());
                }
            }
        }
        if (cells.isEmpty()) {
            return;
        }
        if (cells.stream().allMatch(RawCell::isStruck)) {
            struckRows.add(row);
        } else {
            cells.sort(Comparator.comparingInt(RawCell::column));
            rows.add(new RawRow(row, row, cells));
            hiddenRows += hidden ? 1 : 0;
        }
    }

    private static boolean isTrue(String text) {
        return text.equals("1") || text.equals("true");
    }

    private int column(Optional<String> reference, int next) throws UnreadableBookException {
        int column = reference.isPresent() ? columnOf(reference.get()).orElse(next) : next;
        if (column >= MOST_COLUMNS) {
            throw outside("column " + (column + 1));
        }
        return column;
    }

    /** Column of a reference of the plain form {@code BC12}, which nearly all have; the rest is left to the pattern. */
    private static OptionalInt columnOf(String reference) {
        int letters = 0;
        int number = 0;
        while (letters < reference.length() && letters < 3 && isCapital(reference.charAt(letters))) {
            number = number * 26 + reference.charAt(letters) - 'A' + 1;
            letters++;
        }
        boolean plain = letters > 0 && reference.length() > letters && reference.length() <= letters + 9;
        for (int i = letters; plain && i < reference.length(); i++) {
            plain = reference.charAt(i) >= '0' && reference.charAt(i) <= '9';
        }
        if (plain) {
            return OptionalInt.of(number - 1);
        }
        Matcher match = CELL.matcher(reference);
        return match.matches() ? OptionalInt.of(columnNumber(match.group(1))) : OptionalInt.empty();
    }

    private static boolean isCapital(char c) {
        return c >= 'A' && c <= 'Z';
    }

    private UnreadableBookException outside(String what) {
        return new UnreadableBookException(file + " has a cell in " + what + " of " + sheet
                + ", outside of what a sheet can hold: save it again from a spreadsheet program.");
    }

    private static int columnNumber(String letters) {
        int number = 0;
        for (char letter : letters.toUpperCase(java.util.Locale.ROOT).toCharArray()) {
            number = number * 26 + letter - 'A' + 1;
        }
        return number - 1;
    }

    private Optional<RawCell> readCell(int column) throws UnreadableBookException {
        String type = xml.attribute("t").orElse("n");
        int style = NumberFormats.number(xml.attribute("s"));
        ShownAs shown = formats.ofStyle(style);
        boolean struck = formats.strikesOut(style);
        boolean formula = false;
        boolean changing = false;
        Optional<String> value = Optional.empty();
        while (xml.next() && !xml.isEnd("c")) {
            if (xml.isStart("v")) {
                value = Optional.of(xml.ownText());
            } else if (xml.isStart("is")) {
                return Optional.of(asShown(inlineText().cell(column, struck), shown));
            } else if (xml.isStart("f")) {
                formula = true;
                // One that is marked so changes with each opening, as TODAY does, and its stored result with it.
                changing = xml.attribute("ca").filter(SheetPart::isTrue).isPresent();
                xml.skip();
            } else if (xml.isStart()) {
                xml.skip();
            }
        }
        boolean textResult = type.equals("str") && value.isPresent();
        boolean empty = !textResult && value.filter(v -> !v.isBlank()).isEmpty();
        if (formula && (empty || changing || stale)) {
            staleFormulas |= stale;
            RawCell open = new RawCell(column, RawCell.Type.NOT_CALCULATED, "", shown);
            return Optional.of(struck ? open.struck() : open);
        }
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (type.equals("s")) {
            return Optional.of(asShown(sharedText(column, value.get(), struck), shown));
        }
        RawCell cell = asShown(cell(column, type, value.get(), formula, shown), shown);
        return Optional.of(struck ? cell.struck() : cell);
    }

    /** A text with what its format puts around it, and a zero that the sheet does not show as one. */
    private RawCell asShown(RawCell cell, ShownAs shown) {
        if (zerosHidden && cell.isNumber() && ZERO.matcher(cell.text()).matches()) {
            return new RawCell(cell.column(), cell.type(), cell.text(), ShownAs.HIDDEN_ZERO);
        }
        return cell.type() == RawCell.Type.TEXT && shown.format().isPresent() && !cell.isBlank()
                ? RawCell.text(cell.column(), shown.format().get().show(cell.text()))
                : cell;
    }

    private RichText inlineText() throws UnreadableBookException {
        RichText text = RichText.read(xml, "is");
        while (xml.next() && !xml.isEnd("c")) {
            // the text is all that such a cell holds
        }
        return text;
    }

    private static RawCell cell(int column, String type, String value, boolean formula, ShownAs shown) {
        return switch (type) {
            case "str", "d" -> RawCell.text(column, SharedStrings.unescape(value));
            case "b" -> RawCell.text(column, value.strip().equals("1") ? "TRUE" : "FALSE");
            case "e" -> new RawCell(column, RawCell.Type.ERROR, value, shown);
            default ->
                value.isBlank()
                        ? RawCell.text(column, "")
                        : new RawCell(
                                column,
                                formula ? RawCell.Type.COMPUTED_NUMBER : RawCell.Type.NUMBER,
                                value.strip(),
                                shown);
        };
    }

    private RawCell sharedText(int column, String value, boolean struck) throws UnreadableBookException {
        Optional<RawCell> text = strings.cell(NumberFormats.index(value.strip()), column, struck);
        if (text.isEmpty()) {
            throw new UnreadableBookException(file + " is damaged: a cell of " + sheet
                    + " refers to a text that is missing; open it in a spreadsheet program, repair and save it.");
        }
        return text.get();
    }

    private static Optional<RawTable.MergedRegion> region(String reference) {
        int colon = reference.indexOf(':');
        Matcher first = CELL.matcher(colon < 0 ? reference : reference.substring(0, colon));
        Matcher last = CELL.matcher(reference.substring(colon + 1));
        return first.matches() && last.matches()
                ? Optional.of(new RawTable.MergedRegion(
                        Integer.parseInt(first.group(2)),
                        Integer.parseInt(last.group(2)),
                        columnNumber(first.group(1)),
                        columnNumber(last.group(1))))
                : Optional.empty();
    }
}
