package workuptally.book.words;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import workuptally.model.Notes;
import workuptally.model.Notes.Said;

/** What counts of the notes of a row. */
public final class NoteWords {
    private static final Pattern AREA = Pattern.compile("area ?-?(%|percent)|% ?area|\\ba%");
    private static final String PER_CENT = "%";

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
        return new Notes(text, says);
    }
}
