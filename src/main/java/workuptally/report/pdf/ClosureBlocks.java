package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import workuptally.judgement.RunReview;
import workuptally.tally.Closure;

/** Where the units of each partner were found, and where the rest can be. */
final class ClosureBlocks {
    private final Look look;
    private final RunReview run;
    private final double coverageFactor;

    ClosureBlocks(Look look, RunReview run, double coverageFactor) {
        this.look = look;
        this.run = run;
        this.coverageFactor = coverageFactor;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (run.tally().closures().isEmpty()) {
            return blocks;
        }
        blocks.add(look.subheading("Where the product is"));
        List<List<TableCell>> rows = new ArrayList<>();
        List<List<TableCell>> candidates = new ArrayList<>();
        for (Closure closure : run.tally().closures()) {
            blocks.add(new Figure(look, new ClosureBar(look, run).of(closure)));
            rows.add(closureRow(closure));
            for (Closure.Candidate candidate : closure.candidates()) {
                candidates.add(List.of(
                        TableCell.bold(candidate.place()),
                        TableCell.of(closure.skeleton()),
                        TableCell.of(range(candidate)),
                        TableCell.of(candidate.evidence()),
                        TableCell.of(candidate.settledBy())));
            }
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Units of"),
                        TableColumn.number("Charged\n(mmol)"),
                        TableColumn.number("Closure\n(%)"),
                        TableColumn.number("± U\n(%)"),
                        TableColumn.number("z"),
                        TableColumn.word("Balance"),
                        TableColumn.number("Unaccounted\n(%)"),
                        TableColumn.text("The same as")),
                rows));
        if (!candidates.isEmpty()) {
            blocks.add(look.subheading("Where the rest can be"));
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.text("Place"),
                            TableColumn.text("Units of"),
                            TableColumn.word("May hold"),
                            TableColumn.text("Evidence"),
                            TableColumn.text("Settled by")),
                    candidates));
        }
        return blocks;
    }

    private List<TableCell> closureRow(Closure closure) {
        Figures figures = look.figures();
        Figures.Pair percent = figures.pair(closure.percent().value(), closure.expandedUncertaintyPercent());
        Figures.Pair rest = figures.pair(closure.unaccountedPercent(), closure.expandedUncertaintyPercent());
        return List.of(
                TableCell.bold(closure.skeleton()),
                TableCell.of(figures.pair(closure.chargedMillimoles(), coverageFactor)
                        .value()),
                TableCell.of(percent.value()),
                TableCell.of(percent.uncertainty()),
                TableCell.of(figures.fixed(closure.z(), 1)),
                TableCell.bold(closure.verdict().word()),
                TableCell.of(rest.value()),
                TableCell.of(
                        closure.unaccountedAs().isBlank()
                                ? "–"
                                : figures.significant(closure.unaccountedGrams(), 2) + "\u00A0g "
                                        + closure.unaccountedAs()));
    }

    private String range(Closure.Candidate candidate) {
        return candidate.lowGrams() > 0
                ? look.figures().significant(candidate.lowGrams(), 2) + " to "
                        + look.figures().significant(candidate.highGrams(), 2) + "\u00A0g"
                : look.figures().bound(candidate.highGrams()) + "\u00A0g";
    }
}
