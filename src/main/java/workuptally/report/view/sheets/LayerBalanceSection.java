package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.measure.MeasuredValue;
import workuptally.model.Assay;
import workuptally.model.Layer;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.LiveEntries;
import workuptally.report.view.tables.RowIndex;
import workuptally.report.view.tables.ShownFigures;
import workuptally.report.view.tables.TableView;
import workuptally.tally.amounts.Content;
import workuptally.tally.balance.CompositeSample;
import workuptally.tally.layers.LayerTally;

/** Layers and what they hold, one line per layer and substance. */
public final class LayerBalanceSection {
    /** Title of the table. */
    public static final String TITLE = "Layer balance";

    private LayerBalanceSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        double k = review.period().coverageFactor();
        RowIndex theories = YieldsSection.rows(review);
        return TableView.of(
                TITLE,
                "Only terminal layers count in a balance. Kind says how a content is known: measured, bound, carried, predicted or unknown. "
                        + ShownFigures.coverage(k)
                        + "\n" + SafetyWording.A_PERSON_DECIDES,
                columns(),
                review.runs(),
                run -> Stream.concat(
                        run.tally().layers().stream()
                                .flatMap(
                                        layer -> contents(layer).map(content -> row(run, theories, layer, content, k))),
                        run.tally().evidence().composites().counted().stream()
                                .map(sample -> row(run, theories, sample, k))));
    }

    private static List<Column> columns() {
        return List.of(
                Column.text("Run", 14),
                Column.text("Layer", 12),
                Column.text("Phase", 14),
                Column.text("Terminal", 9),
                Column.text("Status", 10),
                Column.number("Mass", "g", 2),
                Column.number("Volume", "mL", 1),
                Column.number("Density", "g/mL", 3),
                Column.text("Substance", 28),
                Column.text("Kind", 10),
                Column.number("Content", "g", 4),
                Column.number("U of content", "g", 4),
                Column.number("Upper bound", "g", 4),
                Column.number("Of theory or charged", "%", 2),
                Column.text("Evidence", 44));
    }

    /** Rows by layer, and by layer and substance. */
    static RowIndex rows(Review review) {
        return new RowIndex(
                review.runs(),
                run -> Stream.concat(
                                run.tally().layers().stream()
                                        .flatMap(layer -> contents(layer).map(content -> names(layer, content))),
                                run.tally().evidence().composites().counted().stream()
                                        .map(sample -> List.of(sample.name(), sample.substance())))
                        .toList());
    }

    private static List<String> names(LayerTally layer, Optional<Content> content) {
        return content.isEmpty()
                ? List.of(layer.label())
                : List.of(layer.label(), content.get().substance());
    }

    /** What a layer holds, each with a row of its own; a layer of which nothing is recorded has a row too. */
    private static Stream<Optional<Content>> contents(LayerTally layer) {
        return layer.contents().isEmpty()
                ? Stream.of(Optional.empty())
                : layer.contents().stream().map(Optional::of);
    }

    private static Optional<Live> byAssay(RunReview run, LayerTally layer, Content content) {
        List<Assay> rows = run.tally().run().assays().stream()
                .filter(assay -> assay.sample().equals(layer.label()) && assay.isOf(content.substance()))
                .toList();
        // Pooled results and limits are no product of one cell and another.
        return rows.stream()
                .filter(assay -> rows.size() == 1 && content.kind() == Content.Kind.MEASURED)
                .flatMap(assay -> assay.unit().flatMap(unit -> byAssay(assay, unit)).stream())
                .findFirst();
    }

    private static Optional<Live> byAssay(Assay assay, Assay.Unit unit) {
        return LiveEntries.of(assay.result()).flatMap(result -> switch (unit) {
            case MILLIGRAMS_PER_MILLILITRE ->
                Optional.of(Live.over(Live.times(result, new Live.InRow("Volume")), new Live.Fixed(1000)));
            case MASS_PERCENT ->
                Optional.of(Live.over(Live.times(result, new Live.InRow("Mass")), new Live.Fixed(100)));
            case GRAMS -> Optional.of(result);
            case MOLES_PER_LITRE, MILLIMOLES, MOLE_RATIO_TO_PRODUCT, AREA_PERCENT -> Optional.empty();
        });
    }

    private static Cell percentOf(RunReview run, RowIndex theories, Content content) {
        OptionalInt theory = theories.of(run, content.substance());
        if (content.percentOf().isEmpty() || theory.isEmpty()) {
            return Cell.of(content.percentOf());
        }
        return Cell.of(
                content.percentOf().getAsDouble(),
                Live.percent(
                        new Live.InRow("Content"), new Live.InTable(YieldsSection.TITLE, theory.getAsInt(), "Theory")));
    }

    /** What several layers hold together by one assay; their masses and volumes stand in their own rows. */
    private static TableView.Row row(RunReview run, RowIndex theories, CompositeSample sample, double k) {
        Content together = sample.together();
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(sample.name()),
                        Cell.of("together"),
                        Cell.yesNo(true),
                        Cell.of(""),
                        new Cell.Missing(""),
                        new Cell.Missing(""),
                        new Cell.Missing(""),
                        Cell.of(sample.substance()),
                        Cell.of(together.kind().word()),
                        ShownFigures.cell(together.massGrams(), k, Optional.empty()),
                        together.massGrams()
                                .map(m ->
                                        ShownFigures.uncertaintyCell(m.expandedUncertainty(k), k, m.value(), "Content"))
                                .orElseGet(() -> new Cell.Missing("")),
                        Cell.of(together.upperBoundGrams()),
                        percentOf(run, theories, together),
                        Cell.of(together.evidence())),
                Optional.empty());
    }

    private static TableView.Row row(
            RunReview run, RowIndex theories, LayerTally layer, Optional<Content> content, double k) {
        Optional<MeasuredValue> mass = content.flatMap(Content::massGrams);
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(layer.label()),
                        Cell.of(layer.phase().map(Layer.Phase::word).orElse("")),
                        Cell.yesNo(layer.terminal()),
                        Cell.of(layer.entry()
                                .flatMap(l -> l.custody().status())
                                .map(Layer.Status::word)
                                .orElse("")),
                        ShownFigures.cell(
                                layer.massGrams(),
                                k,
                                layer.entry()
                                        .flatMap(e -> LiveEntries.net(
                                                e.weighing().grossGrams(),
                                                e.weighing().tareGrams(),
                                                e.weighing().netGrams()))),
                        ShownFigures.cell(
                                layer.volumeMillilitres(),
                                k,
                                layer.entry().flatMap(e -> LiveEntries.of(e.volumeMillilitres()))),
                        ShownFigures.cell(
                                layer.densityGramsPerMillilitre(),
                                k,
                                Optional.of(Live.over(new Live.InRow("Mass"), new Live.InRow("Volume")))),
                        Cell.of(content.map(Content::substance).orElse("")),
                        Cell.of(content.map(c -> c.kind().word()).orElse("")),
                        ShownFigures.cell(mass, k, content.flatMap(c -> byAssay(run, layer, c))),
                        mass.map(m -> ShownFigures.uncertaintyCell(m.expandedUncertainty(k), k, m.value(), "Content"))
                                .orElseGet(() -> new Cell.Missing("")),
                        content.map(c -> Cell.of(c.upperBoundGrams())).orElseGet(() -> new Cell.Missing("")),
                        content.map(c -> percentOf(run, theories, c)).orElseGet(() -> new Cell.Missing("")),
                        Cell.of(content.map(Content::evidence).orElse("nothing recorded"))),
                Optional.empty());
    }
}
