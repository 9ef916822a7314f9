package workuptally.book.cells;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.words.Quantity;
import workuptally.book.words.Unit;
import workuptally.model.Severity;

/** Words behind a number: some only say how it was got, some change what it means, some make it useless (common practice). */
final class Remarks {
    /** Words with which a number is not that of the column any more. */
    private static final Pattern CHANGES = pattern(
            "wet|moist|damp|feucht|nass|humide|lost|loss|losing|spilled|spilt|spill|verloren|verschüttet|perdu"
                    + "|w/o|without|ohne|sans|tared|zeroed|tariert|minus|less|plus|missing|fehlt|left|partly|part|unknown|unsure|maybe|wrong|falsch"
                    + "|titrated|titriert|or|oder|ou|vs|error|overrange|repeat|not|nicht|no|kein|area|a/a|mol|mole|v/v|w/v|vol|each|je"
                    + "|min|h|s|week|per|pro|stoich|set|target|soll|planned|geplant|to|ad|bis|then|dann|was|instead|statt|guess|doubtful|leak|broke|broken");

    /**
     * Words that name another quantity, with which a number is the column's only where the column is called so: {@code 95 % ee} is no content,
     * {@code 1.5 g brutto} no net mass.
     */
    private static final Pattern OTHER_QUANTITY = pattern(
            "ee|e\\.e\\.|de|d\\.e\\.|er|e\\.r\\.|dr|d\\.r\\.|trans|cis|syn|anti|E/Z|Z/E|conv\\.?|conversion|Umsatz|yield|yld|Ausbeute|Ausb\\.?|rendement|rdt"
                    + "|gross|brutto|brut|tare|Tara|leer|empty|theory|theor\\.?|Theorie|théorie|theoretical|theoretisch|expected|erwartet|attendu|max\\.?");

    /** A mass that nobody weighed, or a result that nobody measured. */
    private static final Pattern COMPUTED = pattern(
            "calc\\.?|calculated|calcd\\.?|ber\\.|berechnet|calculé|est\\.?|estimate[ds]?|guess\\p{L}*|geschätzt|Schätz\\p{L}*|estim\\p{L}*");

    /** Contents of a diluted sample, or counted without the water or solvent in it. */
    private static final Pattern OTHER_BASIS = pattern(
            "dil\\.?|diluted|dilution|DF|verd\\.?|verdünnt|Verdünnung|dilué\\p{L}*"
                    + "|dry|dried|dry basis|d\\.b\\.|anhydrous|water-free|solvent-free|trocken\\p{L}*|Trockenmasse|Tr\\.?|wasserfrei|sec|sèche|anhydre");

    /** A strength beside an amount, which may be that of a solution. */
    private static final Pattern OF_A_SOLUTION = Pattern.compile(
            "(?iu)(?<!\\p{L})(?:of|in|von|aus|de) (?:an? )?\\d[\\d.,]* ?(?:%|M|N|mol/L)(?!\\p{L})|% (?:in|aq|disp|susp|paste|Paste)|(?<!\\p{L})(?:soln?\\.?|solution|Lösung|Lsg\\.?)(?!\\p{L})");

    /** Something more, or less, than what the number is of: {@code (+ stir bar)}. */
    private static final Pattern WITH_SIGN = Pattern.compile("(?<sign>[+&-]) ?\\p{L}.*");

    /** A result of something else: from a book, of another portion or of another day. */
    private static final Pattern ELSEWHERE = pattern(
            "lit\\.?|literature|Literatur|last|previous|earlier|yesterday|batch|letzte\\p{L}*|vorige\\p{L}*|gestern|Charge|hier|précédent\\p{L}*"
                    + "|(?-i:(?:in|from|of|for|aus|von|für|dans|de|pour) [A-Z]{1,3}\\d{1,2}[a-z]?)");

    /** How often something was done or diluted, whose place is not here: {@code 30 (3x)}, {@code 0.10 (dil. 10x)}. */
    private static final Pattern TIMES = Pattern.compile(
            "(?iu)(?<![\\p{L}\\d])(?:\\d{1,4} ?[x×]|[x×] ?\\d{1,4}|twice|thrice|(?:zwei|drei|vier)mal"
                    + "|(?:\\d{1,2}|two|three|four|zwei|drei|vier|deux|trois|quatre) (?:times|mal|fois))(?![\\p{L}\\d])");

