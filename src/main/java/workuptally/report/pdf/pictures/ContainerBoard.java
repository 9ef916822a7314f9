package workuptally.report.pdf.pictures;

import java.util.List;
import java.util.StringJoiner;
import java.util.function.ToDoubleFunction;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Palette;
import workuptally.report.pdf.layout.Pen;
import workuptally.report.pdf.layout.Picture;
import workuptally.report.pdf.layout.TextStyle;
import workuptally.report.view.ContainerLine;

/** Containers as bars: what is in them, what fits of the proposals, the largest fill as a line, and the days that are left in words. */
public final class ContainerBoard implements Picture {
    private static final float BAR = 10;
    private static final float STEP = 15;
    private static final float LABEL_SHARE = 0.42f;
    private static final float WORDS_SHARE = 0.32f;
    private static final float ID_SHARE = 0.7f;
    private static final float BESIDE = 8;
    private static final float LEGEND = 13;
    private static final double END_PERCENT = 105;

    private final Look look;
    private final List<ContainerLine> lines;
    private final float label;
    private final float words;

    public ContainerBoard(Look look, List<ContainerLine> lines) {
        this.look = look;
        this.lines = List.copyOf(lines);
        this.label = widest(LABEL_SHARE, line -> {
            float id = look.typeface().width(look.typeface().line(line.id()), bold());
            return id + 5 + look.typeface().width(look.typeface().line(line.stream()), look.chart());
        });
        this.words = widest(WORDS_SHARE, line -> look.typeface().width(fill(line), look.chart()));
    }

    /** Room for the widest of some texts, at most that share of the width. */
    private float widest(float share, ToDoubleFunction<ContainerLine> width) {
        double widest = lines.stream().mapToDouble(width).max().orElse(0);
        return (float) Math.min(look.widthPoints() * share, widest + BESIDE);
    }

    private TextStyle bold() {
        return look.chart().inBold();
    }

    private String fill(ContainerLine line) {
        return look.typeface().line(line.fillWords() + " · " + line.dayWords());
    }

    @Override
    public float height() {
        return lines.size() * STEP + LEGEND;
    }

    @Override
    public String alternative() {
        StringJoiner text = new StringJoiner("; ", "Fill of the containers: ", ".");
        lines.forEach(l -> text.add(l.id() + ", " + l.stream() + ": " + l.fillWords() + ", " + l.dayWords()));
        return text.toString();
    }

    @Override
    public void draw(PageFlow flow, float left, float top) {
        Pen pen = flow.pen();
        float width = look.widthPoints() - label - words;
        float y = top;
        for (ContainerLine line : lines) {
            String id = look.typeface().fit(line.id(), bold(), label * ID_SHARE);
            flow.text(id, left, y - 8, bold());
            float used = look.typeface().width(id, bold()) + 5;
            flow.text(
                    look.typeface().fit(line.stream(), look.chart(), label - used - BESIDE + 1),
                    left + used,
                    y - 8,
                    look.chart());
            float from = left + label;
            if (line.nowPercent().isPresent()) {
                float now =
                        (float) (width * Math.min(END_PERCENT, line.nowPercent().getAsDouble()) / END_PERCENT);
                float after = (float) (width
                        * Math.min(
                                END_PERCENT,
                                line.afterPercent().orElse(line.nowPercent().getAsDouble()))
                        / END_PERCENT);
                pen.area(
                        from,
                        y - BAR,
                        now,
                        BAR,
                        look.palette().isolated(),
                        look.palette().ink());
                if (after > now) {
                    pen.area(
                            from + now,
                            y - BAR,
                            after - now,
                            BAR,
                            look.palette().portion(1),
                            look.palette().ink());
                }
            }
            pen.frame(
                    from,
                    y - BAR,
                    (float) (width * 100 / END_PERCENT),
                    BAR,
                    0.5f,
                    look.palette().strongRule());
            float limit = (float) (from + width * line.limitPercent() / END_PERCENT);
            pen.line(
                    limit, y + 1.5f, limit, y - BAR - 1.5f, 1.6f, look.palette().ink());
            flow.text(look.typeface().fit(fill(line), look.chart(), words - 5), from + width + 6, y - 8, look.chart());
            y -= STEP;
        }
        float at = sign(flow, left + label, y - 8, look.palette().isolated(), "in it now");
        at = sign(flow, at, y - 8, look.palette().portion(1), "with the proposals that fit");
        pen.line(at + 2, y, at + 2, y - 8.5f, 1.6f, look.palette().ink());
        flow.text("largest fill", at + 8, y - 7.2f, look.chart());
    }

    private float sign(PageFlow flow, float x, float y, Palette.Fill fill, String words) {
        flow.pen().area(x, y, 10, 7, fill, look.palette().ink());
        flow.text(words, x + 13, y + 0.8f, look.chart());
        return x + 13 + look.typeface().width(words, look.chart()) + 14;
    }
}
