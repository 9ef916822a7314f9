package workuptally.report.pdf.layout;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;

/**
 * A table with tagged headings and rows. Its head is repeated on every page as an artifact; a row stays on one page unless it is taller
 * than a page, and then breaks between lines, so no row is ever lost.
 */
public final class TaggedTable implements Block {
    private static final float BELOW = 4;
    private static final PdfName ROW = new PdfName("TR");
    private static final PdfName SCOPE = new PdfName("Scope");
    private static final PdfName OF_COLUMN = new PdfName("Column");
    private static final PdfName OF_ROW = new PdfName("Row");

    private final Look look;
    private final List<TableColumn> columns;
    private final TableLayout layout;

    /**
     * Lays a table out.
     *
     * @throws IllegalArgumentException if a row has another number of cells than there are columns
     */
    public TaggedTable(Look look, List<TableColumn> columns, List<List<TableCell>> cells) {
        this.look = look;
        this.columns = List.copyOf(columns);
        this.layout = new TableLayout(look, columns, cells);
    }

    @Override
    public float height() {
        float height = layout.headHeight() + BELOW;
        for (TableLayout.Row row : layout.rows()) {
            height += layout.height(row);
        }
        return height;
    }

    @Override
    public float leastHeight() {
        return layout.headHeight()
                + (layout.rows().isEmpty() ? 0 : layout.height(layout.rows().get(0)));
    }

    @Override
    public void draw(PageFlow flow) {
        flow.room(Math.min(leastHeight(), flow.fullHeight()));
        PdfStructureElement table = flow.element(PdfName.TABLE);
        drawTaggedHead(flow, table);
        for (TableLayout.Row row : layout.rows()) {
            drawRow(flow, table, row);
        }
        flow.move(Math.min(BELOW, flow.remaining()));
    }

    private void drawTaggedHead(PageFlow flow, PdfStructureElement table) {
        PdfStructureElement tr = new PdfStructureElement(table, ROW);
        for (int i = 0; i < columns.size(); i++) {
            PdfStructureElement th = headElement(tr, OF_COLUMN);
            int column = i;
            if (columns.get(i).scale().isPresent()) {
                drawPicture(flow, th, columns.get(i).scale().get(), column, layout.headHeight());
            } else if (!columns.get(i).heading().isEmpty()) {
                flow.tagged(th, () -> drawHeadCell(flow, column));
            }
        }
        endHead(flow);
    }

    private void repeatHead(PageFlow flow) {
        flow.artifact(() -> {
            for (int i = 0; i < columns.size(); i++) {
                drawHeadCell(flow, i);
            }
        });
        endHead(flow);
    }

    private void endHead(PageFlow flow) {
        flow.move(layout.headHeight());
        flow.artifact(() -> flow.rule(
                flow.left(), flow.cursor(), layout.width(), 0.7f, look.palette().strongRule()));
    }

    private void drawHeadCell(PageFlow flow, int column) {
        if (columns.get(column).scale().isPresent()) {
            columns.get(column)
                    .scale()
                    .get()
                    .draw(flow, left(flow, column), flow.cursor(), layout.width(column), layout.headHeight());
            return;
        }
        TextStyle style = layout.headStyle();
        List<String> lines = layout.headLines(column);
        float y = flow.cursor() - TableLayout.PAD_VERTICAL - (layout.headLines() - lines.size()) * style.leading();
        for (String line : lines) {
            float x = left(flow, column) + TableLayout.PAD;
            if (columns.get(column).kind() == TableColumn.Kind.NUMBER) {
                x += layout.width(column)
                        - 2 * TableLayout.PAD
                        - look.typeface().width(line, style);
            }
            flow.text(line, x, y - style.rise(), style);
            y -= style.leading();
        }
    }

