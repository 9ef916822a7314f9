package workuptally.reference;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Names as people type them, brought to one form for comparison. */
final class Names {
    private static final Pattern IGNORED = Pattern.compile("[\\s\\-\\u2010-\\u2015\\u2212_'\"\\u2019,()]+|\\.(?!\\d)");

    private Names() {}

    /** Lower case without spaces, hyphens, commas, brackets and full stops; subscripts as plain digits; one spelling of sulfur and aluminium. */
    static String plain(String name) {
        String text = Normalizer.normalize(name, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        return IGNORED.matcher(text).replaceAll("").replace("sulph", "sulf").replace("aluminum", "aluminium");
    }
}
