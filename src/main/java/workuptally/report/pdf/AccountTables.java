package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.ToDoubleFunction;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedPicture;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.pdf.pictures.SolventFlow;
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

    /** What became of each solvent, the largest first, with the total and a picture. */
    List<Block> solvents(List<SolventUse> solvents) {
        if (solvents.isEmpty()) {
            return List.of(look.heading("Solvents"), new Paragraph(look, "No solvent is recorded."));
        }
        List<SolventUse> inWorkup =
                solvents.stream().filter(use -> use.inGrams() > 0).toList();
        List<List<TableCell>> rows = new ArrayList<>();
        SolventFlow.largestFirst(inWorkup).forEach(use -> rows.add(row(TableCell.bold(use.solvent()), List.of(use))));
        if (inWorkup.size() > 1) {
            rows.add(row(TableCell.bold("all solvents"), inWorkup));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(look.heading("Solvents, and what became of them"));
        if (!inWorkup.isEmpty()) {
            blocks.add(new TaggedPicture(look, new SolventFlow(look, inWorkup)));
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.text("Solvent"),
                            TableColumn.number("In\n(L)"),
                            TableColumn.number("In\n(kg)"),
                            TableColumn.number("To re-use\n(kg)"),
                            TableColumn.number("Other\ndistillates\n(kg)"),
                            TableColumn.number("In layers\n(kg)"),
                            TableColumn.number("Cakes, lots\n(kg)"),
                            TableColumn.number("Not found\n(kg)")),
                    rows));
            blocks.add(new Paragraph(
                    look,
                    "In = to re-use + in other distillates + in layers + on cakes and in lots + not found (air, pump, glassware). Layers and"
                            + " cakes are estimates where no composition is stated.",
                    look.caption()));
        }
        purification(solvents).ifPresent(blocks::add);
        return blocks;
    }

    /** What a purification took, which is an account of its own. */
    private Optional<Block> purification(List<SolventUse> solvents) {
        List<SolventUse> used = solvents.stream()
                .filter(use -> use.purificationGrams() > 0)
                .sorted(Comparator.comparingDouble(SolventUse::purificationGrams)
                        .reversed())
                .toList();
        if (used.isEmpty()) {
            return Optional.empty();
        }
        StringJoiner text = new StringJoiner(", ", "Used in purifications, beside this account: ", "");
        used.forEach(use -> text.add(use.solvent() + " " + kilogramsText(use.purificationGrams()) + "\u00A0kg"));
        String all = used.size() == 1
                ? "."
                : "; together "
                        + kilogramsText(used.stream()
                                .mapToDouble(SolventUse::purificationGrams)
                                .sum())
                        + "\u00A0kg.";
        return Optional.of(new Paragraph(look, text + all, look.caption()));
    }

    private List<TableCell> row(TableCell name, List<SolventUse> uses) {
        return List.of(
                name,
                TableCell.of(look.figures()
                        .fixed(uses.stream().mapToDouble(SolventUse::inLitres).sum(), 3)),
                sum(uses, SolventUse::inGrams),
                sum(uses, SolventUse::recoveredGrams),
                sum(uses, SolventUse::inDistillatesGrams),
                sum(uses, SolventUse::inLayersGrams),
                sum(uses, u -> u.onCakesGrams() + u.inLotsGrams()),
                sum(uses, SolventUse::notFoundGrams));
    }

    private TableCell sum(List<SolventUse> uses, ToDoubleFunction<SolventUse> part) {
        return kilograms(uses.stream().mapToDouble(part).sum());
    }

    /** The mass of each stream, the largest first, with the total. */
    List<Block> streams(List<PeriodTotals.StreamTotal> streams) {
        if (streams.isEmpty()) {
            return List.of(look.heading("Streams"), new Paragraph(look, "No layer has a stream."));
        }
        List<PeriodTotals.StreamTotal> sorted = streams.stream()
                .sorted(Comparator.comparingDouble(PeriodTotals.StreamTotal::massGrams)
                        .reversed())
                .toList();
        List<List<TableCell>> rows = new ArrayList<>();
        for (PeriodTotals.StreamTotal total : sorted) {
            rows.add(List.of(
                    TableCell.bold(total.streamName()),
                    TableCell.of(Integer.toString(total.layers())),
                    TableCell.of(leastKilograms(total))));
        }
        if (sorted.size() > 1) {
            rows.add(List.of(
                    TableCell.bold("all streams"),
                    TableCell.of(Integer.toString(sorted.stream()
                            .mapToInt(PeriodTotals.StreamTotal::layers)
                            .sum())),
                    kilograms(sorted.stream()
                            .mapToDouble(PeriodTotals.StreamTotal::massGrams)
                            .sum())));
        }
        return List.of(
                look.heading("Layers by the stream that their make-up suggests"),
                new TaggedTable(
                        look,
                        List.of(
                                TableColumn.text("Stream"),
                                TableColumn.number("Layers"),
                                TableColumn.number("Mass (kg)")),
                        rows));
    }
}
