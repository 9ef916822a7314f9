package workuptally.tally.suspects;

import java.util.List;
import workuptally.model.Place;
import workuptally.model.RowPlace;

/**
 * What could have been meant instead of what was typed.
 *
 * @param changes the cells read otherwise
 * @param slip the usual slip between the two
 * @param places the cells concerned, the one to look at first
 * @param row row of the first of them
 * @param what what stands in the first of them
 * @param typed as typed
 * @param suggested as meant
 * @param alternatives numbers that the same slip could have led to instead, this one included; a power of ten further off counts as more
 */
record Hypothesis(
        Changes changes,
        UsualSlip slip,
        List<Place> places,
        RowPlace row,
        String what,
        String typed,
        String suggested,
        double alternatives) {
    /** One of its kind. */
    Hypothesis(
            Changes changes,
            UsualSlip slip,
            List<Place> places,
            RowPlace row,
            String what,
            String typed,
            String suggested) {
        this(changes, slip, places, row, what, typed, suggested, 1);
    }

    /** What is added to chi-square before slips are ranked: twice the logarithm of how rare it is. */
    double handicap() {
        return slip.handicap() + 2 * Math.log(alternatives);
    }
}