    /** What is not the temperature of the contents, unless it stands in brackets beside that. */
    private static final Pattern BATH = pattern("bath|Bad|bain|oil bath|jacket|Mantel");

    /** Words with which somebody must look whether the number is that of the column. */
    private static final Pattern ASKS =
            pattern("with|mit|avec|incl\\.?|including|inkl\\.?|before|vor|avant|still|noch|contains|enthält"
                    + "|as(?! is| such| weighed| received)|als|comme|free base|free acid|salt|salts|Salz|sel|hydrochloride|Hydrochlorid|chlorhydrate"
                    + "|bar|stir bar|stirrer|magnet|lid|stopper|cap|septum|Rührfisch|Deckel|Stopfen|barreau|bouchon");

    /** Words of which a lone number without a unit may be followed. */
    private static final Pattern FOLLOWS = pattern(
            "after|nach|by|per|aus|from|of|in|at|on|bei|as|total|net|netto|gross|brutto|crude|raw|dry|dried|trocken|roh|read|oil|Öl|solid|foam"
                    + "|crystals|powder|colou?rless|off-white|white|yellow|brown|pale|Kristalle|Pulver|Schaum|Feststoff|HPLC|UPLC|NMR|qNMR|GC|KF|LC|UV|IR|MS|TLC|DC|titration|Titration|paper|meter|strip|Papier|label|Etikett|calc\\.?|lit\\.?|ber\\.?"
                    + "|sep|sep\\.|separating|separatory|funnel|flask|Scheidetrichter|cylinder|Messzylinder|water|Wasser|rel\\.?|measured|gemessen|weighed|gewogen"
                    + "|average|mean|duplicate|triplicate|calibration|external|internal|ext\\.?|int\\.?|std\\.?|standard|checked|undiluted|injection|supplier|certificate");

    /** Words that add nothing that counts. */
    private static final Pattern HARMLESS =
            pattern("total|gesamt|net|netto|each|rel\\.?|HPLC|UPLC|NMR|1H NMR|qNMR|GC|KF|w/w|by .*");

    /** A word that could say something: names and codes have capitals or digits. */
    private static final Pattern PLAIN_WORD = Pattern.compile("(?<![\\p{L}\\d-])\\p{Ll}{3,}(?![\\p{L}\\d])");

    private static final Pattern FOOTNOTE =
            Pattern.compile("[*†‡#§¹²³ᵃᵇᶜᵈᵉ]{1,3}|\\^?[a-e]\\)|\\[[1-9a-e]\\]|\\([*†#]\\)");

    /** A number on its own, not part of a formula such as H2O or of a nucleus such as 1H. */
    private static final Pattern LONE_NUMBER = Pattern.compile("(?<![\\p{L}\\d.,])\\d[\\d.,]*(?![\\p{L}\\d])");

    private static final BigDecimal ONE_ATMOSPHERE_KILOPASCAL = new BigDecimal("101.325");

    /** What weather and a few hundred metres change, within which boiling points are quoted as those in air (common practice). */
    private static final BigDecimal WEATHER_KILOPASCAL = new BigDecimal("6");

    private static final Pattern WITH_UNIT =
            Pattern.compile("(?<![\\p{L}\\d.,])(?<number>\\d[\\d.,]*) ?(?<unit>[^\\d\\s(),;]+)");

    private Remarks() {}

