package workuptally.report.json;

import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Reading;
import workuptally.tally.balance.ReconciledBalance;

/** The entered numbers of a run on which its results depend: each is described once, results give its number. */
final class ReadingsOfRun {
    private final JsonFields json;
    private final Map<Reading, Integer> numbers = new IdentityHashMap<>();
    private final Map<Integer, Reading> readings = new LinkedHashMap<>();

    ReadingsOfRun(JsonFields json) {
        this.json = json;
    }

    private int number(Reading reading) {
        return numbers.computeIfAbsent(reading, r -> {
            readings.put(readings.size() + 1, r);
            return readings.size();
        });
    }

    /** The readings a value depends on, the largest share of its variance first. */
    void dependsOn(MeasuredValue value) {
        json.rows(
                Rows.DEPENDS_ON,
                value.budget(),
                (row, part) -> row.count(number(part.reading())).rough(part.variancePercent()));
    }

    /** What the balances make of the readings. */
    void reconciled(ReconciledBalance balance) {
        json.rows(
                Rows.RECONCILED,
                balance.values(),
                (row, value) -> row.count(number(value.reading()))
                        .figure(value.adjusted(), value.standardUncertainty())
                        .rough(value.standardUncertainty())
                        .rough(value.standardisedAdjustment()));
    }

    /** The readings that were given a number, in order. */
    void write() {
        json.rows(
                Rows.READINGS,
                readings.entrySet(),
                (row, entry) -> row.count(entry.getKey())
                        .text(entry.getValue().name())
                        .text(entry.getValue().where())
                        .typed(entry.getValue().value())
                        .text(entry.getValue().unit())
                        .rough(entry.getValue().standardUncertainty()));
    }
}
