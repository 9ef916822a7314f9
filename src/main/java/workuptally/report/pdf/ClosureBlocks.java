package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import workuptally.judgement.RunReview;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.Route;

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
        List<List<TableCell>> candidates = new ArrayList<>();
        for (Closure closure : run.tally().closures()) {
            blocks.add(new ClosureRow(look, closureLine(closure), new ClosureBar(look, run).of(closure)));
            for (Closure.Candidate candidate : closure.candidates()) {
                candidates.add(List.of(
                        TableCell.bold(candidate.place()),
                        TableCell.of(closure.skeleton()),
                        TableCell.of(range(candidate)),
                        TableCell.of(candidate.evidence()),
                        TableCell.of(candidate.settledBy())));
            }
        }
        if (!candidates.isEmpty()) {
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.text("The rest can be in"),
                            TableColumn.text("Units of"),
                            TableColumn.word("May hold"),
                            TableColumn.text("Evidence"),
                            TableColumn.text("Settled by")),
                    candidates));
        }
        routes(blocks);
        return blocks;
    }

    /** Assay, charge balance and partition beside each other: they share no error, so their agreement says something. */
    private void routes(List<Block> blocks) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (Route route : run.tally().evidence().routes()) {
            rows.add(List.of(
                    TableCell.bold(route.layer()),
                    TableCell.of(route.substance()),
                    TableCell.of(route.route()),
                    TableCell.of(look.figures().significant(route.massGrams(), 3)),
                    TableCell.of(look.figures().significant(route.lowGrams(), 3) + " to "
                            + look.figures().significant(route.highGrams(), 3) + "\u00A0g"),
                    TableCell.of(route.equation())));
        }
        if (!rows.isEmpty()) {
            blocks.add(look.subheading("Independent routes to the same figure"));
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.word("Layer"),
                            TableColumn.text("Substance"),
                            TableColumn.text("Route"),
                            TableColumn.number("Mass\n(g)"),
                            TableColumn.word("Band"),
                            TableColumn.text("From")),
                    rows));
        }
    }

    private String closureLine(Closure closure) {
        Figures figures = look.figures();
        Figures.Pair percent = figures.pair(closure.percent().value(), closure.expandedUncertaintyPercent());
        Figures.Pair rest = figures.pair(closure.unaccountedPercent(), closure.expandedUncertaintyPercent());
        String grams = closure.unaccountedAs().isBlank()
                ? ""
                : ", the same as " + figures.significant(closure.unaccountedGrams(), 2) + "\u00A0g "
                        + closure.unaccountedAs();
        return "Units of " + closure.skeleton() + ": "
                + figures.pair(closure.chargedMillimoles(), coverageFactor).value() + "\u00A0mmol charged, found "
                + percent.together() + "\u00A0%, z " + figures.fixed(closure.z(), 1) + ": "
                + closure.verdict().word() + "; unaccounted " + rest.value() + "\u00A0%" + grams + ".";
    }

    private String range(Closure.Candidate candidate) {
        return candidate.lowGrams() > 0
                ? look.figures().significant(candidate.lowGrams(), 2) + " to "
                        + look.figures().significant(candidate.highGrams(), 2) + "\u00A0g"
                : look.figures().bound(candidate.highGrams()) + "\u00A0g";
    }
}
