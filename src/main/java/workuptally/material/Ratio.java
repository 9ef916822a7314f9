package workuptally.material;

import java.util.ArrayList;
import java.util.List;

/** Reads a ratio of parts, {@code 4:1} or {@code 60/38/2}. */
final class Ratio {
    private static final int MOST_PARTS = 5;
    private static final int MOST_CHARACTERS = 8;

    private Ratio() {}

    /** The parts, two or more; empty for any other text. */
    static List<Double> read(String text) {
        String[] pieces = text.split("[:/]", -1);
        if (pieces.length < 2 || pieces.length > MOST_PARTS) {
            return List.of();
        }
        List<Double> parts = new ArrayList<>();
        for (String piece : pieces) {
            if (!isNumber(piece)) {
                return List.of();
            }
            parts.add(PlacedStrength.value(piece));
        }
        return parts;
    }

    private static boolean isNumber(String text) {
        int marks = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean mark = c == '.' || c == ',';
            marks += mark ? 1 : 0;
            if (!mark && (c < '0' || c > '9') || mark && (i == 0 || i == text.length() - 1)) {
                return false;
            }
        }
        return !text.isEmpty() && text.length() <= MOST_CHARACTERS && marks <= 1;
    }

    /** A text without the words that say its ratio is by volume. */
    static String withoutByVolume(String text) {
        for (String words : List.of("(v/v)", "v/v/v", "v/v", "by volume", "vol.", "(vol/vol)")) {
            if (text.endsWith(" " + words)) {
                return text.substring(0, text.length() - words.length()).strip();
            }
        }
        return text;
    }
}
