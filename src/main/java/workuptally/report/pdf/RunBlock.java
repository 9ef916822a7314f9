package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SecondSignature;
import workuptally.model.Run;
import workuptally.tally.amounts.NotComputed;
import workuptally.tally.amounts.Theory;

/** One run: figures, findings, balance, layers, what was not computed, hazards. */
final class RunBlock {
    private final Look look;
    private final Review review;
    private final RunPlaces places;
    private final RunReview run;
    private final HazardBlocks hazards;
    private final double coverageFactor;

    RunBlock(Look look, Review review, RunReview run, RunPlaces places, HazardBlocks hazards) {
        this.look = look;
        this.hazards = hazards;
        this.review = review;
        this.run = run;
        this.places = places;
        this.coverageFactor = review.period().coverageFactor();
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
        blocks.addAll(new ProductTables(look, run, coverageFactor).blocks());
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
            StringJoiner text = new StringJoiner(
                    "; ",
                    m.ofPurified()
                            ? "Per mass of purified product, as no crude was assayed (what purification took in is not counted): "
                            : "Per mass of product in the crude: ",
                    ".");
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
