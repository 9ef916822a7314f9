package workuptally.reference.substances;

import java.util.List;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * What one form of a substance holds beyond another: a salt's acid, water, solvent.
 *
 * @param name as it is spoken of, for example {@code HCl} or {@code Na−H}
 * @param added formula of what is added
 * @param removed formula of what it replaces, if anything
 * @param numbers how many of it are usual; halves for hemi-salts
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record AddedForm(
        String name, String added, Optional<String> removed, List<Double> numbers, List<String> sources, Basis basis)
        implements Cited {
    /** Copies the lists. */
    public AddedForm {
        numbers = List.copyOf(numbers);
        sources = List.copyOf(sources);
    }

    static AddedForm of(ReferenceCells row) throws IllegalReferenceException {
        return new AddedForm(
                row.text("name"),
                row.text("added"),
                row.optionalText("removed"),
                row.list("number").stream().map(Double::valueOf).toList(),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "form-differences";
    }

    @Override
    public String key() {
        return name;
    }
}
