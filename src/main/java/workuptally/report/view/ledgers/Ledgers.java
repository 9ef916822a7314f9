package workuptally.report.view.ledgers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.measure.MeasuredValue;
import workuptally.report.view.sheets.SolventsSection;
import workuptally.report.view.sheets.WasteSection;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Words;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.balance.CompositeSample;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.waste.SolventUse;
import workuptally.tally.waste.WasteLine;

/**
 * The ledgers of one book, one fact a row, each row with its book and what it belongs to, so that the files of many books can be put one
 * under the other and summed.
 */
public final class Ledgers {
    /** Names of the ledgers in the order of {@link #of}. */
    public static final List<String> NAMES =
            List.of("yields", "layers", "solvents", "waste", "containers", "transfers");

    private final Review review;
    private final double coverageFactor;

    private Ledgers(Review review) {
        this.review = review;
        this.coverageFactor = review.period().coverageFactor();
    }

    /** The ledgers by their names, in order. */
    public static Map<String, TableView> of(Review review) {
        Ledgers ledgers = new Ledgers(review);
        ContainerLedgers containers = new ContainerLedgers(review);
        Map<String, TableView> all = new LinkedHashMap<>();
        all.put("yields", ledgers.yields());
        all.put("layers", ledgers.layers());
        all.put("solvents", ledgers.solvents());
        all.put("waste", ledgers.waste());
        all.put("containers", containers.containers());
        all.put("transfers", containers.transfers());
        return all;
    }

    /** Columns that every ledger of runs begins with. */
    static List<Column> runColumns() {
        return new ArrayList<>(List.of(Column.text("Book", 24), Column.text("Date", 12), Column.text("Run", 14)));
    }

    private static List<Column> columns(Column... more) {
        List<Column> columns = runColumns();
        columns.addAll(List.of(more));
        return columns;
    }

    private List<Cell> head(RunReview run) {
        return new ArrayList<>(List.of(
                Cell.of(review.book().name()),
                Cell.of(run.tally().run().head().date().map(LocalDate::toString).orElse("")),
                Cell.of(run.id())));
    }

    static TableView.Row row(List<Cell> head, List<Cell> more) {
        List<Cell> cells = new ArrayList<>(head);
        cells.addAll(more);
        return new TableView.Row(cells, Optional.empty());
    }

    private static Cell value(Optional<MeasuredValue> value) {
        return value.map(v -> Cell.of(v.value())).orElseGet(() -> new Cell.Missing(""));
    }

    private TableView yields() {
        return TableView.of(
                "Yields",
                "",
                columns(
                        Column.text("Product", 28),
                        Column.text("CAS", 12),
                        Column.text("Stage", 10),
                        Column.text("Lots", 14),
                        Column.number("Theory", "g", 3),
                        Column.number("Found", "g", 3),
                        Column.number("Yield", "%", 1),
                        Column.number("U", "%", 1),
                        Column.text("Percent of", 10),
                        Column.text("Basis", 20),
                        Column.text("Upper bound", 10)),
                review.runs(),
                run -> run.tally().yields().stream().map(y -> row(head(run), found(run, y))));
    }

    private List<Cell> found(RunReview run, ProductYield found) {
        Optional<MeasuredValue> theory = run.tally().theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(p -> p.product().name().equals(found.product().name()))
                .map(Theory.ProductTheory::massGrams)
                .findFirst();
        return List.of(
                Cell.of(found.product().name()),
                cas(found.product().name()),
                Cell.of(Words.of(found.stage())),
                Cell.of(String.join(" + ", found.lots())),
                value(theory),
                Cell.of(found.massGrams().value()),
                Cell.of(found.percent().value()),
                Cell.of(found.percent().expandedUncertainty(coverageFactor)),
                Cell.of(Words.of(found.percentOf())),
                Cell.of(found.basis().word()),
                Cell.yesNo(found.basis().isUpperBound()));
    }

    private TableView layers() {
        return TableView.of(
                "Layers",
                "",
                columns(
                        Column.text("Layer", 14),
                        Column.text("Phase", 14),
                        Column.text("Ends here", 10),
                        Column.text("Status", 12),
                        Column.number("Mass", "g", 2),
                        Column.number("Volume", "mL", 1),
                        Column.text("Substance", 28),
                        Column.text("CAS", 12),
                        Column.text("Known as", 12),
                        Column.number("Holds", "g", 3),
                        Column.number("At most", "g", 3),
                        Column.number("Share", "%", 2),
                        Column.text("Outcome", 18)),
                review.runs(),
                run -> Stream.concat(
                        run.tally().layers().stream().flatMap(layer -> layer(run, layer)),
                        run.tally().evidence().composites().counted().stream().map(sample -> together(run, sample))));
    }

