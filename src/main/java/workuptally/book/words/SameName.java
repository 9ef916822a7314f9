package workuptally.book.words;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Finds a thing by its name: as it is written, else as it is written but for case, spaces, hyphens and dots where only one is. */
public final class SameName {
    /** What parts two numbers in a name: {@code 1-1} is not {@code 11}. */
    private static final Pattern BETWEEN_DIGITS = Pattern.compile("(?<=\\d)[\\s._-]+(?=\\d)");

    private SameName() {}

    /** What counts of a name: two names with one key are the same name. */
    public static String key(String name) {
        String plain = TypedText.plain(name);
        return BookWords.loose(
                isOneWord(plain) ? plain : BETWEEN_DIGITS.matcher(plain).replaceAll("~"));
    }

    /** True where nothing stands between two numbers. */
    private static boolean isOneWord(String plain) {
        for (int i = 0; i < plain.length(); i++) {
            if (!Character.isLetterOrDigit(plain.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    public static <T> Optional<T> of(List<T> things, Function<T, String> name, String wanted) {
        for (T thing : things) {
            if (name.apply(thing).equalsIgnoreCase(wanted)) {
                return Optional.of(thing);
            }
        }
        if (wanted.isBlank()) {
            return Optional.empty();
        }
        String key = key(wanted);
        List<T> alike = things.stream()
                .filter(thing -> key(name.apply(thing)).equals(key))
                .toList();
        return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
    }
}
