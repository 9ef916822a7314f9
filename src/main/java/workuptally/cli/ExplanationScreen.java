package workuptally.cli;

import java.io.PrintWriter;
import java.util.List;
import workuptally.report.explain.Explanation;

/** Explained figures on the terminal: equation, numbers put in, result, and below it the readings behind its uncertainty. */
final class ExplanationScreen {
    private static final int WIDEST_CELL = 60;
    private static final String INDENT = "  ";

    private final PrintWriter out;

    ExplanationScreen(PrintWriter out) {
        this.out = out;
    }

    void print(Explanation figure) {
        out.println(figure.title());
        out.println("-".repeat(figure.title().length()));
        if (!figure.parts().rows().isEmpty()) {
            table(figure.parts().headings(), figure.parts().rows());
        }
        figure.equations().forEach(this::line);
        line("= " + figure.result());
        figure.notes().forEach(this::line);
        if (!figure.budget().isEmpty()) {
            out.println(INDENT + "Readings behind its uncertainty");
            table(
                    List.of("Reading", "Value (unit)", "u (same)", "Sensitivity (per unit)", "Share (%)", "Where"),
                    figure.budget().stream()
                            .map(b -> List.of(
                                    b.reading(),
                                    b.value(),
                                    b.standardUncertainty(),
                                    b.sensitivity(),
                                    b.sharePercent(),
                                    b.where()))
                            .toList());
        }
        out.println();
    }

    private void line(String text) {
        Wrapped.lines(text, INDENT, INDENT + INDENT).forEach(out::println);
    }

    private void table(List<String> headings, List<List<String>> rows) {
        TextTable table = new TextTable(WIDEST_CELL, headings);
        rows.forEach(table::row);
        table.print(out, INDENT + INDENT);
    }
}
