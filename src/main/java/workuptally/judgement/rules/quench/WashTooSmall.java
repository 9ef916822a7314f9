package workuptally.judgement.rules.quench;

import java.util.List;
import java.util.OptionalDouble;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
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
                        FindingList.say(
                                "step %s (%s) brings %.0f mmol for %.0f mmol to neutralise (%s): it covers %.0f %%; in the worst case"
                                        + " %.0f mmol",
                                reaction.step().number(),
                                reaction.step().material(),
                                reaction.washMillimoles(),
                                reaction.toNeutraliseMillimoles(),
                                reaction.because(),
                                100 * ratio.getAsDouble(),
                                reaction.worstToNeutraliseMillimoles()),
                        FindingList.say("at least %.2f times what it meets", least),
                        FindingList.PRACTICE,
                        FindingList.say(
                                "Plan %.0f mL of this wash for what is expected, %.0f mL for the worst case, in portions with the"
                                        + " gas let off, and read the pH after it.",
                                reaction.neededMillilitres().orElse(0),
                                reaction.neededMillilitres().orElse(0)
                                        * reaction.worstToNeutraliseMillimoles()
                                        / reaction.toNeutraliseMillimoles()));
            }
        }
        return findings.list();
    }
}
