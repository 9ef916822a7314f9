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
    private static final int MOST_PLACES = 3;

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
                double needed = reaction.neededMillilitres().orElse(0);
                int ofAmounts = placesThatTell(reaction.washMillimoles(), reaction.toNeutraliseMillimoles());
                int ofVolumes = placesThatTell(needed, needed * ratio.getAsDouble());
                Severity severity = !planned ? Severity.NOTE : ratio.getAsDouble() < 1 ? Severity.STOP : Severity.CHECK;
                findings.add(
                        FindingCode.WASH_TOO_SMALL,
                        severity,
                        reaction.step().row().at("Volume"),
                        Phrase.of(
                                "step {} ({}) brings {} for {} to neutralise ({}): it covers {}; in the worst case {}",
                                reaction.step().number(),
                                reaction.step().added().material(),
                                Figure.decimals(reaction.washMillimoles(), ofAmounts, "mmol"),
                                Figure.decimals(reaction.toNeutraliseMillimoles(), ofAmounts, "mmol"),
                                reaction.because(),
                                Figure.decimals(100 * ratio.getAsDouble(), 0, "%"),
                                Figure.decimals(reaction.worstToNeutraliseMillimoles(), ofAmounts, "mmol")),
                        Phrase.of("at least {} times what it meets", Figure.decimals(least, 2, "")),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Step {}: plan {} of this wash for what is expected, {} for the worst case, in portions with the gas let"
                                        + " off, and read the pH after it.",
                                reaction.step().number(),
                                Figure.decimals(needed, ofVolumes, "mL"),
                                Figure.decimals(
                                        reaction.neededAtWorstMillilitres().orElse(0), ofVolumes, "mL")));
            }
        }
        return findings.list();
    }

    /** The least decimals that two figures need to be seen to differ, so that what is planned anew is not what was used. */
    private static int placesThatTell(double one, double other) {
        int places = 0;
        double tens = 1;
        while (places < MOST_PLACES && Math.round(one * tens) == Math.round(other * tens)) {
            places++;
            tens *= 10;
        }
        return places;
    }
}
