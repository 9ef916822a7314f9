package workuptally.book.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.book.words.BookWords;
import workuptally.book.words.FormulaWords;
import workuptally.book.words.LabelsText;
import workuptally.book.words.NoteWords;
import workuptally.book.words.NumberWords;
import workuptally.book.words.Quantity;
import workuptally.book.words.Range;
import workuptally.book.words.TypedText;
import workuptally.book.words.Unit;
import workuptally.model.Assay;
import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.LeftOutRow;
import workuptally.model.Severity;

/** Reads the Assays table; the unit of a result stands in its own column or in the cell. */
public final class AssayRows {
    private AssayRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        RowsOfRuns.read(rows, runs, LeftOutRow.Of.ASSAY, "Sample", (row, run) -> {
            Optional<String> sample = row.key("Sample");
            sample.ifPresent(s -> run.assays.add(assay(row, sample(s, run), run)));
            return sample.isPresent();
        });
    }

    /** One label, or the labels of a composite sample, shorter and lower ones first, so that their order in the cell means nothing. */
    private static String sample(String typed, RunAssembly run) {
        List<String> labels = run.knows(typed) ? List.of(typed) : run.spelling(LabelsText.read(typed, run::knows));
        boolean composite =
                labels.size() > 1 && (typed.contains("+") || labels.stream().allMatch(run::knows));
        return composite
                ? labels.stream()
                        .sorted(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
                        .collect(Collectors.joining(Assay.TOGETHER))
                : run.spelling(labels.size() == 1 ? labels.get(0) : typed);
    }

    private static Assay assay(TableRow row, String sample, RunAssembly run) {
        ResultUnit unit = resultUnit(row);
        Optional<Assay.Method> method = row.method("Method");
        return new Assay(
                sample,
                run.substance(row.text("Substance")),
                FormulaWords.read(row.text("Formula")),
                method,
                result(row, unit, method.isPresent() || namesNothing(row.text("Method"))),
                unit.unit(),
                row.number("Relative standard uncertainty"),
                row.text("Calibration"),
                row.number("Replicates"),
                row.number("Aliquot"),
                row.number("Residue"),
                NoteWords.read(row.text("Notes"), NoteWords.Of.ASSAY),
                row.place());
    }

    private static boolean namesNothing(String typed) {
        return typed.isBlank() || NumberWords.meanNothing(TypedText.plain(typed));
    }

    /**
     * What the result is in.
     *
     * @param unit unit of the model; empty if it was not understood
     * @param typed unit that the number was typed in
     * @param target unit to convert to
     * @param readable false if the number cannot be used for want of its unit
     */
    private record ResultUnit(Optional<Assay.Unit> unit, Unit typed, Unit target, boolean readable) {}

    private static ResultUnit resultUnit(TableRow row) {
        String beside = row.text("Unit");
        Optional<Unit> inCell = row.unitInCell("Result");
        Optional<Unit> written = inCell.or(() -> row.unitInHeading("Result"));
        if (beside.isEmpty() && written.isPresent()) {
            return byMeasure(written.get()).orElseGet(() -> unknown(row, "Result", row.text("Result")));
        }
        if (beside.isEmpty()) {
            return row.isBlank("Result")
                    ? new ResultUnit(Optional.empty(), Unit.ONE, Unit.ONE, true)
                    : row.saysNotDetected("Result") ? ofDetectionLimits() : unknown(row, "Unit", "an empty cell");
        }
        ResultUnit unit = BookWords.find(Assay.Unit.values(), beside)
                .map(word -> new ResultUnit(Optional.of(word), target(word), target(word), true))
                .or(() -> Unit.named(beside).flatMap(AssayRows::byMeasure))
                .orElseGet(() -> unknown(row, "Unit", beside));
        boolean counts = unit.readable() && inCell.isEmpty() && !row.isBlank("Result");
        return counts && row.headingContradicts("Result", unit.typed())
                ? new ResultUnit(unit.unit(), unit.typed(), unit.target(), false)
                : unit;
    }

    /** Nothing found needs no unit: it stands for the detection limit of its method, and Limits has those in mg/mL. */
    private static ResultUnit ofDetectionLimits() {
        return byMeasure(Unit.MILLIGRAM_PER_MILLILITRE).orElseThrow();
    }

    private static ResultUnit unknown(TableRow row, String heading, String seen) {
        row.report(
                row.isBlank(heading) ? FindingCode.UNIT_MISSING : FindingCode.UNIT_UNKNOWN,
                Severity.CHECK,
                heading,
                row.isBlank(heading) ? "read " + seen : "read '" + seen + "'",
                "one of: " + String.join(", ", BookWords.of(Assay.Unit.values())),
                "Write the unit in full, since a bare % can mean mass or area, and run again.");
        return new ResultUnit(Optional.empty(), Unit.ONE, Unit.ONE, false);
    }

    private static Unit target(Assay.Unit unit) {
        return switch (unit) {
            case MILLIGRAMS_PER_MILLILITRE -> Unit.MILLIGRAM_PER_MILLILITRE;
            case MASS_PERCENT -> Unit.MASS_PERCENT;
            case MOLES_PER_LITRE -> Unit.MOLE_PER_LITRE;
            case GRAMS -> Unit.GRAM;
            case MILLIMOLES -> Unit.MILLIMOLE;
            case MOLE_RATIO_TO_PRODUCT -> Unit.ONE;
            case AREA_PERCENT -> Unit.PERCENT;
        };
    }

    /** The model's unit for another unit of the same quantity, {@code g/L} for {@code mg/mL}. A bare % is not taken. */
    private static Optional<ResultUnit> byMeasure(Unit typed) {
        Optional<Assay.Unit> unit = switch (typed.quantity()) {
            case MASS_PER_VOLUME -> Optional.of(Assay.Unit.MILLIGRAMS_PER_MILLILITRE);
            case CONCENTRATION -> Optional.of(Assay.Unit.MOLES_PER_LITRE);
            case MASS -> Optional.of(Assay.Unit.GRAMS);
            case AMOUNT -> Optional.of(Assay.Unit.MILLIMOLES);
            case PERCENT -> typed.isShareOfMass() ? Optional.of(Assay.Unit.MASS_PERCENT) : Optional.empty();
            default -> Optional.empty();
        };
        return unit.map(found -> new ResultUnit(unit, typed, target(found), true));
    }

    /**
     * A share of the sample above 102 % is no result, see {@link Range#ASSAY}, nor is what a method gave that was named but not understood.
     */
    private static Field result(TableRow row, ResultUnit unit, boolean methodUnderstood) {
        if (!unit.readable()) {
            row.text("Result"); // tells what is wrong with the cell beside its unit
            return Field.NoNumber.UNREADABLE;
        }
        Field result = row.numberIn("Result", unit.typed(), unit.target(), true);
        boolean share = unit.target().quantity() == Quantity.PERCENT;
        if (share && result instanceof Field.Entered entered && !Range.ASSAY.holds(entered.value())) {
            row.report(
                    FindingCode.VALUE_IMPOSSIBLE,
                    Severity.CHECK,
                    "Result",
                    "read '" + entered.asTyped() + "'",
                    "a percentage " + Range.ASSAY.words(),
                    "Correct the cell and run again.");
            return Field.NoNumber.UNREADABLE;
        }
        if (!methodUnderstood && !result.isBlank()) {
            return Field.NoNumber.UNREADABLE;
        }
        return result;
    }
}
