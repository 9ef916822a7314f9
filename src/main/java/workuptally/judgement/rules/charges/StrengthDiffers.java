package workuptally.judgement.rules.charges;

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

/** A typed molarity far from the strength that the name of the material tells: {@code sat. NaHCO3} is never 11 mol/L. */
public final class StrengthDiffers implements RunRule {
    private final Substances substances;

    /** With the reference data in force. */
    public StrengthDiffers(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.STRENGTH_DIFFERS);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        double apart = substances.value(Threshold.STRENGTH_APART);
        for (Step step : tally.run().orderedSteps()) {
            Step.Addition added = step.added();
            OptionalDouble named = substances
                    .wash(added.material())
                    .map(w -> w.concentration().molarityMolesPerLitre())
                    .orElse(OptionalDouble.empty());
            if (named.isPresent() && named.getAsDouble() > 0) {
                added.molarityMolesPerLitre()
                        .entered()
                        .filter(typed -> typed.value() > apart * named.getAsDouble()
                                || typed.value() * apart < named.getAsDouble())
                        .ifPresent(typed -> findings.add(
                                FindingCode.STRENGTH_DIFFERS,
                                Severity.CHECK,
                                step.row().at("Molarity"),
                                Phrase.of(
                                        "step {}: {} mol/L typed for {}, which has about {} by its name; the typed figure counts",
                                        step.number(),
                                        typed.asTyped(),
                                        added.material(),
                                        Figure.digits(named.getAsDouble(), 2, "mol/L")),
                                Phrase.of("the strength that the name tells"),
                                "reference table of washes",
                                Phrase.of(
                                        "Correct the molarity or the name; capacity and gas of the step rest on it.")));
            }
        }
        return findings.list();
    }
}
