package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Severity;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedPicture;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.pdf.pictures.ClassStrip;
import workuptally.report.pdf.pictures.ContainerBoard;
import workuptally.report.pdf.pictures.ControlChart;
import workuptally.report.pdf.pictures.ValueBars;
import workuptally.report.view.lines.ContainerLine;
import workuptally.report.view.lines.ProductLine;
import workuptally.report.view.lines.SeriesVerdict;
import workuptally.report.view.lines.WasteBars;
import workuptally.report.view.lines.YieldAverages;
import workuptally.tally.balance.Closure;
import workuptally.tally.containers.ContainerTally.Age;
import workuptally.tally.series.SeriesTally;

/** Page two: the runs in a table, repeated preparations, waste and containers as pictures. What the page has no room for is counted. */
final class SecondPage {
    private static final int STREAMS = 6;
    private static final int CONTAINERS = 8;
    private static final int LEFT_OUT_CHARACTERS = 240;
    private static final int TRENDS = 2;
    private static final int LEAST_ROWS = 6;
    private static final int MOST_TRIED = 40;

    private final Look look;
    private final Review review;
    private final List<RunReview> runs;
    private final RunPlaces places;
    private final double coverageFactor;

    /**
     * The page.
     *
     * @param runs those with a part of their own, which stand in the table
     */
    SecondPage(Look look, Review review, List<RunReview> runs, RunPlaces places) {
        this.look = look;
        this.review = review;
        this.runs = runs;
        this.places = places;
        this.coverageFactor = review.period().coverageFactor();
    }

    /**
     * The page.
     *
     * @param heightPoints height that it has
     */
    List<Block> blocks(float heightPoints) {
        if (review.runs().isEmpty()) {
            return below();
        }
        if (runs.isEmpty()) {
            List<Block> blocks = new ArrayList<>(List.of(look.heading("Runs"), averages()));
            blocks.addAll(below());
            return blocks;
        }
        List<Block> below = below();
        float taken = 0;
        for (Block block : below) {
            taken += block.height();
        }
        List<Block> blocks = runs(heightPoints - taken);
        blocks.addAll(below);
        return blocks;
    }

    private List<Block> below() {
        List<Block> blocks = new ArrayList<>();
        trends(blocks);
        waste(blocks);
        containers(blocks);
        return blocks;
    }

