package workuptally.report.pdf.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Palette;
import workuptally.report.pdf.layout.Picture;
import workuptally.report.view.lines.Recovery;
import workuptally.tally.balance.Closure;

/**
 * A bar a run: what was isolated, what is in kept layers, what nobody knows yet, what was not found as product. Few runs lie one under the
 * other with their figures, more of them in two or three columns; very many stand side by side, of which some have their name below.
 */
public final class RecoveryStrip implements Picture {
    private static final int MOST_ONE_COLUMN = 16;
    private static final int MOST_COLUMNS = 3;
    private static final int MOST_A_COLUMN = 22;
    private static final int MOST_STANDING = 240;
    private static final float BAR = 9;
    private static final float STEP = 12;
    private static final float NARROW_BAR = 7;
    private static final float NARROW_STEP = 9.2f;
    private static final float BETWEEN_COLUMNS = 12;
    private static final float STANDING = 74;
    private static final float LABEL = 40;
    private static final float LABEL_SHARE = 0.5f;
    private static final float BESIDE = 5;
    private static final float FIGURES = 214;
    private static final float NARROW_FIGURES = 58;
    private static final float LEGEND = 13;
    private static final float TOP = 3;
    private static final float SWATCH = 13;

    private final Look look;
    private final List<Recovery> runs;
    private final int left;
    private final int columns;
    private final double end;
    private final float labels;

    /**
     * The strip.
     *
     * @param runs runs in order of the book
     * @param roomPoints height that it should not go beyond where it can help it
     */
    public RecoveryStrip(Look look, List<Recovery> runs, float roomPoints) {
        this.look = look;
        this.columns = columns(runs.size(), roomPoints);
        this.runs = columns > 0 ? runs : runs.subList(0, Math.min(MOST_STANDING, runs.size()));
        this.left = runs.size() - this.runs.size();
        this.end = Math.max(
                100,
                this.runs.stream()
                        .mapToDouble(r -> r.isolatedPercent() + r.atMostPercent() + r.keptPercent())
                        .max()
                        .orElse(100));
        float widest = this.runs.stream()
                .map(r -> look.typeface().width(look.typeface().line(r.run()), look.chart()) + BESIDE)
                .max(Float::compare)
                .orElse(LABEL);
        this.labels = Math.min(columnWidth() * LABEL_SHARE, Math.max(LABEL, widest));
    }

    /** How many columns of lying bars; 0 where they have to stand. */
    private static int columns(int runs, float roomPoints) {
        if (runs <= MOST_ONE_COLUMN) {
            return 1;
        }
        for (int columns = 2; columns <= MOST_COLUMNS; columns++) {
            int rows = (runs + columns - 1) / columns;
            if (rows <= MOST_A_COLUMN && TOP + rows * NARROW_STEP + 2 * LEGEND <= roomPoints) {
                return columns;
            }
        }
        return 0;
    }

    private int rows() {
        return (runs.size() + columns - 1) / columns;
    }

    private float columnWidth() {
        return (look.widthPoints() - BETWEEN_COLUMNS * (columns - 1)) / Math.max(1, columns);
    }

    private float step() {
        return columns == 1 ? STEP : NARROW_STEP;
    }

