package workuptally.cli;

import java.util.ArrayList;
import java.util.List;

/** A text in lines of a terminal's width. */
final class Wrapped {
    private static final int WIDTH = 100;

    private Wrapped() {}

    /**
     * The lines of a text.
     *
     * @param first what stands before the first line
     * @param next what stands before each further line
     */
    static List<String> lines(String text, String first, String next) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : text.strip().split("\\s+")) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(next);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        lines.add(line.toString().stripTrailing());
        return lines;
    }
}
