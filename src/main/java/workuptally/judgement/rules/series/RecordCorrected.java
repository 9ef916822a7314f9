package workuptally.judgement.rules.series;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.judgement.rules.BookRule;
import workuptally.model.Book;
import workuptally.model.Correction;
import workuptally.model.Field;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.tally.RunTally;

/**
 * Corrections of the record, shown with both values, and those that the book does not bear out: the entry still holds the old value, or
 * another one than the new, or there is no such run or row. Numbers only are compared, and of several corrections of one entry the last.
 */
public final class RecordCorrected implements BookRule {
    private static final Pattern NUMBER = Pattern.compile("[-\u2212]?\\d+(?:[.,]\\d+)?");
    private static final double ALIKE = 1e-9;

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.RECORD_CORRECTED, FindingCode.CORRECTION_NOT_MADE);
    }

    @Override
    public List<Finding> judge(Book book, List<RunTally> tallies) {
        if (book.corrections().isEmpty()) {
            return List.of();
        }
        NamedEntries entries = new NamedEntries(book);
        Map<String, Correction> last = new HashMap<>();
        book.corrections().forEach(c -> last.put(key(c), c));
        List<Finding> findings = new ArrayList<>();
        for (Correction correction : book.corrections()) {
            Optional<Phrase> instead =
                    last.get(key(correction)) == correction ? instead(entries, correction) : Optional.empty();
            findings.add(finding(entries, correction, instead));
        }
        return List.copyOf(findings);
    }

    private static String key(Correction correction) {
        return correction.record().strip().toLowerCase(Locale.ROOT);
    }

    private static Finding finding(NamedEntries entries, Correction c, Optional<Phrase> instead) {
        Phrase became =
                Phrase.of("{}: {} became {} ({}, {})", c.record(), c.oldValue(), c.newValue(), c.who(), c.when());
        return new Finding(
                instead.isPresent() ? FindingCode.CORRECTION_NOT_MADE : FindingCode.RECORD_CORRECTED,
                instead.isPresent() ? Severity.CHECK : Severity.NOTE,
                Subject.ofRun(entries.run(c.record()).map(Run::id).orElse("")),
                c.row().at("Record"),
                instead.isPresent() ? Phrase.of("{}; {}", became, instead.get()) : became,
                instead.isPresent()
                        ? Phrase.of("an entry of the book, which holds the new value")
                        : c.reason().isBlank()
                                ? Phrase.of("a reason for the correction")
                                : Phrase.of("reason given: {}", c.reason()),
                "entries of Corrections",
                instead.isPresent()
                        ? Phrase.of(
                                "Put the new value into the entry, or mend the row of Corrections; every figure follows the entry.")
                        : c.reason().isBlank()
                                ? Phrase.of("Enter the reason.")
                                : Phrase.of("Both values stay visible; nothing to do."));
    }

    /** What the book holds instead of the new value; empty where it holds that, or where nothing can be compared. */
    private static Optional<Phrase> instead(NamedEntries entries, Correction correction) {
        if (correction.record().isBlank()) {
            return Optional.of(Phrase.of("Record is blank"));
        }
        Optional<String> missing = entries.missing(correction.record());
        if (missing.isPresent()) {
            return missing.map(m -> Phrase.of("Record names {}", m));
        }
        List<NamedEntries.Entry> named = entries.of(correction.record());
        OptionalDouble before = number(correction.oldValue());
        OptionalDouble after = number(correction.newValue());
        if (named.stream().anyMatch(e -> holds(e.field(), after))) {
            return Optional.empty();
        }
        Optional<Field.Entered> old = named.stream()
                .filter(e -> holds(e.field(), before))
                .flatMap(e -> e.field().entered().stream())
                .findFirst();
        if (old.isPresent()) {
            return old.map(o -> Phrase.of("{} still holds {}", o.place().inWords(), o.asTyped()));
        }
        return named.size() == 1 && after.isPresent()
                ? Optional.of(named.get(0)
                        .field()
                        .entered()
                        .map(e -> Phrase.of("{} holds {}", e.place().inWords(), e.asTyped()))
                        .orElse(Phrase.of("its cell is blank")))
                : Optional.empty();
    }

    /** Whether an entry is that number, in its own unit or as it was typed. */
    private static boolean holds(Field field, OptionalDouble number) {
        return number.isPresent()
                && field.entered().stream()
                        .anyMatch(e -> isAlike(e.value(), number.getAsDouble())
                                || number(e.asTyped()).stream()
                                        .anyMatch(typed -> isAlike(typed, number.getAsDouble())));
    }

    private static boolean isAlike(double one, double other) {
        return Math.abs(one - other) <= ALIKE * Math.max(Math.abs(one), Math.abs(other));
    }

    /** The first number of a text, with a point or a comma as decimal mark. */
    private static OptionalDouble number(String text) {
        Matcher number = NUMBER.matcher(text);
        return number.find()
                ? OptionalDouble.of(
                        Double.parseDouble(number.group().replace('\u2212', '-').replace(',', '.')))
                : OptionalDouble.empty();
    }
}
