package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SecondSignature;
import workuptally.model.FindingCode;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Gap;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.pdf.pictures.RunMaps;
import workuptally.report.view.lines.HazardLine;
import workuptally.report.view.lines.RunFindings;
import workuptally.tally.amounts.NotComputed;
import workuptally.tally.amounts.Theory;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.waste.Metrics;

/** One run: layer map, what to settle, product, layers, balance, and the rest folded into lines. */
final class RunBlocks {
    private static final int MOST_TO_SETTLE = 6;
    private static final int MOST_NOT_COMPUTED = 3;

    private final Look look;
    private final Review review;
    private final RunPlaces places;
    private final RunReview run;
    private final double coverageFactor;

    RunBlocks(Look look, Review review, RunReview run, RunPlaces places) {
        this.look = look;
        this.review = review;
        this.run = run;
        this.places = places;
        this.coverageFactor = review.period().coverageFactor();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        Run entry = run.tally().run();
        blocks.add(new Gap(10));
        blocks.add(new Heading(
                look,
                Heading.Level.SECTION,
                entry.head().reaction().isBlank()
                        ? run.id()
                        : run.id() + "  " + entry.head().reaction(),
                places.of(run.id())));
        blocks.add(
                new Paragraph(look, meta(entry), look.body().in(look.palette().soft())));
        blocks.addAll(new RunMaps(look, run).blocks());
        toSettle(blocks);
        if (run.tally().plan().isPresent()) {
            blocks.addAll(new PlannedRun(look, run, run.tally().plan().get()).blocks());
        } else {
            blocks.addAll(new ProductTable(look, run, coverageFactor).blocks());
            layers(blocks);
            blocks.addAll(new BalanceBlocks(look, run, coverageFactor).blocks());
        }
        folded(blocks);
        secondSignature(blocks);
        return blocks;
    }

    private String meta(Run entry) {
        StringJoiner text = new StringJoiner(" · ");
        text.add(entry.head().date().map(Object::toString).orElse("no date"));
        if (!entry.head().chemist().isBlank()) {
            text.add(entry.head().chemist());
        }
        if (entry.kind() != Run.Kind.REACTION) {
            text.add(entry.kind().name().toLowerCase(Locale.ROOT));
        }
        text.add(entry.status().word());
        if (!entry.head().series().isBlank()) {
            text.add("series " + entry.head().series());
        }
        if (!limiting().isEmpty()) {
            text.add(limiting());
        }
        entry.head().conversionPercent().entered().ifPresent(c -> text.add("conversion " + c.asTyped() + "\u00A0%"));
        if (!entry.head().notes().text().isBlank()) {
            text.add("note: " + entry.head().notes().text());
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
                + look.figures().pair(l.amountMillimoles(), coverageFactor).value() + "\u00A0mmol"));
        return text.toString();
    }

    private void toSettle(List<Block> blocks) {
        List<RunFindings> lines = RunFindings.toSettle(run.findings(), look.wording());
        if (lines.isEmpty()) {
            return;
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (RunFindings line : inFull(lines)) {
            rows.add(List.of(
                    TableCell.of(line.severity()),
                    TableCell.of(line.seen() + " (" + line.places() + ")"),
                    TableCell.bold(line.action())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(TableColumn.word("State"), TableColumn.text("What was seen"), TableColumn.text("What to do")),
                rows));
        List<RunFindings> others = lines.subList(inFull(lines).size(), lines.size());
        if (!others.isEmpty()) {
            blocks.add(new Paragraph(
                    look,
                    "To settle too, in full on the Findings sheet: " + RunFindings.kinds(others) + ".",
                    look.caption().in(look.palette().ink())));
        }
    }

    /** The most urgent kinds; a stop or a hold is always among them. */
    private static List<RunFindings> inFull(List<RunFindings> lines) {
        int urgent = (int) lines.stream()
                .filter(l -> l.severity() == Severity.STOP || l.severity() == Severity.HOLD)
                .count();
        return lines.subList(0, Math.min(Math.max(MOST_TO_SETTLE, urgent), lines.size()));
    }

    private void layers(List<Block> blocks) {
        List<LayerTally> shown =
                run.tally().layers().stream().filter(this::saysSomething).toList();
        if (shown.isEmpty()) {
            return;
        }
        Set<String> told = new HashSet<>();
        for (RunFindings line : inFull(RunFindings.toSettle(run.findings(), look.wording()))) {
            if (line.code() == FindingCode.LAYER_WAITS) {
                line.findings().forEach(f -> told.addAll(f.subject().layers()));
            }
        }
        LayerTable table = new LayerTable(look, run, shown, told, coverageFactor);
        blocks.addAll(table.blocks());
        table.onlySubstance().ifPresent(s -> blocks.add(new Paragraph(look, "Holds: " + s + ".", look.caption())));
    }

    /** Layers that a decision is about, and others that end here and hold something; what passes on or was a sample stands in the map. */
    private boolean saysSomething(LayerTally layer) {
        return run.decision(layer.label()).isPresent()
                || layer.terminal() && !layer.aliquot() && !layer.contents().isEmpty();
    }

    private void folded(List<Block> blocks) {
        List<String> sentences = new ArrayList<>();
        if (run.tally().plan().isEmpty()) {
            sentences.addAll(new BalanceBlocks(look, run, coverageFactor).sentences());
        }
        run.tally().metrics().ifPresent(m -> sentences.add(metrics(m)));
        if (!run.tally().notComputed().isEmpty()) {
            sentences.add(look.figures().inWords(notComputed()));
        }
        String notes = RunFindings.notes(run.findings());
        if (!notes.isEmpty()) {
            sentences.add("Notes, in full on the Findings sheet: " + notes + ".");
        }
        if (!sentences.isEmpty()) {
            fold(blocks, String.join(" ", sentences));
        }
        HazardLine.of(run.hazards())
                .ifPresent(line -> fold(blocks, look.figures().inWords(line)));
    }

    private String notComputed() {
        StringJoiner text = new StringJoiner("; ", "Not computed: ", ".");
        List<NotComputed> missing = run.tally().notComputed();
        missing.stream()
                .limit(MOST_NOT_COMPUTED)
                .forEach(n -> text.add(n.what() + ", because " + n.because() + " (enter " + n.unlockedBy() + ")"));
        if (missing.size() > MOST_NOT_COMPUTED) {
            text.add((missing.size() - MOST_NOT_COMPUTED) + " more on the sheet Not computed");
        }
        return text.toString();
    }

    private void fold(List<Block> blocks, String text) {
        blocks.add(new Paragraph(look, text, look.caption().in(look.palette().ink())));
    }

    private String metrics(Metrics m) {
        String whose = m.ofPurified()
                ? "Mass in per mass of purified product, as no crude was assayed: "
                : "Mass in per mass of product: ";
        return whose + "PMI " + look.figures().significant(m.pmi().value(), 3) + ", of the workup alone "
                + look.figures().significant(m.pmiWorkupOnly().value(), 3) + ".";
    }

    private void secondSignature(List<Block> blocks) {
        List<String> reasons = SecondSignature.reasons(run);
        if (!reasons.isEmpty() && run.tally().run().status() != Run.Status.PLANNED) {
            fold(
                    blocks,
                    "Second signature, because of " + String.join("; ", reasons)
                            + ": __________________ date __________");
        }
    }
}
