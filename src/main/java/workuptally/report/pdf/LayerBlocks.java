package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.model.Limit;
import workuptally.model.Run;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.layers.LayerTally;

/** The layers of a run with what they hold and what the evidence amounts to, and the balance of total mass. */
final class LayerBlocks {
    private final Look look;
    private final Review review;
    private final RunReview run;
    private final double coverageFactor;

    LayerBlocks(Look look, Review review, RunReview run) {
        this.look = look;
        this.review = review;
        this.run = run;
        this.coverageFactor = review.period().coverageFactor();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (!run.tally().layers().isEmpty()) {
            blocks.add(look.subheading("Layers"));
            List<LayerTally> shown =
                    run.tally().layers().stream().filter(this::saysSomething).toList();
            LayerTable table = new LayerTable(look, run, shown, coverageFactor);
            if (!shown.isEmpty()) {
                blocks.addAll(table.blocks());
            }
            String rule = review.book().limits().text(Limit.LOCAL_RULE_LAYERS);
            blocks.add(new Paragraph(
                    look,
                    (shown.isEmpty() ? "" : key(table))
                            + passedOn()
                            + SafetyWording.A_PERSON_DECIDES
                            + (rule.isBlank() ? "" : " Local rule: " + rule),
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

    private String key(LayerTable table) {
        String limits = run.decisions().isEmpty()
                ? ""
                : ", layer limit " + percent(Limit.LAYER_LIMIT) + ", together " + percent(Limit.RUN_LIMIT)
                        + " of theory";
        return table.onlySubstance().map(s -> "Holds: " + s + ". ").orElse("")
                + "–: not recorded. Share: of theory, if not of charged. At most: one-sided 95\u00A0%" + limits + ". ";
    }

    private String percent(Limit limit) {
        return look.figures().plain(review.book().limits().value(limit)) + "\u00A0%";
    }

    private String passedOn() {
        String lead = run.tally().run().status() == Run.Status.PLANNED
                ? "Expected from the steps, nothing measured yet: "
                : "Passed on without figures: ";
        StringJoiner labels = new StringJoiner(", ", lead, ". ").setEmptyValue("");
        List<LayerTally> silent =
                run.tally().layers().stream().filter(l -> !saysSomething(l)).toList();
        silent.forEach(l -> labels.add(l.label()));
        return labels.toString();
    }

    private void massBalance(List<Block> blocks) {
        if (run.tally().massBalance().isEmpty()) {
            return;
        }
        MassBalance balance = run.tally().massBalance().get();
        Figures figures = look.figures();
        String text = "Mass: in "
                + figures.pair(balance.inGrams(), coverageFactor).together() + "\u00A0g, out "
                + figures.pair(balance.outGrams(), coverageFactor).together() + "\u00A0g, gap "
                + figures.pair(balance.gapGrams(), coverageFactor).together() + "\u00A0g; "
                + gas(balance) + "; evaporation allowed "
                + figures.significant(balance.evaporationAllowanceGrams(), 2) + " of "
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
