package workuptally.report.pdf.pictures;

import java.util.List;
import java.util.stream.Collectors;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Pen;
import workuptally.report.pdf.layout.Picture;
import workuptally.report.pdf.layout.TextStyle;
import workuptally.report.view.firstpage.TopFigure;

/** The figures that a report opens with, side by side, each on a light ground: label, figure, detail. */
public final class TopFigureStrip implements Picture {
    private static final float BETWEEN = 8;
    private static final float PAD = 6;

    private final Look look;
    private final List<TopFigure> figures;
    private final float width;

    public TopFigureStrip(Look look, List<TopFigure> figures) {
        this.look = look;
        this.figures = List.copyOf(figures);
        this.width = (look.widthPoints() - BETWEEN * (figures.size() - 1)) / figures.size();
    }

    private TextStyle value() {
        return new TextStyle(19, true, look.palette().ink());
    }

    /** As large as the figure has room for: none is cut. */
    private TextStyle fitting(String value) {
        float room = (width - 2 * PAD) / look.typeface().width(value, value());
        return room >= 1 ? value() : new TextStyle(value().size() * room, true, value().colour());
    }

    private TextStyle label() {
        return look.caption().inBold();
    }

    @Override
    public float height() {
        return 2 * PAD
                + label().leading()
                + value().leading()
                + detailLines() * look.caption().leading();
    }

    /** As many lines as the longest detail needs: none is cut. */
    private int detailLines() {
        return figures.stream().mapToInt(f -> detail(f).size()).max().orElse(0);
    }

    private List<String> detail(TopFigure figure) {
        return look.typeface().wrap(figure.detail(), look.caption(), width - 2 * PAD);
    }

    @Override
    public String alternative() {
        return figures.stream()
                .map(f -> f.label() + ": " + f.value() + ", " + f.detail())
                .collect(Collectors.joining(". ", "", "."));
    }

    @Override
    public void draw(PageFlow flow, float left, float top) {
        Pen pen = flow.pen();
        float x = left;
        for (TopFigure figure : figures) {
            pen.plain(x, top - height(), width, height(), look.palette().band());
            float y = top - PAD;
            flow.text(
                    look.typeface().fit(figure.label(), label(), width - 2 * PAD),
                    x + PAD,
                    y - label().rise(),
                    label());
            y -= label().leading();
            flow.text(figure.value(), x + PAD, y - value().rise(), fitting(figure.value()));
            y -= value().leading();
            for (String line : detail(figure)) {
                flow.text(line, x + PAD, y - look.caption().rise(), look.caption());
                y -= look.caption().leading();
            }
            x += width + BETWEEN;
        }
    }
}
