package workuptally.judgement.rules.quench;

import java.util.List;
import java.util.OptionalDouble;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.bench.StepReaction;

/** An acid or base wash that cannot neutralise what it meets: a stop in a plan below 1.0, a note once the wash is done. */
public final class WashTooSmall implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.WASH_TOO_SMALL);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        double least = book.limits().value(Limit.NEUTRALISATION_RATIO);
        boolean planned = tally.run().status() == Run.Status.PLANNED;
        for (StepReaction reaction : tally.evidence().reactions()) {
            OptionalDouble ratio = reaction.capacityRatio();
            if (ratio.isPresent() && ratio.getAsDouble() < least) {
                Severity severity = !planned ? Severity.NOTE : ratio.getAsDouble() < 1 ? Severity.STOP : Severity.CHECK;
                findings.add(
                        FindingCode.WASH_TOO_SMALL,
                        severity,
                        reaction.step().row().at("Volume"),
                        Phrase.of(
                                "step {} ({}) brings {} for {} to neutralise ({}): it covers {}; in the worst case {}",
                                reaction.step().number(),
                                reaction.step().added().material(),
                                Figure.decimals(reaction.washMillimoles(), 0, "mmol"),
                                Figure.decimals(reaction.toNeutraliseMillimoles(), 0, "mmol"),
                                reaction.because(),
                                Figure.decimals(100 * ratio.getAsDouble(), 0, "%"),
                                Figure.decimals(reaction.worstToNeutraliseMillimoles(), 0, "mmol")),
                        Phrase.of("at least {} times what it meets", Figure.decimals(least, 2, "")),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Step {}: plan {} of this wash for what is expected, {} for the worst case, in portions with the gas let"
                                        + " off, and read the pH after it.",
                                reaction.step().number(),
                                Figure.decimals(reaction.neededMillilitres().orElse(0), 0, "mL"),
                                Figure.decimals(
                                        reaction.neededAtWorstMillilitres().orElse(0), 0, "mL")));
            }
        }
        return findings.list();
    }
}
