package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import workuptally.judgement.RunReview;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.StepReaction;

/** The shakes of a run that need care: gas expected, or a funnel too full. */
final class ContactBlocks {
    private final Look look;
    private final RunReview run;

    ContactBlocks(Look look, RunReview run) {
        this.look = look;
        this.run = run;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<Contact> care = run.tally().contacts().stream()
                .filter(c -> c.gasExpected() || c.loads() < c.loadsNeeded() || c.fillPercent() > c.fillLimitPercent())
                .toList();
        List<StepReaction> reactions = run.tally().evidence().reactions().stream()
                .filter(r -> r.worstLitres() > 0 || r.capacityRatio().isPresent())
                .toList();
        if (care.isEmpty() && reactions.isEmpty()) {
            return blocks;
        }
        blocks.add(look.subheading("Contacts that need care"));
        if (!care.isEmpty()) {
            contacts(blocks, care);
        }
        if (!reactions.isEmpty()) {
            reactions(blocks, reactions);
        }
        return blocks;
    }

    private void reactions(List<Block> blocks, List<StepReaction> reactions) {
        Figures figures = look.figures();
        List<List<TableCell>> rows = new ArrayList<>();
        for (StepReaction reaction : reactions) {
            String gas = reaction.gas().isEmpty()
                    ? "none"
                    : reaction.gas().replace('2', '\u2082') + " " + figures.significant(reaction.expectedLitres(), 2)
                            + "\u00A0L expected, " + figures.significant(reaction.worstLitres(), 2)
                            + "\u00A0L at worst";
            String capacity = reaction.capacityRatio().isPresent()
                    ? figures.significant(reaction.washMillimoles(), 3) + " for "
                            + figures.significant(reaction.toNeutraliseMillimoles(), 3) + "\u00A0mmol, ratio "
                            + figures.significant(reaction.capacityRatio().getAsDouble(), 3)
                    : "not asked";
            rows.add(List.of(
                    TableCell.bold("Step " + reaction.step().number()),
                    TableCell.of(reaction.step().material()),
                    TableCell.of(gas),
                    TableCell.of(capacity),
                    TableCell.of(reaction.because())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Step"),
                        TableColumn.text("With"),
                        TableColumn.text("Gas, all loads together"),
                        TableColumn.text("Capacity of the wash"),
                        TableColumn.text("Reckoned from")),
                rows));
    }

    private void contacts(List<Block> blocks, List<Contact> care) {
        Figures figures = look.figures();
        List<List<TableCell>> rows = new ArrayList<>();
        for (Contact contact : care) {
            StringJoiner gas = new StringJoiner(", ");
            contact.gasLitresExpected().ifPresent(v -> gas.add("expected " + figures.significant(v, 2) + "\u00A0L"));
            contact.gasLitresWorst().ifPresent(v -> gas.add("worst case " + figures.significant(v, 2) + "\u00A0L"));
            gas.setEmptyValue(contact.gasExpected() ? "expected, volume not computed" : "none expected");
            String operation =
                    contact.step().operation().map(o -> " " + o.word()).orElse("");
            rows.add(List.of(
                    TableCell.bold("Step " + contact.step().number() + operation + ", portion " + contact.portion()),
                    TableCell.of(contact.step().material()),
                    TableCell.of(figures.significant(contact.volumeMillilitres(), 3)),
                    TableCell.of(figures.significant(contact.funnelMillilitres(), 3)
                            + (contact.funnelRecorded() ? "" : " (not recorded)")),
                    TableCell.of(figures.fixed(contact.fillPercent(), 0)),
                    TableCell.of(figures.fixed(contact.fillLimitPercent(), 0)),
                    TableCell.of(contact.loads() + " of " + contact.loadsNeeded()),
                    TableCell.of(gas.toString())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Contact"),
                        TableColumn.text("With"),
                        TableColumn.number("Volume\n(mL)"),
                        TableColumn.number("Funnel\n(mL)"),
                        TableColumn.number("Fill\n(%)"),
                        TableColumn.number("Limit\n(%)"),
                        TableColumn.word("Loads,\nof needed"),
                        TableColumn.text("Gas")),
                rows));
    }
}
