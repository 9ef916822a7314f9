package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import workuptally.judgement.RunReview;
import workuptally.model.Step;
import workuptally.report.pdf.layout.Bars;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.Plan;
import workuptally.tally.bench.StepReaction;

/** What the bench sheet says of a planned run: amounts and steps. */
final class PlanBlocks {
    private final Look look;
    private final RunReview run;
    private final Plan plan;

    PlanBlocks(Look look, RunReview run, Plan plan) {
        this.look = look;
        this.run = run;
        this.plan = plan;
    }

    /**
     * Amounts to weigh or measure out, and the theory they give.
     *
     * @param toFill true for a box beside each, for what was weighed
     */
    List<Block> amounts(boolean toFill) {
        List<Block> blocks = new ArrayList<>();
        if (!plan.weighings().isEmpty()) {
            blocks.add(look.subheading("Amounts to weigh or measure"));
            List<List<TableCell>> rows = new ArrayList<>();
            for (Plan.Weighing weighing : plan.weighings()) {
                List<TableCell> row = new ArrayList<>(List.of(
                        TableCell.bold(weighing.material()),
                        TableCell.of(weighing.role()),
                        number(weighing.amountMillimoles(), 4),
                        number(weighing.massGrams(), 4),
                        number(weighing.toleranceGrams(), 1),
                        number(weighing.volumeMillilitres(), 3),
                        number(weighing.toleranceMillilitres(), 1)));
                if (toFill) {
                    row.addAll(Collections.nCopies(3, TableCell.of("")));
                }
                rows.add(row);
            }
            List<TableColumn> columns = new ArrayList<>(List.of(
                    TableColumn.text("Material"),
                    TableColumn.word("Role"),
                    TableColumn.number("Amount\n(mmol)"),
                    TableColumn.number("Mass\n(g)"),
                    TableColumn.number("±\n(g)"),
                    TableColumn.number("or volume\n(mL)"),
                    TableColumn.number("±\n(mL)")));
            if (toFill) {
                columns.add(TableColumn.box("Actual\namount"));
                columns.add(TableColumn.box("Actual\nunit"));
                columns.add(TableColumn.box("Supplier\nlot"));
            }
            blocks.add(new TaggedTable(look, columns, rows));
        }
        StringJoiner theory = new StringJoiner("; ", "Theory: ", ".");
        for (Plan.ExpectedProduct product : plan.products()) {
            String expected = product.expectedGrams().isPresent()
                    ? ", expected by the planned yield "
                            + look.figures().significant(product.expectedGrams().getAsDouble(), 3) + "\u00A0g"
                    : "";
            theory.add(product.product() + " " + look.figures().significant(product.theoryGrams(), 4) + "\u00A0g ("
                    + look.figures().significant(product.theoryMillimoles(), 4) + "\u00A0mmol)" + expected);
        }
        if (!plan.products().isEmpty()) {
            blocks.add(new Paragraph(look, theory.toString()));
        }
        return blocks;
    }

    /** How full each funnel will be, a bar a shake with its limit. */
    List<Block> funnels() {
        List<Contact> contacts = run.tally().contacts();
        if (contacts.isEmpty()) {
            return List.of();
        }
        Bars bars = new Bars(
                look,
                "Fill (%), upright bar: limit",
                contacts.stream()
                        .mapToDouble(c -> Math.max(c.fillPercent(), c.fillLimitPercent()))
                        .max()
                        .orElse(0));
        List<List<TableCell>> rows = new ArrayList<>();
        for (Contact contact : contacts) {
            String fill = look.figures().fixed(contact.fillPercent(), contact.percentDecimals());
            rows.add(List.of(
                    TableCell.bold(contact.step().number()),
                    TableCell.of(look.figures().significant(contact.volumeMillilitres(), 3)),
                    TableCell.of(look.figures().significant(contact.funnelMillilitres(), 3)),
                    TableCell.of(contact.loads() + " of " + contact.loadsNeeded()),
                    TableCell.of(fill),
                    TableCell.of(bars.row(
                            OptionalDouble.of(contact.fillPercent()),
                            OptionalDouble.of(contact.fillLimitPercent()),
                            contact.fillPercent() > contact.fillLimitPercent(),
                            fill + "\u00A0% of the funnel, limit "
                                    + look.figures().fixed(contact.fillLimitPercent(), contact.percentDecimals())
                                    + "\u00A0%"))));
        }
        long over = contacts.stream()
                .filter(c -> c.fillPercent() > c.fillLimitPercent())
                .count();
        return List.of(
                look.subheading(over == 0 ? "Every funnel is large enough" : "Funnels: " + over + " above the limit"),
                new TaggedTable(
                        look,
                        List.of(
                                TableColumn.word("Step"),
                                TableColumn.number("Volume\n(mL)"),
                                TableColumn.number("Funnel\n(mL)"),
                                TableColumn.word("Loads planned\nof needed"),
                                TableColumn.number("Fill\n(%)"),
                                TableColumn.chart(bars.scale())),
                        rows));
    }

