package workuptally.book.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import workuptally.book.words.NoteWords;
import workuptally.book.words.NumberWords;
import workuptally.book.words.TypedText;
import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.LeftOutRow;
import workuptally.model.Severity;
import workuptally.model.Step;

/** Reads the Workup table; Layers and Isolated are read before it, so that labels are spelled as there. */
public final class StepRows {
    private static final String SODIUM = "Na";

    /** A count behind or before an operation, {@code wash 3x}, {@code 3x wash}; {@code wash 3} is the third one. */
    private static final Pattern COUNTED = Pattern.compile(
            "(?i)(?<![\\p{L}\\d])(?:(?<before>\\d{1,2}) ?[x×]|[x×] ?(?<behind>\\d{1,2}))(?![\\p{L}\\d])");

    private StepRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        Map<RunAssembly, List<TableRow>> withoutSource = new LinkedHashMap<>();
        RowsOfRuns.read(rows, runs, LeftOutRow.Of.STEP, "Step", (row, run) -> {
            Step step = step(row, run);
            run.steps.add(step);
            if (step.from().isEmpty()) {
                withoutSource.computeIfAbsent(run, r -> new ArrayList<>()).add(row);
            }
            return true;
        });
        withoutSource.values().forEach(StepRows::reportWithoutSource);
    }

    /** Said once a run: what is left out in one row is mostly left out in all. */
    private static void reportWithoutSource(List<TableRow> rows) {
        String steps = rows.stream().map(row -> row.text("Step")).collect(Collectors.joining(", "));
        rows.get(0)
                .report(
                        FindingCode.STEP_SOURCE_MISSING,
                        Severity.CHECK,
                        "From",
                        "nothing that can be read under From of step" + (rows.size() == 1 ? " " : "s ") + steps
                                + ": taken to start from the reaction mixture, with all that was charged",
                        "RM, or the labels of the portions taken",
                        "Write what the step starts from, and run again.");
    }

    private static Step step(TableRow row, RunAssembly run) {
        Field portions = portions(row);
        Optional<PortionCells.Portioned> written = row.portioned("Volume", portions);
        return new Step(
                row.text("Step"),
                operation(row),
                row.shared(run.spelling(row.labels("From", run::knows))),
                new Step.Addition(
                        run.substance(material(row)),
                        written.map(PortionCells.Portioned::count).orElse(portions),
                        written.map(PortionCells.Portioned::each).orElseGet(() -> row.number("Volume")),
                        row.number("Mass"),
                        row.number("Molarity"),
                        row.number("Density")),
                new Step.Funnel(
                        row.number("Funnel"),
                        row.count("Loads"),
                        row.choice("Lower layer", Step.Lower.values()),
                        row.choice("Checked by", Step.CheckedBy.values()),
                        row.choice("Emulsion", Step.Emulsion.values())),
                row.numberOrWord("Temperature"),
                row.numberOrWord("pH after"),
                row.result("Quench test", Step.QuenchTest.values(), Step.QuenchTest.NEGATIVE),
                new Step.Given(
                        given(row, run, "Gives organic"),
                        given(row, run, "Gives aqueous"),
                        given(row, run, "Gives other")),
                NoteWords.read(row.text("Notes"), NoteWords.Of.STEP),
                row.place());
    }

    /** The portions of their own column, else those that stand with the operation. */
    private static Field portions(TableRow row) {
        Matcher counted = COUNTED.matcher(row.text("Operation"));
        if (!counted.find()) {
            return row.count("Portions");
        }
        String count = counted.group("before") == null ? counted.group("behind") : counted.group("before");
        if (!row.isBlank("Portions")) {
            Field portions = row.count("Portions");
            portions.entered()
                    .filter(p -> p.value() != Integer.parseInt(count))
                    .ifPresent(p -> reportOtherCount(row, p.asTyped()));
            return portions;
        }
        return Integer.parseInt(count) == 0
                ? Field.NoNumber.BLANK
                : row.entered(new Field.Figure(Integer.parseInt(count), Field.Qualifier.EXACT, 0, count), "Operation");
    }

    private static void reportOtherCount(TableRow row, String portions) {
        row.report(
                FindingCode.PORTIONS_IN_NUMBER,
                Severity.CHECK,
                "Portions",
                "read " + portions + " beside '" + row.text("Operation") + "'",
                "one number of portions",
                "Correct one of the two and run again; the one under Portions counts.");
    }

    private static Optional<Step.Operation> operation(TableRow row) {
        String typed = row.text("Operation");
        if (typed.isEmpty() || NumberWords.meanNothing(TypedText.plain(typed))) {
            row.report(
                    FindingCode.OPERATION_MISSING,
                    Severity.STOP,
                    "Operation",
                    "read " + (typed.isEmpty() ? "an empty cell" : "'" + typed + "'") + " in a row with other entries",
                    "what was done in this step",
                    "Fill the cell or empty the row, then run again.");
        }
        return row.choice("Operation", Step.Operation.values());
    }

    private static List<String> given(TableRow row, RunAssembly run, String heading) {
        List<String> labels = row.shared(run.spelling(row.labels(heading, run::knows)));
        labels.forEach(run::defineLabel);
        return labels;
    }

    /** A mark that says nothing is none; {@code Na} is sodium. */
    private static String material(TableRow row) {
        String typed = row.text("Material");
        return NumberWords.meanNothing(typed) && !typed.equals(SODIUM) ? "" : typed;
    }
}
