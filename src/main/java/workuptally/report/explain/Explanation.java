package workuptally.report.explain;

import java.util.List;

/**
 * One figure, ready to be redone on paper.
 *
 * @param kind which kind of figure
 * @param title what it is, for example {@code Theory of benzoic acid}
 * @param equations the equation in symbols, then with the numbers put in, each number with its place in the book
 * @param parts the parts of a sum; empty where there are none
 * @param result the result with unit and, where it has one, its expanded uncertainty
 * @param budget the readings it depends on, the largest share of variance first; empty for a result without uncertainty
 * @param notes what the figure rests on or leaves out
 */
public record Explanation(
        FigureKind kind,
        String title,
        List<String> equations,
        Parts parts,
        String result,
        List<BudgetLine> budget,
        List<String> notes) {
    /** Copies the lists. */
    public Explanation {
        equations = List.copyOf(equations);
        budget = List.copyOf(budget);
        notes = List.copyOf(notes);
    }

    /**
     * Parts of a sum as a table.
     *
     * @param headings headings; numbers stand under those that end in a parenthesis
     * @param rows cells of each row, as many as headings
     */
    public record Parts(List<String> headings, List<List<String>> rows) {
        /** No parts. */
        public static final Parts NONE = new Parts(List.of(), List.of());

        /** Copies the lists. */
        public Parts {
            headings = List.copyOf(headings);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * One reading in the budget of a result.
     *
     * @param reading what was read
     * @param value the number as used, with its unit
     * @param standardUncertainty u of the reading, in the same unit
     * @param sensitivity change of the result per unit of the reading
     * @param sharePercent share of the result's variance, %
     * @param where place in the book
     */
    public record BudgetLine(
            String reading,
            String value,
            String standardUncertainty,
            String sensitivity,
            String sharePercent,
            String where) {}
}
