package workuptally.report.pdf.layout;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;

/**
 * Labels on common sheets, to print at full size or to cut out. What does not fit on one label at 8 pt goes on with a second one, so that
 * nothing is cut or stands below its frame. Title and caution stand in the upper margin.
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
        List<Line> runOn = lines(label.contents(), text(least));
        runOn.addAll(lines(
                label.hazards() + " " + lastSentence(label.deferring()),
                text(least).inBold()));
        if (runOn.size() <= room(least, small.size())) {
            return List.of(new Cell(name(label.name()), runOn, small));
        }
        return onSeveral(label, least);
    }

    /** On a second label only what stands in whole sentences, where the first holds a sentence at all. */
    private List<Cell> onSeveral(Label label, float least) {
        List<Line> foot = foot(label, least);
        int first = Math.max(1, room(least, foot.size()));
        String[] sentences = label.hazards().split(SENTENCE_END);
        for (int held = sentences.length; held > 0; held--) {
            List<Line> here = lines(label.contents(), text(least));
            here.addAll(lines(joined(sentences, 0, held), text(least).inBold()));
            List<Line> there = held == sentences.length
                    ? List.of()
                    : lines(
                            joined(sentences, held, sentences.length),
                            text(least).inBold());
            List<Line> behind = new ArrayList<>(there);
            behind.addAll(lines(label.deferring(), text(least)));
            if (here.size() <= first && !there.isEmpty() && behind.size() <= room(least, 0)) {
                return List.of(
                        new Cell(name(label.name() + "  (1 of 2)"), here, foot),
                        new Cell(name(label.name() + "  (2 of 2)"), behind, List.of()));
            }
        }
        return byLines(label, least);
    }

    private static String joined(String[] sentences, int from, int to) {
        return String.join(" ", List.of(sentences).subList(from, to));
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
