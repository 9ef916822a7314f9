package workuptally.reference.bench;

import java.util.List;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Rule of thumb of the bench; {@link Threshold} names those that the program reads.
 *
 * @param key key of the row
 * @param name full name
 * @param value in {@code unit}
 * @param unit unit of the value
 * @param meaning what it is used for
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record BenchRule(
        String key, String name, double value, String unit, String meaning, List<String> sources, Basis basis)
        implements Cited {
    /** Copies the lists. */
    public BenchRule {
        sources = List.copyOf(sources);
    }

    static BenchRule of(ReferenceCells row) throws IllegalReferenceException {
        BenchRule rule = new BenchRule(
                row.text("key"),
                row.text("name"),
                row.number("value", -1e6, 1e6),
                row.text("unit"),
                row.text("meaning"),
                row.sources("source"),
                row.basis("basis"));
        Optional<Threshold> threshold = Threshold.ofKey(rule.key());
        if (threshold.isEmpty()) {
            throw row.wrong("key", rule.key(), "a key of the packed table; no figure of the program has this one");
        }
        if (!threshold.get().allows(rule.value())) {
            throw row.wrong("value", row.raw("value"), threshold.get().range());
        }
        return rule;
    }

    @Override
    public String table() {
        return "bench-rules";
    }
}
