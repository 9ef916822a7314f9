package workuptally.judgement.rules.charges;

import java.math.BigDecimal;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;

/**
 * Two charges that cannot be told apart as limiting, a note where theory is the same to 1 % whichever it is; or a limiting charge that is
 * not the substrate.
 */
public final class LimitingReagentUnclear implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public LimitingReagentUnclear(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LIMITING_AMBIGUOUS, FindingCode.LIMITING_NOT_SUBSTRATE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        if (tally.theory().isEmpty() || tally.theory().get().limiting().isEmpty()) {
            return findings.list();
        }
        List<Theory.Limiting> limiting = tally.theory().get().limiting();
        Phrase named =
                limiting.stream().map(l -> perCoefficient(tally.run(), l)).collect(Phrase.joining(", "));
        if (limiting.size() > 1) {
            findings.add(
                    FindingCode.LIMITING_AMBIGUOUS,
                    spreadPercent(tally.run(), limiting) > substances.value(Threshold.LIMITING_CLOSE)
                            ? Severity.CHECK
                            : Severity.NOTE,
                    charge(tally.run(), limiting.get(0).material()).row().at("Actual amount"),
                    Phrase.of("the smallest amounts cannot be told apart: {}", named),
                    Phrase.of("one smallest n/ν by more than twice the standard uncertainty of the difference"),
                    "definition of the limiting reagent",
                    Phrase.of(
                            "Theory rests on the smallest; name the limiting reagent in the write-up, or weigh more exactly."));
            return findings.list();
        }
        Charge only = charge(tally.run(), limiting.get(0).material());
        boolean hasSubstrate = tally.amounts().stream()
                .map(ChargeAmount::charge)
                .anyMatch(c -> isSubstrate(c) && c.coefficient().entered().isPresent());
        if (hasSubstrate && !isSubstrate(only)) {
            findings.add(
                    FindingCode.LIMITING_NOT_SUBSTRATE,
                    Severity.CHECK,
                    only.row().at("Actual amount"),
                    Phrase.of("limiting by the amounts charged: {}, which is not entered as a substrate", named),
                    Phrase.of("the substrate as limiting reagent, or the role corrected"),
                    "definition of the limiting reagent",
                    Phrase.of(
                            "See whether amount, coefficient and role are as meant; theory follows the smallest n/ν."));
        }
        return findings.list();
    }

    /** How far the largest n/ν of them lies above the smallest, %. */
    private static double spreadPercent(Run run, List<Theory.Limiting> limiting) {
        DoubleSummaryStatistics extents = limiting.stream()
                .mapToDouble(l -> l.amountMillimoles().value() / coefficient(run, l))
                .summaryStatistics();
        return 100 * (extents.getMax() / extents.getMin() - 1);
    }

    private static double coefficient(Run run, Theory.Limiting limiting) {
        return charge(run, limiting.material())
                .coefficient()
                .entered()
                .map(Entered::value)
                .orElse(1.0);
    }

    /** What is compared is n/ν; with a coefficient of 1 that is n. */
    private static Phrase perCoefficient(Run run, Theory.Limiting limiting) {
        double coefficient = coefficient(run, limiting);
        double millimoles = limiting.amountMillimoles().value();
        return coefficient == 1
                ? Phrase.of("{} {}", limiting.material(), Figure.decimals(millimoles, 2, "mmol"))
                : Phrase.of(
                        "{} {} / {} = {}",
                        limiting.material(),
                        Figure.decimals(millimoles, 2, "mmol"),
                        BigDecimal.valueOf(coefficient).stripTrailingZeros().toPlainString(),
                        Figure.decimals(millimoles / coefficient, 2, "mmol"));
    }

    private static boolean isSubstrate(Charge charge) {
        return charge.role().filter(r -> r == Charge.Role.SUBSTRATE).isPresent();
    }

    private static Charge charge(Run run, String material) {
        return run.charges().stream()
                .filter(c -> c.material().equals(material))
                .findFirst()
                .orElseThrow();
    }
}
