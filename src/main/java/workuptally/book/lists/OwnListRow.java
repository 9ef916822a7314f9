package workuptally.book.lists;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.cells.CellNumber;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.words.Words;

/** Tells rows of a laboratory's own list that are no runs: titles, repeated headings, totals and means, and what it names itself. */
final class OwnListRow {
    /** Words with which a row of totals or means begins, in English, German and French. */
    private static final Pattern SUMMARY = Pattern.compile(
            "(?:grand |sub)?total|totaux|sums?|summen?|gesamt(?:summe)?|zwischensumme|somme|sous-total|means?|averages?|avg|median"
                    + "|mittelwert|mittel|durchschnitt|moyenne|médiane|[øΣ∑]",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private static final Pattern FIRST_WORD = Pattern.compile("^[\\p{L}Σ∑ø-]+(?: total)?", Pattern.CASE_INSENSITIVE);

    private final OwnListHeader header;
    private final List<String> runHeadings;
    private final List<String> leaveOut;
    private int before;
    private boolean otherTable;
    private boolean otherHeadings;

    /**
     * For the rows of one list.
     *
     * @param runHeadings headings of the run's id
     * @param leaveOut words with which the laboratory begins rows that are no runs
     */
    OwnListRow(OwnListHeader header, List<String> runHeadings, List<String> leaveOut) {
        this.header = header;
        this.runHeadings = runHeadings;
        this.leaveOut = leaveOut;
        this.before = header.lastRow().row();
    }

    /**
     * True for a row below the headings that is no run; rows are asked about from above.
     *
     * <p>Below an empty row, a row of words without a digit begins another table; its rows are left out as long as they give no amount.
     *
     * @param givesAmount true where the row has a number under a heading of an amount or weight
     */
    boolean isNoRun(RawRow row, boolean givesAmount) {
        boolean gap = row.row() > before + 1;
        before = row.row();
        if (isHeadingAgain(row)) {
            otherTable = false;
            otherHeadings = false;
            return true;
        }
        otherHeadings |= changesHeadings(row);
        boolean words = row.cells().size() > 1
                && row.cells().stream()
                        .allMatch(cell -> cell.type() == RawCell.Type.TEXT
                                && cell.text().chars().noneMatch(Character::isDigit));
        otherTable |= gap && words;
        return otherHeadings || otherTable && !givesAmount || isTitleOrSum(row);
    }

    private boolean isTitleOrSum(RawRow row) {
        String first = CellNumber.shown(row.cells().get(0));
        List<RawCell> filled = row.cells();
        return filled.size() == 1
                || isSummary(first)
                || runHeadings.stream()
                        .flatMap(name -> header.heading(name).stream())
                        .flatMap(heading -> row.cell(heading.column()).stream())
                        .anyMatch(cell -> isSummary(CellNumber.shown(cell)));
    }

    private boolean isSummary(String text) {
        Matcher word = FIRST_WORD.matcher(text.strip());
        boolean usual = word.find() && SUMMARY.matcher(word.group()).matches();
        String loose = Words.loose(text);
        return usual || leaveOut.stream().map(Words::loose).anyMatch(own -> !own.isEmpty() && loose.startsWith(own));
    }

    /** True for a row with the heading of the run's id again, beside headings of which some differ: what stands below is in other units or order. */
    boolean changesHeadings(RawRow row) {
        RawRow own = header.lastRow();
        boolean idAgain = runHeadings.stream()
                .flatMap(name -> header.heading(name).stream())
                .anyMatch(heading -> isSame(own, row, heading.column()));
        return idAgain
                && row.cells().size() > 1
                && row.cells().stream().allMatch(cell -> cell.type() == RawCell.Type.TEXT)
                && row.cells().stream()
                                .filter(cell -> isSame(own, row, cell.column()))
                                .count()
                        > 1
                && !isHeadingAgain(row);
    }

    private static boolean isSame(RawRow one, RawRow other, int column) {
        return one.cell(column)
                .map(cell -> Words.loose(cell.text()))
                .filter(text -> other.cell(column)
                        .filter(cell -> Words.loose(cell.text()).equals(text))
                        .isPresent())
                .isPresent();
    }

    private boolean isHeadingAgain(RawRow row) {
        RawRow last = header.lastRow();
        return row.cells().size() > 1
                && row.cells().stream()
                        .allMatch(cell -> last.cell(cell.column())
                                .filter(heading -> Words.loose(heading.text()).equals(Words.loose(cell.text())))
                                .isPresent());
    }
}
