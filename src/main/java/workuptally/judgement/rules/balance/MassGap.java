package workuptally.judgement.rules.balance;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Limit;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.balance.MassBalance;

/** Total mass: more out than in beyond 2u is a check; more missing than gas and evaporation explain is a note. */
public final class MassGap implements RunRule {
    static final String NEGATIVE = "mass-gap-negative";
    static final String LARGE = "mass-gap-large";

    private static final double STANDARD_UNCERTAINTIES = 2;

    @Override
    public List<String> codes() {
        return List.of(NEGATIVE, LARGE);
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
        String seen = FindingList.say(
                "%.1f g in, %.1f g out, gap %.1f g",
                balance.inGrams().value(), balance.outGrams().value(), gap);
        if (gap < -STANDARD_UNCERTAINTIES * u) {
            findings.add(
                    NEGATIVE,
                    Severity.CHECK,
                    place,
                    seen + ": more came out than went in",
                    FindingList.say("no less than −%.1f g (2u)", STANDARD_UNCERTAINTIES * u),
                    "conservation of mass",
                    "Look for a layer counted twice, a wrong tare or a charge that was not entered.");
        } else if (balance.complete() && gap > balance.gasGrams() + balance.evaporationAllowanceGrams()) {
            findings.add(
                    LARGE,
                    Severity.NOTE,
                    place,
                    balance.gapPercentOfOrganic().isPresent()
                            ? seen
                                    + FindingList.say(
                                            ", %.0f %% of the organic solvent charged",
                                            balance.gapPercentOfOrganic().getAsDouble())
                            : seen,
                    FindingList.say(
                            "%.1f g of evaporation and %.1f g of gas at most",
                            balance.evaporationAllowanceGrams(), balance.gasGrams()),
                    "limits '" + Limit.EVAPORATION_ALLOWANCE.title() + "' and for very volatile solvents",
                    "Look for a layer or distillate without a row; otherwise it is solvent lost to air and pump.");
        }
        return findings.list();
    }
}
