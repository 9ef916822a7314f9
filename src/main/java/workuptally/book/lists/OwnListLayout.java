package workuptally.book.lists;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import workuptally.book.headings.OwnListFeed;

/**
 * How a laboratory's own list, with one row a run, feeds the tables of the form.
 *
 * @param sheets sheets (or CSV files, without their ending) laid out like this; empty = the first sheet
 * @param headingRows one or two rows of headings, from 1; empty = looked for
 * @param leaveOut words with which a row begins that is no run, beside the usual ones for totals and means
 * @param feeds what the tables take, in order
 * @param notUsed headings of the list that no table takes
 * @param open headings of the list that could mean several things and still wait for an answer
 */
public record OwnListLayout(
        List<String> sheets,
        List<Integer> headingRows,
        List<String> leaveOut,
        List<OwnListFeed> feeds,
        List<String> notUsed,
        List<OpenHeading> open) {

    /**
     * A heading that could mean several things.
     *
     * @param heading heading of the list
     * @param question what is to be settled, with what it could mean
     */
    record OpenHeading(String heading, String question) {}

    /** Every heading that the layout says something of. */
    Set<String> names() {
        Set<String> names = new LinkedHashSet<>(notUsed);
        open.forEach(heading -> names.add(heading.heading()));
        feeds.forEach(feed -> feed.columns().values().forEach(names::addAll));
        return names;
    }

    /** Copies the lists. */
    public OwnListLayout {
        sheets = List.copyOf(sheets);
        headingRows = List.copyOf(headingRows);
        leaveOut = List.copyOf(leaveOut);
        feeds = List.copyOf(feeds);
        notUsed = List.copyOf(notUsed);
        open = List.copyOf(open);
    }
}
