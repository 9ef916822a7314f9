package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import workuptally.judgement.HazardNote;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.measure.MeasuredValue;
import workuptally.model.Limit;
import workuptally.model.Run;
import workuptally.tally.ChargeAmount;
import workuptally.tally.Closure;
import workuptally.tally.Contact;
import workuptally.tally.LayerTally;
import workuptally.tally.LotTally;
import workuptally.tally.MassBalance;
import workuptally.tally.NotComputed;
import workuptally.tally.ProductYield;
import workuptally.tally.Theory;
import workuptally.tally.YieldBasis;

/** One run: figures, findings, balance, layers, what was not computed, hazards. */
final class RunBlock {
    private static final String NOTHING = "–";

    private final Look look;
    private final Review review;
    private final RunReview run;
    private final RunWords words;
    private final double coverageFactor;

    RunBlock(Look look, Review review, RunReview run) {
        this.look = look;
        this.review = review;
        this.run = run;
        this.coverageFactor = review.period().coverageFactor();
        this.words = new RunWords(look, run, coverageFactor);
    }

    /** Name of the place where a run's block begins; run ids are free text, so the place goes by number. */
    static String destination(Review review, String id) {
        List<String> ids = review.runs().stream().map(RunReview::id).toList();
        return "run-" + (ids.indexOf(id) + 1);
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        Run entry = run.tally().run();
        blocks.add(new Gap(8));
        blocks.add(new Heading(
                look,
                Heading.Level.SECTION,
                entry.reaction().isBlank() ? run.id() : run.id() + "  " + entry.reaction(),
                Optional.of(destination(review, run.id()))));
        blocks.add(
                new Paragraph(look, meta(entry), look.body().in(look.palette().soft())));
        limiting(blocks);
        if (entry.status() == Run.Status.PLANNED) {
            amounts(blocks);
        }
        products(blocks);
        lots(blocks);
        findings(blocks);
        closures(blocks);
        layers(blocks);
        massBalance(blocks);
        contacts(blocks);
        notComputed(blocks);
        hazards(blocks);
        return blocks;
    }

    private static String meta(Run entry) {
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
        entry.conversionPercent().entered().ifPresent(c -> text.add("conversion " + c.asTyped() + "\u00A0%"));
        return entry.notes().isBlank() ? text.toString() : text + "\nNote: " + entry.notes();
    }

    private void heading(List<Block> blocks, String text) {
        blocks.add(new Heading(look, Heading.Level.SUBSECTION, text, Optional.empty()));
    }

    private void limiting(List<Block> blocks) {
        if (run.tally().theory().isEmpty()) {
            return;
        }
        List<Theory.Limiting> limiting = run.tally().theory().get().limiting();
        if (limiting.isEmpty()) {
            return;
        }
        StringJoiner text = new StringJoiner("; ");
        limiting.forEach(l -> text.add(l.material() + " "
                + look.figures().pair(l.amountMillimoles(), coverageFactor).together() + "\u00A0mmol"));
        String lead = limiting.size() == 1 ? "Limiting: " : "Limiting (cannot be told apart): ";
        blocks.add(new Paragraph(look, lead + text + "."));
    }

    private void amounts(List<Block> blocks) {
        if (run.tally().amounts().isEmpty()) {
            return;
        }
        heading(blocks, "Planned amounts");
        List<List<TableCell>> rows = new ArrayList<>();
        for (ChargeAmount amount : run.tally().amounts()) {
            rows.add(List.of(
                    TableCell.bold(amount.charge().material()),
                    TableCell.of(amount.charge()
                            .role()
                            .map(r -> r.name().toLowerCase(java.util.Locale.ROOT))
                            .orElse("")),
                    number(amount.massGrams()),
                    number(amount.volumeMillilitres()),
                    number(amount.amountMillimoles())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Material"),
                        TableColumn.word("Role"),
                        TableColumn.number("Mass (g)"),
                        TableColumn.number("Volume (mL)"),
                        TableColumn.number("Amount (mmol)")),
                rows));
    }

    private TableCell number(Optional<MeasuredValue> value) {
        return TableCell.of(
                value.map(v -> look.figures().pair(v, coverageFactor).value()).orElse(NOTHING));
    }

