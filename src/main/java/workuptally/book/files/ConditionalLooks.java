package workuptally.book.files;

import java.util.BitSet;

/**
 * Which looks that a condition gives to cells strike out, or show a number otherwise than it is stored, collected while the styles part is
 * read (ISO/IEC 29500-1, 18.8.14 and 18.8.15). Colours and borders say nothing about what is meant.
 */
final class ConditionalLooks {
    private final BitSet changing = new BitSet();
    private boolean inside;
    private int look = -1;

    /** Takes the next event of the styles part, in the order in which they stand. */
    void take(XmlPart xml) {
        if (xml.isStart("dxfs")) {
            inside = true;
        } else if (xml.isEnd("dxfs")) {
            inside = false;
        } else if (inside && xml.isStart("dxf")) {
            look++;
        } else if (inside && look >= 0 && changes(xml)) {
            changing.set(look);
        }
    }

    /** True for an element of a look by which a cell says something else. */
    static boolean changes(XmlPart xml) {
        return xml.isStart("strike") && StruckFonts.isOn(xml)
                || xml.isStart("numFmt")
                        && xml.attribute("formatCode")
                                .filter(code -> NumberFormats.of(code, false).kind() != ShownAs.Kind.PLAIN)
                                .isPresent();
    }

    boolean changes(int number) {
        return changing.get(number);
    }
}
