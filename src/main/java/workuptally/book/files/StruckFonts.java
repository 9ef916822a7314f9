package workuptally.book.files;

import java.util.BitSet;
import java.util.Optional;

/**
 * Which cell formats of a workbook strike out what the cell holds, collected while its styles part is read (ISO/IEC 29500-1, 18.8.22, 18.8.45
 * and 18.4.10).
 *
 * <p>A cell format names its font, or leaves it to its named style. Where it names one and says that it does not apply, programs differ in
 * which of the two they show: then either strike counts, so that nothing is used that one of them shows as struck out.
 */
final class StruckFonts {
    private final BitSet fonts = new BitSet();
    private final BitSet namedStyles = new BitSet();
    private final BitSet cellFormats = new BitSet();
    private String list = "";
    private int font = -1;
    private int namedStyle;
    private int cellFormat;

    /** Takes the next event of the styles part, in the order in which they stand. */
    void take(XmlPart xml) {
        if (xml.isStart("fonts") || xml.isStart("cellStyleXfs") || xml.isStart("cellXfs")) {
            list = xml.name();
        } else if (!list.isEmpty() && xml.isEnd(list)) {
            list = "";
        } else if (list.equals("fonts") && xml.isStart("font")) {
            font++;
        } else if (list.equals("fonts") && xml.isStart("strike")) {
            fonts.set(font, isOn(xml));
        } else if (list.equals("cellStyleXfs") && xml.isStart("xf")) {
            namedStyles.set(namedStyle++, fonts.get(NumberFormats.number(xml.attribute("fontId"))));
        } else if (list.equals("cellXfs") && xml.isStart("xf")) {
            cellFormats.set(cellFormat++, isStruck(xml));
        }
    }

    private boolean isStruck(XmlPart xml) {
        Optional<String> own = xml.attribute("fontId");
        boolean ofNamed = namedStyles.get(NumberFormats.number(xml.attribute("xfId")));
        boolean notApplied =
                xml.attribute("applyFont").filter(StruckFonts::isFalse).isPresent();
        return own.isEmpty() ? ofNamed : fonts.get(NumberFormats.number(own)) || notApplied && ofNamed;
    }

    /** True for an element {@code strike} that strikes out: it does unless it says that it does not. */
    static boolean isOn(XmlPart strike) {
        return strike.attribute("val").filter(StruckFonts::isFalse).isEmpty();
    }

    private static boolean isFalse(String text) {
        return text.equals("0") || text.equals("false");
    }

    /** True where cells of a style are struck out. */
    boolean ofStyle(int style) {
        return cellFormats.get(style);
    }
}
