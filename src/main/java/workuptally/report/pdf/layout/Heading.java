package workuptally.report.pdf.layout;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;
import java.util.Optional;

/** A heading, with a bookmark and a name for links where one is given. */
public final class Heading implements Block {
    private final Look look;
    private final Level level;
    private final TextStyle style;
    private final List<String> lines;
    private final String text;
    private final Optional<String> destination;

    public Heading(Look look, Level level, String text, Optional<String> destination) {
        this.look = look;
        this.level = level;
        this.style = switch (level) {
            case TITLE -> look.title();
            case SECTION -> look.section();
            case SUBSECTION -> look.subsection();
        };
        this.text = text;
        this.lines = look.typeface().wrap(text, style, look.widthPoints());
        this.destination = destination;
    }

    @Override
    public float height() {
        return above() + lines.size() * style.leading() + below();
    }

    private float above() {
        return switch (level) {
            case TITLE -> 0;
            case SECTION -> 5;
            case SUBSECTION -> 4;
        };
    }

    private float below() {
        return level == Level.SUBSECTION ? 1 : 2;
    }

    @Override
    public boolean keepsWithNext() {
        return true;
    }

    @Override
    public void draw(PageFlow flow) {
        flow.room(height());
        if (!flow.atTop()) {
            flow.move(above());
        }
        destination.ifPresent(name -> flow.mark(name, text, level != Level.SUBSECTION));
        PdfStructureElement element = flow.element(level.role());
        flow.tagged(element, () -> {
            float y = flow.cursor();
            for (String line : lines) {
                flow.text(line, flow.left(), y - style.rise(), style);
                y -= style.leading();
            }
        });
        flow.move(lines.size() * style.leading());
        if (level == Level.SECTION) {
            flow.artifact(() -> flow.rule(
                    flow.left(),
                    flow.cursor(),
                    look.widthPoints(),
                    0.8f,
                    look.palette().strongRule()));
        }
        flow.move(below());
    }

    /** Levels of headings. */
    public enum Level {
        TITLE("H1"),
        SECTION("H2"),
        SUBSECTION("H3");

        private final String tag;

        Level(String tag) {
            this.tag = tag;
        }

        PdfName role() {
            return new PdfName(tag);
        }
    }
}
