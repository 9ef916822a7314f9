package workuptally.reference;

import java.util.List;
import java.util.Optional;

/**
 * Laboratory balance.
 *
 * @param key key of the row
 * @param name full name
 * @param readabilityGrams smallest step shown, g
 * @param repeatabilityGrams standard deviation of repeated weighings, g
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record Balance(
        String key,
        String name,
        double readabilityGrams,
        double repeatabilityGrams,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Balance {
        sources = List.copyOf(sources);
    }

    static Balance of(Cells row) throws IllegalReferenceException {
        return new Balance(
                row.text("key"),
                row.text("name"),
                row.number("readability (g)", 1e-7, 1000),
                row.number("repeatability (g)", 0, 1000),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "balances";
    }
}
