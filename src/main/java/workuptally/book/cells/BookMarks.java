package workuptally.book.cells;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * How a book writes decimals, learnt from those of its typed numbers that can be read in one way only.
 *
 * <p>A book is read without such knowledge; where that left a text open that the rest of the book decides, it is read once more. No single
 * cell decides over another: a mark counts where it clearly outweighs the other one.
 */
public final class BookMarks {
    /** A number with one comma that no point follows: {@code 12,5} and {@code 1.250,0}. */
    private static final Pattern DECIMAL_COMMA =
            Pattern.compile("[^,]*\\d,(?:\\d{1,2}|\\d{4,})(?!\\d)[^,.]*|0,\\d+[^,.]*|[^,]*\\.\\d{3},\\d+[^,.]*");

    /** A number with one point that no comma follows, or with commas between its thousands. */
    private static final Pattern DECIMAL_POINT =
            Pattern.compile("[^.]*\\d\\.\\d[^,.]*|.*,.*,.*|[^.]*,\\d{3}\\.\\d[^,.]*");

    /** Three digits behind a point that can as well be thousands: {@code 1.500}, not {@code 0.912}; these vote only where nothing else does. */
    private static final Pattern MAY_BE_THOUSANDS = Pattern.compile("[^.\\d]*[1-9]\\d{0,2}\\.\\d{3}(?!\\d)[^.,]*");

    /** How many times as often one mark must be met as the other before it is taken for the book's. */
    private static final int CLEARLY = 3;

    /** Typed numbers with either mark. */
    private static final class Met {
        private int commas;
        private int points;
        private int openPoints;

        NumberText.Marks marks() {
            if (commas > CLEARLY * points && commas > openPoints) {
                return NumberText.Marks.COMMA;
            }
            return points + openPoints > CLEARLY * commas ? NumberText.Marks.POINT : NumberText.Marks.UNKNOWN;
        }

        boolean isNone() {
            return commas + points + openPoints == 0;
        }
    }

    private final Map<String, Met> met = new TreeMap<>();
    private final Met inBook = new Met();
    private final boolean learnt;
    private boolean leftOpen;

    private BookMarks(boolean learnt) {
        this.learnt = learnt;
    }

    /** For a first reading. */
    public static BookMarks unknown() {
        return new BookMarks(false);
    }

    /** Counts a text that was read as a number in the only way it can be. */
    public void meet(String table, String text) {
        if (learnt) {
            return;
        }
        Met own = met.computeIfAbsent(table, name -> new Met());
        if (DECIMAL_COMMA.matcher(text).matches()) {
            own.commas++;
            inBook.commas++;
        } else if (MAY_BE_THOUSANDS.matcher(text).matches()) {
            own.openPoints++;
            inBook.openPoints++;
        } else if (DECIMAL_POINT.matcher(text).matches()) {
            own.points++;
            inBook.points++;
        }
    }

    /** Says that a text stayed open which the marks of the book may decide. */
    public void leaveOpen() {
        leftOpen = true;
    }

    /** The marks of a table: its own, else the book's; unknown in a first reading, and never those of commas between thousands. */
    public NumberText.Marks of(String table) {
        if (!learnt) {
            return NumberText.Marks.UNKNOWN;
        }
        Met own = met.get(table);
        NumberText.Marks marks = own == null || own.isNone() ? inBook.marks() : own.marks();
        return marks == NumberText.Marks.COMMA ? marks : NumberText.Marks.UNKNOWN;
    }

    /** True where a second reading can decide what the first left open. */
    public boolean decideMore() {
        return !learnt
                && leftOpen
                && (inBook.marks() == NumberText.Marks.COMMA
                        || met.values().stream().anyMatch(m -> m.marks() == NumberText.Marks.COMMA));
    }

    /** What was met, for a second reading. */
    public BookMarks learnt() {
        BookMarks second = new BookMarks(true);
        second.met.putAll(met);
        second.inBook.commas = inBook.commas;
        second.inBook.points = inBook.points;
        second.inBook.openPoints = inBook.openPoints;
        return second;
    }
}
