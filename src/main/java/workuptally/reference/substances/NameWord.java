package workuptally.reference.substances;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * A word around the name of a material: {@code anhydrous}, {@code sat.}, {@code on carbon}.
 *
 * @param word as written, a phrase of several words included
 * @param meaning what it says
 * @param value molecules of water, formula of an acid, support or oil; empty for the other meanings
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record NameWord(String word, Meaning meaning, Optional<String> value, List<String> sources, Basis basis)
        implements Cited {
    /** What a word says about the material whose name it stands beside. */
    public enum Meaning {
        /** Purity, state or temperature: changes nothing. */
        GRADE,
        /** Used before; what it holds beside its name is not known. */
        RECOVERED,
        /** Saturated in water at room temperature. */
        SATURATED,
        /** Saturated, mixed with its own volume of water. */
        HALF_SATURATED,
        /** The concentrated solution as sold. */
        CONCENTRATED,
        /** Dilute; how much is not said. */
        DILUTE,
        /** Dissolved in water. */
        AQUEOUS,
        /** Dissolved; in what is not said. */
        SOLUTION,
        /** With water of crystallisation. */
        HYDRATE,
        /** The salt of a base with an acid. */
        SALT,
        /** On a support. */
        SUPPORTED,
        /** Dispersed in an oil. */
        DISPERSED
    }

    /** Copies the list. */
    public NameWord {
        sources = List.copyOf(sources);
    }

    static NameWord of(ReferenceCells row) throws IllegalReferenceException {
        String meaning = row.text("meaning");
        return new NameWord(
                row.text("word"),
                Arrays.stream(Meaning.values())
                        .filter(m -> m.name()
                                .toLowerCase(Locale.ROOT)
                                .replace('_', '-')
                                .equals(meaning))
                        .findFirst()
                        .orElseThrow(() -> row.wrong("meaning", meaning, "one of the words in the head of the file")),
                row.optionalText("value"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "name-words";
    }

    @Override
    public String key() {
        return word;
    }
}
