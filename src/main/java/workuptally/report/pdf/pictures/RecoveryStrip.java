package workuptally.report.pdf.pictures;

import java.util.List;
import java.util.StringJoiner;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Palette;
import workuptally.report.pdf.layout.Pen;
import workuptally.report.pdf.layout.Picture;
import workuptally.report.view.Recovery;

/**
 * A bar a run: what was isolated, what is in kept layers, what was not found as product. Few runs lie one under the other with their
 * figures; many stand side by side.
 */
public final class RecoveryStrip implements Picture {
    private static final int MOST_LYING = 16;
    private static final int MOST_STANDING = 240;
    private static final float LYING = 9;
    private static final float LYING_STEP = 12;
    private static final float STANDING = 74;
    private static final float LABEL = 66;
    private static final float WIDEST_LABEL = 170;
    private static final float BESIDE_LABEL = 4;
    private static final float FIGURES = 138;
    private static final float LEGEND = 13;
    private static final float TOP = 3;
    private static final float LEAST_LABEL = 34;

    private final Look look;
    private final List<Recovery> runs;
    private final int left;
    private final double end;
    private final float labels;

    public RecoveryStrip(Look look, List<Recovery> runs) {
        this.look = look;
        this.runs = runs.subList(0, Math.min(MOST_STANDING, runs.size()));
        this.left = runs.size() - this.runs.size();
        this.end = Math.max(
                100,
                this.runs.stream()
                        .mapToDouble(r -> r.isolatedPercent() + r.keptPercent())
                        .max()
                        .orElse(100));
        this.labels = this.runs.stream()
                .map(r -> look.typeface().width(look.typeface().line(r.run()), look.chart()) + BESIDE_LABEL)
                .max(Float::compare)
                .map(widest -> Math.min(WIDEST_LABEL, Math.max(LABEL, widest)))
                .orElse(LABEL);
    }

    /** Ids that are too long lose their common beginning rather than the end that tells them apart. */
    private String label(Recovery run) {
        String id = look.typeface().line(run.run());
        if (look.typeface().width(id, look.chart()) <= labels - BESIDE_LABEL) {
            return id;
        }
        int common = id.length();
        for (Recovery other : runs) {
            if (!other.run().equals(run.run())) {
                int same = 0;
                while (same < Math.min(common, other.run().length())
                        && id.charAt(same) == other.run().charAt(same)) {
                    same++;
                }
                common = same;
            }
        }
        String own = common == 0 || common == id.length() ? id : "…" + id.substring(common);
        return look.typeface().fit(own, look.chart(), labels - BESIDE_LABEL);
    }

    /** True where each bar has its name beside it; with more runs some names stand below their bars. */
    public static boolean namesAll(int runs) {
        return runs <= MOST_LYING;
    }

    private boolean lies() {
        return namesAll(runs.size());
    }

    @Override
    public float height() {
        float bars = lies() ? runs.size() * LYING_STEP : STANDING + 11;
        return TOP + bars + LEGEND;
    }

    @Override
    public String alternative() {
        StringJoiner text = new StringJoiner("; ", "Recovery of each run, % of theory. ", ".");
        runs.forEach(r -> text.add(r.run() + ": " + words(r)));
        if (left > 0) {
            text.add(left + " more runs are not drawn");
        }
        return text.toString();
    }

    private String words(Recovery run) {
        if (run.isOpen()) {
            return "not computed";
        }
        String amount = run.hasLot() ? "lot mass open" : "not isolated";
        String isolated = run.isolatedGrams().isPresent() ? percent(run.isolatedPercent()) + " isolated" : amount;
        if (run.isKeptUnknown()) {
            return isolated + ", layers not assayed";
        }
        return isolated + ", " + (run.notAssayed() > 0 ? "≥\u00A0" : "") + percent(run.keptPercent()) + " in layers";
    }

    private String percent(double value) {
        return look.figures().significant(value, value < 10 ? 2 : 3) + "\u00A0%";
    }

    @Override
    public void draw(PageFlow flow, float x, float top) {
        if (lies()) {
            lying(flow, x, top - TOP);
        } else {
            standing(flow, x, top - TOP);
        }
        legend(flow, x, top - height() + 3);
    }

    private void lying(PageFlow flow, float x, float top) {
        float width = look.widthPoints() - labels - FIGURES;
        float y = top;
        for (Recovery run : runs) {
            flow.text(label(run), x, y - 7.2f, look.chart());
            float at = x + labels;
            at = part(
                    flow.pen(),
                    at,
                    y - LYING,
                    width,
                    run.isolatedPercent(),
                    look.palette().isolated());
            at = part(flow.pen(), at, y - LYING, width, run.keptPercent(), kept());
            part(
                    flow.pen(),
                    at,
                    y - LYING,
                    width,
                    run.missingPercent(),
                    look.palette().unaccounted());
            flow.text(words(run), x + labels + width + 6, y - 7.2f, look.chart());
            y -= LYING_STEP;
        }
        float full = (float) (x + labels + width * 100 / end);
        flow.pen().line(full, top + 2, full, y + 1, 0.8f, look.palette().ink());
    }

    private float part(Pen pen, float x, float y, float width, double percent, Palette.Fill fill) {
        float wide = (float) (width * percent / end);
        if (percent > 0) {
            pen.area(x, y, wide, LYING, fill, look.palette().ink());
        }
        return x + wide;
    }

    private void standing(PageFlow flow, float x, float top) {
        float step = look.widthPoints() / runs.size();
        float bar = Math.max(0.8f, step * 0.78f);
        float base = top - STANDING;
        float free = x;
        for (int i = 0; i < runs.size(); i++) {
            Recovery run = runs.get(i);
            float at = x + i * step;
            float y = base;
            y = stand(
                    flow.pen(),
                    at,
                    y,
                    bar,
                    run.isolatedPercent(),
                    look.palette().isolated());
            y = stand(flow.pen(), at, y, bar, run.keptPercent(), kept());
            stand(flow.pen(), at, y, bar, run.missingPercent(), look.palette().unaccounted());
            String label = look.typeface().line(run.run());
            float width = look.typeface().width(label, look.chart());
            if (at >= free && at + width <= x + look.widthPoints()) {
                flow.pen()
                        .line(
                                at + bar / 2,
                                base,
                                at + bar / 2,
                                base - 2,
                                0.5f,
                                look.palette().strongRule());
                flow.text(label, at, base - 9, look.chart());
                free = at + Math.max(LEAST_LABEL, width + 6);
            }
        }
    }

    private float stand(Pen pen, float x, float y, float bar, double percent, Palette.Fill fill) {
        float high = (float) (STANDING * percent / end);
        if (percent > 0) {
            pen.area(x, y, bar, high, fill, look.palette().ink());
        }
        return y + high;
    }

    private Palette.Fill kept() {
        return look.palette().portion(1);
    }

    private void legend(PageFlow flow, float x, float y) {
        float at = x + (lies() ? labels : 0);
        at = sign(flow, at, y, look.palette().isolated(), "isolated");
        at = sign(flow, at, y, kept(), "in kept layers");
        at = sign(
                flow, at, y, look.palette().unaccounted(), "not found as product (unreacted substrate is part of it)");
        if (left > 0) {
            flow.text("+ " + left + " more runs", at, y + 1, look.chart());
        }
    }

    private float sign(PageFlow flow, float x, float y, Palette.Fill fill, String words) {
        flow.pen().area(x, y, 7, 7, fill, look.palette().ink());
        flow.text(words, x + 10, y + 0.8f, look.chart());
        return x + 10 + look.typeface().width(words, look.chart()) + 14;
    }
}
