package workuptally.book.words;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import workuptally.model.Notes;
import workuptally.model.Notes.Said;

/** What counts of the notes of a row, by the words of {@code note-words.csv}. */
public final class NoteWords {
    /** The table whose notes are read: words count where they speak of what stands there. */
    public enum Of {
        LAYER,
        ASSAY,
        LOT,
        STEP,
        RUN;

        private String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private static final Pattern AREA = Pattern.compile("area ?-?(%|percent)|% ?area|\\ba%");
    private static final String PER_CENT = "%";
    private static final String LEFT_BOUND = "(?<![\\p{L}\\d])";
    private static final int FLAGS = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;

    /** Labels, numbers and marks between words; a question mark may put anything in doubt. */
    private static final Pattern LABEL = Pattern.compile(
            "(?<![\\p{L}\\d])(?:[A-Z]{1,3}-?\\d{1,2}|\\d+(?:[.,]\\d+)?(?: ?x)?(?: ?(?:mL|L|g|nm))?)(?![\\p{L}\\d])|[\\s,;.:()+/-]");

    private static final Map<Of, Map<Said, Pattern>> AGAINST = new EnumMap<>(Of.class);
    private static final Map<Of, Pattern> NOTHING = new EnumMap<>(Of.class);

    static {
        List<WordRow> rows = WordRow.all("note-words.csv");
        for (Of of : Of.values()) {
            Map<Said, Pattern> words = expressions(rows, of);
            Pattern nothing = words.remove(Said.NOTHING);
            if (nothing != null) {
                NOTHING.put(of, nothing);
            }
            AGAINST.put(of, words);
        }
    }

    /** {@code nothing lost}, {@code not diluted}, {@code keine Verluste}, {@code may be discarded}. */
    private static final Pattern DENIED = Pattern.compile(
            LEFT_BOUND
                    + "(?:(?:no|not|nothing|none|without|never|kein\\p{L}{0,2}|nichts?|ohne|nie|pas|sans|rien|aucune?|jamais|free of|free from|frei von|exempt de)[\\s-]+(?:\\p{L}+\\s+|\\p{L}'\\s?)?"
                    + "|(?:to|can|may|will|should|kann|darf|soll|à)\\s+(?:be\\s+)?)$",
            FLAGS);

    /** {@code emulsion: none}, {@code spilled? no}. */
    private static final Pattern DENIED_BEHIND = Pattern.compile(
            "^\\s?[:=?]?\\s*(?:none|no|nil|nein|keine?r?|nicht|aucune?|non)(?![\\p{L}\\d]).*", FLAGS | Pattern.DOTALL);

    /** {@code filtrate after precipitation}, {@code liquor of the crystals}: of another portion. */
    private static final Pattern OF_ANOTHER = Pattern.compile(
            LEFT_BOUND
                    + "(?:of|from|after|before|nach|vor|vom|von|aus|après|avant|de|des|du)\\s+(?:(?:the|der|dem|den|la|le)\\s+)?$",
            FLAGS);

    /** {@code emulsion, broke after 2 h}, {@code crystals filtered off}: not so any more. */
    private static final Pattern SETTLED = Pattern.compile(
            "^[\\s,;:-]*(?:(?:was|were|then|wurde|dann|a été)\\s+)?"
                    + "(?:filtered|removed|collected|broke|broken|gone|cleared|resolved|dissolved|redissolved|abfiltriert|abgesaugt|entfernt|gelöst|gebrochen|filtré|éliminé|cassée|dissous)(?!\\p{L}).*",
            FLAGS | Pattern.DOTALL);

    private NoteWords() {}

    private static Map<Said, Pattern> expressions(List<WordRow> rows, Of of) {
        Map<Said, List<String>> words = new EnumMap<>(Said.class);
        for (WordRow row : rows) {
            if (row.words("of").contains(of.word())) {
                words.computeIfAbsent(said(row), s -> new ArrayList<>()).addAll(row.words("words"));
            }
        }
        Map<Said, Pattern> expressions = new EnumMap<>(Said.class);
        words.forEach((said, list) -> expressions.put(
                said,
                Pattern.compile(list.stream().map(NoteWords::expression).collect(Collectors.joining("|")), FLAGS)));
        return expressions;
    }

    static Said said(WordRow row) {
        return Said.valueOf(row.cell("says").toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** The same in letters whose capitals are capitals of themselves. */
    private static String folded(String text) {
        return text.replace("ß", "ss");
    }

    /** The expression of a word of the list: see the head of the list for its signs. */
    private static String expression(String word) {
        boolean whole = word.startsWith("=");
        String text = folded(whole ? word.substring(1) : word);
        StringBuilder expression = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            if (text.startsWith("##", i)) {
                expression.append("[1-9]\\d+");
                i++;
            } else if (text.startsWith(" .. ", i)) {
                expression.append("\\s(?:\\S+\\s){0,4}");
                i += 3;
            } else if (text.charAt(i) == '#') {
                expression.append("\\d+(?:[.,]\\d+)?");
            } else if (text.charAt(i) == '*') {
                expression.append("\\p{L}*");
            } else if (text.charAt(i) == ' ') {
                expression.append("[\\s-]+");
            } else {
                expression.append(Pattern.quote(text.substring(i, i + 1)));
            }
        }
        return whole
                ? "^" + expression + "[.!]?$"
                : LEFT_BOUND + expression + (text.endsWith("#") ? "(?!\\d)" : "(?!\\p{L})");
    }

    /** Notes as typed, with what they say. */
    public static Notes read(String text, Of of) {
        if (text.isBlank()) {
            return Notes.NONE;
        }
        Set<Said> says = EnumSet.noneOf(Said.class);
        if (AREA.matcher(text.toLowerCase(Locale.ROOT)).find()) {
            says.add(Said.AREA_PERCENT);
        }
        if (text.contains(PER_CENT)) {
            says.add(Said.PERCENT);
        }
        String typed = folded(TypedText.plain(text));
        AGAINST.get(of).forEach((said, words) -> {
            if (words.matcher(typed).results().anyMatch(match -> counts(said, typed, match))) {
                says.add(said);
            }
        });
        if (says.isEmpty() && saysNothing(typed, of)) {
            says.add(Said.NOTHING);
        }
        return new Notes(text, says);
    }

    /** True for words that change nothing, numbers and labels. */
    private static boolean saysNothing(String typed, Of of) {
        Pattern nothing = NOTHING.get(of);
        return nothing != null
                && LABEL.matcher(nothing.matcher(typed).replaceAll(" "))
                        .replaceAll(" ")
                        .isBlank();
    }

    private static boolean counts(Said said, String typed, MatchResult match) {
        String before = typed.substring(0, match.start());
        String behind = typed.substring(match.end());
        boolean denied =
                DENIED.matcher(before).find() || DENIED_BEHIND.matcher(behind).matches();
        boolean elsewhere = said == Said.NOT_UNIFORM
                && (OF_ANOTHER.matcher(before).find() || SETTLED.matcher(behind).matches());
        return !denied && !elsewhere;
    }
}
