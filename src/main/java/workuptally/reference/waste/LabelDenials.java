package workuptally.reference.waste;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the label of a waste container keeps out, parted from what it says: {@code aqueous, no acids or oxidisers}, {@code halogenfrei}
 * (common practice, in English, German and French).
 *
 * @param said the label without its denials, in lower case
 * @param denials each denial
 */
record LabelDenials(String said, List<Denial> denials) {
    /**
     * One denial.
     *
     * @param whole the words with what denies them, {@code no acids or oxidisers}
     * @param items what is denied, {@code acids} and {@code oxidisers}
     * @param clear false where its end cannot be told: {@code no acids, bases and metals}
     */
    record Denial(String whole, List<String> items, boolean clear) {
        Denial {
            items = List.copyOf(items);
        }
    }

    private static final String WORD_STARTS = "(?<![\\p{L}\\d])";
    private static final String WORD_ENDS = "(?![\\p{L}\\d])";

    private static final Pattern CLAUSES = Pattern.compile("[;()\\[\\]\\n]|\\s[-–—]+\\s|(?<!\\bno)\\.(?=\\s|$)|"
            + WORD_STARTS + "(?:but|only|aber|nur|mais|seulement)" + WORD_ENDS);

    /** Denies all that follows in the clause; {@code no. 3}, {@code no W-3} are numbers. */
    private static final Pattern NOTHING_OF = Pattern.compile(WORD_STARTS
            + "(?:(?:no(?!\\.|\\s*[#:]?\\s*(?:[a-z]-)?\\d)|without|w/o|never|keine?[nrs]?|ohne|sans|pas de|aucune?|free (?:of|from)|frei von"
            + "|exempte?s? de|avoid(?:ing)?|minus|other than|apart from|anything but|except(?: for)?|excluding|excl\\.?|außer|ausser|sauf|hors|keep (?:out|away from)|away from"
            + "|not (?:for|to|with|containing)|(?:must|may|do|does) not (?:hold|contain|add|mix with|put in|take)"
            + "|nicht (?:für|fuer|mit))(?![\\p{L}\\d])|(?:pas|exempte?s?) d[’'])");

    /** Denies the word that follows, and those joined to it by or. */
    private static final Pattern NOT_ONE = Pattern.compile(WORD_STARTS
            + "(?:not|nor|nicht|non|pas)[\\s-]+(\\p{L}+(?:(?:\\s*/\\s*|\\s+(?:or|nor|oder|noch|ou|ni)\\s+)\\p{L}+)*)");

    /** Denies what it is grown together with, where that is a word of a stream: {@code nonhalogenated}, but not {@code nonane}. */
    private static final Pattern GROWN = Pattern.compile(WORD_STARTS + "(?:non|nicht|un)(\\p{L}+)");

    private static final Pattern FREE =
            Pattern.compile("(\\p{L}+)(?:[\\s-]*free(?!\\s+(?:of|from))|-?frei(?!\\s+von))" + WORD_ENDS);

    /** Denies all before it back to the comma: {@code acids not allowed}. */
    private static final Pattern FORBIDDEN = Pattern.compile(
            "([^,]+?)\\s+(?:(?:is|are|sind|ist|sont)\\s+)?(?:(?:not|nicht|non)\\s+(?:allowed|permitted|accepted|erlaubt|zulässig|admis\\w*|autoris\\p{L}*)"
                    + "|excluded|prohibited|forbidden|banned|verboten|interdit\\p{L}*|ausgeschlossen)" + WORD_ENDS);

    private static final String ELSEWHERE =
            "(?:elsewhere|separate(?:ly)?|apart|getrennt|separat|woanders|ailleurs|à part"
                    + "|(?:in|into|to) (?:(?:a|an|the) )?(?:separate|other|another|own) \\p{L}+|(?:->|→|=>)[^,;]*"
                    + "|(?:only|nur|seulement) (?:after|nach|après|with|on|auf|by)\\b[^,;]*)";

    /** A limit of pH that keeps acids out, and one that keeps bases out: streams part at about 5 and 9 (common practice). */
    private static final double ACID_BELOW = 3;

    private static final double BASE_ABOVE = 10;

    private static final Pattern PH_RANGE =
            Pattern.compile(WORD_STARTS + "ph ?(\\d+(?:[.,]\\d+)?) ?(?:-|–|to|bis|à) ?(\\d+(?:[.,]\\d+)?)");

    private static final Pattern PH_ABOVE =
            Pattern.compile(WORD_STARTS + "ph ?(?:>=?|≥|above|over|über|von mindestens|min\\.?) ?(\\d+(?:[.,]\\d+)?)");

    private static final Pattern PH_BELOW =
            Pattern.compile(WORD_STARTS + "ph ?(?:<=?|≤|below|under|unter|bis|max\\.?) ?(\\d+(?:[.,]\\d+)?)");

    private static final Pattern NEUTRAL_ONLY = Pattern.compile(WORD_STARTS
            + "(?:(?:neutral|neutre)s? (?:only|nur|seulement)|(?:only|nur|seulement) (?:neutral|neutre)\\p{L}*)"
            + WORD_ENDS);

    /** {@code <1 % organics}, {@code max. 1 % Lösungsmittel}: more than a little is kept out. */
    private static final Pattern LITTLE_OF = Pattern.compile(
            "(?:<=?|≤|less than|below|under|unter|weniger als|moins de|max\\.?|maximal) ?(?:[0-4](?:[.,]\\d+)?) ?% (?=\\p{L})");

