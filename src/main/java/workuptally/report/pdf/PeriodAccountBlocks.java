package workuptally.report.pdf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.period.BookShare.ClassShare;
import workuptally.judgement.period.BookShare.ContainerShare;
import workuptally.judgement.period.PeriodReview;
import workuptally.judgement.period.PeriodReview.LimitInForce;
import workuptally.model.Limit;
import workuptally.report.pdf.layout.Bars;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.tally.series.SeriesTally.Material;
import workuptally.tally.series.SeriesTally.Together;

/** The accounts of a period for safety staff: solvents, streams, containers, and classes. */
final class PeriodAccountBlocks {
    private final Look look;
    private final PeriodReview review;
    private final AccountTables tables;

    PeriodAccountBlocks(Look look, PeriodReview review) {
        this.look = look;
        this.review = review;
        this.tables = new AccountTables(look);
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Heading(look, Heading.Level.SECTION, "Solvents, streams and containers", Optional.of("accounts")));
        blocks.add(new Paragraph(look, SafetyWording.WASTE_DETERMINATION + localRules()));
        blocks.addAll(tables.solvents(review.totals().solvents()));
        blocks.addAll(tables.streams(review.totals().waste()));
        containers(blocks);
        classes(blocks);
        return blocks;
    }

    private String localRules() {
        StringJoiner rules = new StringJoiner("; ", " Local rule: ", "");
        rules.setEmptyValue("");
        review.limits().stream()
                .filter(l -> l.limit().limit() == Limit.LOCAL_RULE_WASTE)
                .map(LimitInForce::limit)
                .forEach(l -> rules.add(l.text()));
        return rules.toString();
    }

    private void containers(List<Block> blocks) {
        blocks.add(look.subheading("Containers"));
        if (review.containers().isEmpty()) {
            blocks.add(new Paragraph(look, "No container is recorded."));
            return;
        }
        double fullest = 100;
        for (ContainerShare container : review.containers()) {
            fullest = Math.max(fullest, container.fill().percent().orElse(0));
        }
        Bars bars = new Bars(look, "Fill (%), upright bar: limit", fullest);
        List<List<TableCell>> rows = new ArrayList<>();
        review.containers().forEach(c -> rows.add(container(bars, c)));
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Container"),
                        TableColumn.text("Stream, place"),
                        TableColumn.number("Mass\n(kg)"),
                        TableColumn.number("Volume\n(L)"),
                        TableColumn.number("Fill\n(%)"),
                        TableColumn.chart(bars.scale()),
                        TableColumn.number("Days\nopen"),
                        TableColumn.word("Local limit"),
                        TableColumn.word("As of"),
                        TableColumn.text("Standing")),
                rows));
        blocks.add(new Paragraph(
                look,
                "Each container as the last book of the period that lists it leaves it, with the transfers done; proposals are not counted."
                        + " Volume follows from the contents and their densities.",
                look.caption()));
    }

    private List<TableCell> container(Bars bars, ContainerShare container) {
        String place = container.location().isBlank() ? "" : ", " + container.location();
        OptionalDouble limit = OptionalDouble.of(container.fill().limitPercent());
        String fill = container.fill().percent().isPresent()
                ? look.figures().fixed(container.fill().percent().getAsDouble(), 1)
                : "–";
        return List.of(
                TableCell.bold(container.container()),
                TableCell.of(container.wasteStream() + place),
                tables.kilograms(container.fill().massGrams()),
                TableCell.of(look.figures().fixed(container.fill().litres(), 2)),
                TableCell.of(fill),
                TableCell.of(bars.row(
                        container.fill().percent(),
                        limit,
                        container.fill().isAboveLimit(),
                        container.fill().percent().isPresent()
                                ? "fill " + fill + "\u00A0%, limit "
                                        + look.figures().plain(container.fill().limitPercent()) + "\u00A0%"
                                : "capacity not stated")),
                TableCell.of(container.open().days().map(Object::toString).orElse("–")),
                TableCell.of(container.open().dueOn().map(Object::toString).orElse("none set")),
                TableCell.of(container.asOf().map(Object::toString).orElse("not stated")),
                TableCell.of(standing(container, review.span().to())));
    }

    /** Where the book that lists it last is older than the end of the period, its limit may have passed since. */
    static String standing(ContainerShare container, LocalDate end) {
        StringJoiner words = new StringJoiner(", ");
        Optional<LocalDate> passed = container.open().dueOn().filter(day -> day.isBefore(end));
        if (container.overdue()) {
            words.add("overdue");
        } else if (passed.isPresent()
                && container.asOf().filter(passed.get()::isBefore).isEmpty()) {
            words.add("limit passed unless collected");
        } else if (container.open().dueNow()) {
            words.add("due: last working day");
        }
        if (container.fill().isAboveLimit()) {
            words.add("above the fill limit");
        }
        if (container.fill().percent().isEmpty()) {
            words.add("fill not known");
        }
        if (container.open().days().isEmpty()) {
            words.add("age not known");
        }
        return words.length() == 0 ? "within limits" : words.toString();
    }

    private void classes(List<Block> blocks) {
        if (review.classes().isEmpty()) {
            return;
        }
        blocks.add(look.subheading("Classes: many runs of one preparation in one book"));
        List<List<TableCell>> rows = new ArrayList<>();
        review.classes().forEach(c -> rows.add(figures(c)));
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Book"),
                        TableColumn.text("Preparation"),
                        TableColumn.number("Runs"),
                        TableColumn.number("Yields"),
                        TableColumn.number("Median\n(%)"),
                        TableColumn.number("Spread\n(%)"),
                        TableColumn.text("Further than 3.5 spreads"),
                        TableColumn.text("Same numbers as another"),
                        TableColumn.text("Left out, because")),
                rows));
        blocks.add(new Paragraph(
                look,
                "Spread: 1.4826 times the median absolute deviation. Rows with the numbers of another count once.",
                look.caption()));
        List<List<TableCell>> materials = new ArrayList<>();
        review.classes().forEach(c -> c.together().materials().forEach(m -> materials.add(material(c, m))));
        if (!materials.isEmpty()) {
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.text("Preparation"),
                            TableColumn.text("Charged by the class"),
                            TableColumn.number("Recipe"),
                            TableColumn.number("Used"),
                            TableColumn.word("Unit"),
                            TableColumn.number("Used over\nrecipe (%)")),
                    materials));
        }
    }

    private List<TableCell> figures(ClassShare share) {
        Together together = share.together();
        return List.of(
                TableCell.bold(share.book()),
                TableCell.of(share.series()),
                TableCell.of(Integer.toString(together.runs())),
                TableCell.of(Integer.toString(together.yields())),
                percent(together.medianPercent()),
                percent(together.robustSpreadPercent()),
                TableCell.of(names(together.outliers())),
                TableCell.of(names(together.copies())),
                TableCell.of(together.leftOut().isEmpty() ? "none" : String.join("; ", together.leftOut())));
    }

    private static String names(List<String> names) {
        return names.isEmpty() ? "none" : String.join(", ", names);
    }

    private TableCell percent(OptionalDouble percent) {
        return TableCell.of(percent.isPresent() ? look.figures().fixed(percent.getAsDouble(), 1) : "–");
    }

    private List<TableCell> material(ClassShare share, Material material) {
        return List.of(
                TableCell.bold(share.series()),
                TableCell.of(material.material()),
                TableCell.of(look.figures().significant(material.planned(), 4)),
                TableCell.of(look.figures().significant(material.actual(), 4)),
                TableCell.of(material.unit()),
                TableCell.of(
                        material.planned() == 0 ? "–" : look.figures().fixed(material.actualPercentOfPlanned(), 1)));
    }
}
