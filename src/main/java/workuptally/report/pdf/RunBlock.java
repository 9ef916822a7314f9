package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SecondSignature;
import workuptally.measure.MeasuredValue;
import workuptally.model.Run;
import workuptally.tally.LotTally;
import workuptally.tally.NotComputed;
import workuptally.tally.ProductYield;
import workuptally.tally.Theory;
import workuptally.tally.YieldBasis;

/** One run: figures, findings, balance, layers, what was not computed, hazards. */
final class RunBlock {
    private final Look look;
    private final Review review;
    private final RunPlaces places;
    private final RunReview run;
    private final RunWords words;
    private final HazardBlocks hazards;
    private final MeasuredCells cells;
    private final double coverageFactor;

    RunBlock(Look look, Review review, RunReview run, RunPlaces places, HazardBlocks hazards) {
        this.look = look;
        this.hazards = hazards;
        this.review = review;
        this.run = run;
        this.places = places;
        this.coverageFactor = review.period().coverageFactor();
        this.cells = new MeasuredCells(look.figures(), coverageFactor);
        this.words = new RunWords(look, run, coverageFactor);
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        Run entry = run.tally().run();
        blocks.add(new Gap(8));
        blocks.add(new Heading(
                look,
                Heading.Level.SECTION,
                entry.reaction().isBlank() ? run.id() : run.id() + "  " + entry.reaction(),
                places.of(run.id())));
        blocks.add(
                new Paragraph(look, meta(entry), look.body().in(look.palette().soft())));
        run.tally().plan().ifPresent(p -> blocks.addAll(new PlanBlocks(look, run, p).blocks()));
        if (run.tally().plan().isEmpty()) {
            products(blocks);
        }
        lots(blocks);
        metrics(blocks);
        findings(blocks);
        layerMaps(blocks);
        blocks.addAll(new ClosureBlocks(look, run, coverageFactor).blocks());
        if (run.tally().plan().isEmpty()) {
            blocks.addAll(new LayerBlocks(look, review, run).blocks());
            blocks.addAll(new ContactBlocks(look, run).blocks());
        }
        notComputed(blocks);
        blocks.addAll(hazards.of(run.hazards()));
        secondSignature(blocks);
        return blocks;
    }

    private void secondSignature(List<Block> blocks) {
        List<String> reasons = SecondSignature.reasons(run);
        if (!reasons.isEmpty() && run.tally().run().status() != Run.Status.PLANNED) {
            blocks.add(Paragraph.lead(
                    look,
                    "Second signature before a layer leaves the bench, because of " + String.join("; ", reasons)
                            + " (common practice; a site rule comes first).",
                    look.caption()));
            blocks.add(new SignatureLines(look, List.of("Chemist", "Second person")));
        }
    }

    private void metrics(List<Block> blocks) {
        run.tally().metrics().ifPresent(m -> {
            Figures figures = look.figures();
            StringJoiner text = new StringJoiner("; ", "Per mass of crude product: ", ".");
            text.add("PMI " + figures.significant(m.pmi().value(), 3) + " (workup "
                    + figures.significant(m.pmiWorkupOnly().value(), 3) + ")");
            text.add("E-factor " + figures.significant(m.eFactorWithWater(), 3) + " ("
                    + figures.significant(m.eFactorWithoutWater(), 3) + " without water)");
            text.add("solvent " + figures.significant(m.solventIntensity().value(), 3) + ", water "
                    + figures.significant(m.waterIntensity().value(), 3));
            m.reactionMassEfficiencyPercent()
                    .ifPresent(r -> text.add("mass efficiency " + figures.significant(r.value(), 3) + "\u00A0%"));
            m.atomEconomyPercent().ifPresent(a -> text.add("atom economy " + figures.significant(a, 3) + "\u00A0%"));
            blocks.add(new Paragraph(look, text.toString(), look.caption()));
        });
    }

    private String meta(Run entry) {
        StringJoiner text = new StringJoiner(" · ");
        text.add(entry.date().map(Object::toString).orElse("no date"));
        if (!entry.chemist().isBlank()) {
            text.add(entry.chemist());
        }
        text.add(entry.kind().name().toLowerCase(java.util.Locale.ROOT));
        text.add(RunWords.status(entry));
        if (!entry.series().isBlank()) {
            text.add("series " + entry.series());
        }
        if (!limiting().isEmpty()) {
            text.add(limiting());
        }
        entry.conversionPercent().entered().ifPresent(c -> text.add("conversion " + c.asTyped() + "\u00A0%"));
        if (!entry.notes().isBlank()) {
            text.add("note: " + entry.notes());
        }
        return text.toString();
    }

    private String limiting() {
        List<Theory.Limiting> limiting =
                run.tally().theory().map(Theory::limiting).orElse(List.of());
        StringJoiner text =
                new StringJoiner("; ", limiting.size() == 1 ? "limiting: " : "limiting (cannot be told apart): ", "");
        text.setEmptyValue("");
        limiting.forEach(l -> text.add(l.material() + " "
                + look.figures().pair(l.amountMillimoles(), coverageFactor).together() + "\u00A0mmol"));
        return text.toString();
    }

