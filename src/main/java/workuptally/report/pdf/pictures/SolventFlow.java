package workuptally.report.pdf.pictures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.StringJoiner;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Palette;
import workuptally.report.pdf.layout.Picture;
import workuptally.tally.waste.SolventUse;

/** What became of each solvent as a stacked bar, the largest first: in distillates, in layers, on cakes and in lots, not found. */
public final class SolventFlow implements Picture {
    private static final int MOST = 10;
    private static final float BAR = 9;
    private static final float STEP = 13;
    private static final float LABEL = 120;
    private static final float VALUE = 62;
    private static final float LEGEND = 13;

    private final Look look;
    private final List<SolventUse> solvents;
    private final double largest;

    public SolventFlow(Look look, List<SolventUse> solvents) {
        this.look = look;
        this.solvents = largestFirst(solvents).stream()
                .filter(s -> s.inGrams() > 0 || s.missingAmounts() > 0)
                .limit(MOST)
                .toList();
        this.largest = this.solvents.stream()
                .mapToDouble(s -> parts(s).stream().mapToDouble(Part::grams).sum())
                .max()
                .orElse(1);
    }

    /** Solvents by what was put in, the largest first. */
    public static List<SolventUse> largestFirst(List<SolventUse> solvents) {
        return solvents.stream()
                .sorted(Comparator.comparingDouble(SolventUse::inGrams).reversed())
                .toList();
    }

    private List<Part> parts(SolventUse use) {
        return List.of(
                new Part(
                        "to re-use",
                        Math.max(0, use.recoveredGrams()),
                        look.palette().isolated()),
                new Part(
                        "other distillates",
                        Math.max(0, use.inDistillatesGrams()),
                        look.palette().portion(0)),
                new Part(
                        "in layers",
                        Math.max(0, use.inLayersGrams()),
                        look.palette().portion(1)),
                new Part(
                        "on cakes and in lots",
                        Math.max(0, use.onCakesGrams() + use.inLotsGrams()),
                        look.palette().portion(2)),
                new Part(
                        "not found: air, pump, glassware",
                        Math.max(0, use.notFoundGrams()),
                        look.palette().unaccounted()));
    }

    private String kilograms(double grams) {
        return look.figures().amount(grams / 1000, 3) + "\u00A0kg";
    }

    @Override
    public float height() {
        return solvents.size() * STEP + LEGEND;
    }

    @Override
    public String alternative() {
        StringJoiner text = new StringJoiner("; ", "What became of the solvents: ", ".");
        for (SolventUse use : solvents) {
            List<String> parts = new ArrayList<>();
            parts(use).stream()
                    .filter(p -> p.grams() > 0)
                    .forEach(p -> parts.add(p.name() + " " + kilograms(p.grams())));
            text.add(use.solvent() + " in " + (use.missingAmounts() > 0 ? "at least " : "") + kilograms(use.inGrams())
                    + ", " + String.join(", ", parts));
        }
        return text.toString();
    }

    @Override
    public void draw(PageFlow flow, float left, float top) {
        float width = look.widthPoints() - LABEL - VALUE;
        float y = top;
        for (SolventUse use : solvents) {
            flow.text(look.typeface().fit(use.solvent(), look.chart(), LABEL - 6), left, y - 7.5f, look.chart());
            float x = left + LABEL;
            for (Part part : parts(use)) {
                float wide = (float) (width * part.grams() / largest);
                if (part.grams() > 0) {
                    flow.pen()
                            .area(
                                    x,
                                    y - BAR,
                                    wide,
                                    BAR,
                                    part.fill(),
                                    look.palette().ink());
                }
                x += wide;
            }
            flow.text(
                    (use.missingAmounts() > 0 ? "≥\u00A0" : "") + kilograms(use.inGrams()),
                    x + 4,
                    y - 7.5f,
                    look.chart());
            y -= STEP;
        }
        float at = left + LABEL;
        for (Part part : solvents.isEmpty() ? List.<Part>of() : parts(solvents.get(0))) {
            flow.pen().area(at, y - 9, 7, 7, part.fill(), look.palette().ink());
            flow.text(part.name(), at + 10, y - 8.2f, look.chart());
            at += 10 + look.typeface().width(part.name(), look.chart()) + 12;
        }
    }

    private record Part(String name, double grams, Palette.Fill fill) {}
}
