package workuptally.book.tables;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.book.words.BookWords;
import workuptally.book.words.Range;
import workuptally.book.words.Unit;
import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Severity;

/** Reads the Limits table. */
public final class LimitRows {
    private static final Map<String, Limit> BY_NAME = Arrays.stream(Limit.values())
            .collect(Collectors.toUnmodifiableMap(limit -> BookWords.loose(limit.title()), limit -> limit));

    private final Map<Limit, Field.Entered> numbers = new EnumMap<>(Limit.class);
    private final Map<Limit, String> texts = new EnumMap<>(Limit.class);
    private final Set<Limit> seen = EnumSet.noneOf(Limit.class);
    private final Set<Limit> unread = EnumSet.noneOf(Limit.class);

    public void read(TableRows rows) {
        rows.forEach(row -> row.key("Name").ifPresent(name -> read(row, name)));
    }

    public Limits limits() {
        return new Limits(numbers, texts, unread);
    }

    private void read(TableRow row, String name) {
        Optional<Limit> limit = Optional.ofNullable(BY_NAME.get(BookWords.loose(name)));
        if (limit.isEmpty()) {
            row.report(
                    FindingCode.LIMIT_UNKNOWN,
                    Severity.CHECK,
                    "Name",
                    "read '" + name + "'",
                    "a name of the list in the template",
                    "Correct the name and run again; the row has no effect.");
        } else if (!seen.add(limit.get())) {
            row.report(
                    FindingCode.LIMIT_DUPLICATE,
                    Severity.CHECK,
                    "Name",
                    "read '" + name + "' a second time",
                    "each limit once",
                    "Keep one of the rows and run again; only the first was used.");
        } else if (!row.isBlank("Value")) {
            set(row, limit.get());
        }
    }

    private void set(TableRow row, Limit limit) {
        if (limit == Limit.AS_OF) {
            row.date("Value").ifPresent(day -> texts.put(limit, day.toString()));
        } else if (limit.isText()) {
            String text = row.text("Value");
            if (!text.isEmpty()) {
                texts.put(limit, text);
            }
        } else {
            Unit unit = measure(limit.unit()).orElse(Unit.ONE);
            String typed = row.text("Unit");
            Optional<Unit> typedUnit = typed.isEmpty() ? Optional.of(unit) : measure(typed);
            if (typedUnit.isEmpty() || typedUnit.get().quantity() != unit.quantity()) {
                row.report(
                        typedUnit.isEmpty() ? FindingCode.UNIT_UNKNOWN : FindingCode.UNIT_WRONG,
                        Severity.STOP,
                        "Unit",
                        "read '" + typed + "'",
                        "the unit " + limit.unit(),
                        "Correct the unit and run again; the default was used.");
                unread.add(limit);
                return;
            }
            Field number = row.numberIn("Value", typedUnit.get(), unit, false);
            number.entered().filter(value -> isUsable(row, limit, value)).ifPresent(value -> numbers.put(limit, value));
            boolean noUncertainty = limit.isUncertainty()
                    && number.entered().filter(v -> v.value() == 0).isPresent();
            if (!numbers.containsKey(limit) && !noUncertainty) {
                unread.add(limit);
                if (number.isBlank()) {
                    row.report(
                            FindingCode.NUMBER_UNREADABLE,
                            Severity.CHECK,
                            "Value",
                            "read '" + row.text("Value") + "'",
                            "a number, or an empty cell for the default",
                            "Enter the number or empty the cell, and run again; the default was used.");
                }
            }
        }
    }

    private static boolean isUsable(TableRow row, Limit limit, Field.Entered value) {
        boolean plain = value.qualifier() == Field.Qualifier.EXACT || value.qualifier() == Field.Qualifier.ABOUT;
        Range range = range(limit);
        if (limit.isUncertainty() && value.value() == 0) {
            row.report(
                    FindingCode.UNCERTAINTY_ZERO,
                    Severity.NOTE,
                    "Value",
                    "read '" + value.asTyped() + "'",
                    "a standard uncertainty above 0; nothing is measured exactly",
                    "Correct the cell or delete the row; the default was used.");
            return false;
        }
        if (plain && range.holds(value.value())) {
            return true;
        }
        row.report(
                FindingCode.VALUE_IMPOSSIBLE,
                Severity.STOP,
                "Value",
                "read '" + value.asTyped() + "'",
                "one number for " + limit.meaning() + ", " + range.words(),
                "Correct the cell and run again; the default was used.");
        return false;
    }

    private static Range range(Limit limit) {
        return switch (limit) {
            case ROOM_TEMPERATURE -> Range.ROOM_TEMPERATURE;
            case ROOM_PRESSURE -> Range.ROOM_PRESSURE;
            case COVERAGE_FACTOR -> Range.POSITIVE;
            default -> Range.NOT_NEGATIVE;
        };
    }

    /** The unit of a limit without what the percentage is of: {@code % of theory} is {@code %}. */
    private static Optional<Unit> measure(String text) {
        int of = text.indexOf(" of ");
        String unit = of < 0 ? text : text.substring(0, of);
        return unit.equals("1") ? Optional.of(Unit.ONE) : Unit.named(unit);
    }
}
