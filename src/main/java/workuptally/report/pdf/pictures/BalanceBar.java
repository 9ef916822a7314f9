package workuptally.report.pdf.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Palette;
import workuptally.report.pdf.layout.Pen;
import workuptally.report.pdf.layout.Picture;
import workuptally.report.pdf.layout.TextStyle;

/**
 * A stacked bar of where the units of one partner were found: isolated, each layer, unaccounted. A legend names every part; a bracket above
 * says how well the sum of what was found is known.
 */
final class BalanceBar implements Picture {
    private static final float BAR = 12;
    private static final float SWATCH = 7;
    private static final float BRACKET = 5;

    private final Look look;
    private final String caption;
    private final List<Part> parts;
    private final List<List<Part>> legend;
    private final double totalPercent;
    private final float widthPoints;
    private final double foundPercent;
    private final double expandedPercent;

    /**
     * A bar.
     *
     * @param caption what it is a balance of, for who cannot see it
     * @param parts parts in order; negative ones are named and not drawn
     * @param foundPercent sum of what was found, %
     * @param expandedPercent its expanded uncertainty, %; 0 for none
     * @param widthPoints width, points
     */
    BalanceBar(
            Look look,
            String caption,
            List<Part> parts,
            double foundPercent,
            double expandedPercent,
            float widthPoints) {
        this.look = look;
        this.widthPoints = widthPoints;
        this.foundPercent = foundPercent;
        this.expandedPercent = expandedPercent;
        this.caption = caption;
        this.parts = List.copyOf(parts);
        this.totalPercent = Math.max(
                Math.max(100, foundPercent + expandedPercent),
                parts.stream().mapToDouble(p -> Math.max(0, p.percent())).sum());
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
        return BRACKET + BAR + 4 + legend.size() * (look.chart().leading() + 1);
    }

    @Override
    public String alternative() {
        StringJoiner text = new StringJoiner("; ", caption + ": ", ".");
        parts.forEach(p -> text.add(legendText(p)));
        if (expandedPercent > 0) {
            text.add("found together " + look.figures().fixed(foundPercent, 1) + " ± "
                    + look.figures().fixed(expandedPercent, 1) + "\u00A0%");
        }
        return text.toString();
    }

    @Override
    public void draw(PageFlow flow, float left, float top) {
        Pen pen = flow.pen();
        float bottom = top - BRACKET - BAR;
        bracket(pen, left, top);
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

    /** From found − U to found + U: where it reaches the end of the bar, the balance closes. */
    private void bracket(Pen pen, float left, float top) {
        if (expandedPercent > 0) {
            float from = at(Math.max(0, foundPercent - expandedPercent), left);
            float to = at(foundPercent + expandedPercent, left);
            float y = top - 2;
            pen.line(from, y, to, y, 1f, look.palette().ink());
            for (float end : new float[] {from, to}) {
                pen.line(end, y + 2, end, y - 2.5f, 1f, look.palette().ink());
            }
        }
    }

    private float at(double percent, float left) {
        return (float) (left + widthPoints * percent / totalPercent);
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
