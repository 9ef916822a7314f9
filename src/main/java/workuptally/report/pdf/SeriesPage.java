package workuptally.report.pdf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Gap;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedPicture;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.pdf.pictures.ClassStrip;
import workuptally.report.pdf.pictures.ControlChart;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.series.SeriesTally;

/** Repeated preparations: the chart of their earlier results with the new ones on it, and a class as a whole. */
final class SeriesPage {
    /** Where the section begins. */
    static final String PLACE = "series";

    private final Look look;
    private final List<SeriesTally> series;
    private final RunPlaces places;

    SeriesPage(Look look, Review review, RunPlaces places) {
        this.look = look;
        this.series = review.series().stream()
                .filter(s -> s.repeats() && !(isQuiet(s) && s.together().isEmpty()))
                .toList();
        this.places = places;
    }

    /** Empty if no preparation repeats. */
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (series.isEmpty()) {
            return blocks;
        }
        blocks.add(new Gap(8));
        blocks.add(new Heading(look, Heading.Level.SECTION, "Repeated preparations", Optional.of(PLACE)));
        for (SeriesTally one : series) {
            blocks.add(look.subheading("Series " + one.series()));
            chart(blocks, one);
            one.together().ifPresent(together -> together(blocks, one, together));
        }
        return blocks;
    }

    /** True where nothing signals and no yield of a class stands out. */
    static boolean isQuiet(SeriesTally series) {
        return series.results().stream().allMatch(r -> r.signals().isEmpty())
                && series.together()
                        .map(group ->
                                group.outliers().isEmpty() && group.copies().isEmpty())
                        .orElse(true);
    }

    private void chart(List<Block> blocks, SeriesTally one) {
        if (one.history().isEmpty()) {
            if (one.together().isEmpty()) {
                blocks.add(
                        new Paragraph(look, "No earlier results are in the book, so there are no limits to judge by."));
                results(blocks, one, one.results());
            }
            return;
        }
        blocks.add(Paragraph.lead(look, basis(one), look.body()));
        blocks.add(new TaggedPicture(look, ControlChart.ofYieldsAndRanges(look, one)));
        List<SeriesTally.Result> told = one.together().isPresent()
                ? one.results().stream().filter(r -> !r.signals().isEmpty()).toList()
                : one.results();
        results(blocks, one, told);
    }

    private String basis(SeriesTally one) {
        ReadableNumbers figures = look.figures();
        int earlier = one.history().size();
        String numbers = "No. " + (earlier == 1 ? "1" : "1 to " + earlier) + ": earlier results" + dates(one)
                + " (hollow); filled: this book; square: signal. ";
        return numbers
                + one.chart()
                        .map(c -> "Mean " + percent(c.centrePercent()) + ", limits "
                                + figures.fixed(c.lowerLimitPercent(), 1) + " to " + percent(c.upperLimitPercent())
                                + " (x̄ ± 2.66·MR̄ of the earlier results alone), moving range up to "
                                + percent(c.movingRangeLimitPercent()) + ".")
                        .orElse("Too few for limits.");
    }

    private static String dates(SeriesTally one) {
        List<LocalDate> dates =
                one.history().stream().flatMap(p -> p.date().stream()).sorted().toList();
        return dates.isEmpty() ? "" : ", " + dates.get(0) + " to " + dates.get(dates.size() - 1);
    }

    private void results(List<Block> blocks, SeriesTally one, List<SeriesTally.Result> told) {
        if (told.isEmpty()) {
            return;
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (SeriesTally.Result result : told) {
            int number = one.history().size() + one.results().indexOf(result) + 1;
            String none = one.chart().isPresent() ? "no signal" : "no limits";
            rows.add(List.of(
                    places.link(result.run()),
                    TableCell.of(Integer.toString(number)),
                    TableCell.of(result.product()),
                    TableCell.of(look.figures().fixed(result.yieldPercent(), 1)),
                    TableCell.of(result.signals().isEmpty() ? none : String.join("; ", result.signals()))));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Run"),
                        TableColumn.number("No."),
                        TableColumn.text("Product"),
                        TableColumn.number("Yield (%)"),
                        TableColumn.text("Signal")),
                rows));
    }

    private void together(List<Block> blocks, SeriesTally one, SeriesTally.Together group) {
        blocks.add(Paragraph.lead(look, summary(group), look.body()));
        if (!one.results().isEmpty()) {
            blocks.add(new TaggedPicture(look, new ClassStrip(look, one, group)));
        }
        named(blocks, "Outliers, further than 3.5 robust spreads from the median", group.outliers());
        named(blocks, "Numbers equal to those of an earlier run, to the last digit", group.copies());
        named(blocks, "Left out of median and spread", group.leftOut());
        totals(blocks, group);
    }

    private String summary(SeriesTally.Together group) {
        StringJoiner text = new StringJoiner(", ", "Class of " + group.runs() + " runs: ", ".");
        text.add(group.yields() + " yields count");
        group.medianPercent().ifPresent(m -> text.add("median " + percent(m)));
        group.robustSpreadPercent().ifPresent(s -> text.add("robust spread " + percent(s) + " (1.4826 × MAD)"));
        return text.toString();
    }

    private void named(List<Block> blocks, String what, List<String> names) {
        if (!names.isEmpty()) {
            blocks.add(new Paragraph(look, what + ": " + String.join("; ", names) + "."));
        }
    }

    private void totals(List<Block> blocks, SeriesTally.Together group) {
        ReadableNumbers figures = look.figures();
        blocks.add(Paragraph.lead(
                look,
                "All runs together: organic solvents " + figures.amount(group.solventGrams() / 1000, 2)
                        + "\u00A0kg, layers kept " + figures.amount(group.keptGrams() / 1000, 2) + "\u00A0kg.",
                look.body()));
        List<List<TableCell>> rows = new ArrayList<>();
        for (SeriesTally.Material material : group.materials()) {
            rows.add(List.of(
                    TableCell.bold(material.material()),
                    TableCell.of(material.unit()),
                    TableCell.of(figures.significant(material.planned(), 4)),
                    TableCell.of(figures.significant(material.actual(), 4)),
                    TableCell.of(material.planned() == 0 ? "–" : figures.fixed(material.actualPercentOfPlanned(), 0))));
        }
        if (!rows.isEmpty()) {
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.text("Material"),
                            TableColumn.word("Unit"),
                            TableColumn.number("By the recipe"),
                            TableColumn.number("Used"),
                            TableColumn.number("Of the recipe (%)")),
                    rows));
        }
    }

    private String percent(double value) {
        return look.figures().fixed(value, 1) + "\u00A0%";
    }
}
