package workuptally.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** A table in plain characters with aligned columns. */
final class TextTable {
    private static final String GAP = "  ";
    private static final String CUT = "…";

    /** Columns of a terminal that sentences keep to as well. */
    private static final int TERMINAL = 100;

    private static final int NARROWEST = 12;
    private static final int NONE = -1;

    private final int widest;
    private final int broken;
    private final List<String> headings;
    private final List<List<String>> rows = new ArrayList<>();

    /**
     * A table.
     *
     * @param widest most characters of a cell; longer ones are cut visibly
     * @param headings headings; one that ends in a unit in parentheses aligns its column to the right
     */
    TextTable(int widest, List<String> headings) {
        this(widest, headings, NONE);
    }

    /**
     * The same with one column, such as that of names, broken over lines where the table would be wider than a terminal.
     *
     * @param broken number of that column from 0
     */
    TextTable(int widest, List<String> headings, int broken) {
        this.widest = widest;
        this.broken = broken;
        this.headings = headings.stream().map(this::cut).toList();
    }

    void row(String... cells) {
        row(Arrays.asList(cells));
    }

    void row(List<String> cells) {
        rows.add(cells.stream().map(this::cut).toList());
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    void print(PrintWriter out) {
        print(out, "");
    }

    /** Prints the table with something before each line. */
    void print(PrintWriter out, String indent) {
        int[] widths = widths();
        if (broken != NONE) {
            int all = indent.length() + Arrays.stream(widths).sum() + GAP.length() * (widths.length - 1);
            widths[broken] =
                    Math.max(Math.min(NARROWEST, widths[broken]), widths[broken] - Math.max(0, all - TERMINAL));
        }
        out.println(indent + line(headings, widths));
        for (List<String> row : rows) {
            for (List<String> part : parts(row, widths)) {
                out.println(indent + line(part, widths));
            }
        }
    }

    /** A row on one line, or on as many as its broken cell takes. */
    private List<List<String>> parts(List<String> row, int[] widths) {
        if (broken == NONE || row.get(broken).length() <= widths[broken]) {
            return List.of(row);
        }
        List<List<String>> parts = new ArrayList<>();
        String rest = row.get(broken);
        while (!rest.isEmpty()) {
            int end = end(rest, widths[broken]);
            List<String> part = new ArrayList<>(parts.isEmpty() ? row : Collections.nCopies(row.size(), ""));
            part.set(broken, rest.substring(0, end).strip());
            parts.add(part);
            rest = rest.substring(end).strip();
        }
        return parts;
    }

    /** Where a text is broken: behind the last space or hyphen that fits, else where the room ends. */
    private static int end(String text, int room) {
        if (text.length() <= room) {
            return text.length();
        }
        int last = Math.max(text.lastIndexOf(' ', room - 1), text.lastIndexOf('-', room - 1));
        return last > 0 ? last + 1 : room;
    }

    private String cut(String cell) {
        String line = cell.replaceAll("[\\s\u00A0]+", " ").strip();
        return line.length() <= widest ? line : line.substring(0, widest - 1) + CUT;
    }

    private int[] widths() {
        int[] widths = headings.stream().mapToInt(String::length).toArray();
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        return widths;
    }

    private String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            String padding = " ".repeat(widths[i] - cells.get(i).length());
            boolean right = headings.get(i).endsWith(")");
            line.append(i == 0 ? "" : GAP)
                    .append(right ? padding : "")
                    .append(cells.get(i))
                    .append(right ? "" : padding);
        }
        return line.toString().stripTrailing();
    }
}
