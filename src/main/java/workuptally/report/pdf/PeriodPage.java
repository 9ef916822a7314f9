package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import workuptally.judgement.period.PeriodReview;
import workuptally.judgement.period.PeriodReview.BookLine;
import workuptally.judgement.period.PeriodReview.Comparison;
import workuptally.judgement.period.PeriodReview.Line;
import workuptally.judgement.period.PeriodReview.Standing;
import workuptally.judgement.totals.PeriodMetrics;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.judgement.totals.RunShare.LeftOut;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Gap;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.SignatureLines;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;

/** Page one of a period: what it cost, which books and runs that rests on, which were left out and why, signatures. */
final class PeriodPage {
    private static final int BOOKS_NAMED = 20;
    private static final int RUNS_NAMED = 24;

    private final Look look;
    private final PeriodReview review;
    private final PeriodTotals totals;
    private final String title;

    PeriodPage(Look look, PeriodReview review, String title) {
        this.look = look;
        this.review = review;
        this.totals = review.totals();
        this.title = title;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(look, Heading.Level.TITLE, title, Optional.of("top")));
        if (!review.places().isEmpty()) {
            blocks.add(new Paragraph(
                    look,
                    String.join(" · ", review.places()),
                    look.body().in(look.palette().soft())));
        }
        blocks.add(new Paragraph(look, counts()));
        cost(blocks);
        books(blocks);
        leftOut(blocks);
        blocks.add(new Gap(4));
        blocks.add(Paragraph.lead(look, "Reviewed by:", look.caption()));
        blocks.add(new SignatureLines(look, List.of("Responsible for the laboratory", "Safety contact")));
        return blocks;
    }

    private String counts() {
        if (review.lines().isEmpty()) {
            return "No run of this period stands in the books that were read.";
        }
        return PeriodReport.count(review.lines().size(), "run") + " from "
                + PeriodReport.count(review.booksCounted(), "book") + ": " + totals.runsIsolated() + " isolated, "
                + totals.runsInWorkup() + " in workup, " + totals.runsPlanned()
                + " planned. Planned runs have used nothing and stand in no total.";
    }

    private void cost(List<Block> blocks) {
        blocks.add(look.heading("What the period cost"));
        List<List<TableCell>> rows = new ArrayList<>();
        rows.add(row(
                "Solvent put in",
                totals.solvents().isEmpty()
                        ? "none recorded"
                        : (totals.isSolventLeast() ? "at least " : "") + litres(totals.solventInLitres()) + ", "
                                + kilograms(totals.solventInGrams()),
                "organic solvents, charged and added in the workup; purification and water stand apart"));
        if (totals.solventInGrams() > 0) {
            rows.add(row(
                    "Recovered",
                    kilograms(totals.solventRecoveredGrams()) + ", " + percent(totals.solventRecoveredPercent(), 0),
                    "of it, in distillates that are to be re-used"));
            rows.add(row(
                    "In other distillates",
                    kilograms(totals.solventInDistillatesGrams()) + ", "
                            + percent(totals.solventInDistillatesPercent(), 0),
                    "of it; kept, proposed as waste, released or used up"));
            rows.add(row(
                    "Not found again",
                    kilograms(totals.solventNotFoundGrams()) + ", " + percent(totals.solventNotFoundPercent(), 0),
                    "of it; air, pump, glassware"));
        }
        metrics(rows);
        yields(rows);
        blocks.add(new TaggedTable(
                look,
                List.of(TableColumn.text("Figure"), TableColumn.word("Value"), TableColumn.text("Counted over")),
                rows));
        blocks.add(new Paragraph(look, comparison()));
    }

    private void metrics(List<List<TableCell>> rows) {
        PeriodMetrics metrics = totals.metrics();
        if (metrics.pmi().isEmpty()) {
            rows.add(row("Process mass intensity", "not computed", "no run has a yield that can be stated"));
            return;
        }
        rows.add(row(
                "Process mass intensity, sum over sum",
                intensity(metrics.pmi()),
                PeriodReport.count(metrics.runs().size(), "run") + " with a yield that can be stated: "
                        + kilograms(metrics.inGrams()) + " put in, water counted, over "
                        + look.figures().significant(metrics.productGrams(), 4) + "\u00A0g of pure product"));
        rows.add(
                row(
                        "Mean of the runs' intensities",
                        intensity(metrics.meanOfPmis()),
                        "the same runs, each counted alike: a small run weighs as much as a large one; not the figure of the period"));
        rows.add(row(
                "Solvent and water on product",
                intensity(metrics.solventIntensity()) + "; " + intensity(metrics.waterIntensity()),
                "the same runs; E-factor with water counted " + intensity(metrics.eFactorWithWater())));
    }

    private void yields(List<List<TableCell>> rows) {
        if (totals.medianYieldPercent().isEmpty()) {
            rows.add(row("Yield", "none stated", "no yield by assay of a product"));
            return;
        }
        String without = totals.withoutLargest()
                .map(w -> "; without " + w.run() + " " + percent(w.percent(), 1))
                .orElse("");
        rows.add(row(
                "Yield, median",
                percent(totals.medianYieldPercent().getAsDouble(), 1),
                "n = " + totals.yieldsStated()
                        + " products of unlike reactions: the mix of the period, not skill; mean "
                        + percent(totals.meanYieldPercent().getAsDouble(), 1) + ", by amount "
                        + percent(totals.amountWeightedYieldPercent().getAsDouble(), 1) + without));
    }

    private static List<TableCell> row(String figure, String value, String basis) {
        return List.of(TableCell.bold(figure), TableCell.of(value), TableCell.of(basis));
    }

    private String comparison() {
        if (review.before().lastFour().isEmpty()) {
            return "No run of the last four periods stands in these books, so there is nothing to compare with.";
        }
        Comparison before = review.before().lastFour().get();
        boolean one = before.periods() == 1;
        return (one
                        ? "The one of the last four periods that holds runs: "
                        : "The " + before.periods() + " of the last four periods that hold runs, on average: ")
                + "solvent put in " + kilograms(before.meanSolventInGrams())
                + (before.pmi().isPresent()
                        ? "; process mass intensity, sum over sum, " + intensity(before.pmi())
                        : "; no yield to compute an intensity from")
                + ".";
    }

    private void books(List<Block> blocks) {
        blocks.add(look.heading("Books"));
        List<BookLine> said =
                review.books().stream().filter(b -> !b.remark().isEmpty()).toList();
        List<BookLine> plain = review.books().stream()
                .filter(b -> b.remark().isEmpty() && b.runsCounted() > 0)
                .toList();
        blocks.add(new Paragraph(look, counted() + named(plain)));
        if (said.isEmpty()) {
            return;
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (BookLine book : said) {
            rows.add(List.of(
                    TableCell.bold(book.book()),
                    TableCell.of(book.standing().word()),
                    TableCell.of(Integer.toString(book.runs())),
                    TableCell.of(Integer.toString(book.runsCounted())),
                    TableCell.of(book.remark())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Book"),
                        TableColumn.word("Standing"),
                        TableColumn.number("Runs\nin it"),
                        TableColumn.number("Runs\ncounted"),
                        TableColumn.text("Left out, because")),
                rows));
    }

    private String counted() {
        if (review.books().isEmpty()) {
            return "The folder holds no book.";
        }
        StringJoiner text =
                new StringJoiner(", ", PeriodReport.count(review.books().size(), "book") + " found: ", ".");
        text.add(review.booksCounted() + " with runs that count");
        text.add((review.booksRead() - review.booksCounted()) + " without any");
        text.add(count(Standing.NOT_READ) + " not read");
        if (count(Standing.PASSED_OVER) > 0) {
            text.add(count(Standing.PASSED_OVER) + " passed over, a review that this program wrote");
        }
        return text.toString();
    }

    private long count(Standing standing) {
        return review.books().stream().filter(b -> b.standing() == standing).count();
    }

    private String named(List<BookLine> plain) {
        if (plain.isEmpty()) {
            return "";
        }
        if (plain.size() > BOOKS_NAMED) {
            return " Those that count stand under Basis.";
        }
        StringJoiner names = new StringJoiner(", ", " Runs counted: ", ".");
        plain.forEach(b -> names.add(b.book() + " (" + b.runsCounted() + " of " + b.runs() + ")"));
        return names.toString();
    }

    private void leftOut(List<Block> blocks) {
        Map<String, List<String>> reasons = new LinkedHashMap<>();
        for (Line line : review.lines()) {
            for (LeftOut left : line.run().leftOut()) {
                reasons.computeIfAbsent(left.because(), r -> new ArrayList<>()).add(left.what());
            }
        }
        if (reasons.isEmpty()) {
            return;
        }
        blocks.add(look.heading("Left out of yields and intensities"));
        List<List<TableCell>> rows = new ArrayList<>();
        reasons.forEach((because, runs) -> rows.add(List.of(
                TableCell.bold(because), TableCell.of(Integer.toString(runs.size())), TableCell.of(names(runs)))));
        blocks.add(new TaggedTable(
                look,
                List.of(TableColumn.text("Reason"), TableColumn.number("Number"), TableColumn.text("Runs, products")),
                rows));
    }

    private static String names(List<String> runs) {
        return runs.size() <= RUNS_NAMED
                ? String.join(", ", runs)
                : String.join(", ", runs.subList(0, RUNS_NAMED)) + " and " + (runs.size() - RUNS_NAMED)
                        + " more, all of them in the attached JSON";
    }

    private String litres(double litres) {
        return look.figures().amount(litres, 2) + "\u00A0L";
    }

    private String kilograms(double grams) {
        return look.figures().amount(grams / 1000, 2) + "\u00A0kg";
    }

    private String percent(double percent, int decimals) {
        return look.figures().fixed(percent, decimals) + "\u00A0%";
    }

    private String intensity(OptionalDouble gramsPerGram) {
        return gramsPerGram.isPresent()
                ? look.figures().significant(gramsPerGram.getAsDouble(), 3) + "\u00A0g/g"
                : "not computed";
    }
}
