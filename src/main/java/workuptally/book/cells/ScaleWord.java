package workuptally.book.cells;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.Range;
import workuptally.book.words.Unit;
import workuptally.model.Field.Qualifier;
import workuptally.model.Severity;

/** Words that stand for a place on a scale: room temperature, neutral (common practice). */
public final class ScaleWord {
    private static final Pattern ROOM = Pattern.compile(
            "r\\.? ?t\\.?|room ?temp(?:erature|\\.)?|ambient(?: temp(?:erature|\\.)?)?|Raumtemp(?:eratur|\\.)?|Zimmertemp(?:eratur|\\.)?|T\\. ?amb\\.?|temp(?:érature|\\.)? ambiante",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    private static final Pattern NEUTRAL =
            Pattern.compile("(?:pH ?:?=? ?)?(?:~|ca\\.? |about )?(?:neutral|neutre)", Pattern.CASE_INSENSITIVE);

    /** The middle and half the width of 18 to 25 °C. */
    private static final BigDecimal ROOM_CELSIUS = new BigDecimal("21.5");

    private static final BigDecimal ROOM_HALF_WIDTH = new BigDecimal("3.5");

    private ScaleWord() {}

    /** The number a word stands for in a column. */
    public static Optional<NumberText.Number> of(SchemaColumn column, String text) {
        if (column.range() == Range.TEMPERATURE && ROOM.matcher(text).matches()) {
            return Optional.of(new NumberText.Number(
                    ROOM_CELSIUS, Qualifier.ABOUT, 1, Optional.of(Unit.CELSIUS), ROOM_HALF_WIDTH, Optional.empty()));
        }
        if (column.range() == Range.PH && NEUTRAL.matcher(text).matches()) {
            return Optional.of(new NumberText.Number(
                    BigDecimal.valueOf(7),
                    Qualifier.ABOUT,
                    0,
                    Optional.empty(),
                    BigDecimal.ONE,
                    Optional.of(new NumberText.Remark(Severity.NOTE, text))));
        }
        return Optional.empty();
    }
}
