package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.tally.bench.Plan;

/**
 * Boxes to write in at the bench. Each table is a part of a table of the book: the same headings in the same order, a row for a row, so that
 * what was written is copied over without thinking.
 */
final class BenchForms {
    /** Written by hand: a line feed breaks the heading where the book has a space. */
    private static final List<String> WORKUP = List.of(
            "Volume\n(mL)",
            "Mass\n(g)",
            "Funnel\n(mL)",
            "Loads",
            "Temperature\n(°C)",
            "pH after",
            "Quench\ntest",
            "Lower\nlayer",
            "Checked\nby",
            "Emulsion");

    private static final List<String> LAYERS = List.of(
            "Position",
            "Vessel",
            "Volume\n(mL)",
            "Gross\n(g)",
            "Tare\n(g)",
            "Temperature\n(°C)",
            "pH",
            "Made on",
            "Notes");

    private static final List<String> ISOLATED = List.of(
            "Stage", "From", "Vessel", "Gross\n(g)", "Tare\n(g)", "Identity\nby", "Second weighing\n(g)", "Notes");

    private final Look look;
    private final Run run;
    private final Plan plan;

    BenchForms(Look look, Run run, Plan plan) {
        this.look = look;
        this.run = run;
        this.plan = plan;
    }

    /** A row for each step, of the Workup table. */
    List<Block> steps() {
        List<List<TableCell>> rows = new ArrayList<>();
        for (Plan.PlannedStep planned : plan.steps()) {
            Step step = planned.step();
            String operation = step.operation().map(Step.Operation::word).orElse("________");
            rows.add(row(
                    TableCell.bold(step.number()),
                    TableCell.of((operation + " " + String.join(" + ", step.from())).strip()),
                    WORKUP.size()));
        }
        return form(
                "Steps as done, a row of the Workup table each",
                TableColumn.word("Step"),
                TableColumn.word("Operation"),
                WORKUP,
                rows,
                "Words: quench test " + words(Step.QuenchTest.values()) + "; lower layer " + words(Step.Lower.values())
                        + "; checked by " + words(Step.CheckedBy.values()) + "; emulsion "
                        + words(Step.Emulsion.values())
                        + ". Volume and mass: of each portion.");
    }

    /** A row for each portion that the steps give, of the Layers table. */
    List<Block> layers() {
        List<List<TableCell>> rows = new ArrayList<>();
        for (Plan.ExpectedLayer layer : plan.layers()) {
            String about = layer.volumeMillilitres().isPresent()
                    ? ", "
                            + look.figures()
                                    .significant(layer.volumeMillilitres().getAsDouble(), 2) + "\u00A0mL"
                    : "";
            rows.add(row(
                    TableCell.bold(layer.label()),
                    TableCell.of(layer.phase().map(p -> p.word()).orElse("________") + " ("
                            + layer.step().number() + ")" + about),
                    LAYERS.size()));
        }
        return form(
                "Layers, a row of the Layers table each",
                TableColumn.word("Layer"),
                TableColumn.word("Phase"),
                LAYERS,
                rows,
                "In brackets: its step, then the volume to expect. The product goes below. Write all digits; a blank box is not zero.");
    }

    /** A row for each wanted product and one more, of the Isolated table. */
    List<Block> lots() {
        List<List<TableCell>> rows = new ArrayList<>();
        run.products().stream()
                .filter(Product::wanted)
                .forEach(p -> rows.add(row(TableCell.of("________"), TableCell.of(p.name()), ISOLATED.size())));
        if (!rows.isEmpty()) {
            rows.add(row(TableCell.of("________"), TableCell.of("________"), ISOLATED.size()));
        }
        return form(
                "Isolated, a row of the Isolated table each",
                TableColumn.word("Lot"),
                TableColumn.word("Product"),
                ISOLATED,
                rows,
                "Words: stage " + words(Lot.Stage.values()) + ". Second weighing: gross again after more drying.");
    }

    private List<Block> form(
            String title,
            TableColumn first,
            TableColumn second,
            List<String> boxes,
            List<List<TableCell>> rows,
            String caption) {
        if (rows.isEmpty()) {
            return List.of();
        }
        List<TableColumn> columns = new ArrayList<>(List.of(first, second));
        boxes.forEach(heading -> columns.add(TableColumn.box(heading)));
        return List.of(
                look.subheading(title),
                new TaggedTable(look, columns, rows),
                new Paragraph(look, caption, look.caption()));
    }

    private static List<TableCell> row(TableCell first, TableCell second, int boxes) {
        List<TableCell> row = new ArrayList<>(List.of(first, second));
        row.addAll(Collections.nCopies(boxes, TableCell.of("")));
        return row;
    }

    private static String words(Enum<?>[] values) {
        return Arrays.stream(values)
                .map(v -> v.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(", "));
    }
}
