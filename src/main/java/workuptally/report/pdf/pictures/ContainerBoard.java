package workuptally.report.pdf.pictures;

import java.util.List;
import java.util.StringJoiner;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Palette;
import workuptally.report.pdf.layout.Pen;
import workuptally.report.pdf.layout.Picture;
import workuptally.report.pdf.layout.TextStyle;
import workuptally.report.view.lines.ContainerLine;

/** Containers as bars: what is in them, what fits of the proposals, the largest fill as a line, and the days that are left in words. */
public final class ContainerBoard implements Picture {
    private static final float BAR = 10;
    private static final float STEP = 15;
    /** Of the width, for the names on the left and the words on the right: they take what they need up to that, then a second line. */
    private static final float MOST_FOR_NAMES = 0.36f;

    private static final float MOST_FOR_WORDS = 0.3f;
    private static final float GAP = 6;
    private static final float LEGEND = 13;
    private static final double END_PERCENT = 105;

    private final Look look;
    private final List<ContainerLine> lines;
    private final float names;
    private final float words;

    public ContainerBoard(Look look, List<ContainerLine> lines) {
        this.look = look;
        this.lines = List.copyOf(lines);
        this.names = width(lines.stream().map(ContainerBoard::name).toList(), MOST_FOR_NAMES);
        this.words = width(lines.stream().map(ContainerBoard::words).toList(), MOST_FOR_WORDS);
    }

    private float width(List<String> texts, float most) {
        float widest = 0;
        for (String text : texts) {
            widest = Math.max(
                    widest,
                    look.typeface()
                            .width(look.typeface().line(text), look.chart().inBold()));
        }
        return Math.min(widest + GAP, most * look.widthPoints());
    }

    private static String name(ContainerLine line) {
        return line.id() + "  " + line.stream();
    }

    private static String words(ContainerLine line) {
        return line.fillWords() + " · " + line.dayWords();
    }

    /** Lines of text that a container needs on its left or right. */
    private int rows(ContainerLine line) {
        return Math.max(
                look.typeface()
                        .wrap(name(line), look.chart().inBold(), names - GAP)
                        .size(),
                look.typeface().wrap(words(line), look.chart(), words - GAP).size());
    }

    private float step(ContainerLine line) {
        return STEP + (rows(line) - 1) * look.chart().leading();
    }

    @Override
    public float height() {
        return (float) lines.stream().mapToDouble(this::step).sum() + LEGEND;
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
        float width = look.widthPoints() - names - words;
        float y = top;
        for (ContainerLine line : lines) {
            text(
                    flow,
                    look.typeface().wrap(name(line), look.chart().inBold(), names - GAP),
                    left,
                    y,
                    look.chart().inBold());
            float from = left + names;
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
            text(
                    flow,
                    look.typeface().wrap(words(line), look.chart(), words - GAP),
                    from + width + GAP,
                    y,
                    look.chart());
            y -= step(line);
        }
        float at = sign(flow, left + names, y - 8, look.palette().isolated(), "in it now");
        at = sign(flow, at, y - 8, look.palette().portion(1), "with the proposals that fit");
        pen.line(at + 2, y, at + 2, y - 8.5f, 1.6f, look.palette().ink());
        flow.text("largest fill", at + 8, y - 7.2f, look.chart());
    }

    private static void text(PageFlow flow, List<String> lines, float x, float top, TextStyle style) {
        float y = top - 8;
        for (String line : lines) {
            flow.text(line, x, y, style);
            y -= style.leading();
        }
    }

    private float sign(PageFlow flow, float x, float y, Palette.Fill fill, String words) {
        flow.pen().area(x, y, 10, 7, fill, look.palette().ink());
        flow.text(words, x + 13, y + 0.8f, look.chart());
        return x + 13 + look.typeface().width(words, look.chart()) + 14;
    }
}