    /** Ids that are too long lose their common beginning rather than the end that tells them apart. */
    private String label(Recovery run) {
        String id = look.typeface().line(run.run());
        if (look.typeface().width(id, look.chart()) <= labels - BESIDE) {
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
        return look.typeface().fit(own, look.chart(), labels - BESIDE);
    }

    @Override
    public float height() {
        return TOP + (columns > 0 ? rows() * step() : STANDING + 11) + legendHeight();
    }

    @Override
    public String alternative() {
        StringJoiner text = new StringJoiner("; ", "Recovery of each run, % of theory. ", ".");
        runs.forEach(r ->
                text.add(r.run() + ": " + words(r) + (r.worst().isEmpty() ? "" : ", worst balance " + balance(r))));
        if (left > 0) {
            text.add(left + " more runs are not drawn");
        }
        return text.toString();
    }

    private String words(Recovery run) {
        String lot = run.hasLot() ? "lot open" : "not isolated";
        String isolated = isStated(run) ? isolated(run) + " isolated" : lot;
        if (run.isKeptUnknown()) {
            return isolated + ", layers not assayed";
        }
        return isolated + ", " + (run.notAssayed() > 0 ? "≥\u00A0" : "") + percent(run.keptPercent()) + " in layers";
    }

    /** The worst balance with its verdict; empty without one. */
    private String balance(Recovery run) {
        return run.worst()
                .map(c -> look.figures()
                                .pair(c.percent().value(), c.expandedUncertaintyPercent())
                                .value() + "\u00A0% " + c.verdict().word())
                .orElse("");
    }

    private static boolean isStated(Recovery run) {
        return run.isolatedGrams().isPresent() || run.atMostGrams() > 0;
    }

    private String isolated(Recovery run) {
        return (run.atMostGrams() > 0 ? "≤\u00A0" : "") + percent(run.isolatedPercent() + run.atMostPercent());
    }

    /** What stands beside a bar of several columns: the share isolated, or why there is none, and a balance that does not close. */
    private String figure(Recovery run) {
        String isolated = isStated(run) ? isolated(run) : run.hasLot() ? "lot open" : "–";
        return run.worst()
                .map(Closure::verdict)
                .filter(v -> v == Closure.Verdict.OPEN || v == Closure.Verdict.OVER)
                .map(v -> isolated + " " + v.word())
                .orElse(isolated);
    }

    private String percent(double value) {
        return look.figures().significant(value, value < 10 ? 2 : 3) + "\u00A0%";
    }

    private List<Part> parts(Recovery run) {
        Palette palette = look.palette();
        return List.of(
                new Part(run.isolatedPercent(), palette.isolated()),
                new Part(run.keptPercent(), palette.inLayers()),
                new Part(run.notKnownPercent(), palette.notKnown()),
                new Part(run.notFoundPercent(), palette.unaccounted()));
    }

    @Override
    public void draw(PageFlow flow, float x, float top) {
        if (columns > 0) {
            for (int column = 0; column < columns; column++) {
                List<Recovery> part = runs.subList(
                        Math.min(runs.size(), column * rows()), Math.min(runs.size(), (column + 1) * rows()));
                lying(flow, part, x + column * (columnWidth() + BETWEEN_COLUMNS), top - TOP);
            }
        } else {
            standing(flow, x, top - TOP);
        }
        legend(flow, x, top - height() + legendHeight());
    }

    private void lying(PageFlow flow, List<Recovery> part, float x, float top) {
        float width = columnWidth() - labels - (columns == 1 ? FIGURES : NARROW_FIGURES);
        float bar = columns == 1 ? BAR : NARROW_BAR;
        float baseline = columns == 1 ? 7.2f : 6.4f;
        float y = top;
        for (Recovery run : part) {
            flow.text(label(run), x, y - baseline, look.chart());
            float at = x + labels;
            for (Part one : parts(run)) {
                float wide = (float) (width * one.percent() / end);
                if (one.percent() > 0) {
                    flow.pen()
                            .area(
                                    at,
                                    y - bar,
                                    wide,
                                    bar,
                                    one.fill(),
                                    look.palette().ink());
                }
                at += wide;
            }
            flow.text(columns == 1 ? words(run) : figure(run), x + labels + width + 5, y - baseline, look.chart());
            if (columns == 1) {
                String balance = balance(run);
                float end = x + columnWidth();
                flow.text(balance, end - look.typeface().width(balance, look.chart()), y - baseline, look.chart());
            }
            y -= step();
        }
        if (!part.isEmpty()) {
            float full = (float) (x + labels + width * 100 / end);
            flow.pen().line(full, top + 2, full, y + 1, 0.8f, look.palette().ink());
        }
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
            for (Part one : parts(run)) {
                float high = (float) (STANDING * one.percent() / end);
                if (one.percent() > 0) {
                    flow.pen().area(at, y, bar, high, one.fill(), look.palette().ink());
                }
                y += high;
            }
            String label = look.typeface().line(run.run());
            float width = look.typeface().width(label, look.chart());
            float middle = at + bar / 2;
            // a name stands under the middle of its own bar, where there is room for it
            if (middle - width / 2 >= free && middle + width / 2 <= x + look.widthPoints()) {
                flow.pen()
                        .line(
                                middle,
                                base,
                                middle,
                                base - 2.5f,
                                0.6f,
                                look.palette().strongRule());
                flow.text(label, middle - width / 2, base - 9.5f, look.chart());
                free = middle + width / 2 + 8;
            }
        }
    }

    /** Only what occurs in the picture is explained. */
    private List<Sign> signs() {
        Palette palette = look.palette();
        return Stream.of(
                        new Sign(Recovery::isolatedPercent, palette.isolated(), "isolated"),
                        new Sign(Recovery::keptPercent, palette.inLayers(), "in kept layers"),
                        new Sign(
                                Recovery::notKnownPercent, palette.notKnown(), "not known yet (tare or assay missing)"),
                        new Sign(Recovery::notFoundPercent, palette.unaccounted(), "not found (unreacted, or lost)"))
                .filter(sign -> runs.stream().anyMatch(r -> sign.share().applyAsDouble(r) > 0))
                .toList();
    }

    private float width(Sign sign) {
        return SWATCH + look.typeface().width(sign.words(), look.chart()) + 12;
    }

    /** What the figures beside the bars are. */
    private String figures() {
        List<String> words = new ArrayList<>();
        if (columns > 0 && runs.stream().anyMatch(r -> r.worst().isPresent())) {
            words.add(columns == 1 ? "right: worst balance" : "figure: isolated; open, over: worst balance");
        } else if (columns > 1) {
            words.add("figure: isolated");
        }
        if (left > 0) {
            words.add("+ " + left + " more runs");
        }
        return String.join(", ", words);
    }

    private float figuresLeft() {
        return look.widthPoints() - look.typeface().width(figures(), look.chart());
    }

    /** False where the figures are explained on a line of their own. */
    private boolean isOneLine() {
        double signs = signs().stream().mapToDouble(this::width).sum();
        return signs <= figuresLeft();
    }

    private float legendHeight() {
        return isOneLine() ? LEGEND : LEGEND + look.chart().leading();
    }

    private void legend(PageFlow flow, float x, float top) {
        float y = top - LEGEND + 3;
        float at = x;
        for (Sign sign : signs()) {
            flow.pen().area(at, y, 10, 7, sign.fill(), look.palette().ink());
            flow.text(sign.words(), at + SWATCH, y + 0.8f, look.chart());
            at += width(sign);
        }
        if (isOneLine()) {
            flow.text(figures(), x + figuresLeft(), y + 0.8f, look.chart());
        } else {
            flow.text(figures(), x, y + 0.8f - look.chart().leading(), look.chart());
        }
    }

    /**
     * A part of the legend.
     *
     * @param share what it is the share of, %
     * @param fill fill
     * @param words what it means
     */
    private record Sign(ToDoubleFunction<Recovery> share, Palette.Fill fill, String words) {}

    /**
     * A part of a bar.
     *
     * @param percent length, % of theory
     * @param fill fill
     */
    private record Part(double percent, Palette.Fill fill) {}
}
