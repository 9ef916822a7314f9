package workuptally.report.pdf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SecondSignature;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.model.Limit;
import workuptally.model.Severity;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.balance.Closure;

/** Page one: what needs a decision, the runs at a glance, yields, solvent and waste, what was left out, signatures. */
final class SupervisorPage {
    private static final int STREAMS_SHOWN = 3;
    private static final int SECOND_NAMED = 14;

    private final Look look;
    private final Review review;
    private final RunPlaces places;
    private final String title;
    private final double coverageFactor;

    SupervisorPage(Look look, Review review, RunPlaces places, String title) {
        this.look = look;
        this.review = review;
        this.places = places;
        this.title = title;
        this.coverageFactor = review.period().coverageFactor();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(look, Heading.Level.TITLE, title, Optional.of("top")));
        blocks.add(new Paragraph(look, origin(), look.body().in(look.palette().soft())));
        blocks.add(new Paragraph(look, counts()));
        blocks.addAll(new DecisionLines(look, review, places).blocks());
        runs(blocks);
        blocks.addAll(new RecoverableProduct(look, review, places).blocks());
        repeats(blocks);
        solventAndWaste(blocks);
        signatures(blocks);
        return blocks;
    }

    private String origin() {
        StringJoiner parts = new StringJoiner(" · ");
        for (Limit limit : List.of(Limit.GROUP, Limit.SITE)) {
            String text = review.book().limits().text(limit);
            if (!text.isBlank()) {
                parts.add(text);
            }
        }
        List<LocalDate> dates = review.runs().stream()
                .flatMap(r -> r.tally().run().date().stream())
                .sorted()
                .toList();
        if (!dates.isEmpty()) {
            LocalDate first = dates.get(0);
            LocalDate last = dates.get(dates.size() - 1);
            parts.add(first.equals(last) ? first.toString() : first + " to " + last);
        }
        String asOf = review.book().limits().text(Limit.AS_OF);
        if (!asOf.isBlank()) {
            parts.add("as of " + asOf);
        }
        return parts.length() == 0 ? "Group, site and period are not stated in the book." : parts.toString();
    }

    private String counts() {
        if (review.runs().isEmpty()) {
            return "The book holds no runs.";
        }
        PeriodTotals period = review.period();
        StringJoiner text = new StringJoiner(
                ", ", review.runs().size() == 1 ? "1 run: " : review.runs().size() + " runs: ", ".");
        text.add(period.runsIsolated() + " isolated");
        text.add(period.runsInWorkup() + " in workup");
        text.add(period.runsPlanned() + " planned");
        StringJoiner found = new StringJoiner(", ", " Findings: ", ".");
        for (Severity severity : Severity.values()) {
            long count = review.findings().stream()
                    .filter(f -> f.severity() == severity)
                    .count();
            found.add(count + " " + severity.word());
        }
        return text + "" + found;
    }

    private void runs(List<Block> blocks) {
        if (review.runs().isEmpty()) {
            return;
        }
        blocks.add(look.heading("Runs"));
        List<List<TableCell>> rows = new ArrayList<>();
        YieldChart chart = chart();
        for (RunReview run : review.runs()) {
            rows.addAll(runRows(run, chart));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Run"),
                        TableColumn.brief("Product"),
                        TableColumn.number("Theory\n(g)"),
                        TableColumn.number("Crude over\ntheory (%)"),
                        TableColumn.number("Yield\n(%)"),
                        TableColumn.number("± U\n(%)"),
                        TableColumn.chart(chart.scale()),
                        TableColumn.number("Closure\n(%)"),
                        TableColumn.number("± U\n(%)"),
                        TableColumn.word("Balance"),
                        TableColumn.word("State")),
                rows));
        blocks.add(new Paragraph(
                look,
                "U: expanded uncertainty, k = " + look.figures().plain(coverageFactor)
                        + ". Crude over theory is never a yield. ≤: upper bound. –: not computed, see the run. Closure: first partner counted.",
                look.caption()));
        blocks.add(new Paragraph(look, averages() + excluded()));
    }

    private List<List<TableCell>> runRows(RunReview run, YieldChart chart) {
        List<List<TableCell>> rows = new ArrayList<>();
        RunWords words = new RunWords(look, run, coverageFactor);
        List<RunWords.ProductLine> lines = words.productLines();
        for (int i = 0; i < lines.size(); i++) {
            RunWords.ProductLine line = lines.get(i);
            Optional<Closure> closure = line.closure();
            Figures.Pair closed = closure.map(
                            c -> look.figures().pair(c.percent().value(), c.expandedUncertaintyPercent()))
                    .orElse(new Figures.Pair(line.leads() ? "–" : "", ""));
            rows.add(List.of(
                    i == 0 ? places.link(run.id()) : TableCell.of(run.id()),
                    TableCell.of(line.name()),
                    TableCell.of(line.theory()),
                    TableCell.of(line.crudeOverTheory()),
                    TableCell.of(line.yield().value()),
                    TableCell.of(line.yield().uncertainty()),
                    TableCell.of(chartRow(chart, line)),
                    TableCell.of(closed.value()),
                    TableCell.of(closed.uncertainty()),
                    TableCell.of(closure.map(c -> c.verdict().word()).orElse("")),
                    state(run)));
        }
        return rows;
    }

    private static TableCell state(RunReview run) {
        for (Severity severity : List.of(Severity.STOP, Severity.HOLD, Severity.CHECK)) {
            if (run.has(severity)) {
                return TableCell.of(severity);
            }
        }
        return TableCell.of(RunWords.status(run.tally().run()));
    }

    private String averages() {
        PeriodTotals period = review.period();
        StringJoiner text = new StringJoiner(", ");
        text.add("Yields that can be stated: " + period.yieldsStated());
        add(text, "mean", period.meanYieldPercent());
        add(text, "median", period.medianYieldPercent());
        add(text, "weighted by amount", period.amountWeightedYieldPercent());
        return text + ".";
    }

    private void add(StringJoiner text, String name, OptionalDouble percent) {
        if (percent.isPresent()) {
            text.add(name + " " + look.figures().fixed(percent.getAsDouble(), 1) + "\u00A0%");
        }
    }

    private YieldChart chart() {
        double largest = 100;
        for (RunReview run : review.runs()) {
            for (RunWords.ProductLine line : new RunWords(look, run, coverageFactor).productLines()) {
                largest = Math.max(largest, line.plannedPercent().orElse(0));
                largest = Math.max(
                        largest,
                        line.found()
                                .map(y -> y.percent().value() + y.percent().expandedUncertainty(coverageFactor))
                                .orElse(0.0));
            }
        }
        return new YieldChart(look, largest);
    }

    private CellDrawing chartRow(YieldChart chart, RunWords.ProductLine line) {
        String planned = line.plannedPercent().isPresent()
                ? ", planned " + look.figures().plain(line.plannedPercent().getAsDouble()) + "\u00A0%"
                : ", no plan";
        Optional<ProductYield> found = line.found();
        String words = found.isPresent() ? "found " + line.yield().together() + "\u00A0%" : "no yield";
        return chart.row(new YieldChart.Values(
                line.plannedPercent(),
                found.map(y -> OptionalDouble.of(y.percent().value())).orElse(OptionalDouble.empty()),
                found.map(y -> y.percent().expandedUncertainty(coverageFactor)).orElse(0.0),
                found.map(y -> y.basis().isUpperBound()).orElse(false),
                words + planned));
    }

    /** A line per series in which something signals; the charts stand behind the runs. */
    private void repeats(List<Block> blocks) {
        List<String> signals = new SeriesSection(look, review, places).signals();
        if (!signals.isEmpty()) {
            blocks.add(look.heading("Repeated preparations"));
            blocks.add(Paragraph.link(
                    look,
                    String.join(" ", signals),
                    look.body().in(look.palette().link()),
                    SeriesSection.PLACE));
        }
    }

    private void solventAndWaste(List<Block> blocks) {
        PeriodTotals period = review.period();
        if (period.solvents().isEmpty() && period.waste().isEmpty()) {
            return;
        }
        blocks.add(look.heading("Solvent and waste"));
        double litres = period.solventInLitres();
        double kilograms = period.solventInGrams() / 1000;
        Figures figures = look.figures();
        List<PeriodTotals.StreamTotal> largest = period.waste().stream()
                .sorted(Comparator.comparingDouble(PeriodTotals.StreamTotal::massGrams)
                        .reversed())
                .limit(STREAMS_SHOWN)
                .toList();
        StringJoiner streams = new StringJoiner("; ", "Layers by the stream they suggest: ", ".");
        streams.setEmptyValue("No layer has a stream.");
        for (PeriodTotals.StreamTotal total : largest) {
            streams.add(total.streamName() + " " + figures.fixed(total.massGrams() / 1000, 2) + "\u00A0kg"
                    + (total.withoutMass() == 0 ? "" : " and " + total.withoutMass() + " of no recorded amount"));
        }
        if (period.waste().size() > STREAMS_SHOWN) {
            streams.add((period.waste().size() - STREAMS_SHOWN) + " more in the account for safety staff");
        }
        blocks.add(new Paragraph(
                look,
                "Solvent put in: " + figures.fixed(litres, 2) + "\u00A0L, " + figures.fixed(kilograms, 2)
                        + "\u00A0kg; recovered "
                        + figures.fixed(period.solventRecoveredPercent(), 0) + "\u00A0%, not found "
                        + figures.fixed(period.solventNotFoundPercent(), 0) + "\u00A0%" + pmi() + ". " + streams));
    }

    private String pmi() {
        OptionalDouble pmi = review.period().metrics().pmi();
        return pmi.isEmpty()
                ? ""
                : "; PMI of the " + review.period().metrics().runs().size() + " runs that count "
                        + look.figures().significant(pmi.getAsDouble(), 3) + " (sum over sum, water counted)";
    }

    private String excluded() {
        List<String> left = review.period().excluded();
        return left.isEmpty() ? "" : " Left out of the averages: " + String.join("; ", left) + ".";
    }

    private void signatures(List<Block> blocks) {
        List<String> reviewers = new ArrayList<>();
        for (String name : review.book().limits().text(Limit.REVIEWERS).split(";")) {
            if (!name.isBlank()) {
                reviewers.add(name.strip());
            }
        }
        blocks.add(new Gap(4));
        blocks.add(Paragraph.lead(look, "Reviewed by:" + second(), look.caption()));
        blocks.add(new SignatureLines(look, reviewers.isEmpty() ? List.of("Chemist", "Supervisor") : reviewers));
    }

    /** Runs that a second person signs too; the reasons stand with each. */
    private String second() {
        List<String> runs = review.runs().stream()
                .filter(r -> !SecondSignature.reasons(r).isEmpty())
                .map(RunReview::id)
                .toList();
        if (runs.isEmpty()) {
            return "";
        }
        String which =
                runs.size() > SECOND_NAMED ? runs.size() + " runs, as each of them says" : String.join(", ", runs);
        return " A second person signs, by common practice, with " + which + ".";
    }
}