    /** As many runs as there is room for, the ones to settle first where not all of them have it. */
    private List<Block> runs(float room) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(look.heading("Runs"));
        Paragraph averages = averages();
        float taken = blocks.get(0).height()
                + averages.height()
                + key("").height()
                + look.body().leading();
        int count = runs.size();
        TaggedTable table = table(runs.subList(0, Math.min(MOST_TRIED, count)));
        String left = "";
        if (count > MOST_TRIED || taken + table.height() > room) {
            List<RunReview> ordered = settledLast();
            int most = Math.min(Math.min(MOST_TRIED, count), (int)
                    ((room - taken) / look.table().leading()));
            most = Math.max(most, Math.min(LEAST_ROWS, count));
            table = table(ordered.subList(0, most));
            while (most > LEAST_ROWS && taken + table.height() > room) {
                most--;
                table = table(ordered.subList(0, most));
            }
            left = left(ordered.subList(most, count));
        }
        blocks.add(table);
        blocks.add(key(left));
        blocks.add(averages);
        return blocks;
    }

    private Paragraph averages() {
        return new Paragraph(look, YieldAverages.of(review, look.figures(), LEFT_OUT_CHARACTERS));
    }

    private List<RunReview> settledLast() {
        return runs.stream().sorted(Comparator.comparing(SecondPage::worst)).toList();
    }

    private static Severity worst(RunReview run) {
        for (Severity severity : List.of(Severity.STOP, Severity.HOLD, Severity.CHECK)) {
            if (run.has(severity)) {
                return severity;
            }
        }
        return Severity.NOTE;
    }

    private static String left(List<RunReview> left) {
        long open = left.stream().filter(r -> worst(r) != Severity.NOTE).count();
        long quiet = left.size() - open;
        return (left.size() == 1 ? "1 run is" : left.size() + " runs are") + " not listed here, "
                + (open > 0 ? open + " with something to settle" : "with notes at most")
                + (open > 0 && quiet > 0 ? ", " + quiet + " with notes at most" : "")
                + "; each has its own part below. ";
    }

    private Paragraph key(String left) {
        return new Paragraph(
                look,
                left + "± U: expanded uncertainty, k\u00A0=\u00A0"
                        + look.figures().plain(coverageFactor)
                        + ". Crude over theory is never a yield. ≤: upper bound. –: not computed. Of several balances the worst is shown.",
                look.caption());
    }

    private TaggedTable table(List<RunReview> runs) {
        List<List<TableCell>> rows = new ArrayList<>();
        runs.forEach(run -> rows.addAll(rows(run)));
        return new TaggedTable(
                look,
                List.of(
                        TableColumn.word("State"),
                        TableColumn.word("Run"),
                        TableColumn.brief("Product"),
                        TableColumn.number("Theory\n(g)"),
                        TableColumn.number("Crude over\ntheory (%)"),
                        TableColumn.number("Yield ± U\n(%)"),
                        TableColumn.number("Worst closure\n± U (%)"),
                        TableColumn.word("Balance")),
                rows);
    }

    private List<List<TableCell>> rows(RunReview run) {
        List<List<TableCell>> rows = new ArrayList<>();
        Optional<Closure> worst = Closure.worst(run.tally().closures());
        for (ProductLine line : ProductLine.of(run.tally(), look.figures(), coverageFactor)) {
            boolean first = rows.isEmpty();
            rows.add(List.of(
                    first ? state(run) : TableCell.of(""),
                    first ? places.link(run.id()) : TableCell.of(""),
                    TableCell.of(line.name()),
                    TableCell.of(line.theory()),
                    TableCell.of(String.join("\n", line.crudeOverTheory())),
                    TableCell.of(line.yield().together()),
                    TableCell.of(first ? worst.map(this::closed).orElse("–") : ""),
                    TableCell.of(first ? worst.map(c -> c.verdict().word()).orElse("") : "")));
        }
        return rows;
    }

    private String closed(Closure closure) {
        return look.figures()
                .pair(closure.percent().value(), closure.expandedUncertaintyPercent())
                .together();
    }

    private static TableCell state(RunReview run) {
        Severity worst = worst(run);
        return worst == Severity.NOTE ? TableCell.of(run.tally().run().status().word()) : TableCell.of(worst);
    }

    /** What repeats, with its verdict as title. */
    private void trends(List<Block> blocks) {
        review.series().stream()
                .filter(SeriesTally::repeats)
                .sorted(Comparator.comparing(s -> SeriesPage.isQuiet(s) ? 1 : 0))
                .limit(TRENDS)
                .forEach(series -> {
                    blocks.add(look.subheading(SeriesVerdict.of(series, look.figures())));
                    if (series.together().isPresent()) {
                        if (!series.results().isEmpty()) {
                            blocks.add(new TaggedPicture(
                                    look,
                                    new ClassStrip(
                                            look, series, series.together().get())));
                        }
                    } else if (!series.history().isEmpty()) {
                        blocks.add(new TaggedPicture(look, ControlChart.ofYields(look, series)));
                    }
                });
    }

    private void waste(List<Block> blocks) {
        WasteBars waste = WasteBars.of(review, look.figures(), STREAMS);
        if (!waste.bars().isEmpty()) {
            blocks.add(look.subheading(waste.title()));
            blocks.add(new TaggedPicture(
                    look,
                    new ValueBars(
                            look,
                            waste.title(),
                            waste.bars().stream()
                                    .map(b -> new ValueBars.Bar(
                                            b.name(), b.grams(), b.beforeGrams(), b.inWords(look.figures())))
                                    .toList())));
        }
    }

    private void containers(List<Block> blocks) {
        List<ContainerLine> lines = ContainerLine.of(review, look.figures());
        if (lines.isEmpty()) {
            return;
        }
        long full = lines.stream()
                .filter(l -> l.nowPercent().orElse(0) > l.limitPercent())
                .count();
        blocks.add(look.subheading("Containers: "
                + (full == 0 ? "none above its largest fill now" : full + " above the largest fill now")
                + due()
                + (lines.size() > CONTAINERS ? "; " + CONTAINERS + " of " + lines.size() + " shown" : "")));
        blocks.add(new TaggedPicture(
                look, new ContainerBoard(look, lines.subList(0, Math.min(CONTAINERS, lines.size())))));
    }

    private String due() {
        long overdue = ages().filter(Age::overdue).count();
        long today = ages().filter(Age::dueNow).count();
        return (overdue == 0 ? "" : ", " + overdue + " overdue") + (today == 0 ? "" : ", " + today + " due today");
    }

    private Stream<Age> ages() {
        return review.containers().stream().flatMap(c -> c.tally().age().stream());
    }
}
