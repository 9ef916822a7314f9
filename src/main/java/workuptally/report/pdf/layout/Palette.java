package workuptally.report.pdf.layout;

import java.awt.Color;
import java.util.List;
import workuptally.model.Severity;

/**
 * Colours, hatches and marks of one document.
 *
 * <p>The eight colours are those of Okabe and Ito, told apart with any common colour vision (from memory: Okabe and Ito, Color
 * Universal Design, 2008). Two of them are the same grey, so a hatch or a word always goes with a colour.
 */
public final class Palette {
    private static final Color INK = new Color(0x1A1A1A);
    private static final Color SOFT = new Color(0x555555);
    private static final Color RULE = new Color(0xC8C8C8);
    private static final Color STRONG_RULE = new Color(0x4A4A4A);
    private static final Color BAND = new Color(0xEFF3F6);
    private static final Color LINK = new Color(0x005A8C);
    private static final Color BLUE = new Color(0x0072B2);
    private static final Color SKY = new Color(0x56B4E9);
    private static final Color ORANGE = new Color(0xE69F00);
    private static final Color YELLOW = new Color(0xF0E442);
    private static final Color GREEN = new Color(0x009E73);
    private static final Color VERMILION = new Color(0xD55E00);
    private static final Color PURPLE = new Color(0xCC79A7);

    /** None rises on a light ground: that is what was not found, which stands beside them. */
    private static final List<Fill> PORTIONS = List.of(
            new Fill(SKY, Hatch.NONE, false),
            new Fill(ORANGE, Hatch.FALLING, false),
            new Fill(YELLOW, Hatch.NONE, false),
            new Fill(PURPLE, Hatch.RISING, false),
            new Fill(GREEN, Hatch.CROSSED, false),
            new Fill(SKY, Hatch.DOTTED, false),
            new Fill(YELLOW, Hatch.FALLING, false));

    /** Text. */
    public Color ink() {
        return INK;
    }

    /** Captions and footers; 7:1 against white. */
    public Color soft() {
        return SOFT;
    }

    /** Rules between rows. */
    public Color rule() {
        return RULE;
    }

    /** Rules under headings and around tables. */
    public Color strongRule() {
        return STRONG_RULE;
    }

    /** Ground of a heading band. */
    public Color band() {
        return BAND;
    }

    /** Internal links. */
    Color link() {
        return LINK;
    }

    /** First kind of line under labels, light enough to read over. */
    public Color amberLine() {
        return new Color(0xF0B84D);
    }

    /** Second kind of line under labels. */
    public Color skyLine() {
        return new Color(0x8FCBF0);
    }

    /** Third kind of line under labels. */
    public Color greyLine() {
        return new Color(0x9A9A9A);
    }

    /** Fourth kind of line under labels. */
    public Color greenLine() {
        return new Color(0x6FC3A7);
    }

    /** What was found, in charts. */
    public Color found() {
        return BLUE;
    }

    /** What was planned, in charts. */
    Color planned() {
        return VERMILION;
    }

    /** Fill of a mark that stands out. */
    public Fill signal() {
        return new Fill(VERMILION, Hatch.NONE, true);
    }

    /** Fill of the isolated part. */
    public Fill isolated() {
        return new Fill(BLUE, Hatch.NONE, true);
    }

    /** Fill of the unaccounted part. */
    public Fill unaccounted() {
        return new Fill(Color.WHITE, Hatch.RISING, false);
    }

    /** Fill of what nobody knows yet: neither found nor missing. */
    public Fill notKnown() {
        return new Fill(new Color(0xF4F4F4), Hatch.DOTTED, false);
    }

    /** Fill of what kept layers hold together; a plain middle grey where there is no colour. */
    public Fill inLayers() {
        return new Fill(ORANGE, Hatch.NONE, false);
    }

    /** Fill of the layer of that number, from 0. */
    public Fill portion(int index) {
        return PORTIONS.get(index % PORTIONS.size());
    }

    /** Colour of a severity. */
    Color colour(Severity severity) {
        return switch (severity) {
            case STOP -> VERMILION;
            case HOLD -> ORANGE;
            case CHECK -> BLUE;
            case NOTE -> new Color(0x777777);
        };
    }

    /** Symbol of a severity; a different shape for each, so that it survives grey. */
    String symbol(Severity severity) {
        return switch (severity) {
            case STOP -> "■";
            case HOLD -> "▲";
            case CHECK -> "●";
            case NOTE -> "○";
        };
    }

    /**
     * How an area is filled.
     *
     * @param ground colour
     * @param hatch lines over it
     * @param lightLabel true where a label on it is white
     */
    public record Fill(Color ground, Hatch hatch, boolean lightLabel) {}

    /** Lines over an area. */
    public enum Hatch {
        NONE,
        RISING,
        FALLING,
        CROSSED,
        DOTTED
    }
}
