package workuptally.judgement.rules.quench;

import java.util.List;
import java.util.OptionalDouble;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.StepReaction;

/** Gas at a wash or quench that is more than 0.2 L in a load, or more than the headspace of the funnel. */
public final class GasExpected implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public GasExpected(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.GAS_EXPECTED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (StepReaction reaction : tally.evidence().reactions()) {
            double perLoad = reaction.expectedLitres() / reaction.loads();
            OptionalDouble headspace = headspaceLitres(tally, reaction);
            boolean overHeadspace = headspace.isPresent() && perLoad > headspace.getAsDouble();
            if (reaction.gas().isEmpty() || (perLoad <= substances.value(Threshold.GAS_NOTE) && !overHeadspace)) {
                continue;
            }
            Phrase space = headspace.isPresent()
                    ? Phrase.of(
                            "; the headspace of a load is about {}", Figure.decimals(headspace.getAsDouble(), 2, "L"))
                    : Phrase.NONE;
            Phrase loads = reaction.loads() > 1
                    ? Phrase.of(", {} in each of {} loads", Figure.digits(perLoad, 2, "L"), reaction.loads())
                    : Phrase.NONE;
            findings.add(
                    FindingCode.GAS_EXPECTED,
                    Severity.NOTE,
                    reaction.step().row().at("Operation"),
                    Phrase.of(
                            "step {} ({}): about {} {}, {}{} ({}); {} in the worst case{}",
                            reaction.step().number(),
                            reaction.step().added().material(),
                            Figure.decimals(reaction.expectedMillimoles(), 0, "mmol"),
                            subscripted(reaction.gas()),
                            Figure.decimals(reaction.expectedLitres(), 2, "L"),
                            loads,
                            reaction.because(),
                            Figure.decimals(reaction.worstLitres(), 2, "L"),
                            space),
                    Phrase.of(
                            "{} in a load, and less than the headspace, to go unmentioned",
                            Figure.decimals(substances.value(Threshold.GAS_NOTE), 1, "L")),
                    FindingList.PRACTICE,
                    Phrase.of(
                            "Add in portions to the open vessel, let the gas off before stoppering, and vent often; follow the safety"
                                    + " data sheet and the local rules."));
        }
        return findings.list();
    }

    /** A formula with its numbers below the line. */
    private static String subscripted(String formula) {
        StringBuilder text = new StringBuilder();
        formula.chars().forEach(c -> text.append((char) (c >= '0' && c <= '9' ? c - '0' + '₀' : c)));
        return text.toString();
    }

    private static OptionalDouble headspaceLitres(RunTally tally, StepReaction reaction) {
        return tally.contacts().stream()
                .filter(c -> c.step() == reaction.step())
                .mapToDouble(GasExpected::headspaceLitres)
                .min();
    }

    private static double headspaceLitres(Contact contact) {
        return Math.max(0, contact.funnelMillilitres() - contact.volumeMillilitres() / contact.loads()) / 1000;
    }
}
