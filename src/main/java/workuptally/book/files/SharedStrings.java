package workuptally.book.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts that the cells of a workbook refer to by number. */
public final class SharedStrings {
    private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    private final List<String> texts;

    private SharedStrings(List<String> texts) {
        this.texts = texts;
    }

    public static SharedStrings read(WorkbookPackage book, Optional<String> part)
            throws UnreadableBookException, IOException {
        List<String> texts = new ArrayList<>();
        if (part.isPresent() && book.has(part.get())) {
            try (XmlPart xml = book.open(part.get())) {
                while (xml.next()) {
                    if (xml.isStart("si")) {
                        texts.add(richText(xml, "si"));
                    }
                }
                book.finished(xml);
            }
        }
        return new SharedStrings(texts);
    }

    Optional<String> text(int number) {
        return number >= 0 && number < texts.size() ? Optional.of(texts.get(number)) : Optional.empty();
    }

    /**
     * The text of an element that holds runs of text, without the phonetic guide that some programs store beside them. Struck-out runs are
     * left out, raised digits stay raised: neither is a digit of a number.
     */
    static String richText(XmlPart xml, String element) throws UnreadableBookException {
        StringBuilder text = new StringBuilder();
        boolean struck = false;
        boolean raised = false;
        while (xml.next() && !xml.isEnd(element)) {
            if (xml.isStart("rPh")) {
                xml.skip();
            } else if (xml.isStart("r")) {
                struck = false;
                raised = false;
            } else if (xml.isStart("strike")) {
                struck = xml.attribute("val")
                        .filter(val -> val.equals("0") || val.equals("false"))
                        .isEmpty();
            } else if (xml.isStart("vertAlign")) {
                raised = xml.attribute("val").filter("superscript"::equals).isPresent();
            } else if (xml.isStart("t")) {
                String run = xml.ownText();
                text.append(struck ? "" : raised ? raised(run) : run);
            }
        }
        return unescape(text.toString());
    }

    private static String raised(String run) {
        StringBuilder up = new StringBuilder(run.length());
        for (int i = 0; i < run.length(); i++) {
            int at = "0123456789-−".indexOf(run.charAt(i));
            up.append(at < 0 ? run.charAt(i) : "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁻".charAt(at));
        }
        return up.toString();
    }

    /** Characters that XML cannot hold are stored as {@code _x000D_} (ISO/IEC 29500-1, 22.9.2.19). */
    public static String unescape(String text) {
        if (!text.contains("_x")) {
            return text;
        }
        Matcher match = ESCAPED.matcher(text);
        return match.replaceAll(
                found -> Matcher.quoteReplacement(Character.toString((char) Integer.parseInt(found.group(1), 16))));
    }
}
