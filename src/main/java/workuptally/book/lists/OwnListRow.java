package workuptally.book.lists;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.cells.CellNumber;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.words.BookWords;

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
    }

    /** True for a row below the headings that is no run. */
    boolean isNoRun(RawRow row) {
        String first = CellNumber.shown(row.cells().get(0));
        List<RawCell> filled = row.cells();
        return filled.size() == 1
                || isSummary(first)
                || runHeadings.stream()
                        .flatMap(name -> header.heading(name).stream())
                        .flatMap(heading -> row.cell(heading.column()).stream())
                        .anyMatch(cell -> isSummary(CellNumber.shown(cell)))
                || header.isRepeatedBy(row);
    }

    private boolean isSummary(String text) {
        Matcher word = FIRST_WORD.matcher(text.strip());
        boolean usual = word.find() && SUMMARY.matcher(word.group()).matches();
        String loose = BookWords.loose(text);
        return usual
                || leaveOut.stream().map(BookWords::loose).anyMatch(own -> !own.isEmpty() && loose.startsWith(own));
    }
}