    private void drawRow(PageFlow flow, PdfStructureElement table, TableLayout.Row row) {
        if (layout.height(row) > flow.remaining() && layout.height(row) + layout.headHeight() <= flow.fullHeight()) {
            flow.turn();
            repeatHead(flow);
        }
        PdfStructureElement tr = new PdfStructureElement(table, ROW);
        List<PdfStructureElement> elements = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            elements.add(i == 0 ? headElement(tr, OF_ROW) : new PdfStructureElement(tr, PdfName.TD));
        }
        int from = 0;
        while (from < row.lineCount()) {
            int fitting = (int) ((flow.remaining() - 2 * layout.padVertical(row) + 0.01f) / layout.leading());
            if (fitting < 1) {
                flow.turn();
                repeatHead(flow);
                continue;
            }
            int to = Math.min(row.lineCount(), from + fitting);
            drawLines(flow, row, elements, from, to);
            flow.move((to - from) * layout.leading() + 2 * layout.padVertical(row));
            from = to;
        }
        flow.artifact(() -> flow.rule(
                flow.left(),
                flow.cursor(),
                layout.width(),
                0.35f,
                look.palette().rule()));
    }

    private void drawLines(PageFlow flow, TableLayout.Row row, List<PdfStructureElement> elements, int from, int to) {
        for (int i = 0; i < row.cells().size(); i++) {
            List<String> lines = row.lines().get(i);
            List<String> part = lines.subList(Math.min(from, lines.size()), Math.min(to, lines.size()));
            TableCell cell = row.cells().get(i);
            if (columns.get(i).kind() == TableColumn.Kind.BOX && from == 0) {
                drawBox(flow, i, (to - from) * layout.leading() + 2 * layout.padVertical(row));
            }
            if (cell.drawing().isPresent() && from == 0) {
                float height = (to - from) * layout.leading() + 2 * layout.padVertical(row);
                drawPicture(flow, elements.get(i), cell.drawing().get(), i, height);
                continue;
            }
            if (part.isEmpty() || cell.text().isBlank() && cell.mark().isEmpty()) {
                continue;
            }
            int column = i;
            boolean first = from == 0;
            Runnable drawing = () -> drawCell(flow, cell, column, part, first, layout.padVertical(row));
            if (cell.link().isPresent() && first) {
                float x = left(flow, column) + TableLayout.PAD;
                float top = flow.cursor() - layout.padVertical(row);
                Rectangle area = new Rectangle(
                        x, top - part.size() * layout.leading(), x + layout.width(column) - 2 * TableLayout.PAD, top);
                flow.link(
                        elements.get(i),
                        area,
                        cell.link().get(),
                        "To " + look.typeface().line(cell.text()),
                        drawing);
            } else if (cell.link().isPresent()) {
                flow.artifact(drawing);
            } else {
                flow.tagged(elements.get(i), drawing);
            }
        }
    }

    private void drawBox(PageFlow flow, int column, float height) {
        flow.artifact(() -> flow.pen()
                .frame(
                        left(flow, column) + 1,
                        flow.cursor() - height + 1.5f,
                        layout.width(column) - 2,
                        height - 3,
                        0.5f,
                        look.palette().soft()));
    }

    private void drawPicture(PageFlow flow, PdfStructureElement cell, CellDrawing drawing, int column, float height) {
        float x = left(flow, column);
        float top = flow.cursor();
        Rectangle area = new Rectangle(x, top - height, x + layout.width(column), top);
        PdfStructureElement figure = TaggedPicture.element(look, cell, drawing.alternative(), area);
        flow.tagged(figure, () -> drawing.draw(flow, x, top, layout.width(column), height));
    }

    private void drawCell(
            PageFlow flow, TableCell cell, int column, List<String> lines, boolean first, float padVertical) {
        TextStyle style =
                cell.link().isPresent() ? layout.style(cell).in(look.palette().link()) : layout.style(cell);
        float x = left(flow, column) + TableLayout.PAD;
        float y = flow.cursor() - padVertical;
        if (cell.mark().isPresent()) {
            if (first) {
                TextStyle symbol = style.in(look.palette().colour(cell.mark().get()));
                flow.text(look.palette().symbol(cell.mark().get()), x, y - style.rise(), symbol);
            }
            x += TableLayout.MARK_WIDTH;
        }
        for (String line : lines) {
            float lineX = x;
            if (columns.get(column).kind() == TableColumn.Kind.NUMBER && lines.size() == 1) {
                lineX += layout.numberIndent(column, line, style);
            }
            flow.text(line, lineX, y - style.rise(), style);
            y -= style.leading();
        }
    }

    private float left(PageFlow flow, int column) {
        return flow.left() + layout.left(column);
    }

    private static PdfStructureElement headElement(PdfStructureElement row, PdfName scope) {
        PdfStructureElement th = new PdfStructureElement(row, PdfName.TH);
        PdfDictionary attributes = new PdfDictionary();
        attributes.put(PdfName.O, PdfName.TABLE);
        attributes.put(SCOPE, scope);
        th.put(PdfName.A, new PdfArray(attributes));
        return th;
    }
}
