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
 * A word in the name of an unlisted material that tells what it does: {@code azide} in <i>zinc azide</i>, not in <i>hydrazide</i>.
 *
 * @param word lower case, but for a formula
 * @param match where in a word of the name it must stand
 * @param before what the text before it must end with; empty for anything
 * @param except longer words inside which it is not meant
 * @param classes classes it tells
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record NameClass(
        String word,
        Match match,
        Optional<String> before,
        List<String> except,
        List<String> classes,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Place of the word. */
    public enum Match {
        /** A word of its own. */
        WORD,
        /** The end of a word. */
        ENDING,
        /** The beginning of a word. */
        START,
        /** The end of a formula that begins with metals alone, {@code Zn(N3)2}. */
        FORMULA
    }

    /** Copies the lists. */
    public NameClass {
        except = List.copyOf(except);
        classes = List.copyOf(classes);
        sources = List.copyOf(sources);
    }

    static NameClass of(ReferenceCells row) throws IllegalReferenceException {
        String match = row.text("match");
        return new NameClass(
                match.equals("formula") ? row.text("word") : row.text("word").toLowerCase(Locale.ROOT),
                Arrays.stream(Match.values())
                        .filter(m -> m.name().toLowerCase(Locale.ROOT).equals(match))
                        .findFirst()
                        .orElseThrow(() -> row.wrong("match", match, "word, ending or start")),
                row.optionalText("before"),
                row.list("except"),
                row.list("classes"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "name-classes";
    }

    @Override
    public String key() {
        return word;
    }
}