    /** {@code inorganic acids only}, {@code nur anorganische Säuren}. */
    private static final Pattern INORGANIC_ONLY = Pattern.compile(WORD_STARTS
            + "(?:(?:inorganic|mineral|anorganisch|inorganique)\\p{L}*(?: \\p{L}+)? (?:only|nur|seulement|uniquement)"
            + "|(?:only|nur|seulement|uniquement) (?:inorganic|mineral|anorganisch|inorganique)\\p{L}*)" + WORD_ENDS);

    private static final Pattern KEEP_OUT = Pattern.compile(
            WORD_STARTS + "(?:keep|hold|leave) ([^,;()]+?) (?:out|away|off|" + ELSEWHERE + ")" + WORD_ENDS);

    private static final Pattern STANDS_ELSEWHERE = Pattern.compile("([^,;()]+?) ?" + ELSEWHERE);

    private static final Pattern EITHER =
            Pattern.compile("\\s*/\\s*|\\s*[+&]\\s*|\\s+(?:or|nor|oder|noch|ou|ni|and|und|et)\\s+");
    private static final Pattern OR = Pattern.compile(WORD_STARTS + "(?:or|nor|oder|noch|ou|ni)" + WORD_ENDS);
    private static final Pattern AND = Pattern.compile(WORD_STARTS + "(?:and|und|et)" + WORD_ENDS + "|&|\\+");

    /** Copies the list. */
    LabelDenials {
        denials = List.copyOf(denials);
    }

    /**
     * Takes a label apart.
     *
     * @param beginsStreamWord true for a text that begins with a word that tells a stream
     */
    static LabelDenials of(String label, Predicate<String> beginsStreamWord) {
        List<Denial> denials = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (String clause : CLAUSES.split(inPlainWords(label.toLowerCase(Locale.ROOT)))) {
            String rest = taken(FORBIDDEN, clause, denials, beginsStreamWord, true);
            rest = withoutNothingOf(rest, denials);
            rest = taken(NOT_ONE, rest, denials, beginsStreamWord, true);
            rest = taken(FREE, rest, denials, beginsStreamWord, true);
            said.add(taken(GROWN, rest, denials, beginsStreamWord, false));
        }
        return new LabelDenials(String.join("; ", said), denials);
    }

    /** {@code keep acids out}, {@code acids -> W-2}, {@code pH > 7}, {@code neutral only} as plain denials. */
    private static String inPlainWords(String label) {
        String plain = KEEP_OUT.matcher(label.replaceAll("\\s+", " ")).replaceAll("no $1");
        plain = STANDS_ELSEWHERE.matcher(plain).replaceAll(" no $1");
        plain = LITTLE_OF.matcher(plain).replaceAll("no ");
        plain = INORGANIC_ONLY.matcher(plain).replaceAll("$0; no organics; ");
        plain = NEUTRAL_ONLY.matcher(plain).replaceAll("no acids or bases");
        plain = PH_RANGE.matcher(plain)
                .replaceAll(m -> keptOut(number(m.group(1)) >= ACID_BELOW, number(m.group(2)) <= BASE_ABOVE));
        plain = PH_ABOVE.matcher(plain).replaceAll(m -> keptOut(number(m.group(1)) >= ACID_BELOW, false));
        return PH_BELOW.matcher(plain).replaceAll(m -> keptOut(false, number(m.group(1)) <= BASE_ABOVE));
    }

    private static String keptOut(boolean acids, boolean bases) {
        return acids && bases ? ", no acids or bases" : acids ? ", no acids" : bases ? ", no bases" : "";
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }

    /** A clause without the denials of one form; those grown together count only where they deny a word of a stream. */
    private static String taken(
            Pattern form, String clause, List<Denial> denials, Predicate<String> beginsStreamWord, boolean always) {
        Matcher matcher = form.matcher(clause);
        StringBuilder rest = new StringBuilder();
        while (matcher.find()) {
            boolean denies = always || beginsStreamWord.test(matcher.group(1));
            if (denies) {
                denials.add(new Denial(matcher.group().strip(), items(matcher.group(1)), true));
            }
            matcher.appendReplacement(rest, denies ? " " : Matcher.quoteReplacement(matcher.group()));
        }
        return matcher.appendTail(rest).toString();
    }

    private static String withoutNothingOf(String clause, List<Denial> denials) {
        Matcher matcher = NOTHING_OF.matcher(clause);
        if (!matcher.find()) {
            return clause;
        }
        String before = clause.substring(0, matcher.start());
        String behind = clause.substring(matcher.end());
        Matcher next = NOTHING_OF.matcher(behind);
        String own = next.find() ? behind.substring(0, next.start()) : behind;
        String others = behind.substring(own.length());
        String[] parts = own.split(",");
        int last = 0;
        boolean clear = true;
        for (int i = 1; i < parts.length; i++) {
            last = OR.matcher(parts[i]).find() ? i : last;
            clear &= !AND.matcher(parts[i]).find() || i <= last;
        }
        List<String> items = new ArrayList<>();
        for (int i = 0; i <= last; i++) {
            items.addAll(items(parts[i]));
        }
        String denied = String.join(",", List.of(parts).subList(0, last + 1));
        denials.add(new Denial((matcher.group() + " " + denied.strip()).strip(), items, clear));
        String after = String.join(",", List.of(parts).subList(last + 1, parts.length));
        return before + ", " + after + " " + withoutNothingOf(others, denials);
    }

    private static List<String> items(String denied) {
        List<String> items = new ArrayList<>();
        for (String item : EITHER.split(denied)) {
            String plain = OR.matcher(item).replaceAll(" ").strip();
            if (!plain.isEmpty()) {
                items.add(plain);
            }
        }
        return items;
    }
}
