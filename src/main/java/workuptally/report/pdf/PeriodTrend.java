package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.period.PeriodReview;
import workuptally.judgement.period.PeriodReview.Earlier;
import workuptally.judgement.period.Span;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.report.pdf.layout.Bars;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;

/** The period beside those before it: solvent put in, and process mass intensity, a bar each. */
final class PeriodTrend {
    private final Look look;
    private final PeriodReview review;

    PeriodTrend(Look look, PeriodReview review) {
        this.look = look;
        this.review = review;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(look, Heading.Level.SECTION, "Against the periods before", Optional.of("trend")));
        if (review.before().earlier().stream().allMatch(e -> e.runs() == 0)) {
            blocks.add(new Paragraph(
                    look,
                    "No run of the " + review.before().earlier().size() + " periods before, from "
                            + review.before().earlier().get(0).span().from()
                            + " on, stands in the books that were read: there is no trend to show."));
            return blocks;
        }
        Bars solvent =
                new Bars(look, "Solvent put in (kg)", largest(t -> OptionalDouble.of(t.solventInGrams() / 1000)));
        Bars pmi = new Bars(
                look, "Process mass intensity (g/g)", largest(t -> t.metrics().pmi()));
        List<List<TableCell>> rows = new ArrayList<>();
        for (Earlier earlier : review.before().earlier()) {
            rows.add(row(solvent, pmi, new Entry(earlier.span(), earlier.runs(), earlier.totals(), false)));
        }
        rows.add(row(solvent, pmi, new Entry(review.span(), review.lines().size(), review.totals(), true)));
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("From, to"),
                        TableColumn.number("Runs"),
                        TableColumn.number("Solvent\n(kg)"),
                        TableColumn.chart(solvent.scale()),
                        TableColumn.number("Intensity\n(g/g)"),
                        TableColumn.chart(pmi.scale())),
                rows));
        blocks.add(new Paragraph(
                look,
                "Dark bar: this period. A period without runs is shown as such and is no zero. The intensity is sum over sum of the runs with a"
                        + " yield that can be stated; it moves with the mix of reactions.",
                look.caption()));
        waste(blocks);
        return blocks;
    }

    /** Each stream of this period, with the mean of the periods before that hold runs as an upright bar. */
    private void waste(List<Block> blocks) {
        List<Earlier> before =
                review.before().earlier().stream().filter(e -> e.runs() > 0).toList();
        Map<String, double[]> streams = new LinkedHashMap<>();
        review.totals()
                .waste()
                .forEach(s -> streams.computeIfAbsent(s.streamName(), n -> new double[2])[0] += s.massGrams());
        for (Earlier earlier : before) {
            earlier.totals()
                    .waste()
                    .forEach(s -> streams.computeIfAbsent(s.streamName(), n -> new double[2])[1] +=
                            s.massGrams() / before.size());
        }
        if (streams.isEmpty()) {
            return;
        }
        Bars bars = new Bars(
                look,
                "kg, upright bar: before",
                streams.values().stream()
                                .mapToDouble(m -> Math.max(m[0], m[1]))
                                .max()
                                .orElse(0)
                        / 1000);
        List<List<TableCell>> rows = streams.entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<String, double[]> s) -> s.getValue()[0])
                        .reversed())
                .map(s -> stream(bars, s.getKey(), s.getValue()[0] / 1000, s.getValue()[1] / 1000))
                .toList();
        blocks.add(look.subheading("Waste by stream: this period beside the mean of the " + before.size()
                + (before.size() == 1 ? " period" : " periods") + " before with runs"));
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Stream"),
                        TableColumn.number("This period\n(kg)"),
                        TableColumn.number("Mean before\n(kg)"),
                        TableColumn.chart(bars.scale())),
                rows));
    }

    private List<TableCell> stream(Bars bars, String name, double kilograms, double meanKilograms) {
        String now = look.figures().amount(kilograms, 3);
        String before = look.figures().amount(meanKilograms, 3);
        return List.of(
                TableCell.bold(name),
                TableCell.of(now),
                TableCell.of(before),
                TableCell.of(bars.row(
                        OptionalDouble.of(kilograms),
                        OptionalDouble.of(meanKilograms),
                        true,
                        now + "\u00A0kg, before " + before + "\u00A0kg")));
    }

    private interface Figure {
        OptionalDouble of(PeriodTotals totals);
    }

    private double largest(Figure figure) {
        double largest = figure.of(review.totals()).orElse(0);
        for (Earlier earlier : review.before().earlier()) {
            largest = Math.max(largest, figure.of(earlier.totals()).orElse(0));
        }
        return largest;
    }

    private record Entry(Span span, int runs, PeriodTotals totals, boolean current) {}

    private List<TableCell> row(Bars solventBars, Bars pmiBars, Entry entry) {
        boolean empty = entry.runs() == 0;
        OptionalDouble solvent = empty
                ? OptionalDouble.empty()
                : OptionalDouble.of(entry.totals().solventInGrams() / 1000);
        OptionalDouble pmi = entry.totals().metrics().pmi();
        String days = entry.span().from() + " to " + entry.span().to();
        String solventText = solvent.isPresent() ? look.figures().amount(solvent.getAsDouble(), 2) : "–";
        String pmiText = pmi.isPresent() ? look.figures().significant(pmi.getAsDouble(), 3) : "–";
        return List.of(
                entry.current() ? TableCell.bold(days + ", this period") : TableCell.of(days),
                TableCell.of(Integer.toString(entry.runs())),
                TableCell.of(solventText),
                TableCell.of(solventBars.row(
                        solvent, OptionalDouble.empty(), entry.current(), empty ? "no run" : solventText + "\u00A0kg")),
                TableCell.of(pmiText),
                TableCell.of(pmiBars.row(
                        pmi,
                        OptionalDouble.empty(),
                        entry.current(),
                        empty ? "no run" : pmi.isPresent() ? pmiText + "\u00A0g/g" : "no yield stated")));
    }
}
