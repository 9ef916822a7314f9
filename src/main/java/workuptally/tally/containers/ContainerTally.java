package workuptally.tally.containers;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import workuptally.model.Container;

/**
 * The ledger of one container.
 *
 * @param container the entry
 * @param then contents as stated at the weighing
 * @param before transfers made before the weighing, which stand in the contents then, in order of the table
 * @param done transfers made since, in order of the table
 * @param proposed transfers proposed, in order of the table
 * @param now contents as stated and transfers done
 * @param reconciliation stated contents against the weighed bottle, if both are known
 * @param age how long it has been open, if the day of opening and the day of the report are known
 */
public record ContainerTally(
        Container container,
        ContainerState then,
        List<ContainerAddition> before,
        List<ContainerAddition> done,
        List<ContainerAddition> proposed,
        ContainerState now,
        Optional<Reconciliation> reconciliation,
        Optional<Age> age) {
    /** Copies the lists. */
    public ContainerTally {
        before = List.copyOf(before);
        done = List.copyOf(done);
        proposed = List.copyOf(proposed);
    }

    /** True where it is not known how much a transfer brought, so that mass and fill are least figures. */
    public boolean isLeast() {
        return done.stream().anyMatch(ContainerAddition::isUnknown);
    }

    /**
     * Stated contents against the weighed bottle.
     *
     * @param ledgerGrams stated contents, g
     * @param weighedGrams gross − tare, g
     * @param toleranceGrams difference that needs no look, g: the larger of 2 % and 20 g (common practice)
     */
    public record Reconciliation(double ledgerGrams, double weighedGrams, double toleranceGrams) {
        /** Ledger − bottle, g. */
        public double differenceGrams() {
            return ledgerGrams - weighedGrams;
        }

        /** True where ledger and bottle agree. */
        public boolean agrees() {
            return Math.abs(differenceGrams()) <= toleranceGrams;
        }
    }

    /**
     * Age of a container on the day of the report.
     *
     * @param asOf day of the report
     * @param daysOpen days since it was opened
     * @param dueOn last day of the local limit; empty where the book sets none
     * @param lastWorkingDay that day, or the Friday before where it falls on a weekend; local holidays are not known
     */
    public record Age(LocalDate asOf, long daysOpen, Optional<LocalDate> dueOn, Optional<LocalDate> lastWorkingDay) {
        /** True where the local limit has passed. */
        public boolean overdue() {
            return dueOn.filter(asOf::isAfter).isPresent();
        }

        /** True where the local limit has not passed and no working day is left before it does. */
        public boolean dueNow() {
            return !overdue()
                    && lastWorkingDay.filter(day -> !day.isAfter(asOf)).isPresent();
        }
    }
}