    private static Pattern pattern(String words) {
        return Pattern.compile(
                "(?<![\\p{L}\\d/-])(?:" + words + ")(?![\\p{L}\\d/])", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** True where words say that a result was computed, estimated or guessed: it is none, not even about right. */
    static boolean sayThatNobodyMeasured(String text) {
        return COMPUTED.matcher(text).find();
    }

    /** True for words that add nothing that counts. */
    static boolean harmless(String tail) {
        String words = tail.replaceAll("[()]", "").strip();
        return HARMLESS.matcher(words).matches();
    }

    /**
     * A number with what stands behind it.
     *
     * @param number the number
     * @param tail the text behind number and unit, not empty
     * @param text the whole text
     * @param symbols names of the column's own quantity
     */
    static NumberText beside(NumberText.Number number, String tail, String text, NumberSymbols symbols) {
        if (FOOTNOTE.matcher(tail).matches()) {
            return number.with(new NumberText.Remark(Severity.CHECK, text));
        }
        boolean setApart = "(,;[=".indexOf(tail.charAt(0)) >= 0;
        boolean attached = !setApart && text.indexOf(tail) > 0 && text.charAt(text.indexOf(tail) - 1) != ' ';
        String words = tail.replaceAll("[()\\[\\],;]", " ").strip();
        Matcher sign = WITH_SIGN.matcher(words);
        if (sign.matches()) {
            return sign.group("sign").equals("-")
                    ? NumberText.unreadable()
                    : number.with(new NumberText.Remark(Severity.CHECK, text));
        }
        if (words.isEmpty() || !words.matches(".*\\p{L}.*") && !setApart) {
            return NumberText.unreadable();
        }
        if (attached && number.unit().isEmpty()) {
            return NumberText.unreadable();
        }
        if (CHANGES.matcher(words).find() || !setApart && BATH.matcher(words).find()) {
            return number.unit().isEmpty()
                            && !setApart
                            && !FOLLOWS.matcher(words).lookingAt()
                    ? NumberText.unknownUnit(tail)
                    : NumberText.unreadable();
        }
        if (isOfAnotherQuantity(number, words, symbols) || TIMES.matcher(words).find()) {
            return NumberText.unreadable();
        }
        if (!setApart && number.unit().isEmpty() && !FOLLOWS.matcher(words).lookingAt()) {
            return NumberText.unknownUnit(tail);
        }
        return withWords(number, words, text, symbols);
    }

    private static boolean isOfAnotherQuantity(NumberText.Number number, String words, NumberSymbols symbols) {
        boolean mass = number.unit().map(u -> u.quantity() == Quantity.MASS).orElse(symbols.name("mass"));
        boolean result = symbols.name("result");
        return (mass || result) && COMPUTED.matcher(words).find()
                || result && ELSEWHERE.matcher(words).find()
                || (result || symbols.name("assay"))
                        && OTHER_BASIS.matcher(words).find()
                || OTHER_QUANTITY
                        .matcher(words)
                        .results()
                        .anyMatch(word -> !symbols.name(word.group().replaceAll("\\W", "")));
    }

    private static NumberText withWords(NumberText.Number number, String words, String text, NumberSymbols symbols) {
        boolean otherNumber = false;
        String rest = words;
        Matcher second = WITH_UNIT.matcher(words);
        while (second.find()) {
            Optional<Unit> unit = Unit.named(second.group("unit"));
            if (unit.isPresent()) {
                if (number.unit().map(Unit::quantity).equals(unit.map(Unit::quantity))) {
                    return NumberText.unreadable(); // a second value of the same quantity
                }
                if (unit.get().quantity() == Quantity.PRESSURE && isReduced(second.group("number"), unit.get())) {
                    return NumberText.unreadable(); // what boils at another pressure boils elsewhere in air
                }
                otherNumber |= unit.get().quantity() != Quantity.TEMPERATURE
                        && unit.get().quantity() != Quantity.PRESSURE;
                rest = rest.replace(second.group(), " ");
            }
        }
        if (LONE_NUMBER.matcher(rest).find()) {
            return NumberText.unreadable();
        }
        boolean volume = number.unit().map(u -> u.quantity() == Quantity.VOLUME).orElse(symbols.name("volume"));
        boolean content = symbols.name("result") || symbols.name("assay");
        if (ASKS.matcher(words).find()
                || !volume && otherNumber && OF_A_SOLUTION.matcher(words).find()
                || content && isUnknown(rest)) {
            return number.with(new NumberText.Remark(Severity.CHECK, text));
        }
        boolean mass = number.unit().map(u -> u.quantity() == Quantity.MASS).orElse(false);
        return otherNumber || mass && !FOLLOWS.matcher(words).lookingAt() || isUnknown(rest)
                ? number.with(new NumberText.Remark(Severity.NOTE, text))
                : number;
    }

    /** True for a pressure that is not that of the air. */
    private static boolean isReduced(String number, Unit unit) {
        return !(NumberText.parse(number) instanceof NumberText.Number read)
                || unit.convert(read.value(), Unit.KILOPASCAL)
                                .subtract(ONE_ATMOSPHERE_KILOPASCAL)
                                .abs()
                                .compareTo(WEATHER_KILOPASCAL)
                        > 0;
    }

    /** True for words of which nobody knows whether they change the number. */
    private static boolean isUnknown(String words) {
        String left = OTHER_QUANTITY.matcher(words).replaceAll(" "); // one that is left is the column's own
        return PLAIN_WORD
                .matcher(HARMLESS.matcher(FOLLOWS.matcher(left).replaceAll(" ")).replaceAll(" "))
                .find();
    }
}
