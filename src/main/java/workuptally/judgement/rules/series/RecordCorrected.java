package workuptally.judgement.rules.series;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import workuptally.judgement.rules.BookRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.tally.RunTally;

/** Corrections of the record, shown with both values. */
public final class RecordCorrected implements BookRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.RECORD_CORRECTED);
    }

    @Override
    public List<Finding> judge(Book book, List<RunTally> tallies) {
        RunNames runs = RunNames.of(book);
        return book.corrections().stream()
                .map(c -> new Finding(
                        FindingCode.RECORD_CORRECTED,
                        Severity.NOTE,
                        Subject.ofRun(runs.firstIn(c.record()).orElse("")),
                        c.row().at("Record"),
                        Phrase.of(
                                "{}: {} became {} ({}, {})", c.record(), c.oldValue(), c.newValue(), c.who(), c.when()),
                        c.reason().isBlank()
                                ? Phrase.of("a reason for the correction")
                                : Phrase.of("reason given: {}", c.reason()),
                        "entries of Corrections",
                        c.reason().isBlank()
                                ? Phrase.of("Enter the reason.")
                                : Phrase.of("Both values stay visible; nothing to do.")))
                .toList();
    }

    /**
     * Ids of runs, to be found inside a text.
     *
     * @param order position in the book by id
     * @param lengths every length that an id has
     */
    private record RunNames(Map<String, Integer> order, Set<Integer> lengths) {
        static RunNames of(Book book) {
            Map<String, Integer> order = new HashMap<>();
            Set<Integer> lengths = new HashSet<>();
            for (Run run : book.runs()) {
                if (!run.id().isBlank()) {
                    order.putIfAbsent(run.id(), order.size());
                    lengths.add(run.id().length());
                }
            }
            return new RunNames(order, lengths);
        }

        /** Of the runs that a text names, the first of the book; takes as long for a large book as for a small one. */
        Optional<String> firstIn(String text) {
            return lengths.stream()
                    .flatMap(length -> IntStream.rangeClosed(0, text.length() - length)
                            .mapToObj(start -> text.substring(start, start + length)))
                    .filter(order::containsKey)
                    .min(Comparator.comparing(order::get));
        }
    }
}
