package workuptally.report.pdf.layout;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Labels on common sheets, to print at full size or to cut out. What does not fit on one label at 8 pt goes on with a second one, so that
 * nothing is cut or stands below its frame; before that, who knows more gets shorter, or is left to the upper margin, which says it of
 * all labels. Title and caution stand there.
 */
public final class LabelPages implements Block {
    /** Size of the text of a label, points: the larger where it fits, the smaller at least. */
    private static final float[] SIZES = {9, 8.5f, 8};

    private static final float FRAME_INSET = 2;
    private static final float PAD = 6;
    private static final float PAD_VERTICAL = 2;
    private static final float FOOT = 12.3f;
    private static final float NAME_SIZE = 9.5f;
    private static final float HEAD_FROM = 27;
    /** Part of the size of a font below its base line. */
    private static final float DESCENT = 0.25f;

    private static final String SHORT_BLANK = "_".repeat(8);
    private static final String LONG_BLANK = "_{9,}";
    private static final String SENTENCE_END = "(?<=\\.) (?=\\p{Lu})";

    private final Look look;
    private final PdfOptions.Paper paper;
    private final Heading.Level level;
    private final String title;
    private final String caution;
    private final LabelFormat format;
    private final List<Cell> cells = new ArrayList<>();

    /**
     * Lays labels out.
     *
     * @param paper paper, which the format of the labels follows
     * @param level level of the title
     * @param title title of the sheets
     * @param caution what is to be said of all labels, at most two lines
     */
    public LabelPages(
            Look look, PdfOptions.Paper paper, Heading.Level level, String title, String caution, List<Label> labels) {
        this.look = look;
        this.paper = paper;
        this.level = level;
        this.caution = caution;
        this.format = LabelFormat.of(paper);
        this.title = title + ", " + look.figures().inWords(format.words());
        labels.forEach(label -> cells.addAll(lay(label)));
    }

    /**
     * What stands on a label.
     *
     * @param name run and layer, or container
     * @param contents phase and contents
     * @param hazards hazard words
     * @param deferring who knows more
     * @param made day and pH, as recorded or as lines to fill in
     * @param owner owner and phone
     */
    public record Label(String name, String contents, String hazards, String deferring, String made, String owner) {}

    /**
     * One place of a sheet.
     *
     * @param name name, with its number where the label needs several places
     * @param body lines of contents and hazards
     * @param foot lines to read or to fill in at the lower edge; none where it goes on
     */
    private record Cell(Line name, List<Line> body, List<Line> foot) {}

    private record Line(String text, TextStyle style) {}

    private List<Cell> lay(Label label) {
        for (float size : SIZES) {
            List<Line> body = body(label, size);
            List<Line> foot = foot(label, size);
            if (body.size() <= room(size, foot.size())) {
                return List.of(new Cell(name(label.name()), body, foot));
            }
        }
        float least = SIZES[SIZES.length - 1];
        List<Line> body = body(label, least);
        List<Line> small = foot(shortened(label), least);
        if (body.size() <= room(least, small.size())) {
            return List.of(new Cell(name(label.name()), body, small));
        }
        for (String deferring : List.of(" " + lastSentence(label.deferring()), "")) {
            List<Line> brief = lines(label.contents(), text(least));
            brief.addAll(lines(label.hazards() + deferring, text(least).inBold()));
            if (brief.size() <= room(least, small.size())) {
                return List.of(new Cell(name(label.name()), brief, small));
            }
        }
        return onSeveral(label, least);
    }

    /** Name and text of each place, in order. */
    List<String> places() {
        return cells.stream()
                .map(cell -> cell.name().text() + "\n"
                        + cell.body().stream().map(Line::text).collect(Collectors.joining(" ")))
                .toList();
    }

    /** Each label ends with a sentence; the last says who knows more where it has room. */
    private List<Cell> onSeveral(Label label, float least) {
        List<Line> foot = foot(label, least);
        String[] sentences = label.hazards().split(SENTENCE_END);
        List<List<Line>> bodies = new ArrayList<>();
        int held = 0;
        while (held < sentences.length) {
            List<Line> above = bodies.isEmpty() ? lines(label.contents(), text(least)) : List.of();
            int room = room(least, bodies.isEmpty() ? foot.size() : 0) - above.size();
            int end = sentences.length;
            while (end > held && hazards(sentences, held, end, least).size() > room) {
                end--;
            }
            if (end == held && (above.isEmpty() || room < 0)) {
                return byLines(label, least);
            }
            List<Line> body = new ArrayList<>(above);
            body.addAll(hazards(sentences, held, end, least));
            bodies.add(body);
            held = end;
        }
        List<Line> knowsMore = lines(label.deferring(), text(least));
        List<Line> last = bodies.get(bodies.size() - 1);
        if (bodies.size() > 1 && last.size() + knowsMore.size() <= room(least, 0)) {
            last.addAll(knowsMore);
        }
        List<Cell> parts = new ArrayList<>();
        for (List<Line> body : bodies) {
            int number = parts.size() + 1;
            parts.add(new Cell(
                    name(label.name() + "  (" + number + " of " + bodies.size() + ")"),
                    body,
                    number == 1 ? foot : List.of()));
        }
        return parts;
    }

    private List<Line> hazards(String[] sentences, int from, int to, float size) {
        return from == to
                ? List.of()
                : lines(
                        String.join(" ", List.of(sentences).subList(from, to)),
                        text(size).inBold());
    }

