package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import workuptally.judgement.PeriodTotals;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.model.Container;
import workuptally.model.Limit;
import workuptally.model.Transfer;
import workuptally.tally.SolventUse;
import workuptally.tally.WasteLine;

/** The account for safety staff: solvents, streams, layers, containers and transfers as recorded; each container follows by itself. */
final class WasteAccountSection {
    private final Look look;
    private final Review review;
    private final RunPlaces places;

    WasteAccountSection(Look look, Review review, RunPlaces places) {
        this.look = look;
        this.review = review;
        this.places = places;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(
                look, Heading.Level.SECTION, "Solvent and waste account for safety staff", Optional.of("waste")));
        String rule = review.book().limits().text(Limit.LOCAL_RULE_WASTE);
        blocks.add(new Paragraph(
                look, SafetyWording.WASTE_DETERMINATION + (rule.isBlank() ? "" : " Local rule: " + rule)));
        solvents(blocks);
        streams(blocks);
        layers(blocks);
        containers(blocks);
        transfers(blocks);
        return blocks;
    }

    /** To the gram; a smaller mass is not shown as nothing. */
    private String kilogramsText(double grams) {
        boolean vanishes = grams > 0 && grams < 0.5;
        return vanishes ? "< " + look.figures().fixed(0.001, 3) : look.figures().fixed(grams / 1000, 3);
    }

    private TableCell kilograms(double grams) {
        return TableCell.of(kilogramsText(grams));
    }

    private TableCell kilograms(double grams, boolean bold) {
        return bold ? TableCell.bold(kilogramsText(grams)) : kilograms(grams);
    }

    private void solvents(List<Block> blocks) {
        blocks.add(look.subheading("Solvents"));
        List<SolventUse> solvents = review.period().solvents();
        if (solvents.isEmpty()) {
            blocks.add(new Paragraph(look, "No solvent is recorded."));
            return;
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (SolventUse use : solvents) {
            rows.add(List.of(
                    TableCell.bold(use.solvent()),
                    TableCell.of(look.figures().fixed(use.inLitres(), 3)),
                    kilograms(use.inGrams(), true),
                    kilograms(use.chargedGrams()),
                    kilograms(use.workupGrams()),
                    kilograms(use.recoveredGrams()),
                    kilograms(use.inLayersGrams()),
                    kilograms(use.onCakesGrams()),
                    kilograms(use.inLotsGrams()),
                    kilograms(use.notFoundGrams()),
                    kilograms(use.purificationGrams())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Solvent"),
                        TableColumn.number("In\n(L)"),
                        TableColumn.number("In\n(kg)"),
                        TableColumn.number("Charged\n(kg)"),
                        TableColumn.number("Workup\n(kg)"),
                        TableColumn.number("Recovered\n(kg)"),
                        TableColumn.number("In layers\n(kg)"),
                        TableColumn.number("On cakes\n(kg)"),
                        TableColumn.number("In lots\n(kg)"),
                        TableColumn.number("Not found\n(kg)"),
                        TableColumn.number("Purification\n(kg)")),
                rows));
        blocks.add(new Paragraph(
                look,
                "In = charged + workup = recovered + in layers + on cakes + in lots + not found. Layers and cakes are estimates where"
                        + " no composition is stated. Not found: air, pump, glassware. Purification stands outside this sum. Litres"
                        + " follow from mass and density.",
                look.caption()));
    }

    private void streams(List<Block> blocks) {
        blocks.add(look.subheading("Streams"));
        if (review.period().waste().isEmpty()) {
            blocks.add(new Paragraph(look, "No layer has a stream."));
            return;
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (PeriodTotals.StreamTotal total : review.period().waste()) {
            rows.add(List.of(
                    TableCell.bold(total.streamName()),
                    TableCell.of(Integer.toString(total.layers())),
                    kilograms(total.massGrams())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(TableColumn.text("Stream"), TableColumn.number("Layers"), TableColumn.number("Mass (kg)")),
                rows));
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
                        kilograms(line.massGrams())));
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
