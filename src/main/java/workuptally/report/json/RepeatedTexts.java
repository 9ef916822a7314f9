package workuptally.report.json;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.report.view.Wording;
import workuptally.tally.RunTally;

/**
 * Words of conditions, decisions, contents and the like that are said more than once: they stand in {@code texts} in front of the runs, and
 * a field gives their number under its own name with {@code Text} behind it.
 */
final class RepeatedTexts {
    /** Letters from which a number is shorter than the words. */
    private static final int WORTH_A_NUMBER = 9;

    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    RepeatedTexts(Review review) {
        Map<String, Integer> times = new LinkedHashMap<>();
        review.runs().stream()
                .flatMap(RepeatedTexts::of)
                .filter(text -> text.length() >= WORTH_A_NUMBER)
                .forEach(text -> times.merge(text, 1, Integer::sum));
        times.forEach((text, count) -> {
            if (count > 1) {
                numbers.put(text, numbers.size() + 1);
            }
        });
    }

    private static Stream<String> of(RunReview review) {
        RunTally tally = review.tally();
        return Stream.of(
                        review.decisions().stream().flatMap(RepeatedTexts::of),
                        tally.layers().stream()
                                .flatMap(l -> l.contents().stream())
                                .map(c -> c.evidence()),
                        tally.closures().stream()
                                .flatMap(c -> c.candidates().stream())
                                .flatMap(c -> Stream.of(c.evidence(), c.settledBy())),
                        tally.notComputed().stream().flatMap(n -> Stream.of(n.because(), n.unlockedBy())),
                        tally.evidence().reactions().stream().map(r -> Wording.POINT.of(r.because())),
                        tally.waste().stream().map(line -> line.why()))
                .flatMap(texts -> texts);
    }

    private static Stream<String> of(LayerDecision decision) {
        return Stream.concat(
                Stream.of(Wording.POINT.of(decision.reason())),
                decision.conditions().stream().map(condition -> Wording.POINT.of(condition.evidence())));
    }

    /** The words, or their number where they are said more than once. */
    void field(JsonFields json, String name, String text) {
        Integer number = numbers.get(text);
        if (number == null) {
            json.text(name, text);
        } else {
            json.count(name + "Text", number);
        }
    }

    void write(JsonFields json) {
        json.array("texts", numbers.entrySet(), entry -> {
            json.count("text", entry.getValue());
            json.text("words", entry.getKey());
        });
    }
}
