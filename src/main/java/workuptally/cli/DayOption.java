package workuptally.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A day given on the command line, as 2026-03-06. */
final class DayOption implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("'" + text + "' is no day; write it as 2026-03-06");
        }
    }
}
