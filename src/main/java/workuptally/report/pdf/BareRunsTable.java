package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import workuptally.judgement.RunReview;
import workuptally.measure.MeasuredValue;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.view.lines.BareRuns;
import workuptally.report.view.lines.ProductLine;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;

/** Runs that have no part of their own, a row for each product and stage. */
final class BareRunsTable {
    private final Look look;
    private final BareRuns bare;
    private final double coverageFactor;

    BareRunsTable(Look look, BareRuns bare, double coverageFactor) {
        this.look = look;
        this.bare = bare;
        this.coverageFactor = coverageFactor;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (bare.runs().isEmpty()) {
            return blocks;
        }
        blocks.add(look.heading("Runs of which only the product was weighed"));
        boolean reactions = bare.runs().stream()
                .anyMatch(r -> !r.tally().run().head().reaction().isBlank());
        boolean remarks = bare.runs().stream()
                .anyMatch(r -> !r.tally().run().head().notes().text().isBlank());
        List<TableColumn> columns = new ArrayList<>(List.of(
                TableColumn.word("Run"),
                TableColumn.word("Date"),
                TableColumn.brief("Product"),
                TableColumn.number("Limiting\n(mmol)"),
                TableColumn.number("Theory\n(g)"),
                TableColumn.number("Found ± U\n(g)"),
                TableColumn.number("Yield ± U\n(%)"),
                TableColumn.brief("Rests on")));
        if (reactions) {
            columns.add(1, TableColumn.text("Reaction"));
        }
        if (remarks) {
            columns.add(TableColumn.text("Note"));
        }
        List<List<TableCell>> rows = new ArrayList<>();
        bare.runs().forEach(run -> rows.addAll(rows(run, reactions, remarks)));
        blocks.add(new TaggedTable(look, columns, rows));
        StringJoiner said = new StringJoiner(" ");
        said.add(bare.runs().size() + " runs without a recorded workup: what is not in their product may be there.");
        bare.notesInWords().ifPresent(said::add);
        bare.notComputedInWords().map(look.figures()::inWords).ifPresent(said::add);
        blocks.add(new Paragraph(
                look, said.toString(), look.caption().in(look.palette().ink())));
        return blocks;
    }

    private List<List<TableCell>> rows(RunReview run, boolean reactions, boolean remarks) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (ProductLine line : ProductLine.of(run.tally(), look.figures(), coverageFactor)) {
            boolean first = rows.isEmpty();
            Optional<MeasuredValue> mass = line.found().map(ProductYield::massGrams);
            List<TableCell> row = new ArrayList<>(List.of(
                    first ? TableCell.bold(run.id()) : TableCell.of(""),
                    TableCell.of(
                            first
                                    ? run.tally()
                                            .run()
                                            .head()
                                            .date()
                                            .map(Object::toString)
                                            .orElse("")
                                    : ""),
                    TableCell.of(line.name()),
                    TableCell.of(first ? limiting(run) : ""),
                    TableCell.of(line.theory()),
                    TableCell.of(
                            mass.map(m -> look.figures().pair(m, coverageFactor).together())
                                    .orElse("–")),
                    TableCell.of(line.yield().together()),
                    TableCell.of(line.found().map(y -> y.basis().word()).orElse("no yield stated"))));
            if (reactions) {
                row.add(1, TableCell.of(first ? run.tally().run().head().reaction() : ""));
            }
            if (remarks) {
                row.add(TableCell.of(first ? run.tally().run().head().notes().text() : ""));
            }
            rows.add(row);
        }
        return rows;
    }

    private String limiting(RunReview run) {
        List<Theory.Limiting> limiting =
                run.tally().theory().map(Theory::limiting).orElse(List.of());
        return limiting.isEmpty()
                ? "–"
                : limiting.stream()
                        .map(l -> look.figures()
                                .pair(l.amountMillimoles(), coverageFactor)
                                .value())
                        .distinct()
                        .collect(Collectors.joining("\n"));
    }
}
