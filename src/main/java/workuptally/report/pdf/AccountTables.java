package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.tally.waste.SolventUse;

/** The tables of solvents and of streams, of a book or of a period. */
final class AccountTables {
    private final Look look;

    AccountTables(Look look) {
        this.look = look;
    }

    /** To the gram; a smaller mass is not shown as nothing. */
    String kilogramsText(double grams) {
        boolean vanishes = grams > 0 && grams < 0.5;
        return vanishes ? "< " + look.figures().fixed(0.001, 3) : look.figures().fixed(grams / 1000, 3);
    }

    TableCell kilograms(double grams) {
        return TableCell.of(kilogramsText(grams));
    }

    /** Mass of a stream; a least one where layers of it have no amount recorded. */
    private String leastKilograms(PeriodTotals.StreamTotal total) {
        return total.withoutMass() == 0
                ? kilogramsText(total.massGrams())
                : kilogramsText(total.massGrams()) + " + " + total.withoutMass() + "\u00A0not recorded";
    }

    /** What became of each solvent, from charged to not found. */
    List<Block> solvents(List<SolventUse> solvents) {
        if (solvents.isEmpty()) {
            return List.of(look.subheading("Solvents"), new Paragraph(look, "No solvent is recorded."));
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (SolventUse use : solvents) {
            rows.add(List.of(
                    TableCell.bold(use.solvent()),
                    TableCell.of(look.figures().fixed(use.inLitres(), 3)),
                    TableCell.bold(kilogramsText(use.inGrams())),
                    kilograms(use.chargedGrams()),
                    kilograms(use.workupGrams()),
                    kilograms(use.recoveredGrams()),
                    kilograms(use.inLayersGrams()),
                    kilograms(use.onCakesGrams()),
                    kilograms(use.inLotsGrams()),
                    kilograms(use.notFoundGrams()),
                    kilograms(use.purificationGrams())));
        }
        return List.of(
                look.subheading("Solvents"),
                new TaggedTable(
                        look,
                        List.of(
                                TableColumn.text("Solvent"),
                                TableColumn.number("In\n(L)"),
                                TableColumn.number("In\n(kg)"),
                                TableColumn.number("Charged\n(kg)"),
                                TableColumn.number("Workup\n(kg)"),
                                TableColumn.number("Recovered\n(kg)"),
                                TableColumn.number("In layers\n(kg)"),
                                TableColumn.number("On cakes\n(kg)"),
                                TableColumn.number("In lots\n(kg)"),
                                TableColumn.number("Not found\n(kg)"),
                                TableColumn.number("Purification\n(kg)")),
                        rows),
                new Paragraph(
                        look,
                        "In = charged + workup = recovered + in layers + on cakes + in lots + not found. Layers and cakes are estimates where"
                                + " no composition is stated. Not found: air, pump, glassware. Purification stands outside this sum. Litres"
                                + " follow from mass and density.",
                        look.caption()));
    }

    /** The mass of each stream. */
    List<Block> streams(List<PeriodTotals.StreamTotal> streams) {
        if (streams.isEmpty()) {
            return List.of(look.subheading("Streams"), new Paragraph(look, "No layer has a stream."));
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (PeriodTotals.StreamTotal total : streams) {
            rows.add(List.of(
                    TableCell.bold(total.streamName()),
                    TableCell.of(Integer.toString(total.layers())),
                    TableCell.of(leastKilograms(total))));
        }
        return List.of(
                look.subheading("Streams"),
                new TaggedTable(
                        look,
                        List.of(
                                TableColumn.text("Stream"),
                                TableColumn.number("Layers"),
                                TableColumn.number("Mass (kg)")),
                        rows));
    }
}
