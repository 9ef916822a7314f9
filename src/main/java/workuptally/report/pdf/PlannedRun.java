package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import workuptally.judgement.RunReview;
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

/** What a planned run asks for in short: theory, funnel fill and gas by step, waste to expect. The bench sheet has the rest. */
final class PlannedRun {
    private final Look look;
    private final RunReview run;
    private final Plan plan;

    PlannedRun(Look look, RunReview run, Plan plan) {
        this.look = look;
        this.run = run;
        this.plan = plan;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        contacts(blocks);
        StringJoiner text = new StringJoiner(" ");
        for (Plan.ExpectedProduct product : plan.products()) {
            text.add("Theory of " + product.product() + " "
                    + look.figures().significant(product.theoryGrams(), 4) + "\u00A0g"
                    + (product.expectedGrams().isPresent()
                            ? ", expected "
                                    + look.figures()
                                            .significant(product.expectedGrams().getAsDouble(), 3) + "\u00A0g."
                            : "."));
        }
        if (!plan.waste().isEmpty()) {
            StringJoiner waste = new StringJoiner("; ", "Waste to expect, should somebody decide so: ", ".");
            plan.waste()
                    .forEach(w -> waste.add(
                            w.streamName() + ", about " + look.figures().significant(w.massGrams(), 2) + "\u00A0g"));
            text.add(waste.toString());
        }
        text.add("Amounts, steps, densities to expect and labels stand on the bench sheet.");
        blocks.add(new Paragraph(
                look, text.toString(), look.caption().in(look.palette().ink())));
        return blocks;
    }

    private void contacts(List<Block> blocks) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (Contact contact : run.tally().contacts()) {
            rows.add(List.of(
                    TableCell.bold(contact.step().number()),
                    TableCell.of(contact.step().added().material()),
                    TableCell.of(look.figures().significant(contact.volumeMillilitres(), 3)),
                    TableCell.of(look.figures().significant(contact.funnelMillilitres(), 3)),
                    TableCell.of(look.figures().fixed(contact.fillPercent(), contact.percentDecimals())),
                    TableCell.of(look.figures().fixed(contact.fillLimitPercent(), contact.percentDecimals())),
                    TableCell.of(contact.loads() + " of " + contact.loadsNeeded()),
                    TableCell.of(gas(contact))));
        }
        if (!rows.isEmpty()) {
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.word("Step"),
                            TableColumn.text("With"),
                            TableColumn.number("Volume\n(mL)"),
                            TableColumn.number("Funnel\n(mL)"),
                            TableColumn.number("Fill\n(%)"),
                            TableColumn.number("Limit\n(%)"),
                            TableColumn.word("Loads planned\nof needed"),
                            TableColumn.text("Gas, and what the wash covers")),
                    rows));
        }
    }

    private String gas(Contact contact) {
        ReadableNumbers figures = look.figures();
        StringJoiner text = new StringJoiner("; ");
        text.setEmptyValue("–");
        for (StepReaction reaction : run.tally().evidence().reactions()) {
            if (reaction.step() != contact.step()) {
                continue;
            }
            if (reaction.worstLitres() > 0) {
                text.add(reaction.gas().replace('2', '\u2082') + " "
                        + figures.significant(reaction.expectedLitres(), 2) + "\u00A0L expected, "
                        + figures.significant(reaction.worstLitres(), 2) + "\u00A0L at worst");
            }
            if (reaction.capacityRatio().isPresent()) {
                text.add(
                        "covers " + figures.fixed(100 * reaction.capacityRatio().getAsDouble(), 0)
                                + "\u00A0% of what is expected");
            }
        }
        return text.toString();
    }
}
