package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

/** A stacked bar of where the units of one partner were found: isolated, each layer, unaccounted. A legend names every part. */
final class BalanceBar implements Picture {
    private static final float BAR = 12;
    private static final float SWATCH = 7;

    private final Look look;
    private final String caption;
    private final List<Part> parts;
    private final List<List<Part>> legend;
    private final double totalPercent;
    private final float widthPoints;

    /**
     * A bar.
     *
     * @param caption what it is a balance of, for who cannot see it
     * @param parts parts in order; negative ones are named and not drawn
     * @param widthPoints width, points
     */
    BalanceBar(Look look, String caption, List<Part> parts, float widthPoints) {
        this.look = look;
        this.widthPoints = widthPoints;
        this.caption = caption;
        this.parts = List.copyOf(parts);
        this.totalPercent = Math.max(
                100, parts.stream().mapToDouble(p -> Math.max(0, p.percent())).sum());
        this.legend = breakLegend();
    }

    private String legendText(Part part) {
        float room = widthPoints / 2;
        return look.typeface().fit(part.label(), look.chart(), room) + " " + part.value();
    }

    private float legendWidth(Part part) {
        return SWATCH + 3 + look.typeface().width(look.typeface().line(legendText(part)), look.chart()) + 8;
    }

    private List<List<Part>> breakLegend() {
        List<List<Part>> rows = new ArrayList<>();
        List<Part> row = new ArrayList<>();
        float used = 0;
        for (Part part : parts) {
            if (!row.isEmpty() && used + legendWidth(part) > widthPoints) {
                rows.add(row);
                row = new ArrayList<>();
                used = 0;
            }
            row.add(part);
            used += legendWidth(part);
        }
        rows.add(row);
        return rows;
    }

    @Override
    public float height() {
        return BAR + 4 + legend.size() * (look.chart().leading() + 1);
    }

    @Override
    public String alternative() {
        StringJoiner text = new StringJoiner("; ", caption + ": ", ".");
        parts.forEach(p -> text.add(legendText(p)));
        return text.toString();
    }

    @Override
    public void draw(PageFlow flow, float left, float top) {
        Pen pen = flow.pen();
        float bottom = top - BAR;
        float x = left;
        for (Part part : parts) {
            if (part.percent() > 0) {
                float width = (float) (widthPoints * part.percent() / totalPercent);
                pen.area(x, bottom, width, BAR, part.fill(), look.palette().ink());
                label(flow, pen, part, x, bottom, width);
                x += width;
            }
        }
        if (totalPercent > 100) {
            float full = (float) (left + widthPoints * 100 / totalPercent);
            pen.line(
                    full,
                    bottom - 3,
                    full,
                    bottom + BAR + 3,
                    1.4f,
                    look.palette().ink());
        }
        float y = bottom - 4;
        for (List<Part> row : legend) {
            float at = left;
            for (Part part : row) {
                pen.area(
                        at,
                        y - SWATCH - 1,
                        SWATCH,
                        SWATCH,
                        part.fill(),
                        look.palette().ink());
                flow.text(
                        look.typeface().line(legendText(part)),
                        at + SWATCH + 3,
                        y - look.chart().rise(),
                        look.chart());
                at += legendWidth(part);
            }
            y -= look.chart().leading() + 1;
        }
    }

    private void label(PageFlow flow, Pen pen, Part part, float x, float bottom, float width) {
        TextStyle style = look.chart()
                .in(
                        part.fill().lightLabel()
                                ? java.awt.Color.WHITE
                                : look.palette().ink());
        String text = look.typeface().line(part.label());
        float textWidth = look.typeface().width(text, style);
        if (textWidth + 8 > width) {
            return;
        }
        float textX = x + (width - textWidth) / 2;
        if (part.fill().hatch() != Palette.Hatch.NONE) {
            pen.plain(
                    textX - 2,
                    bottom + 2.5f,
                    textWidth + 4,
                    BAR - 5,
                    part.fill().ground());
        }
        flow.text(text, textX, bottom + BAR / 2 - style.size() * 0.36f, style);
    }

    /**
     * A part of the bar.
     *
     * @param label name
     * @param percent share of what was charged, %
     * @param value share as text with unit
     * @param fill fill
     */
    record Part(String label, double percent, String value, Palette.Fill fill) {}
}
