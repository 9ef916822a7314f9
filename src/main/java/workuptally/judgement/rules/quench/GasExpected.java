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
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.StepReaction;

/** Gases at a wash or quench of which each is more than 0.2 L in a load, or more than the headspace of the funnel: told once a step. */
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
        for (Step step : tally.run().orderedSteps()) {
            List<StepReaction> gases = tally.evidence().reactions().stream()
                    .filter(reaction -> reaction.step() == step && isWorthAWord(tally, reaction))
                    .toList();
            if (!gases.isEmpty()) {
                add(findings, tally, step, gases);
            }
        }
        return findings.list();
    }

    private void add(FindingList findings, RunTally tally, Step step, List<StepReaction> gases) {
        findings.add(
                FindingCode.GAS_EXPECTED,
                Severity.NOTE,
                step.row().at("Operation"),
                Phrase.of(
                        "step {} ({}): about {}; {} in the worst case{}",
                        step.number(),
                        step.added().material(),
                        gases.stream().map(GasExpected::gas).collect(Phrase.joining("; ")),
                        Figure.decimals(
                                gases.stream()
                                        .mapToDouble(StepReaction::worstLitres)
                                        .sum(),
                                2,
                                "L"),
                        headspace(tally, step)),
                Phrase.of(
                        "{} in a load, and less than the headspace, to go unmentioned",
                        Figure.decimals(substances.value(Threshold.GAS_NOTE), 1, "L")),
                FindingList.PRACTICE,
                Phrase.of(
                        "Add in portions to the open vessel, let the gas off before stoppering, and vent often; follow the safety"
                                + " data sheet and the local rules."));
    }

    private boolean isWorthAWord(RunTally tally, StepReaction reaction) {
        double perLoad = reaction.expectedLitres() / reaction.loads();
        OptionalDouble headspace = headspaceLitres(tally, reaction.step());
        boolean overHeadspace = headspace.isPresent() && perLoad > headspace.getAsDouble();
        return !reaction.gas().isEmpty() && (perLoad > substances.value(Threshold.GAS_NOTE) || overHeadspace);
    }

    /** One gas of a step, {@code 59 mmol H₂, 1.42 L (4 from each of ...)}. */
    private static Phrase gas(StepReaction reaction) {
        Phrase loads = reaction.loads() > 1
                ? Phrase.of(
                        ", {} in each of {} loads",
                        Figure.digits(reaction.expectedLitres() / reaction.loads(), 2, "L"),
                        reaction.loads())
                : Phrase.NONE;
        return Phrase.of(
                "{} {}, {}{} ({})",
                Figure.decimals(reaction.expectedMillimoles(), 0, "mmol"),
                subscripted(reaction.gas()),
                Figure.decimals(reaction.expectedLitres(), 2, "L"),
                loads,
                reaction.because());
    }

    private static Phrase headspace(RunTally tally, Step step) {
        OptionalDouble litres = headspaceLitres(tally, step);
        return litres.isPresent()
                ? Phrase.of("; the headspace of a load is about {}", Figure.decimals(litres.getAsDouble(), 2, "L"))
                : Phrase.NONE;
    }

    /** A formula with its numbers below the line. */
    private static String subscripted(String formula) {
        StringBuilder text = new StringBuilder();
        formula.chars().forEach(c -> text.append((char) (c >= '0' && c <= '9' ? c - '0' + '₀' : c)));
        return text.toString();
    }

    private static OptionalDouble headspaceLitres(RunTally tally, Step step) {
        return tally.contacts().stream()
                .filter(c -> c.step() == step)
                .mapToDouble(GasExpected::headspaceLitres)
                .min();
    }

    private static double headspaceLitres(Contact contact) {
        return Math.max(0, contact.funnelMillilitres() - contact.volumeMillilitres() / contact.loads()) / 1000;
    }
}
