package workuptally.report.pdf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.SecondSignature;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Limit;
import workuptally.model.Run;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Gap;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.SignatureLines;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedPicture;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.pdf.pictures.RecoveryStrip;
import workuptally.report.pdf.pictures.TopFigureStrip;
import workuptally.report.view.firstpage.LayerBoard;
import workuptally.report.view.firstpage.NextMeasurement;
import workuptally.report.view.firstpage.TopFigure;
import workuptally.report.view.firstpage.UrgentAction;
import workuptally.report.view.lines.Recovery;
import workuptally.report.view.wording.Words;

/** Page one: four figures, what to do first, what to measure next, the kept layers, what was recovered, signatures. */
final class FirstPage {
    private static final int LABEL_CHARACTERS = 170;
    /** Which layers are complete is asked of page one: those of sixty runs have room. */
    private static final int COMPLETE_CHARACTERS = 640;

    private static final int GONE_CHARACTERS = 60;

    private static final float AROUND_A_FIGURE = 8;

    private final Look look;
    private final Review review;
    private final RunPlaces places;
    private final String title;

    FirstPage(Look look, Review review, RunPlaces places, String title) {
        this.look = look;
        this.review = review;
        this.places = places;
        this.title = title;
    }

    /**
     * The page.
     *
     * @param heightPoints height that it has
     */
    List<Block> blocks(float heightPoints) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(look, Heading.Level.TITLE, title, Optional.of("top")));
        blocks.add(new Paragraph(look, origin(), look.body().in(look.palette().soft())));
        if (review.runs().isEmpty()) {
            blocks.add(new Paragraph(look, "The book holds no runs. Nothing was judged."));
        } else {
            blocks.add(new Gap(3));
            blocks.add(new TaggedPicture(look, new TopFigureStrip(look, TopFigure.of(review, look.figures()))));
        }
        actions(blocks);
        measurements(blocks);
        layers(blocks);
        List<Block> end = new ArrayList<>();
        signatures(end);
        recovery(blocks, heightPoints - height(blocks) - height(end));
        blocks.addAll(end);
        return blocks;
    }

    private static float height(List<Block> blocks) {
        float height = 0;
        for (Block block : blocks) {
            height += block.height();
        }
        return height;
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
                .flatMap(r -> r.tally().run().head().date().stream())
                .sorted()
                .toList();
        if (!dates.isEmpty()) {
            LocalDate first = dates.get(0);
            LocalDate last = dates.get(dates.size() - 1);
            parts.add(first.equals(last) ? first.toString() : first + " to " + end(first, last));
        }
        String asOf = review.book().limits().text(Limit.AS_OF);
        if (!asOf.isBlank()) {
            parts.add("as of " + asOf);
        }
        if (!review.runs().isEmpty()) {
            parts.add(runs());
        }
        return parts.length() == 0 ? "Group, site and period are not stated in the book." : parts.toString();
    }

    /** The last day, without a year that the first one has said. */
    private static String end(LocalDate first, LocalDate last) {
        return first.getYear() == last.getYear() ? last.toString().substring(5) : last.toString();
    }

    private String runs() {
        StringJoiner text = new StringJoiner(
                ", ", review.runs().size() == 1 ? "1 run: " : review.runs().size() + " runs: ", "");
        add(text, review.period().runsIsolated(), "isolated");
        add(text, review.period().runsInWorkup(), "in workup");
        add(text, review.period().runsPlanned(), "planned");
        return text.toString();
    }

    private static void add(StringJoiner text, int count, String state) {
        if (count > 0) {
            text.add(count + " " + state);
        }
    }

    private void actions(List<Block> blocks) {
        List<UrgentAction> actions = UrgentAction.of(review, look.figures(), UrgentAction.MOST_LINES);
        if (actions.isEmpty() && review.runs().isEmpty()) {
            return;
        }
        blocks.add(look.heading("What to do first"));
        if (actions.isEmpty()) {
            blocks.add(new Paragraph(look, UrgentAction.nothingFirst(review)));
            return;
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (UrgentAction action : actions) {
            TableCell where =
                    action.runs().size() == 1 ? places.link(action.runs().get(0)) : TableCell.bold(action.where());
            rows.add(List.of(
                    TableCell.of(action.severity()),
                    where,
                    TableCell.of(action.text()),
                    TableCell.of(
                            action.gramsAtStake().isPresent()
                                    ? look.figures()
                                            .significant(action.gramsAtStake().getAsDouble(), 3)
                                    : "")));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("State"),
                        TableColumn.word("Where"),
                        TableColumn.text("What to do, the gravest first"),
                        TableColumn.number("At stake (g)")),
                rows));
    }

    private void measurements(List<Block> blocks) {
        List<NextMeasurement> next = NextMeasurement.of(review, look.wording());
        if (next.isEmpty()) {
            return;
        }
        blocks.add(look.heading("What to measure next"));
        List<List<TableCell>> rows = new ArrayList<>();
        for (NextMeasurement one : next.subList(0, Math.min(NextMeasurement.MOST_LINES, next.size()))) {
            rows.add(List.of(places.link(one.run()), TableCell.of(one.test()), TableCell.of(one.settles())));
        }
        NextMeasurement.left(next)
                .ifPresent(left -> rows.add(List.of(TableCell.of(""), TableCell.of(left), TableCell.of(""))));
        blocks.add(new TaggedTable(
                look,
                List.of(TableColumn.word("Run"), TableColumn.text("Measurement"), TableColumn.text("What it settles")),
                rows));
    }

    private void layers(List<Block> blocks) {
        List<LayerBoard> board = LayerBoard.of(review);
        if (board.isEmpty()) {
            return;
        }
        String gone = Words.listed(
                LayerBoard.gone(review), "; ", GONE_CHARACTERS, more -> "layers of " + Words.count(more, "more run"));
        blocks.add(look.heading(
                "Kept layers: whose evidence is complete" + (gone.isEmpty() ? "" : " (gone: " + gone + ")")));
        List<List<TableCell>> rows = new ArrayList<>();
        for (LayerBoard line : board) {
            rows.add(List.of(
                    TableCell.bold(line.outcome().word()),
                    TableCell.of(Integer.toString(line.layers())),
                    TableCell.of(line.shortly(
                            line.outcome() == LayerDecision.Outcome.EVIDENCE_COMPLETE
                                    ? COMPLETE_CHARACTERS
                                    : LABEL_CHARACTERS)),
                    TableCell.of(line.most(look.figures()))));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Outcome"),
                        TableColumn.number("Layers"),
                        TableColumn.text("Which"),
                        TableColumn.number("Product at\nmost (g)")),
                rows));
    }

    private void recovery(List<Block> blocks, float room) {
        List<Recovery> runs = Recovery.of(review);
        if (!runs.isEmpty()) {
            Heading heading = look.heading("Where the product is, % of theory" + notDrawn(runs.size()));
            blocks.add(heading);
            blocks.add(
                    new TaggedPicture(look, new RecoveryStrip(look, runs, room - heading.height() - AROUND_A_FIGURE)));
        }
    }

    /** Runs without a bar, with the reason. */
    private String notDrawn(int drawn) {
        int planned = (int) review.runs().stream()
                .filter(r -> r.tally().run().status() == Run.Status.PLANNED)
                .count();
        int others = review.runs().size() - drawn - planned;
        StringJoiner text = new StringJoiner(", ", " (not drawn: ", ")");
        text.setEmptyValue("");
        add(text, planned, "planned");
        add(text, others, "without theory");
        return text.toString();
    }

    private void signatures(List<Block> blocks) {
        List<String> reviewers = new ArrayList<>();
        Stream.of(review.book().limits().text(Limit.REVIEWERS).split(";"))
                .map(String::strip)
                .filter(r -> !r.isEmpty())
                .forEach(r -> reviewers.add("Reviewed by " + r));
        if (reviewers.isEmpty()) {
            reviewers.addAll(List.of("Chemist", "Supervisor"));
        }
        long second = review.runs().stream()
                .filter(r -> r.tally().run().status() != Run.Status.PLANNED
                        && !SecondSignature.reasons(r).isEmpty())
                .count();
        blocks.add(Paragraph.lead(
                look,
                SafetyWording.A_PERSON_DECIDES
                        + (second == 0
                                ? ""
                                : " A second person signs too for " + (second == 1 ? "1 run" : second + " runs")
                                        + ", each marked (common practice; a site rule comes first)."),
                look.body()));
        blocks.add(new SignatureLines(look, reviewers));
    }
}
