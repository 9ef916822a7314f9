package workuptally.reference.substances;

import java.util.List;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Standard atomic weight of one element.
 *
 * @param symbol chemical symbol
 * @param element name
 * @param weightGramsPerMole abridged standard atomic weight, g/mol
 * @param halfWidthGramsPerMole half-width of the abridged value, g/mol
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record AtomicWeightRow(
        String symbol,
        String element,
        double weightGramsPerMole,
        double halfWidthGramsPerMole,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public AtomicWeightRow {
        sources = List.copyOf(sources);
    }

    static AtomicWeightRow of(ReferenceCells row) throws IllegalReferenceException {
        return new AtomicWeightRow(
                row.text("symbol"),
                row.text("element"),
                row.number("abridged weight (g/mol)", 1, 300),
                row.number("abridged half-width (g/mol)", 0, 5),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "atomic-weights";
    }

    @Override
    public String key() {
        return symbol;
    }
}
