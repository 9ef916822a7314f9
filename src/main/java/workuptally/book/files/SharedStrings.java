package workuptally.book.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts that the cells of a workbook refer to by number. */
public final class SharedStrings {
    private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    private final List<String> texts;

    /** The few of which a run is struck out, or says that it is not. */
    private final Map<Integer, RichText> marked;

    private SharedStrings(List<String> texts, Map<Integer, RichText> marked) {
        this.texts = texts;
        this.marked = marked;
    }

    public static SharedStrings read(WorkbookPackage book, Optional<String> part)
            throws UnreadableBookException, IOException {
        List<String> texts = new ArrayList<>();
        Map<Integer, RichText> marked = new HashMap<>();
        if (part.isPresent() && book.has(part.get())) {
            try (XmlPart xml = book.open(part.get())) {
                while (xml.next()) {
                    if (xml.isStart("si")) {
                        RichText text = RichText.read(xml, "si");
                        if (!text.isUnmarked()) {
                            marked.put(texts.size(), text);
                        }
                        texts.add(text.whole());
                    }
                }
                book.finished(xml);
            }
        }
        return new SharedStrings(texts, marked);
    }

    /** The cell that holds a text; nothing if there is none of that number. */
    Optional<RawCell> cell(int number, int column, boolean fontIsStruck) {
        if (number < 0 || number >= texts.size()) {
            return Optional.empty();
        }
        RichText rich = marked.isEmpty() ? null : marked.get(number);
        if (rich != null) {
            return Optional.of(rich.cell(column, fontIsStruck));
        }
        RawCell text = RawCell.text(column, texts.get(number));
        return Optional.of(fontIsStruck ? text.struck() : text);
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
