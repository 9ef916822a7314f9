package workuptally.material;

import java.util.List;
import java.util.Optional;

/**
 * The ratio of parts by volume that a text ends or begins with, {@code hexane/ethyl acetate 4:1}.
 *
 * @param parts its parts, two or more
 * @param rest the text without it
 */
record RatioAtEnd(List<Double> parts, String rest) {
    /** The ratio at the end of a text, else at its beginning; nothing where there is none at either. */
    static Optional<RatioAtEnd> of(String written) {
        String text = Ratio.withoutByVolume(written);
        return trailing(text).or(() -> leading(text));
    }

    private static Optional<RatioAtEnd> trailing(String text) {
        int from = text.length();
        while (from > 0 && isOfRatio(text.charAt(from - 1))) {
            from--;
        }
        List<Double> parts = Ratio.read(text.substring(from));
        boolean apart = from == 0 || Qualifiers.isLoose(text.charAt(from - 1)) || text.charAt(from - 1) == '(';
        return parts.isEmpty() || !apart
                ? Optional.empty()
                : Optional.of(new RatioAtEnd(parts, text.substring(0, from).strip()));
    }

    private static Optional<RatioAtEnd> leading(String text) {
        int to = 0;
        while (to < text.length() && isOfRatio(text.charAt(to))) {
            to++;
        }
        List<Double> parts = Ratio.read(text.substring(0, to));
        return parts.isEmpty() || to == text.length() || text.charAt(to) != ' '
                ? Optional.empty()
                : Optional.of(new RatioAtEnd(parts, text.substring(to).strip()));
    }

    private static boolean isOfRatio(char c) {
        return c >= '0' && c <= '9' || c == ':' || c == '/' || c == '.' || c == ',';
    }
}
