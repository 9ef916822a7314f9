package workuptally.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A day given on the command line, as 2026-03-06. */
final class DayOption implements ITypeConverter<LocalDate> {
    /** As for the days in a book. */
    private static final int FIRST_YEAR = 1950;

    private static final int LAST_YEAR = 2150;

    @Override
    public LocalDate convert(String text) {
        try {
            LocalDate day = LocalDate.parse(text);
            if (day.getYear() < FIRST_YEAR || day.getYear() > LAST_YEAR) {
                throw new TypeConversionException(
                        "'" + text + "' lies outside the years " + FIRST_YEAR + " to " + LAST_YEAR);
            }
            return day;
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("'" + text + "' is no day; write it as 2026-03-06");
        }
    }
}