    /** A row for each substance; a layer of which none is known has one row. Mass and volume stand in the first one only. */
    private Stream<TableView.Row> layer(RunReview run, LayerTally layer) {
        List<Optional<Content>> contents =
                new ArrayList<>(layer.contents().stream().map(Optional::of).toList());
        if (contents.isEmpty()) {
            contents.add(Optional.empty());
        }
        List<TableView.Row> rows = new ArrayList<>();
        for (Optional<Content> content : contents) {
            boolean first = rows.isEmpty();
            rows.add(row(
                    head(run),
                    List.of(
                            Cell.of(layer.label()),
                            Cell.of(layer.phase().map(p -> p.word()).orElse("")),
                            Cell.yesNo(layer.terminal()),
                            Cell.of(layer.entry()
                                    .flatMap(l -> l.custody().status())
                                    .map(s -> s.word())
                                    .orElse("")),
                            first ? value(layer.massGrams()) : new Cell.Missing(""),
                            first ? value(layer.volumeMillilitres()) : new Cell.Missing(""),
                            Cell.of(content.map(Content::substance).orElse("")),
                            cas(content.map(Content::substance).orElse("")),
                            Cell.of(content.map(c -> c.kind().word()).orElse("")),
                            value(content.flatMap(Content::massGrams)),
                            Cell.of(content.map(Content::upperBoundGrams).orElse(OptionalDouble.empty())),
                            Cell.of(content.map(Content::percentOf).orElse(OptionalDouble.empty())),
                            Cell.of(run.decision(layer.label())
                                    .map(LayerDecision::outcome)
                                    .map(LayerDecision.Outcome::word)
                                    .orElse("")))));
        }
        return rows.stream();
    }

    /** What layers hold together by one assay, less what stands in the rows of single ones, so that a plain sum is right. */
    private TableView.Row together(RunReview run, CompositeSample sample) {
        double alone = run.tally().layers().stream()
                .filter(l -> sample.labels().contains(l.label()))
                .flatMap(l -> l.contents().stream())
                .filter(c -> c.isOf(sample.substance()))
                .flatMap(c -> c.massGrams().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
        Content together = sample.together();
        return row(
                head(run),
                List.of(
                        Cell.of(sample.name()),
                        Cell.of("together"),
                        Cell.yesNo(true),
                        Cell.of(""),
                        new Cell.Missing(""),
                        new Cell.Missing(""),
                        Cell.of(sample.substance()),
                        cas(sample.substance()),
                        Cell.of(together.kind().word()),
                        together.massGrams()
                                .map(m -> Cell.of(Math.max(0, m.value() - alone)))
                                .orElseGet(() -> new Cell.Missing("")),
                        Cell.of(together.upperBoundGrams()),
                        Cell.of(together.percentOf()),
                        Cell.of("")));
    }

    private TableView solvents() {
        List<Column> columns = runColumns();
        columns.addAll(solventColumns());
        return TableView.of(
                SolventsSection.TITLE,
                SolventsSection.NOTE,
                columns,
                review.runs(),
                run -> run.tally().solvents().stream().map(use -> solvent(run, use)));
    }

    private TableView.Row solvent(RunReview run, SolventUse use) {
        return row(head(run), solvent(use));
    }

    /** The columns of the table of solvents, with the registry number behind the name. */
    static List<Column> solventColumns() {
        List<Column> columns = new ArrayList<>(SolventsSection.columns());
        columns.add(1, Column.text("CAS", 12));
        return columns;
    }

    /** The cells of {@link #solventColumns()}. */
    static List<Cell> solvent(SolventUse use) {
        List<Cell> cells = new ArrayList<>(SolventsSection.cells(use));
        cells.add(1, Cell.of(use.registryNumber().orElse("")));
        return cells;
    }

    private TableView waste() {
        return TableView.of(
                WasteSection.TITLE,
                WasteSection.NOTE,
                wasteColumns(),
                review.runs(),
                run -> run.tally().waste().stream().map(line -> row(head(run), waste(line))));
    }

    static List<Column> wasteColumns() {
        return columns(
                Column.text("Layer", 14),
                Column.text("Stream key", 24),
                Column.text("Stream", 34),
                Column.text("Why", 50),
                Column.number("Waste", "g", 1),
                Column.number("To re-use", "g", 1),
                Column.number("Used up", "g", 1),
                Column.text("Amount known", 8));
    }

    /** What is to be re-used, and what was used up, has its own column, so that the plain sum of the first is the waste. */
    static List<Cell> waste(WasteLine line) {
        return List.of(
                Cell.of(line.layer()),
                Cell.of(line.stream()),
                Cell.of(line.streamName()),
                Cell.of(line.why()),
                mass(line, WasteLine.Standing.KEPT),
                mass(line, WasteLine.Standing.TO_REUSE),
                mass(line, WasteLine.Standing.USED_UP),
                Cell.yesNo(line.massGrams().isPresent()));
    }

    private static Cell mass(WasteLine line, WasteLine.Standing standing) {
        return line.standing() == standing ? Cell.of(line.massGrams()) : new Cell.Missing("");
    }

    private Cell cas(String substance) {
        return Cell.of(review.registryNumbers().getOrDefault(substance, ""));
    }
}
