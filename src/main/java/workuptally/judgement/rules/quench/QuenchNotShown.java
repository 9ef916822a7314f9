package workuptally.judgement.rules.quench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/**
 * An oxidant or hydride without a negative quench test: a positive test stops, whatever caused it; a missing one holds what has not been
 * evaporated yet, and a plan is reminded. Runs of which a book lists nothing but what went in and what came out are the matter of
 * {@link QuenchNotEntered}.
 */
public final class QuenchNotShown implements RunRule {

    private final ReactiveCharges charges;

    public QuenchNotShown(Substances substances) {
        this.charges = new ReactiveCharges(substances);
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.QUENCH_TEST_POSITIVE, FindingCode.QUENCH_NOT_SHOWN);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Optional<Step> last = tally.run().orderedSteps().stream()
                .filter(s -> s.quenchTest()
                        .filter(q -> q != Step.QuenchTest.NOT_DONE)
                        .isPresent())
                .reduce((a, b) -> b);
        List<Charge> reactive = charges.of(tally.run());
        String names = reactive.stream().map(Charge::material).collect(Collectors.joining(", "));
        boolean positive = last.flatMap(Step::quenchTest)
                .filter(q -> q == Step.QuenchTest.POSITIVE)
                .isPresent();
        if (positive) {
            findings.add(
                    FindingCode.QUENCH_TEST_POSITIVE,
                    Severity.STOP,
                    last.get().row().at("Quench test"),
                    Phrase.of(
                            "the last quench test, in step {}, is positive; {}",
                            last.get().number(),
                            names.isEmpty()
                                    ? Phrase.of("what caused it is not among the charges")
                                    : Phrase.of("charged was {}", names)),
                    Phrase.of("a negative test before anything is concentrated or put into a closed bottle"),
                    FindingList.PRACTICE,
                    Phrase.of(
                            "Quench again under the local procedure, test, and enter the result; nothing is evaporated meanwhile."));
        } else if (last.isEmpty() && !reactive.isEmpty() && !ReactiveCharges.isListedOnly(tally.run())) {
            boolean planned = tally.run().status() == Run.Status.PLANNED;
            findings.add(
                    FindingCode.QUENCH_NOT_SHOWN,
                    planned ? Severity.NOTE : Severity.HOLD,
                    place(tally, reactive.get(0)),
                    Phrase.of("no quench test is recorded; charged was {}", names),
                    Phrase.of("a negative test (peroxide strip, starch iodide, no more gas) before evaporation"),
                    FindingList.PRACTICE,
                    planned
                            ? Phrase.of("Plan quench and test, and have the strips at hand.")
                            : Phrase.of(
                                    "Test what is left (peroxide strip, starch iodide, gas) and enter the result; the layers of the run stay"
                                            + " meanwhile, or until a row in Corrections settles it (run and this code under Record, 'settled' under"
                                            + " New, and why)."));
        }
        return findings.list();
    }

    private static workuptally.model.Place place(RunTally tally, Charge charge) {
        return tally.run().orderedSteps().stream()
                .filter(s ->
                        s.operation().filter(o -> o == Step.Operation.QUENCH).isPresent())
                .findFirst()
                .map(s -> s.row().at("Quench test"))
                .orElse(charge.row().at("Material"));
    }
}