    private static String lastSentence(String words) {
        String[] sentences = words.split(SENTENCE_END);
        return sentences[sentences.length - 1];
    }

    /** Where names alone fill more than a label. */
    private List<Cell> byLines(Label label, float least) {
        List<Line> body = body(label, least);
        List<Line> foot = foot(label, least);
        int first = Math.max(1, room(least, foot.size()));
        int further = room(least, 0);
        int count = 1 + (body.size() - first + further - 1) / further;
        List<Cell> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int from = i == 0 ? 0 : first + (i - 1) * further;
            parts.add(new Cell(
                    name(label.name() + "  (" + (i + 1) + " of " + count + ")"),
                    body.subList(from, Math.min(body.size(), first + i * further)),
                    i == 0 ? foot : List.of()));
        }
        return parts;
    }

    private TextStyle text(float size) {
        return new TextStyle(size, false, look.palette().ink());
    }

    private Line name(String name) {
        TextStyle style = text(NAME_SIZE).inBold();
        return new Line(look.typeface().fit(name, style, innerWidth()), style);
    }

    private List<Line> body(Label label, float size) {
        List<Line> lines = lines(label.contents(), text(size));
        lines.addAll(lines(label.hazards(), text(size).inBold()));
        lines.addAll(lines(label.deferring(), text(size)));
        return lines;
    }

    /** On one line where both fit, for a label has little room. */
    private List<Line> foot(Label label, float size) {
        List<Line> one = lines(label.made() + "   " + label.owner(), text(size));
        if (one.size() == 1) {
            return one;
        }
        List<Line> two = lines(label.made(), text(size));
        two.addAll(lines(label.owner(), text(size)));
        return two;
    }

    /** With less room to write in, before a second label is needed. */
    private static Label shortened(Label label) {
        return new Label(
                label.name(),
                label.contents(),
                label.hazards(),
                label.deferring(),
                label.made().replaceAll(LONG_BLANK, SHORT_BLANK),
                label.owner().replaceAll(LONG_BLANK, SHORT_BLANK));
    }

    private List<Line> lines(String words, TextStyle style) {
        List<Line> lines = new ArrayList<>();
        look.typeface().wrap(words, style, innerWidth()).forEach(line -> lines.add(new Line(line, style)));
        return lines;
    }

    private float innerWidth() {
        return format.widthPoints() - 2 * (FRAME_INSET + PAD);
    }

    /** Lines of text between the name and that many lines at the foot. */
    private int room(float size, int footLines) {
        float height = format.heightPoints()
                - 2 * (FRAME_INSET + PAD_VERTICAL)
                - text(NAME_SIZE).leading()
                - footLines * FOOT;
        return (int) (height / text(size).leading());
    }

    @Override
    public float height() {
        int sheets = (cells.size() + format.count() - 1) / format.count();
        return sheets * (paper.heightPoints() - 2 * format.topPoints());
    }

    @Override
    public void draw(PageFlow flow) {
        for (int from = 0; from < cells.size(); from += format.count()) {
            if (!flow.atTop()) {
                flow.turn();
            }
            head(flow, from == 0);
            for (int place = 0; place < Math.min(format.count(), cells.size() - from); place++) {
                draw(flow, cells.get(from + place), place);
            }
            flow.move(flow.remaining());
        }
    }

    private void head(PageFlow flow, boolean first) {
        TextStyle bold = look.subsection();
        TextStyle plain = text(SIZES[SIZES.length - 1]);
        float top = paper.heightPoints() - HEAD_FROM;
        Runnable titled = () ->
                flow.text(look.typeface().fit(title, bold, look.widthPoints()), flow.left(), top - bold.rise(), bold);
        if (!first) {
            flow.artifact(titled);
            return;
        }
        flow.mark(level == Heading.Level.TITLE ? "top" : "labels", title, true);
        flow.tagged(flow.element(level.role()), titled);
        flow.tagged(flow.element(PdfName.P), () -> {
            float y = top - bold.leading();
            for (String line : look.typeface().wrap(caution, plain, look.widthPoints())) {
                flow.text(line, flow.left(), y - plain.rise(), plain);
                y -= plain.leading();
            }
        });
    }

    private void draw(PageFlow flow, Cell cell, int place) {
        float x = format.left(paper, place);
        float top = paper.heightPoints() - format.top(place);
        flow.artifact(() -> flow.pen()
                .frame(
                        x + FRAME_INSET,
                        top - format.heightPoints() + FRAME_INSET,
                        format.widthPoints() - 2 * FRAME_INSET,
                        format.heightPoints() - 2 * FRAME_INSET,
                        0.6f,
                        look.palette().soft()));
        PdfStructureElement element = flow.element(PdfName.P);
        flow.tagged(element, () -> {
            float left = x + FRAME_INSET + PAD;
            float y = top - FRAME_INSET - PAD_VERTICAL;
            y = line(flow, cell.name(), left, y);
            for (Line line : cell.body()) {
                y = line(flow, line, left, y);
            }
            float foot = top
                    - format.heightPoints()
                    + FRAME_INSET
                    + PAD_VERTICAL
                    + cell.foot().size() * FOOT;
            for (Line line : cell.foot()) {
                flow.text(line.text(), left, foot - FOOT + line.style().size() * DESCENT, line.style());
                foot -= FOOT;
            }
        });
    }

    private static float line(PageFlow flow, Line line, float left, float y) {
        flow.text(line.text(), left, y - line.style().rise(), line.style());
        return y - line.style().leading();
    }
}