    private TableCell uncertainty(Optional<MeasuredValue> value) {
        return TableCell.of(
                value.map(v -> look.figures().pair(v, coverageFactor).uncertainty())
                        .orElse(""));
    }

    private void products(List<Block> blocks) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (RunWords.ProductLine line : words.productLines()) {
            Optional<MeasuredValue> mass = line.found().map(ProductYield::massGrams);
            rows.add(List.of(
                    TableCell.bold(line.name()),
                    TableCell.of(line.theoryMillimoles()),
                    TableCell.of(line.theory()),
                    number(mass),
                    uncertainty(mass),
                    TableCell.of(line.yield().value()),
                    TableCell.of(line.yield().uncertainty()),
                    TableCell.of(
                            line.plannedPercent().isPresent()
                                    ? look.figures().plain(line.plannedPercent().getAsDouble())
                                    : ""),
                    TableCell.of(line.found().map(this::restsOn).orElse("no yield stated"))));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Product"),
                        TableColumn.number("Theory\n(mmol)"),
                        TableColumn.number("Theory\n(g)"),
                        TableColumn.number("Found\n(g)"),
                        TableColumn.number("± U\n(g)"),
                        TableColumn.number("Yield\n(%)"),
                        TableColumn.number("± U\n(%)"),
                        TableColumn.number("Planned\n(%)"),
                        TableColumn.text("Rests on")),
                rows));
        asTyped(blocks);
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
                    number(lot.netGrams()),
                    uncertainty(lot.netGrams()),
                    number(lot.overTheoryPercent()),
                    number(percent),
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
        heading(blocks, "Findings");
        blocks.add(new FindingTable(look).of(run.findings()));
    }

    private void closures(List<Block> blocks) {
        if (run.tally().closures().isEmpty()) {
            return;
        }
        heading(blocks, "Where the product is");
        List<List<TableCell>> rows = new ArrayList<>();
        List<List<TableCell>> candidates = new ArrayList<>();
        for (Closure closure : run.tally().closures()) {
            blocks.add(new Figure(look, new ClosureBar(look, run).of(closure)));
            rows.add(closureRow(closure));
            for (Closure.Candidate candidate : closure.candidates()) {
                candidates.add(List.of(
                        TableCell.bold(candidate.place()),
                        TableCell.of(closure.skeleton()),
                        TableCell.of(range(candidate)),
                        TableCell.of(candidate.evidence()),
                        TableCell.of(candidate.settledBy())));
            }
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Units of"),
                        TableColumn.number("Charged\n(mmol)"),
                        TableColumn.number("Closure\n(%)"),
                        TableColumn.number("± U\n(%)"),
                        TableColumn.number("z"),
                        TableColumn.word("Balance"),
                        TableColumn.number("Unaccounted\n(%)"),
                        TableColumn.text("The same as")),
                rows));
        if (!candidates.isEmpty()) {
            heading(blocks, "Where the rest can be");
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.text("Place"),
                            TableColumn.text("Units of"),
                            TableColumn.word("May hold"),
                            TableColumn.text("Evidence"),
                            TableColumn.text("Settled by")),
                    candidates));
        }
    }

    private List<TableCell> closureRow(Closure closure) {
        Figures figures = look.figures();
        Figures.Pair percent = figures.pair(closure.percent().value(), closure.expandedUncertaintyPercent());
        Figures.Pair rest = figures.pair(closure.unaccountedPercent(), closure.expandedUncertaintyPercent());
        return List.of(
                TableCell.bold(closure.skeleton()),
                TableCell.of(figures.pair(closure.chargedMillimoles(), coverageFactor)
                        .value()),
                TableCell.of(percent.value()),
                TableCell.of(percent.uncertainty()),
                TableCell.of(figures.fixed(closure.z(), 1)),
                TableCell.bold(closure.verdict().word()),
                TableCell.of(rest.value()),
                TableCell.of(
                        closure.unaccountedAs().isBlank()
                                ? NOTHING
                                : figures.significant(closure.unaccountedGrams(), 2) + "\u00A0g "
                                        + closure.unaccountedAs()));
    }

    private String range(Closure.Candidate candidate) {
        String high = look.figures().significant(candidate.highGrams(), 2) + "\u00A0g";
        return candidate.lowGrams() > 0
                ? look.figures().significant(candidate.lowGrams(), 2) + " to " + high
                : "at most " + high;
    }

    private void layers(List<Block> blocks) {
        if (run.tally().layers().isEmpty()) {
            return;
        }
        heading(blocks, "Layers");
        boolean judged = !run.decisions().isEmpty();
        List<List<TableCell>> rows = new ArrayList<>();
        for (LayerTally layer : run.tally().layers()) {
            List<TableCell> row = new ArrayList<>(List.of(
                    TableCell.bold(layer.label()),
                    TableCell.of(layer.phase().map(p -> p.word()).orElse("not stated")),
                    TableCell.of(standing(layer)),
                    number(layer.massGrams()),
                    uncertainty(layer.massGrams()),
                    number(layer.volumeMillilitres()),
                    TableCell.of(layer.densityGramsPerMillilitre()
                            .map(d -> look.figures().pair(d, coverageFactor).together())
                            .orElse(NOTHING)),
                    TableCell.of(words.contents(layer.contents()))));
            if (judged) {
                row.add(TableCell.of(
                        run.decision(layer.label()).map(words::decision).orElse("")));
            }
            rows.add(row);
        }
        List<TableColumn> columns = new ArrayList<>(List.of(
                TableColumn.word("Layer"),
                TableColumn.word("Phase"),
                TableColumn.word("Standing"),
                TableColumn.number("Mass\n(g)"),
                TableColumn.number("± U\n(g)"),
                TableColumn.number("Volume\n(mL)"),
                TableColumn.number("Density\n(g/mL)"),
                TableColumn.text("Holds")));
        if (judged) {
            columns.add(TableColumn.text("Outcome"));
        }
        blocks.add(new TaggedTable(look, columns, rows));
        String rule = review.book().limits().text(Limit.LOCAL_RULE_LAYERS);
        blocks.add(new Paragraph(
                look, SafetyWording.A_PERSON_DECIDES + (rule.isBlank() ? "" : " Local rule: " + rule), look.caption()));
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
                + figures.pair(balance.gapGrams(), coverageFactor).together() + "\u00A0g; gas expected "
                + figures.significant(balance.gasGrams(), 2) + "\u00A0g, allowance for evaporation "
                + figures.significant(balance.evaporationAllowanceGrams(), 2) + "\u00A0g of "
                + figures.significant(balance.organicSolventGrams(), 3) + "\u00A0g organic solvent."
                + (balance.complete() ? "" : " A layer or lot has no mass: the gap is an upper limit.");
        blocks.add(new Paragraph(look, text));
    }

    private void contacts(List<Block> blocks) {
        List<Contact> care = run.tally().contacts().stream()
                .filter(c -> c.gasExpected() || c.loads() < c.loadsNeeded() || c.fillPercent() > c.fillLimitPercent())
                .toList();
        if (care.isEmpty()) {
            return;
        }
        heading(blocks, "Contacts that need care");
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

    private void notComputed(List<Block> blocks) {
        if (run.tally().notComputed().isEmpty()) {
            return;
        }
        heading(blocks, "Not computed");
        List<List<TableCell>> rows = new ArrayList<>();
        for (NotComputed missing : run.tally().notComputed()) {
            rows.add(List.of(
                    TableCell.bold(missing.what()),
                    TableCell.of(missing.because()),
                    TableCell.of(missing.unlockedBy())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(TableColumn.text("What"), TableColumn.text("Because"), TableColumn.text("Unlocked by")),
                rows));
    }

    private void hazards(List<Block> blocks) {
        if (run.hazards().isEmpty()) {
            return;
        }
        heading(blocks, "Hazard notes");
        blocks.add(Paragraph.lead(look, SafetyWording.DEFERS, look.caption()));
        List<List<TableCell>> rows = new ArrayList<>();
        for (HazardNote note : run.hazards()) {
            rows.add(List.of(
                    TableCell.bold(note.subject()),
                    TableCell.of(String.join(" ", note.statements())),
                    TableCell.of(note.caution()),
                    TableCell.of(note.source())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Material or operation"),
                        TableColumn.text("Statements"),
                        TableColumn.text("Caution"),
                        TableColumn.text("Source")),
                rows));
    }
}
