package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Finding;
import workuptally.model.Limit;
import workuptally.model.Run;
import workuptally.tally.LayerTally;
import workuptally.tally.MassBalance;

/** The layers of a run with what they hold and what the evidence amounts to, and the balance of total mass. */
final class LayerBlocks {
    private static final Set<String> HELD = Set.of("layer-holds-product", "layer-waits");

    private final Look look;
    private final Review review;
    private final RunReview run;
    private final double coverageFactor;
    private final RunWords words;
    private final MeasuredCells cells;

    LayerBlocks(Look look, Review review, RunReview run) {
        this.look = look;
        this.review = review;
        this.run = run;
        this.coverageFactor = review.period().coverageFactor();
        this.words = new RunWords(look, run, coverageFactor);
        this.cells = new MeasuredCells(look.figures(), coverageFactor);
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (!run.tally().layers().isEmpty()) {
            blocks.add(look.subheading("Layers"));
            List<LayerTally> shown =
                    run.tally().layers().stream().filter(this::saysSomething).toList();
            if (!shown.isEmpty()) {
                blocks.add(table(shown));
            }
            String rule = review.book().limits().text(Limit.LOCAL_RULE_LAYERS);
            blocks.add(new Paragraph(
                    look,
                    passedOn() + SafetyWording.A_PERSON_DECIDES + (rule.isBlank() ? "" : " Local rule: " + rule),
                    look.caption()));
        }
        massBalance(blocks);
        return blocks;
    }

    private boolean saysSomething(LayerTally layer) {
        boolean planned = run.tally().run().status() == Run.Status.PLANNED;
        return layer.terminal() && !planned
                || layer.massGrams().isPresent()
                || layer.volumeMillilitres().isPresent()
                || !layer.contents().isEmpty()
                || run.decision(layer.label()).isPresent();
    }

    private String passedOn() {
        String lead = run.tally().run().status() == Run.Status.PLANNED
                ? "Expected from the steps, nothing measured yet: "
                : "Passed on to later steps without figures: ";
        StringJoiner labels = new StringJoiner(", ", lead, ". ").setEmptyValue("");
        List<LayerTally> silent =
                run.tally().layers().stream().filter(l -> !saysSomething(l)).toList();
        silent.forEach(l -> labels.add(l.label()));
        return labels.toString();
    }

    private TaggedTable table(List<LayerTally> layers) {
        boolean judged = !run.decisions().isEmpty();
        List<List<TableCell>> rows = new ArrayList<>();
        for (LayerTally layer : layers) {
            rows.add(row(layer, judged));
        }
        List<TableColumn> columns = new ArrayList<>(List.of(
                TableColumn.word("Layer"),
                TableColumn.word("Phase, standing"),
                TableColumn.number("Mass\n(g)"),
                TableColumn.number("± U\n(g)"),
                TableColumn.number("Volume\n(mL)"),
                TableColumn.number("Density\n(g/mL)"),
                TableColumn.text("Holds")));
        if (judged) {
            columns.add(TableColumn.text("Outcome"));
        }
        return new TaggedTable(look, columns, rows);
    }

    private List<TableCell> row(LayerTally layer, boolean judged) {
        List<TableCell> row = new ArrayList<>(List.of(
                TableCell.bold(layer.label()),
                TableCell.of(layer.phase().map(p -> p.word()).orElse("not stated") + ", " + standing(layer)),
                cells.value(layer.massGrams()),
                cells.uncertainty(layer.massGrams()),
                cells.value(layer.volumeMillilitres()),
                TableCell.of(layer.densityGramsPerMillilitre()
                        .map(d -> look.figures().pair(d, coverageFactor).value())
                        .orElse("–")),
                TableCell.of(words.contents(layer.contents()))));
        if (judged) {
            row.add(TableCell.of(
                    run.decision(layer.label()).map(d -> outcome(d)).orElse("")));
        }
        return row;
    }

    /** Outcome and reason; a layer on hold has a finding of its own, which says the rest. */
    private String outcome(LayerDecision decision) {
        boolean held = run.findings().stream().anyMatch(f -> HELD.contains(f.code()) && names(f, decision.layer()));
        return held ? decision.outcome().word() + ": " + decision.reason() : words.decision(decision);
    }

    private static boolean names(Finding finding, String layer) {
        int colon = finding.seen().indexOf(": ");
        return colon > 0
                && List.of(finding.seen()
                                .substring(0, colon)
                                .replaceFirst("^layers? ", "")
                                .split(", "))
                        .contains(layer);
    }

    private static String standing(LayerTally layer) {
        if (layer.aliquot()) {
            return "aliquot";
        }
        if (!layer.terminal()) {
            return "passed on";
        }
        return layer.entry().flatMap(l -> l.status()).map(s -> s.word()).orElse("ends here");
    }

    private void massBalance(List<Block> blocks) {
        if (run.tally().massBalance().isEmpty()) {
            return;
        }
        MassBalance balance = run.tally().massBalance().get();
        Figures figures = look.figures();
        String text = "Total mass: in "
                + figures.pair(balance.inGrams(), coverageFactor).together() + "\u00A0g, out "
                + figures.pair(balance.outGrams(), coverageFactor).together() + "\u00A0g, gap "
                + figures.pair(balance.gapGrams(), coverageFactor).together() + "\u00A0g; "
                + gas(balance) + ", allowance for evaporation "
                + figures.significant(balance.evaporationAllowanceGrams(), 2) + "\u00A0g of "
                + figures.significant(balance.organicSolventGrams(), 3) + "\u00A0g organic solvent."
                + (balance.complete() ? "" : " A layer or lot has no mass: the gap is an upper limit.");
        blocks.add(new Paragraph(look, text));
    }

    private String gas(MassBalance balance) {
        return balance.gasGrams() > 0
                ? "gas expected " + look.figures().significant(balance.gasGrams(), 2) + "\u00A0g"
                : "no gas expected";
    }
}
