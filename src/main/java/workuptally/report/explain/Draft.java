package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import workuptally.measure.MeasuredValue;

/** An explanation while it is put together. */
final class Draft {
    private final FigureKind kind;
    private final String title;
    private final List<String> equations = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private List<String> headings = List.of();

    Draft(FigureKind kind, String title) {
        this.kind = kind;
        this.title = title;
    }

    Draft equation(String line) {
        equations.add(line);
        return this;
    }

    Draft headings(String... words) {
        headings = List.of(words);
        return this;
    }

    Draft row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    Draft note(String line) {
        if (!line.isBlank()) {
            notes.add(line);
        }
        return this;
    }

    /** A result with the budget of its uncertainty. */
    Explanation result(MeasuredValue value, String unit, Numbers numbers) {
        return finished(numbers.withUnit(value, unit), numbers.budget(value));
    }

    /** A result without uncertainty, or words. */
    Explanation result(String text) {
        return finished(text, List.of());
    }

    private Explanation finished(String result, List<Explanation.BudgetLine> budget) {
        return new Explanation(kind, title, equations, new Explanation.Parts(headings, rows), result, budget, notes);
    }
}