    private void products(List<Block> blocks) {
        List<RunWords.ProductLine> lines = words.productLines();
        boolean planned = lines.stream().anyMatch(l -> l.plannedPercent().isPresent());
        List<List<TableCell>> rows = new ArrayList<>();
        for (RunWords.ProductLine line : lines) {
            Optional<MeasuredValue> mass = line.found().map(ProductYield::massGrams);
            List<TableCell> row = new ArrayList<>(List.of(
                    TableCell.bold(line.name()),
                    TableCell.of(line.theoryMillimoles()),
                    TableCell.of(line.theory()),
                    cells.value(mass),
                    cells.uncertainty(mass),
                    TableCell.of(line.yield().value()),
                    TableCell.of(line.yield().uncertainty()),
                    TableCell.of(line.found().map(this::restsOn).orElse("no yield stated"))));
            if (planned) {
                row.add(7, TableCell.of(planned(line)));
            }
            rows.add(row);
        }
        List<TableColumn> columns = new ArrayList<>(List.of(
                TableColumn.text("Product"),
                TableColumn.number("Theory\n(mmol)"),
                TableColumn.number("Theory\n(g)"),
                TableColumn.number("Found\n(g)"),
                TableColumn.number("± U\n(g)"),
                TableColumn.number("Yield\n(%)"),
                TableColumn.number("± U\n(%)"),
                TableColumn.text("Rests on")));
        if (planned) {
            columns.add(7, TableColumn.number("Planned\n(%)"));
        }
        blocks.add(new TaggedTable(look, columns, rows));
        asTyped(blocks);
    }

    private String planned(RunWords.ProductLine line) {
        return line.plannedPercent().isPresent()
                ? look.figures().plain(line.plannedPercent().getAsDouble())
                : "";
    }

    private void asTyped(List<Block> blocks) {
        for (Theory.ProductTheory theory :
                run.tally().theory().map(Theory::products).orElse(List.of())) {
            theory.massAsTypedGrams()
                    .ifPresent(mass -> blocks.add(new Paragraph(
                            look,
                            "With the molar masses as typed the theory of "
                                    + theory.product().name() + " would be "
                                    + look.figures().significant(mass, 4)
                                    + "\u00A0g. The formulas win until the book is corrected.",
                            look.caption())));
        }
    }

    private String restsOn(ProductYield found) {
        StringJoiner text = new StringJoiner("; ");
        text.add(found.basis().word() + (found.lots().isEmpty() ? "" : " of " + String.join(" + ", found.lots())));
        found.conversionAdjustedPercent()
                .ifPresent(p -> text.add("by conversion "
                        + look.figures().pair(p, coverageFactor).together() + "\u00A0%"));
        found.aliquotCorrectedPercent()
                .ifPresent(p -> text.add("aliquots put back "
                        + look.figures().pair(p, coverageFactor).together() + "\u00A0%"));
        return text.toString();
    }

    private void lots(List<Block> blocks) {
        if (run.tally().lots().isEmpty()) {
            return;
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (LotTally lot : run.tally().lots()) {
            Optional<MeasuredValue> percent = lot.productFraction().map(f -> f.times(100));
            rows.add(List.of(
                    TableCell.bold(lot.lot().label()),
                    TableCell.of(lot.lot().product()),
                    TableCell.of(lot.lot().stage().map(s -> s.word()).orElse("")),
                    cells.value(lot.netGrams()),
                    cells.uncertainty(lot.netGrams()),
                    cells.value(lot.overTheoryPercent()),
                    cells.value(percent),
                    TableCell.of(
                            lot.basis() == YieldBasis.NONE
                                    ? "no assay"
                                    : lot.basis().word()),
                    TableCell.of(
                            lot.lot().identityBy().isBlank()
                                    ? "not recorded"
                                    : lot.lot().identityBy())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Lot"),
                        TableColumn.text("Product"),
                        TableColumn.word("Stage"),
                        TableColumn.number("Net\n(g)"),
                        TableColumn.number("± U\n(g)"),
                        TableColumn.number("Over\ntheory (%)"),
                        TableColumn.number("Product\n(% w/w)"),
                        TableColumn.text("By"),
                        TableColumn.text("Identity by")),
                rows));
    }

    private void findings(List<Block> blocks) {
        if (run.findings().isEmpty()) {
            return;
        }
        blocks.add(look.subheading("Findings"));
        blocks.add(new FindingTable(look).of(run.findings()));
    }

    private void layerMaps(List<Block> blocks) {
        List<Block> maps = new LayerMaps(look, run).blocks();
        if (!maps.isEmpty()) {
            blocks.add(look.subheading("Layer map and balance"));
            blocks.addAll(maps);
        }
    }

    private void notComputed(List<Block> blocks) {
        if (run.tally().notComputed().isEmpty()) {
            return;
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (NotComputed missing : run.tally().notComputed()) {
            rows.add(List.of(
                    TableCell.bold(missing.what()),
                    TableCell.of(missing.because()),
                    TableCell.of(missing.unlockedBy())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(TableColumn.text("Not computed"), TableColumn.text("Because"), TableColumn.text("Unlocked by")),
                rows));
    }
}
