package workuptally.reference.substances;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * A word in a name that tells the form weighed.
 *
 * @param word the word, with or without a number word in front
 * @param shows element, or {@code H2O}, that a formula of the form holds
 * @param notIn names to which the word belongs itself, lower case
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record SaltForm(String word, String shows, List<String> notIn, List<String> sources, Basis basis)
        implements Cited {
    private static final Pattern COUNT_BEFORE =
            Pattern.compile("(?<![a-z])(mono|di|tri|tetra|penta|hexa|hepta|octa|deca|hemi|sesqui)?$");

    /** Copies the lists. */
    public SaltForm {
        notIn = List.copyOf(notIn);
        sources = List.copyOf(sources);
    }

    static SaltForm of(ReferenceCells row) throws IllegalReferenceException {
        return new SaltForm(
                row.text("word"),
                row.text("shows"),
                row.list("not in").stream()
                        .map(name -> name.toLowerCase(Locale.ROOT))
                        .toList(),
                row.sources("source"),
                row.basis("basis"));
    }

    /** True where a name or note, in lower case, speaks of this form. */
    public boolean isIn(String lower) {
        String sought = word.toLowerCase(Locale.ROOT);
        for (int at = lower.indexOf(sought); at >= 0; at = lower.indexOf(sought, at + 1)) {
            int end = at + sought.length();
            boolean ends = end == lower.length() || !isLetter(lower.charAt(end));
            if (ends && COUNT_BEFORE.matcher(lower.substring(0, at)).find()) {
                return notIn.stream().noneMatch(lower::contains);
            }
        }
        return false;
    }

    private static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z';
    }

    @Override
    public String table() {
        return "salt-forms";
    }

    @Override
    public String key() {
        return word;
    }
}
