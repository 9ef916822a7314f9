package workuptally.report.workbook;

/** Text as XML holds it. */
final class XmlText {
    private XmlText() {}

    /**
     * A text that is to be read as it is: characters with a meaning of their own are escaped, line breaks kept, and characters that XML
     * cannot hold (XML 1.0, production 2) become question marks.
     */
    static String of(String text) {
        int i = 0;
        while (i < text.length() && instead(text.charAt(i)).isEmpty()) {
            i++;
        }
        return i == text.length() ? text : escapedFrom(i, text);
    }

    private static String escapedFrom(int first, String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16).append(text, 0, first);
        for (int i = first; i < text.length(); i++) {
            String instead = instead(text.charAt(i));
            if (instead.isEmpty()) {
                escaped.append(text.charAt(i));
            } else {
                escaped.append(instead);
            }
        }
        return escaped.toString();
    }

    /** What stands for a character; empty where it stands for itself. */
    private static String instead(char c) {
        return switch (c) {
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '&' -> "&amp;";
            case '"' -> "&quot;";
            case '\n' -> "&#xa;";
            case '\r' -> "&#xd;";
            case '\t' -> "&#x9;";
            case '\u00A0' -> "&#xa0;";
            case '\uFFFE', '\uFFFF' -> "?";
            default -> c < ' ' ? "?" : "";
        };
    }
}
