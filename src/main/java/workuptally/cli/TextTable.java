package workuptally.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table in plain characters with aligned columns. */
final class TextTable {
    private static final String GAP = "  ";
    private static final String CUT = "…";

    private final int widest;
    private final List<String> headings;
    private final List<List<String>> rows = new ArrayList<>();

    /**
     * A table.
     *
     * @param widest most characters of a cell; longer ones are cut visibly
     * @param headings headings; one that ends in a unit in parentheses aligns its column to the right
     */
    TextTable(int widest, List<String> headings) {
        this.widest = widest;
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
        out.println(indent + line(headings, widths));
        for (List<String> row : rows) {
            out.println(indent + line(row, widths));
        }
    }

    private String cut(String cell) {
        String line = cell.replaceAll("\\s+", " ").strip();
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
