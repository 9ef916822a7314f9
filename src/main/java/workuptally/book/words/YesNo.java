package workuptally.book.words;

import java.util.Optional;
import java.util.Set;

/** Plain words of agreement and of denial, in the languages that books are written in. */
public final class YesNo {
    private static final Set<String> YES = Set.of("yes", "y", "true", "wahr", "vrai", "1", "ja", "j", "oui", "✓", "✔");
    private static final Set<String> NO = Set.of("no", "n", "false", "falsch", "faux", "0", "nein", "non");

    private YesNo() {}

    /** What a text says; nothing where it is blank or says neither. */
    public static Optional<Boolean> of(String text) {
        String word = BookWords.loose(text);
        return YES.contains(word) ? Optional.of(true) : NO.contains(word) ? Optional.of(false) : Optional.empty();
    }
}
