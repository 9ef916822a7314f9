package workuptally.reference.bench;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.TableFile;

/**
 * The tables of glassware and of the figures of the trade.
 *
 * @param glassware glassware
 * @param rules the row of each figure of the bench, in the order in which the program names them
 */
public record BenchTables(List<Glassware> glassware, Map<Threshold, BenchRule> rules) {
    /** Keeps what is given, unchangeable. */
    public BenchTables {
        rules = Collections.unmodifiableMap(rules);
    }

    /**
     * Reads them.
     *
     * @throws IllegalReferenceException if a value is malformed or out of its range
     */
    public static BenchTables of(Map<KnownTable, TableFile> files) throws IllegalReferenceException {
        Map<Threshold, BenchRule> rules = new EnumMap<>(Threshold.class);
        for (BenchRule row : files.get(KnownTable.BENCH_RULES).each(BenchRule::of)) {
            Threshold.ofKey(row.key()).ifPresent(threshold -> rules.put(threshold, row));
        }
        return new BenchTables(files.get(KnownTable.GLASSWARE).each(Glassware::of), rules);
    }
}
