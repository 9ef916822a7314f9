package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import workuptally.judgement.RunReview;
import workuptally.measure.MeasuredValue;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.YieldBasis;

/** The key figures of a run: products with theory, what was found and yield, and the lots that were weighed. */
final class ProductTables {
    private final Look look;
    private final RunReview run;
    private final double coverageFactor;
    private final RunWords words;
    private final MeasuredCells cells;

    ProductTables(Look look, RunReview run, double coverageFactor) {
        this.look = look;
        this.run = run;
        this.coverageFactor = coverageFactor;
        this.words = new RunWords(look, run, coverageFactor);
        this.cells = new MeasuredCells(look.figures(), coverageFactor);
    }

    /** A planned run has no yields to show. */
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (run.tally().plan().isEmpty()) {
            products(blocks);
        }
        lots(blocks);
        return blocks;
    }

    private void products(List<Block> blocks) {
        List<RunWords.ProductLine> lines = words.productLines();
        boolean planned = lines.stream().anyMatch(l -> l.plannedPercent().isPresent());
        List<List<TableCell>> rows = new ArrayList<>();
        for (RunWords.ProductLine line : lines) {
            Optional<MeasuredValue> mass = line.found().map(ProductYield::massGrams);
            List<TableCell> row = new ArrayList<>(List.of(
                    TableCell.bold(line.name()),
                    TableCell.of(line.theoryMillimoles()),
                    TableCell.of(line.theory()),
                    cells.value(mass),
                    cells.uncertainty(mass),
                    TableCell.of(line.yield().value()),
                    TableCell.of(line.yield().uncertainty()),
                    TableCell.of(line.found().map(this::restsOn).orElse("no yield stated"))));
            if (planned) {
                row.add(7, TableCell.of(planned(line)));
            }
            rows.add(row);
        }
        List<TableColumn> columns = new ArrayList<>(List.of(
                TableColumn.text("Product"),
                TableColumn.number("Theory\n(mmol)"),
                TableColumn.number("Theory\n(g)"),
                TableColumn.number("Found\n(g)"),
                TableColumn.number("± U\n(g)"),
                TableColumn.number("Yield\n(%)"),
                TableColumn.number("± U\n(%)"),
                TableColumn.text("Rests on")));
        if (planned) {
            columns.add(7, TableColumn.number("Planned\n(%)"));
        }
        blocks.add(new TaggedTable(look, columns, rows));
        asTyped(blocks);
    }

    private String planned(RunWords.ProductLine line) {
        return line.plannedPercent().isPresent()
                ? look.figures().plain(line.plannedPercent().getAsDouble())
                : "";
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
                    cells.value(lot.netGrams()),
                    cells.uncertainty(lot.netGrams()),
                    cells.value(lot.overTheoryPercent()),
                    cells.value(percent),
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
}
