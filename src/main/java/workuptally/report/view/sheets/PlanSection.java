package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Step;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.ShownFigures;
import workuptally.report.view.tables.TableView;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.ExtractionSplit;
import workuptally.tally.bench.Plan;
import workuptally.tally.bench.StepReaction;

/** What planned runs can expect: a row per amount, product, step, layer and stream. */
public final class PlanSection {
    /** Title of the table. */
    public static final String TITLE = "Plan";

    private final RunReview run;
    private final List<TableView.Row> rows = new ArrayList<>();

    private PlanSection(RunReview run) {
        this.run = run;
    }

    /** The table of a review. */
    public static TableView of(Review review) {
        return TableView.of(
                TITLE,
                "Runs that are only planned. Estimates from planned amounts and reference values, never data. Tolerance: how close to"
                        + " the plan is close enough (limit 'Weighing tolerance'); enter what was weighed.",
                List.of(
                        Column.text("Run", 14),
                        Column.text("Part", 10),
                        Column.text("Item", 26),
                        Column.text("Detail", 44),
                        Column.number("Amount", "mmol", 2),
                        Column.number("Mass", "g", 3),
                        Column.number("Tolerance", "g", 3),
                        Column.number("Volume", "mL", 1),
                        Column.text("Expected below", 16),
                        Column.text("Take care of", 60)),
                review.runs(),
                run -> run.tally().plan().stream().flatMap(plan -> new PlanSection(run).rows(plan).stream()));
    }

    private List<TableView.Row> rows(Plan plan) {
        for (Plan.Weighing weighing : plan.weighings()) {
            add(
                    "weigh",
                    weighing.material(),
                    weighing.role(),
                    List.of(
                            Cell.of(weighing.amountMillimoles()),
                            Cell.of(weighing.massGrams()),
                            Cell.of(weighing.toleranceGrams()),
                            Cell.of(weighing.volumeMillilitres())),
                    "",
                    "");
        }
        for (Plan.ExpectedProduct product : plan.products()) {
            add("theory", product.product(), "", product.theoryMillimoles(), product.theoryGrams());
            if (product.expectedGrams().isPresent()) {
                Cell mass = Cell.of(product.expectedGrams());
                add("product", product.product(), "by the planned yield", none(Optional.of(mass), none()), "", "");
            }
        }
        plan.steps().forEach(this::step);
        for (Plan.ExpectedLayer layer : plan.layers()) {
            String phase = layer.phase().map(p -> p.word() + ": ").orElse("");
            add(
                    "layer",
                    layer.label(),
                    phase + String.join(", ", layer.grams().keySet()),
                    none(Optional.of(Cell.of(layer.massGrams())), Cell.of(layer.volumeMillilitres())),
                    "",
                    layer.streamName().isEmpty() ? "" : "suggests " + layer.streamName() + " (" + layer.why() + ")");
        }
        for (Plan.ExpectedWaste waste : plan.waste()) {
            add(
                    "waste",
                    waste.streamName(),
                    "should somebody decide so",
                    none(Optional.of(Cell.of(waste.massGrams())), Cell.of(waste.volumeMillilitres())),
                    "",
                    "");
        }
        return rows;
    }

    private void step(Plan.PlannedStep planned) {
        Step step = planned.step();
        StringJoiner care = new StringJoiner("; ");
        run.tally().contacts().stream()
                .filter(c -> c.step() == step)
                .findFirst()
                .ifPresent(c -> care.add(funnel(c)));
        for (StepReaction reaction : run.tally().evidence().reactions()) {
            if (reaction.step() == step && reaction.worstLitres() > 0) {
                care.add(reaction.gas() + " " + ShownFigures.significant(reaction.expectedLitres(), 2) + " L expected, "
                        + ShownFigures.significant(reaction.worstLitres(), 2) + " L at worst");
            }
            if (reaction.step() == step && reaction.neededMillilitres().isPresent()) {
                care.add("capacity needs "
                        + ShownFigures.significant(reaction.neededMillilitres().getAsDouble(), 3) + " mL");
            }
        }
        planned.drying()
                .ifPresent(d -> care.add("agent " + ShownFigures.significant(d.leastGrams(), 2) + " to "
                        + ShownFigures.significant(d.mostGrams(), 2) + " g (" + d.assumption() + ")"));
        planned.splits().forEach(s -> care.add(split(s)));
        double portions = step.added().portionCount();
        String operation = step.operation().map(Step.Operation::word).orElse("");
        add(
                "step",
                step.number() + " " + operation,
                String.join(" + ", step.from())
                        + (step.added().material().isBlank()
                                ? ""
                                : " with " + step.added().material())
                        + (portions == 1 ? "" : ", " + ShownFigures.significant(portions, 3) + " portions") + " gives "
                        + String.join(", ", step.gives()),
                none(
                        Optional.empty(),
                        step.added()
                                .volumeMillilitres()
                                .entered()
                                .map(v -> Cell.of(v.value()))
                                .orElse(none())),
                planned.densities()
                        .map(d -> d.lower().map(p -> p.word()).orElse("too alike"))
                        .orElse(""),
                care.toString());
    }

    private static String split(ExtractionSplit split) {
        return "leaves about " + ShownFigures.significant(split.leftAsPlannedPercent(), 2) + " % of " + split.product()
                + (split.bestPortions() > split.plannedPortions()
                        ? ", " + split.bestPortions() + " portions of "
                                + ShownFigures.significant(split.totalMillilitres() / split.bestPortions(), 2)
                                + " mL about " + ShownFigures.significant(split.leftAtBestPercent(), 2) + " %"
                        : "")
                + " (" + split.origin() + ")";
    }

    private String funnel(Contact contact) {
        return "funnel " + ShownFigures.significant(contact.funnelMillilitres(), 3) + " mL "
                + ShownFigures.significant(contact.fillPercent(), 2) + " % full, loads " + contact.loads() + " of "
                + contact.loadsNeeded() + " needed";
    }

    private static Cell none() {
        return Cell.of(OptionalDouble.empty());
    }

    private static List<Cell> none(Optional<Cell> mass, Cell volume) {
        return List.of(none(), mass.orElse(none()), none(), volume);
    }

    private void add(String part, String item, String detail, double millimoles, double grams) {
        add(part, item, detail, List.of(Cell.of(millimoles), Cell.of(grams), none(), none()), "", "");
    }

    private void add(String part, String item, String detail, List<Cell> numbers, String below, String care) {
        List<Cell> cells = new ArrayList<>(List.of(Cell.of(run.id()), Cell.of(part), Cell.of(item), Cell.of(detail)));
        cells.addAll(numbers);
        cells.add(Cell.of(below));
        cells.add(Cell.of(care));
        rows.add(new TableView.Row(cells, Optional.empty()));
    }
}
