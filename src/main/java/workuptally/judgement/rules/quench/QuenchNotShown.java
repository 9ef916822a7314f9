package workuptally.judgement.rules.quench;

import java.util.ArrayList;
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
 * An oxidant or hydride without a negative quench test, or a reagent that water destroys and no step brings any: a positive test stops,
 * whatever caused it; what is missing holds what has not been evaporated yet, and a plan is reminded. Runs of which a book lists nothing but what went in and what came out are the matter of
 * {@link QuenchNotEntered}.
 */
public final class QuenchNotShown implements RunRule {

    private final ReactiveCharges charges;
    private final WaterBrought water;

    public QuenchNotShown(Substances substances) {
        this.charges = new ReactiveCharges(substances);
        this.water = new WaterBrought(substances);
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
        String names = names(reactive);
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
        } else if (!ReactiveCharges.isListedOnly(tally.run())) {
            notShown(tally, last.isEmpty() ? reactive : List.of(), findings);
        }
        return findings.list();
    }

    /** One finding of what lacks its test and what met no water. */
    private void notShown(RunTally tally, List<Charge> untested, FindingList findings) {
        List<Charge> dry = water.missingFor(tally.run());
        if (untested.isEmpty() && dry.isEmpty()) {
            return;
        }
        boolean planned = tally.run().status() == Run.Status.PLANNED;
        boolean test = !untested.isEmpty();
        List<Phrase> seen = new ArrayList<>();
        if (test) {
            seen.add(Phrase.of("no quench test is recorded; charged was {}", names(untested)));
        }
        if (!dry.isEmpty()) {
            seen.add(Phrase.of(
                    "no step up to the first aqueous layer brings water or acid; charged was {}", names(dry)));
        }
        findings.add(
                FindingCode.QUENCH_NOT_SHOWN,
                planned ? Severity.NOTE : Severity.HOLD,
                test ? place(tally, untested.get(0)) : dry.get(0).row().at("Material"),
                Phrase.join("; ", seen),
                test
                        ? Phrase.of("a negative test (peroxide strip, starch iodide, no more gas) before evaporation")
                        : Phrase.of("the step that quenched it, with its material, before the first aqueous layer"),
                FindingList.PRACTICE,
                planned
                        ? Phrase.of(test ? "Plan quench and test, and have the strips at hand." : "Plan the quench.")
                        : remedy(test));
    }

    private static Phrase remedy(boolean test) {
        return test
                ? Phrase.of(
                        "Test what is left (peroxide strip, starch iodide, gas) and enter the result; the layers of the run stay"
                                + " meanwhile, or until a row in Corrections settles it (run and this code under Record, 'settled' under"
                                + " New, and why).")
                : Phrase.of(
                        "Enter the quench where it was made; else see with a drop, cold and in the open, that nothing reacts any more."
                                + " The layers of the run stay meanwhile, or until a row in Corrections settles it (run and this code under"
                                + " Record, 'settled' under New, and why).");
    }

    private static String names(List<Charge> charges) {
        return charges.stream().map(Charge::material).distinct().collect(Collectors.joining(", "));
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
