package workuptally.tally.suspects;

import workuptally.model.Field.Entered;
import workuptally.model.RowPlace;

/**
 * A filled number of a run that balances rest on.
 *
 * @param cell where it stands
 * @param number the number
 * @param what it is, for example {@code gross of lot CR1}
 * @param sort what kind of figure it is
 * @param vessel vessel of a weighing; empty for another figure
 */
record Entry(BookCell cell, Entered number, String what, Sort sort, String vessel) {
    /** Kinds of figures, with the values that can be meant. */
    enum Sort {
        AMOUNT(0, 1e7, true),
        /** An amount by volume. */
        LIQUID(0, 1e7, true),
        GROSS(0, 1e7, true),
        TARE(0, 1e7, true),
        NET(0, 1e7, true),
        VOLUME(0, 1e7, true),
        RESULT(0, 1e5, false),
        PERCENT(0, 102, false),
        STRENGTH(0, 25, false),
        DENSITY(0.5, 3.5, false),
        MOLAR_MASS(1, 1e5, false);

        private final double above;
        private final double most;
        private final boolean hasUnits;

        Sort(double above, double most, boolean hasUnits) {
            this.above = above;
            this.most = most;
            this.hasUnits = hasUnits;
        }

        boolean allows(double value) {
            return value > above && value <= most;
        }

        /** True for a mass or volume, which comes in units a thousand apart. */
        boolean hasUnits() {
            return hasUnits;
        }
    }

    RowPlace row() {
        return cell.row();
    }

    /** Entries of one weighing are one place: gross and tare move the same net mass. */
    boolean isOneWeighingWith(Entry other) {
        return isWeighing() && other.isWeighing() && other.cell.isIn(row()) && cell != other.cell;
    }

    /** True for a cell of the same column. */
    boolean isInColumnOf(Entry other) {
        return cell.heading().equals(other.cell.heading())
                && row().table().sheet().equals(other.row().table().sheet());
    }

    /** True for the cell right above or below. */
    boolean isNeighbourOf(Entry other) {
        return isInColumnOf(other) && Math.abs(row().row() - other.row().row()) == 1;
    }

    private boolean isWeighing() {
        return sort == Sort.GROSS || sort == Sort.TARE;
    }
}
