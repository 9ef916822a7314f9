package workuptally.book.words;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import workuptally.model.Notes;
import workuptally.model.Notes.Said;

/** What counts of the notes of a row. */
public final class NoteWords {
    private static final Pattern AREA = Pattern.compile("area ?-?(%|percent)|% ?area|\\ba%");
    private static final String PER_CENT = "%";

    /** Words that speak against a figure, English, German and French; a denial right before one takes it back. */
    private static final Map<Said, Pattern> AGAINST = Map.of(
            Said.DILUTED,
            Pattern.compile("dilut|dil\\.|\\b1\\s?:\\s?[1-9]\\d|verdünn|dilué"),
            Said.DOUBTED,
            Pattern.compile(
                    "as injected|not corrected|uncorrected|\\bfail|invalid|not valid|saturat(?:ed|ion) (?:of|at) the|overload"
                            + "|out of (?:the )?(?:calibration|range)|outside (?:the )?(?:calibration|range)|above (?:the )?calibration"
                            + "|crystalli[sz]ed out|precipitated (?:out|on)|two phases|not homogeneous|to be repeated|repeat needed"
                            + "|fehlgeschlagen|ungültig|misslungen|ausgefallen|auskristallisiert|unkorrigiert|zu wiederholen"
                            + "|échoué|non valable|hors gamme|à refaire"),
            Said.SPILLED,
            Pattern.compile(
                    "spill|spilt|\\bpoured (?:down|away|out)|down the (?:sink|drain)|\\blost\\b|broke(?:n)? (?:the )?(?:flask|vial)"
                            + "|verschütt|ausgelaufen|weggegossen|verloren|in den ausguss|renvers|perdu|jeté|évier"),
            Said.NOT_DRY,
            Pattern.compile(
                    "\\bwet\\b|\\bdamp\\b|\\bmoist\\b|not (?:yet |fully |quite )?dry|not dried|before drying|still drying"
                            + "|feucht|\\bnass\\b|nicht trocken|vor dem trocknen|humide|avant séchage|pas sec"));

    /** {@code nothing lost}, {@code not diluted}, {@code keine Verluste}. */
    private static final Pattern DENIED = Pattern.compile(
            "(?:\\bno|\\bnot|\\bnothing|\\bnone|\\bwithout|\\bnever|\\bkeine?|\\bnichts?|\\bohne|\\bpas|\\bsans|\\brien)\\s+(?:\\p{L}+\\s+)?$");

    private NoteWords() {}

    /** Notes as typed, with what they say. */
    public static Notes read(String text) {
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
        String typed = text.toLowerCase(Locale.ROOT);
        AGAINST.forEach((said, words) -> {
            if (words.matcher(typed)
                    .results()
                    .anyMatch(
                            m -> !DENIED.matcher(typed.substring(0, m.start())).find())) {
                says.add(said);
            }
        });
        return new Notes(text, says);
    }
}
