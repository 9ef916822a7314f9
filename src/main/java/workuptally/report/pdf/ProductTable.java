package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import workuptally.judgement.RunReview;
import workuptally.measure.MeasuredValue;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.view.lines.ProductLine;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;

/** Theory against what was isolated, a row per product and stage. */
final class ProductTable {
    private static final int PLANNED_COLUMN = 5;

    private final Look look;
    private final RunReview run;
    private final double coverageFactor;

    ProductTable(Look look, RunReview run, double coverageFactor) {
        this.look = look;
        this.run = run;
        this.coverageFactor = coverageFactor;
    }

    List<Block> blocks() {
        List<List<TableCell>> rows = new ArrayList<>();
        List<ProductLine> lines = ProductLine.of(run.tally(), look.figures(), coverageFactor);
        boolean planned = lines.stream().anyMatch(l -> l.plannedPercent().isPresent());
        for (ProductLine line : lines) {
            Optional<MeasuredValue> mass = line.found().map(ProductYield::massGrams);
            List<TableCell> row = new ArrayList<>(List.of(
                    TableCell.bold(line.name()),
                    TableCell.of(line.theory()),
                    TableCell.of(String.join("\n", line.crudeOverTheory())),
                    TableCell.of(
                            mass.map(m -> look.figures().pair(m, coverageFactor).together())
                                    .orElse("–")),
                    TableCell.of(line.yield().together()),
                    TableCell.of(line.found().map(this::restsOn).orElse("no yield stated"))));
            if (planned) {
                row.add(PLANNED_COLUMN, TableCell.of(planned(line)));
            }
            rows.add(row);
        }
        List<Block> blocks = new ArrayList<>();
        List<TableColumn> columns = new ArrayList<>(List.of(
                TableColumn.text("Product"),
                TableColumn.number("Theory\n(g)"),
                TableColumn.number("Crude over\ntheory (%)"),
                TableColumn.number("Found ± U\n(g)"),
                TableColumn.number("Yield ± U\n(%)"),
                TableColumn.text("Rests on")));
        if (planned) {
            columns.add(PLANNED_COLUMN, TableColumn.number("Planned\n(%)"));
        }
        blocks.add(new TaggedTable(look, columns, rows));
        asTyped(blocks);
        return blocks;
    }

    private String planned(ProductLine line) {
        return line.plannedPercent().isPresent()
                ? look.figures().plain(line.plannedPercent().getAsDouble())
                : "";
    }

    private String restsOn(ProductYield found) {
        StringJoiner text = new StringJoiner("; ");
        text.add(found.basis().word() + (found.lots().isEmpty() ? "" : " of " + String.join(" + ", found.lots())));
        found.conversionAdjustedPercent()
                .ifPresent(p -> text.add("by conversion "
                        + look.figures().pair(p, coverageFactor).value() + "\u00A0%"));
        found.aliquotCorrectedPercent()
                .ifPresent(p -> text.add("aliquots put back "
                        + look.figures().pair(p, coverageFactor).value() + "\u00A0%"));
        return text.toString();
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
                                    + "\u00A0g; the formulas win until the book is corrected.",
                            look.caption())));
        }
    }
}
