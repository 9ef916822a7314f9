package workuptally.book.words;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Finds a thing by its name: as it is written, else as it is written but for case, spaces and hyphens where only one is. */
public final class SameName {
    private SameName() {}

    public static <T> Optional<T> of(List<T> things, Function<T, String> name, String wanted) {
        Optional<T> same = things.stream()
                .filter(thing -> name.apply(thing).equalsIgnoreCase(wanted))
                .findFirst();
        if (same.isPresent() || wanted.isBlank()) {
            return same;
        }
        String loose = BookWords.loose(TypedText.plain(wanted));
        List<T> alike = things.stream()
                .filter(thing ->
                        BookWords.loose(TypedText.plain(name.apply(thing))).equals(loose))
                .toList();
        return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
    }
}
