package workuptally.book.tables;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.book.words.BookWords;
import workuptally.book.words.Range;
import workuptally.book.words.Unit;
import workuptally.book.words.YesNo;
import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.LimitAnswer;
import workuptally.model.Limits;
import workuptally.model.Severity;

/** Reads the Limits table. */
public final class LimitRows {
    private final Map<Limit, Field.Entered> numbers = new EnumMap<>(Limit.class);
    private final Map<Limit, String> texts = new EnumMap<>(Limit.class);
    private final Map<Limit, String> seen = new EnumMap<>(Limit.class);
    private final Map<Limit, LimitAnswer> answers = new EnumMap<>(Limit.class);
    private final Set<Limit> unread = EnumSet.noneOf(Limit.class);
    private final Set<String> heldRuns = new LinkedHashSet<>();
    private final RunIndex runs;

    /**
     * For one book.
     *
     * @param runs its runs, all of them read
     */
    public LimitRows(RunIndex runs) {
        this.runs = runs;
    }

    public void read(TableRows rows) {
        rows.forEach(row -> row.key("Name").ifPresent(name -> read(row, name)));
    }

    public Limits limits() {
        return new Limits(numbers, texts, answers, unread, List.copyOf(heldRuns));
    }

    private void read(TableRow row, String typed) {
        LimitName name = LimitName.of(typed);
        if (name.limit().isEmpty()) {
            reportUnknown(row, typed, name.near());
            return;
        }
        Limit limit = name.limit().get();
        if (limit == Limit.HOLD_RUNS) {
            hold(row);
        } else if (seen.containsKey(limit)) {
            reportSecond(row, typed, limit);
        } else {
            seen.put(limit, row.text("Value"));
            if (!row.isBlank("Value")) {
                set(row, limit, name.unit());
            }
        }
    }

    /** A name that may be meant for a setting leaves that one open: the default could be laxer than what the laboratory wrote. */
    private void reportUnknown(TableRow row, String typed, List<Limit> near) {
        boolean matters = !near.isEmpty() && !row.isBlank("Value");
        if (matters) {
            unread.addAll(near);
        }
        String names = near.stream().map(Limit::title).collect(Collectors.joining(" or "));
        row.report(
                FindingCode.LIMIT_UNKNOWN,
                Severity.CHECK,
                "Name",
                "read '" + typed + "'",
                near.isEmpty() ? "a name of the list in the template" : "'" + names + "', if that is meant",
                "Correct the name and run again; the row has no effect" + (matters ? ", and layers wait." : "."));
    }

    /** Of two rows that say different things nobody knows which is in force. */
    private void reportSecond(TableRow row, String typed, Limit limit) {
        boolean differs = !row.isBlank("Value") && !row.text("Value").equals(seen.get(limit));
        if (differs) {
            unread.add(limit);
        }
        row.report(
                FindingCode.LIMIT_DUPLICATE,
                Severity.CHECK,
                "Name",
                "read '" + typed + "' a second time",
                "each limit once",
                "Keep one of the rows and run again; only the first was used" + (differs ? ", and layers wait." : "."));
    }

    /** Every row that holds runs counts: a hold is not lifted by another row. */
    private void hold(TableRow row) {
        if (row.isBlank("Value")) {
            return;
        }
        HeldRuns held = HeldRuns.read(row.text("Value"), runs);
        heldRuns.addAll(held.ids());
        texts.merge(Limit.HOLD_RUNS, row.text("Value"), (first, second) -> first + "; " + second);
        if (!held.unknown().isEmpty() || row.text("Value").isEmpty()) {
            unread.add(Limit.HOLD_RUNS);
        }
        if (!held.unknown().isEmpty()) {
            row.report(
                    FindingCode.HOLD_RUN_UNKNOWN,
                    Severity.STOP,
                    "Value",
                    "read '" + String.join("', '", held.unknown()) + "'",
                    "runs of the Runs table, joined by ;",
                    "Name the runs to hold, a remark in brackets, and run again; until then the layers of every run"
                            + " wait.");
        }
    }

    private void set(TableRow row, Limit limit, String unitBehindName) {
        if (limit == Limit.AS_OF) {
            row.date("Value").ifPresent(day -> texts.put(limit, day.toString()));
        } else if (limit.isText()) {
            String text = row.text("Value");
            if (!text.isEmpty()) {
                texts.put(limit, text);
                answer(row, limit, text);
            }
        } else {
            Unit unit = measure(limit.unit()).orElse(Unit.ONE);
            String column = row.text("Unit");
            String typed = column.isEmpty() ? unitBehindName : column;
            if (!typed.equals(unitBehindName)
                    && !unitBehindName.isEmpty()
                    && !measure(typed).equals(measure(unitBehindName))) {
                row.report(
                        FindingCode.UNIT_CONTRADICTION,
                        Severity.STOP,
                        "Unit",
                        "read '" + typed + "' beside '" + unitBehindName + "' behind the name",
                        "one unit",
                        "Correct one of the two and run again; the default was used.");
                unread.add(limit);
                return;
            }
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

    /** What a text answers, where the setting asks a question. */
    private void answer(TableRow row, Limit limit, String text) {
        List<LimitAnswer> allowed = limit.kind().answers();
        Optional<LimitAnswer> answer = YesNo.of(text)
                .map(yes -> yes ? LimitAnswer.YES : LimitAnswer.NO)
                .or(() -> BookWords.find(allowed.toArray(LimitAnswer[]::new), text))
                .filter(allowed::contains);
        answer.ifPresent(a -> answers.put(limit, a));
        if (answer.isEmpty() && !allowed.isEmpty()) {
            row.report(
                    FindingCode.CHOICE_UNKNOWN,
                    Severity.CHECK,
                    "Value",
                    "read '" + text + "'",
                    allowed.stream().map(LimitAnswer::word).collect(Collectors.joining(" or ")),
                    "Write one of them, and run again; until then it is as if the setting were blank.");
        }
    }

    private static boolean isUsable(TableRow row, Limit limit, Field.Entered value) {
        boolean plain = value.qualifier() == Field.Qualifier.EXACT || value.qualifier() == Field.Qualifier.ABOUT;
        Range range = LimitRanges.of(limit);
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

    /** The unit of a limit without what the percentage is of: {@code % of theory} is {@code %}. */
    static Optional<Unit> measure(String text) {
        int of = text.indexOf(" of ");
        String unit = of < 0 ? text : text.substring(0, of);
        return unit.equals("1") ? Optional.of(Unit.ONE) : Unit.named(unit);
    }
}
