package workuptally.report.pdf;

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
final class TaggedTable implements Block {
    private static final float PAD = 3;
    private static final float PAD_VERTICAL = 1.3f;
    private static final float BELOW = 4;
    private static final float WORD_CAP = 84;
    private static final float CHART_WIDTH = 112;
    private static final float MARK_WIDTH = 10;
    private static final int BRIEF_LINES = 2;
    private static final float BOX_WIDTH = 46;
    private static final float BOX_WIDTH_LEAST = 28;
    private static final int BOX_LINES = 2;

    private final Look look;
    private final List<TableColumn> columns;
    private final List<Row> rows = new ArrayList<>();
    private final List<List<String>> head = new ArrayList<>();
    private final float[] widths;
    private final float[] numberLeft;
    private final float[] numberRight;
    private final int headLines;

    /**
     * Lays a table out.
     *
     * @throws IllegalArgumentException if a row has another number of cells than there are columns
     */
    TaggedTable(Look look, List<TableColumn> columns, List<List<TableCell>> cells) {
        this.look = look;
        this.columns = List.copyOf(columns);
        this.numberLeft = new float[columns.size()];
        this.numberRight = new float[columns.size()];
        for (List<TableCell> row : cells) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(row.size() + " cells for " + columns.size() + " columns");
            }
        }
        this.widths = measure(cells);
        for (int i = 0; i < columns.size(); i++) {
            head.add(look.typeface().wrap(columns.get(i).heading(), headStyle(), widths[i] - 2 * PAD + 0.05f));
        }
        this.headLines = head.stream().mapToInt(List::size).max().orElse(1);
        for (List<TableCell> row : cells) {
            rows.add(lay(row));
        }
    }

    private TextStyle style(TableCell cell) {
        return cell.bold() ? look.table().inBold() : look.table();
    }

    private TextStyle headStyle() {
        return new TextStyle(7.2f, true, look.palette().soft());
    }

    private float[] measure(List<List<TableCell>> cells) {
        float[] least = new float[columns.size()];
        float[] natural = new float[columns.size()];
        List<Boolean> stretches = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            TableColumn column = columns.get(i);
            natural[i] = column.scale().isPresent() ? CHART_WIDTH : headWidth(column.heading());
            least[i] =
                    isText(column) ? look.typeface().widestWord(column.heading(), headStyle(), WORD_CAP) : natural[i];
            if (column.kind() == TableColumn.Kind.BOX) {
                least[i] = Math.max(least[i], BOX_WIDTH_LEAST);
                natural[i] = Math.max(natural[i], BOX_WIDTH);
            }
            for (List<TableCell> row : cells) {
                widen(i, row.get(i), least, natural);
            }
            if (column.kind() == TableColumn.Kind.NUMBER) {
                natural[i] = Math.max(natural[i], numberLeft[i] + numberRight[i]);
                least[i] = natural[i];
            }
            least[i] += 2 * PAD;
            natural[i] += 2 * PAD;
            least[i] = Math.min(least[i], natural[i]);
            stretches.add(isText(column));
        }
        return ColumnWidths.share(least, natural, stretches, look.widthPoints());
    }

    private static boolean isText(TableColumn column) {
        return column.kind() == TableColumn.Kind.TEXT || column.kind() == TableColumn.Kind.BRIEF;
    }

    private float headWidth(String heading) {
        float widest = 0;
        for (String line : heading.split("\n", -1)) {
            widest = Math.max(widest, look.typeface().width(look.typeface().line(line), headStyle()));
        }
        return widest;
    }

    private void widen(int i, TableCell cell, float[] least, float[] natural) {
        TextStyle style = style(cell);
        float mark = cell.mark().isPresent() ? MARK_WIDTH : 0;
        if (columns.get(i).kind() == TableColumn.Kind.NUMBER) {
            String text = look.typeface().line(cell.text());
            int split = decimalPlace(text);
            numberLeft[i] = Math.max(numberLeft[i], look.typeface().width(text.substring(0, split), style));
            numberRight[i] = Math.max(numberRight[i], look.typeface().width(text.substring(split), style));
            return;
        }
        float whole = 0;
        float word = 0;
        for (String line : cell.text().split("\n", -1)) {
            whole = Math.max(whole, mark + look.typeface().width(look.typeface().line(line), style));
            word = Math.max(word, mark + look.typeface().widestWord(line, style, WORD_CAP));
        }
        natural[i] = Math.max(natural[i], whole);
        boolean kept = columns.get(i).kind() == TableColumn.Kind.WORD && whole <= WORD_CAP;
        least[i] = Math.max(least[i], kept ? whole : word);
    }

    /** Where the decimal mark is, or would be behind the last digit of the first number. */
    private int decimalPlace(String text) {
        int mark = text.indexOf(look.figures().mark());
        if (mark >= 0) {
            return mark;
        }
        int last = text.length();
        for (int i = 0; i < text.length(); i++) {
            if (Character.isDigit(text.charAt(i))
                    && (i + 1 == text.length() || !Character.isDigit(text.charAt(i + 1)))) {
                return i + 1;
            }
        }
        return last;
    }

    private Row lay(List<TableCell> cells) {
        List<List<String>> lines = new ArrayList<>();
        int most = columns.stream().anyMatch(c -> c.kind() == TableColumn.Kind.BOX) ? BOX_LINES : 1;
        for (int i = 0; i < cells.size(); i++) {
            TableCell cell = cells.get(i);
            float mark = cell.mark().isPresent() ? MARK_WIDTH : 0;
            float width = widths[i] - 2 * PAD - mark + 0.05f;
            List<String> own = columns.get(i).kind() == TableColumn.Kind.BRIEF
                    ? look.typeface().brief(cell.text(), style(cell), width, BRIEF_LINES)
                    : look.typeface().wrap(cell.text(), style(cell), width);
            lines.add(own);
            most = Math.max(most, own.size());
        }
        return new Row(List.copyOf(cells), lines, most);
    }

    private float leading() {
        return look.table().leading();
    }

    private float height(Row row) {
        return row.lineCount() * leading() + 2 * PAD_VERTICAL;
    }

    private float headHeight() {
        return headLines * headStyle().leading() + 2 * PAD_VERTICAL;
    }

    @Override
    public float height() {
        float height = headHeight() + BELOW;
        for (Row row : rows) {
            height += height(row);
        }
        return height;
    }

    @Override
    public float leastHeight() {
        return headHeight() + (rows.isEmpty() ? 0 : height(rows.get(0)));
    }

    @Override
    public void draw(PageFlow flow) {
        flow.room(Math.min(leastHeight(), flow.fullHeight()));
        PdfStructureElement table = flow.element(PdfName.TABLE);
        drawTaggedHead(flow, table);
        for (Row row : rows) {
            drawRow(flow, table, row);
        }
        flow.move(Math.min(BELOW, flow.remaining()));
    }

    private void drawTaggedHead(PageFlow flow, PdfStructureElement table) {
        PdfStructureElement tr = new PdfStructureElement(table, new PdfName("TR"));
        for (int i = 0; i < columns.size(); i++) {
            PdfStructureElement th = headElement(tr, "Column");
            int column = i;
            if (columns.get(i).scale().isPresent()) {
                drawPicture(flow, th, columns.get(i).scale().get(), column, headHeight());
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
        flow.move(headHeight());
        flow.artifact(() -> flow.rule(
                flow.left(), flow.cursor(), tableWidth(), 0.7f, look.palette().strongRule()));
    }

    private void drawHeadCell(PageFlow flow, int column) {
        if (columns.get(column).scale().isPresent()) {
            columns.get(column)
                    .scale()
                    .get()
                    .draw(flow, left(flow, column), flow.cursor(), widths[column], headHeight());
            return;
        }
        TextStyle style = headStyle();
        List<String> lines = head.get(column);
        float y = flow.cursor() - PAD_VERTICAL - (headLines - lines.size()) * style.leading();
        for (String line : lines) {
            float x = left(flow, column) + PAD;
            if (columns.get(column).kind() == TableColumn.Kind.NUMBER) {
                x += widths[column] - 2 * PAD - look.typeface().width(line, style);
            }
            flow.text(line, x, y - style.rise(), style);
            y -= style.leading();
        }
    }

    private void drawRow(PageFlow flow, PdfStructureElement table, Row row) {
        if (height(row) > flow.remaining() && height(row) + headHeight() <= flow.fullHeight()) {
            flow.turn();
            repeatHead(flow);
        }
        PdfStructureElement tr = new PdfStructureElement(table, new PdfName("TR"));
        List<PdfStructureElement> elements = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            elements.add(i == 0 ? headElement(tr, "Row") : new PdfStructureElement(tr, PdfName.TD));
        }
        int from = 0;
        while (from < row.lineCount()) {
            int fitting = (int) ((flow.remaining() - 2 * PAD_VERTICAL + 0.01f) / leading());
            if (fitting < 1) {
                flow.turn();
                repeatHead(flow);
                continue;
            }
            int to = Math.min(row.lineCount(), from + fitting);
            drawLines(flow, row, elements, from, to);
            flow.move((to - from) * leading() + 2 * PAD_VERTICAL);
            from = to;
        }
        flow.artifact(() -> flow.rule(
                flow.left(), flow.cursor(), tableWidth(), 0.35f, look.palette().rule()));
    }

    private void drawLines(PageFlow flow, Row row, List<PdfStructureElement> elements, int from, int to) {
        for (int i = 0; i < row.cells().size(); i++) {
            List<String> lines = row.lines().get(i);
            List<String> part = lines.subList(Math.min(from, lines.size()), Math.min(to, lines.size()));
            TableCell cell = row.cells().get(i);
            if (columns.get(i).kind() == TableColumn.Kind.BOX && from == 0) {
                drawBox(flow, i, (to - from) * leading() + 2 * PAD_VERTICAL);
            }
            if (cell.drawing().isPresent() && from == 0) {
                float height = (to - from) * leading() + 2 * PAD_VERTICAL;
                drawPicture(flow, elements.get(i), cell.drawing().get(), i, height);
                continue;
            }
            if (part.isEmpty() || cell.text().isBlank() && cell.mark().isEmpty()) {
                continue;
            }
            int column = i;
            boolean first = from == 0;
            Runnable drawing = () -> drawCell(flow, cell, column, part, first);
            if (cell.link().isPresent() && first) {
                float x = left(flow, column) + PAD;
                float top = flow.cursor() - PAD_VERTICAL;
                Rectangle area = new Rectangle(x, top - part.size() * leading(), x + widths[column] - 2 * PAD, top);
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
        flow.artifact(() -> new Pen(flow.canvas())
                .frame(
                        left(flow, column) + 1,
                        flow.cursor() - height + 1.5f,
                        widths[column] - 2,
                        height - 3,
                        0.5f,
                        look.palette().soft()));
    }

    private void drawPicture(PageFlow flow, PdfStructureElement cell, CellDrawing drawing, int column, float height) {
        float x = left(flow, column);
        float top = flow.cursor();
        Rectangle area = new Rectangle(x, top - height, x + widths[column], top);
        PdfStructureElement figure = Figure.element(look, cell, drawing.alternative(), area);
        flow.tagged(figure, () -> drawing.draw(flow, x, top, widths[column], height));
    }

    private void drawCell(PageFlow flow, TableCell cell, int column, List<String> lines, boolean first) {
        TextStyle style =
                cell.link().isPresent() ? style(cell).in(look.palette().link()) : style(cell);
        float x = left(flow, column) + PAD;
        float y = flow.cursor() - PAD_VERTICAL;
        if (cell.mark().isPresent()) {
            if (first) {
                TextStyle symbol = style.in(look.palette().colour(cell.mark().get()));
                flow.text(look.palette().symbol(cell.mark().get()), x, y - style.rise(), symbol);
            }
            x += MARK_WIDTH;
        }
        for (String line : lines) {
            float lineX = x;
            if (columns.get(column).kind() == TableColumn.Kind.NUMBER && lines.size() == 1) {
                float before = look.typeface().width(line.substring(0, decimalPlace(line)), style);
                lineX += widths[column] - 2 * PAD - numberRight[column] - before;
            }
            flow.text(line, lineX, y - style.rise(), style);
            y -= style.leading();
        }
    }

    private float left(PageFlow flow, int column) {
        float x = flow.left();
        for (int i = 0; i < column; i++) {
            x += widths[i];
        }
        return x;
    }

    private float tableWidth() {
        float width = 0;
        for (float w : widths) {
            width += w;
        }
        return width;
    }

    private static PdfStructureElement headElement(PdfStructureElement row, String scope) {
        PdfStructureElement th = new PdfStructureElement(row, PdfName.TH);
        PdfDictionary attributes = new PdfDictionary();
        attributes.put(PdfName.O, PdfName.TABLE);
        attributes.put(new PdfName("Scope"), new PdfName(scope));
        th.put(PdfName.A, new PdfArray(attributes));
        return th;
    }

    /**
     * A row with its lines laid.
     *
     * @param cells cells
     * @param lines lines per cell
     * @param lineCount most lines of a cell
     */
    private record Row(List<TableCell> cells, List<List<String>> lines, int lineCount) {}
}