    /** Steps with volumes, which layer to expect below, fill and loads, gas and drying agent. */
    List<Block> steps() {
        List<Block> blocks = new ArrayList<>();
        if (plan.steps().isEmpty()) {
            return blocks;
        }
        blocks.add(look.subheading("Steps"));
        List<List<TableCell>> rows = new ArrayList<>();
        for (Plan.PlannedStep planned : plan.steps()) {
            Step step = planned.step();
            rows.add(List.of(
                    TableCell.bold(step.number()),
                    TableCell.of(step.operation().map(Step.Operation::word).orElse("") + " "
                            + String.join(" + ", step.from())),
                    TableCell.of(added(step.added())),
                    TableCell.of(String.join(", ", step.gives())),
                    TableCell.of(below(planned)),
                    TableCell.of(care(planned))));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Step"),
                        TableColumn.text("Operation"),
                        TableColumn.text("With"),
                        TableColumn.word("Gives"),
                        TableColumn.text("Expected below"),
                        TableColumn.text("Funnel, gas, capacity, agent")),
                rows));
        blocks.add(new Paragraph(
                look,
                "Estimates from planned amounts and reference values. Densities in g/mL; a weighed volume or a drop of water tells"
                        + " which layer is which. Gas: let off early and often, never shake what is hot or still gives gas.",
                look.caption()));
        return blocks;
    }

    private String added(Step.Addition added) {
        if (added.material().isBlank()) {
            return "–";
        }
        String each = added.volumeMillilitres()
                .entered()
                .map(v -> v.asTyped() + "\u00A0mL")
                .or(() -> added.massGrams().entered().map(m -> m.asTyped() + "\u00A0g"))
                .orElse("");
        double portions = added.portionCount();
        String times = portions == 1 ? "" : look.figures().plain(portions) + " × ";
        return look.figures().inWords((times + each + " " + added.material()).strip());
    }

    private String below(Plan.PlannedStep planned) {
        return planned.densities()
                .map(d -> d.lower().map(p -> p.word() + " below").orElse("too alike: check") + "\norganic "
                        + range(d.organic().lowGramsPerMillilitre(), d.organic().highGramsPerMillilitre())
                        + ", aqueous "
                        + range(d.aqueous().lowGramsPerMillilitre(), d.aqueous().highGramsPerMillilitre()))
                .orElse("–");
    }

    private String range(double low, double high) {
        String from = look.figures().fixed(low, 2);
        String to = look.figures().fixed(high, 2);
        return from.equals(to) ? from : from + " to " + to;
    }

    private String care(Plan.PlannedStep planned) {
        ReadableNumbers figures = look.figures();
        StringJoiner care = new StringJoiner("\n");
        care.setEmptyValue("–");
        run.tally().contacts().stream()
                .filter(c -> c.step() == planned.step())
                .findFirst()
                .ifPresent(c -> care.add(funnel(c)));
        for (StepReaction reaction : run.tally().evidence().reactions()) {
            if (reaction.step() == planned.step()) {
                reaction(reaction).forEach(care::add);
            }
        }
        planned.splits().forEach(s -> care.add(new SplitAdvice(look, run).of(planned, s)));
        planned.drying()
                .ifPresent(d -> care.add("binds about " + figures.significant(d.waterGrams(), 2) + "\u00A0g water ("
                        + d.assumption() + "): "
                        + figures.significant(d.leastGrams(), 2) + " to " + figures.significant(d.mostGrams(), 2)
                        + "\u00A0g of the agent"));
        return care.toString();
    }

    private String funnel(Contact contact) {
        ReadableNumbers figures = look.figures();
        return figures.significant(contact.volumeMillilitres(), 3) + "\u00A0mL in a funnel of "
                + figures.significant(contact.funnelMillilitres(), 3) + "\u00A0mL"
                + (contact.funnelRecorded() ? "" : " (not stated)") + ": "
                + (contact.loadsNeeded() > contact.loads()
                        ? contact.loadsNeeded() + " loads needed, " + contact.loads() + " planned"
                        : contact.loads() == 1 ? "1 load" : contact.loads() + " loads")
                + ", " + figures.fixed(contact.fillPercent(), contact.percentDecimals()) + "\u00A0% full (limit "
                + figures.fixed(contact.fillLimitPercent(), contact.percentDecimals()) + "\u00A0%)";
    }

    private List<String> reaction(StepReaction reaction) {
        ReadableNumbers figures = look.figures();
        List<String> lines = new ArrayList<>();
        if (reaction.worstLitres() > 0) {
            lines.add("Gas: " + reaction.gas().replace('2', '\u2082') + ", "
                    + figures.significant(reaction.expectedLitres(), 2) + "\u00A0L expected, "
                    + figures.significant(reaction.worstLitres(), 2) + "\u00A0L at worst");
        }
        if (reaction.capacityRatio().isPresent()) {
            lines.add("Capacity " + figures.significant(reaction.washMillimoles(), 3) + " for "
                    + figures.significant(reaction.toNeutraliseMillimoles(), 3) + "\u00A0mmol"
                    + (reaction.capacityRatio().getAsDouble() < 1
                                    && reaction.neededMillilitres().isPresent()
                            ? ": too little, "
                                    + figures.significant(
                                            reaction.neededMillilitres().getAsDouble(), 3)
                                    + "\u00A0mL needed"
                            : ""));
        }
        return lines;
    }

    private TableCell number(OptionalDouble value, int digits) {
        return TableCell.of(value.isPresent() ? look.figures().significant(value.getAsDouble(), digits) : "–");
    }
}
