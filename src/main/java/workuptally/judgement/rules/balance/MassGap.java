package workuptally.judgement.rules.balance;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.MassBalance;

/** Total mass: more out than in beyond 2u is a check; more missing than gas and evaporation explain is a note. */
public final class MassGap implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public MassGap(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.MASS_GAP_NEGATIVE, FindingCode.MASS_GAP_LARGE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        if (tally.massBalance().isEmpty()) {
            return findings.list();
        }
        MassBalance balance = tally.massBalance().get();
        Place place = tally.run().row().at("Run");
        double gap = balance.gapGrams().value();
        double u = balance.gapGrams().standardUncertainty();
        Phrase seen = Phrase.of(
                "{} in, {} out, gap {}",
                Figure.decimals(balance.inGrams().value(), 1, "g"),
                Figure.decimals(balance.outGrams().value(), 1, "g"),
                Figure.decimals(gap, 1, "g"));
        if (gap < -substances.value(Threshold.MASS_GAP) * u) {
            findings.add(
                    FindingCode.MASS_GAP_NEGATIVE,
                    Severity.CHECK,
                    place,
                    Phrase.of("{}: more came out than went in", seen),
                    Phrase.of(
                            "no less than −{} ({}u)",
                            Figure.decimals(substances.value(Threshold.MASS_GAP) * u, 1, "g"),
                            Figure.brief(substances.value(Threshold.MASS_GAP), "")),
                    "conservation of mass",
                    Phrase.of("Look for a layer counted twice, a wrong tare or a charge that was not entered."));
        } else if (balance.complete()
                && gap > substances.value(Threshold.MASS_GAP) * u
                && gap > balance.gasGrams() + balance.evaporationAllowanceGrams()) {
            findings.add(
                    FindingCode.MASS_GAP_LARGE,
                    Severity.NOTE,
                    place,
                    balance.gapPercentOfOrganic().isPresent()
                            ? Phrase.of(
                                    "{}, {} of the organic solvent charged{}",
                                    seen,
                                    Figure.decimals(
                                            balance.gapPercentOfOrganic().getAsDouble(), 0, "%"),
                                    balance.solutionSolventGrams() > 0
                                            ? Phrase.of(
                                                    " as such; {} more came with reagents in solution",
                                                    Figure.decimals(balance.solutionSolventGrams(), 1, "g"))
                                            : Phrase.NONE)
                            : seen,
                    Phrase.of(
                            "{} of evaporation and {} of gas at most",
                            Figure.decimals(balance.evaporationAllowanceGrams(), 1, "g"),
                            Figure.decimals(balance.gasGrams(), 1, "g")),
                    "limits '" + Limit.EVAPORATION_ALLOWANCE.title() + "' and for very volatile solvents",
                    Phrase.of(
                            "Look for a layer or distillate without a row; otherwise it is solvent lost to air and pump."));
        }
        return findings.list();
    }
}
