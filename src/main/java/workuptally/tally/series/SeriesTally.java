package workuptally.tally.series;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Place;

/**
 * A repeated preparation: its earlier results with the chart they give, the results of this book judged against it, and where the book
 * holds many runs of it, the class together.
 *
 * @param series name
 * @param history earlier results, by date
 * @param chart limits frozen from the earlier results; empty with fewer than eight of them
 * @param results results of this book, in order of the book
 * @param together the class; empty with fewer than eight runs in the book
 */
public record SeriesTally(
        String series, List<Point> history, Optional<Chart> chart, List<Result> results, Optional<Together> together) {
    /** Copies the lists. */
    public SeriesTally {
        history = List.copyOf(history);
        results = List.copyOf(results);
    }

    /** Distance of an earlier result from the one before it, percentage points; empty for the first. */
    public OptionalDouble movingRangePercent(int historyIndex) {
        return historyIndex == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.abs(history.get(historyIndex).yieldPercent()
                        - history.get(historyIndex - 1).yieldPercent()));
    }

    /** Distance of a result of this book from the last earlier one, which it is judged against; empty without any. */
    public OptionalDouble movingRangePercent(Result result) {
        return history.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.abs(
                        result.yieldPercent() - history.get(history.size() - 1).yieldPercent()));
    }

    /** True where there is something to set side by side: earlier results, several of this book, or a class. */
    public boolean repeats() {
        return !history.isEmpty() || results.size() > 1 || together.isPresent();
    }

    /**
     * Individuals and moving-range chart of the earlier results.
     *
     * @param centrePercent mean, %
     * @param lowerLimitPercent lower limit, %
     * @param upperLimitPercent upper limit, %
     * @param meanMovingRangePercent mean moving range, percentage points
     * @param movingRangeLimitPercent limit of the moving range, percentage points
     */
    public record Chart(
            double centrePercent,
            double lowerLimitPercent,
            double upperLimitPercent,
            double meanMovingRangePercent,
            double movingRangeLimitPercent) {}

    /**
     * An earlier result.
     *
     * @param date when, if known
     * @param yieldPercent yield, %
     * @param place the cell it stands in
     */
    public record Point(Optional<LocalDate> date, double yieldPercent, Place place) {}

    /**
     * A result of this book.
     *
     * @param run run id
     * @param product product
     * @param yieldPercent yield by assay, %
     * @param signals what it signals on the chart, in words; empty without a chart
     */
    public record Result(String run, String product, double yieldPercent, List<String> signals) {
        /** Copies the list. */
        public Result {
            signals = List.copyOf(signals);
        }
    }

    /**
     * Many runs of one preparation together.
     *
     * @param runs number of runs
     * @param yields number of yields that count: those that can be stated, copied rows once
     * @param medianPercent their median, %
     * @param robustSpreadPercent 1.4826 times their median absolute deviation, percentage points
     * @param outliers runs further from the median than 3.5 robust spreads
     * @param copies runs whose weighing, or net mass and assay, equal those of an earlier run to the last digit
     * @param leftOut what does not count, with the reason
     * @param solventGrams organic solvents put in by all runs, g
     * @param keptGrams layers kept by all runs, g
     * @param materials what was charged against the plan
     */
    public record Together(
            int runs,
            int yields,
            OptionalDouble medianPercent,
            OptionalDouble robustSpreadPercent,
            List<String> outliers,
            List<String> copies,
            List<String> leftOut,
            double solventGrams,
            double keptGrams,
            List<Material> materials) {
        /** Copies the lists. */
        public Together {
            outliers = List.copyOf(outliers);
            copies = List.copyOf(copies);
            leftOut = List.copyOf(leftOut);
            materials = List.copyOf(materials);
        }

        /** Distance of a yield from the median, percentage points; empty without a median. */
        public OptionalDouble fromMedianPercent(double yieldPercent) {
            return medianPercent.isPresent()
                    ? OptionalDouble.of(Math.abs(yieldPercent - medianPercent.getAsDouble()))
                    : OptionalDouble.empty();
        }
    }

    /**
     * A material over all runs that give both amounts in the same kind of unit.
     *
     * @param material name
     * @param unit g, mL or mmol
     * @param planned sum of the planned amounts
     * @param actual sum of the actual amounts
     */
    public record Material(String material, String unit, double planned, double actual) {
        /** Actual over planned, %; 0 without a plan. */
        public double actualPercentOfPlanned() {
            return planned == 0 ? 0 : 100 * actual / planned;
        }
    }
}
