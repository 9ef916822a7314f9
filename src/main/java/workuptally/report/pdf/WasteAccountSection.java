package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.model.Container;
import workuptally.model.Limit;
import workuptally.model.Transfer;
import workuptally.tally.waste.WasteLine;

/** The account for safety staff: solvents, streams, layers, containers and transfers as recorded; each container follows by itself. */
final class WasteAccountSection {
    private final Look look;
    private final Review review;
    private final RunPlaces places;
    private final AccountTables tables;

    WasteAccountSection(Look look, Review review, RunPlaces places) {
        this.look = look;
        this.review = review;
        this.places = places;
        this.tables = new AccountTables(look);
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(
                look, Heading.Level.SECTION, "Solvent and waste account for safety staff", Optional.of("waste")));
        String rule = review.book().limits().text(Limit.LOCAL_RULE_WASTE);
        blocks.add(new Paragraph(
                look, SafetyWording.WASTE_DETERMINATION + (rule.isBlank() ? "" : " Local rule: " + rule)));
        blocks.addAll(tables.solvents(review.period().solvents()));
        blocks.addAll(tables.streams(review.period().waste()));
        layers(blocks);
        containers(blocks);
        transfers(blocks);
        return blocks;
    }

    private void layers(List<Block> blocks) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (RunReview run : review.runs()) {
            for (WasteLine line : run.tally().waste()) {
                rows.add(List.of(
                        places.link(run.id()),
                        TableCell.of(line.layer()),
                        TableCell.of(line.streamName()),
                        TableCell.of(line.why()),
                        TableCell.of(line.kept() ? "kept" : "not kept"),
                        line.massGrams().isPresent()
                                ? tables.kilograms(line.massGrams().getAsDouble())
                                : TableCell.of("?")));
            }
        }
        if (rows.isEmpty()) {
            return;
        }
        blocks.add(look.subheading("Layers by run"));
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Run"),
                        TableColumn.word("Layer"),
                        TableColumn.text("Stream suggested"),
                        TableColumn.text("Because"),
                        TableColumn.word("Standing"),
                        TableColumn.number("Mass\n(kg)")),
                rows));
    }

    private void containers(List<Block> blocks) {
        if (review.book().containers().isEmpty()) {
            return;
        }
        blocks.add(look.subheading("Containers as recorded"));
        List<List<TableCell>> rows = new ArrayList<>();
        for (Container container : review.book().containers()) {
            StringJoiner contents = new StringJoiner("; ");
            contents.setEmptyValue("not stated");
            container
                    .contentsThen()
                    .forEach(c ->
                            contents.add(c.substance() + " " + look.figures().plain(c.massGrams()) + "\u00A0g"));
            rows.add(List.of(
                    TableCell.bold(container.id()),
                    TableCell.of(container.wasteStream()),
                    TableCell.of(RunWords.typed(container.capacityLitres())),
                    TableCell.of(RunWords.typed(container.grossThenGrams())),
                    TableCell.of(container.weighedOn().map(Object::toString).orElse("not stated")),
                    TableCell.of(container.opened().map(Object::toString).orElse("not stated")),
                    TableCell.of(contents.toString()),
                    TableCell.of(container.location() + "\n" + container.contact())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Container"),
                        TableColumn.text("Stream"),
                        TableColumn.number("Capacity\n(L)"),
                        TableColumn.number("Gross then\n(g)"),
                        TableColumn.word("Weighed on"),
                        TableColumn.word("Opened"),
                        TableColumn.text("Contents then"),
                        TableColumn.text("Place, contact")),
                rows));
    }

    private void transfers(List<Block> blocks) {
        if (review.book().transfers().isEmpty()) {
            return;
        }
        blocks.add(look.subheading("Transfers as recorded"));
        List<List<TableCell>> rows = new ArrayList<>();
        for (Transfer transfer : review.book().transfers()) {
            rows.add(List.of(
                    TableCell.bold(transfer.id()),
                    TableCell.of(transfer.run()),
                    TableCell.of(
                            transfer.layers().isEmpty() ? transfer.material() : String.join(" + ", transfer.layers())),
                    TableCell.of(transfer.container()),
                    TableCell.of(RunWords.typed(transfer.massGrams())),
                    TableCell.of(transfer.status() == Transfer.Status.DONE ? "done" : "proposed"),
                    TableCell.of(transfer.by()),
                    TableCell.of(transfer.date().map(Object::toString).orElse("–"))));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Transfer"),
                        TableColumn.word("Run"),
                        TableColumn.text("Layer or material"),
                        TableColumn.word("Container"),
                        TableColumn.number("Mass\n(g)"),
                        TableColumn.word("Status"),
                        TableColumn.text("By"),
                        TableColumn.word("Date")),
                rows));
    }
}
