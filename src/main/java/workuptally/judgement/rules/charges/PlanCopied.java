package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Amount;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Field.Entered;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** Actual amounts that equal the plan to all digits on every line. */
public final class PlanCopied implements RunRule {

    private static final int LEAST_DECIMALS = 2;

    private final Substances substances;

    /** With the reference data in force. */
    public PlanCopied(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PLAN_COPIED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        List<Charge> both = tally.run().charges().stream()
                .filter(c -> c.quantity().planned().isPresent()
                        && c.quantity().actual().isPresent()
                        && isWeighed(c))
                .toList();
        if (both.size() >= substances.value(Threshold.PLAN_COPIED_LINES)
                && both.stream().allMatch(PlanCopied::isSame)) {
            findings.add(
                    FindingCode.PLAN_COPIED,
                    Severity.NOTE,
                    both.get(0).row().at("Actual amount"),
                    Phrase.of("all {} weighed amounts equal the planned ones to the last digit", both.size()),
                    Phrase.of("weighings that differ a little from the plan"),
                    FindingList.PRACTICE,
                    Phrase.of("Enter what was weighed; theory and balance rest on it."));
        }
        return findings.list();
    }

    /** Weighed to 10 mg or finer: volumes and round masses are met exactly at the bench. */
    private static boolean isWeighed(Charge charge) {
        Amount actual = charge.quantity().actual().orElseThrow();
        return actual.dimension() == Dimension.MASS
                && actual.value()
                        .entered()
                        .filter(e -> e.decimals() >= LEAST_DECIMALS)
                        .isPresent();
    }

    private static boolean isSame(Charge charge) {
        Amount planned = charge.quantity().planned().orElseThrow();
        Amount actual = charge.quantity().actual().orElseThrow();
        Optional<String> typed = planned.value().entered().map(Entered::asTyped);
        return typed.isPresent()
                && typed.equals(actual.value().entered().map(Entered::asTyped))
                && planned.unitAsTyped().equals(actual.unitAsTyped());
    }
}
