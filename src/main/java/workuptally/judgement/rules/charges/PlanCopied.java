package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Amount;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.tally.RunTally;

/** Actual amounts that equal the plan to all digits on every line. */
public final class PlanCopied implements RunRule {
    static final String CODE = "plan-copied";

    private static final int LEAST_LINES = 3;

    @Override
    public List<String> codes() {
        return List.of(CODE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        List<Charge> both = tally.run().charges().stream()
                .filter(c -> c.planned().isPresent() && c.actual().isPresent())
                .toList();
        if (both.size() >= LEAST_LINES && both.stream().allMatch(PlanCopied::isSame)) {
            findings.add(
                    CODE,
                    Severity.NOTE,
                    both.get(0).row().at("Actual amount"),
                    "all " + both.size() + " actual amounts equal the planned ones to the last digit",
                    "weighings that differ a little from the plan",
                    FindingList.PRACTICE,
                    "Enter what was weighed; theory and balance rest on it.");
        }
        return findings.list();
    }

    private static boolean isSame(Charge charge) {
        Amount planned = charge.planned().orElseThrow();
        Amount actual = charge.actual().orElseThrow();
        Optional<String> typed = planned.value().entered().map(Entered::asTyped);
        return typed.isPresent()
                && typed.equals(actual.value().entered().map(Entered::asTyped))
                && planned.unitAsTyped().equals(actual.unitAsTyped());
    }
}
