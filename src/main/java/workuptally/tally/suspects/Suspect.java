package workuptally.tally.suspects;

import java.util.List;
import java.util.OptionalDouble;
import workuptally.model.Place;

/**
 * A cell to look at again: with another entry all balances of the run would agree. A suggestion where to look, never a correction.
 *
 * @param place the cell
 * @param together further cells that no balance tells apart from it, such as the tare beside a gross, or the other one of two swapped
 * @param what what stands there, for example {@code gross of lot CR1}
 * @param typed the entry as typed; empty for a missing one
 * @param suggested the entry that would settle it; empty where it cannot be told: a missing one, or a slip that
 *     tells the cell alone
 * @param slip the usual slip that leads from one to the other
 * @param explains the balances that it would mend, or, of a missing entry, those that cannot be struck without it
 * @param chiSquareBefore sum of squares of what is off, in standard uncertainties, with the entry as typed; empty for a missing entry
 * @param chiSquareAfter the same with the entry suggested; empty where a missing one cannot be told
 * @param degreesOfFreedom balances that it was held against
 */
public record Suspect(
        Place place,
        List<Place> together,
        String what,
        String typed,
        String suggested,
        UsualSlip slip,
        List<String> explains,
        OptionalDouble chiSquareBefore,
        OptionalDouble chiSquareAfter,
        int degreesOfFreedom) {
    /** Copies the lists. */
    public Suspect {
        together = List.copyOf(together);
        explains = List.copyOf(explains);
    }
}
