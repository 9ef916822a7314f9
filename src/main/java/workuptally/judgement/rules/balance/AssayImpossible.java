package workuptally.judgement.rules.balance;

import java.util.List;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** Components of one sample that add up to more than it weighs: above 102 % w/w and beyond U of the sum (common practice). */
public final class AssayImpossible implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public AssayImpossible(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.ASSAY_SUM_IMPOSSIBLE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        double factor = book.limits().value(Limit.COVERAGE_FACTOR);
        AssayedShare.bySample(tally.run(), book.limits()).forEach((sample, shares) -> {
            double sum = shares.stream().mapToDouble(AssayedShare::percent).sum();
            double u = Math.sqrt(shares.stream()
                    .mapToDouble(share -> share.standardUncertaintyPercent() * share.standardUncertaintyPercent())
                    .sum());
            if (sum > Math.max(substances.value(Threshold.ASSAY_MOST), 100 + factor * u)) {
                tooMuch(findings, sample, shares, sum);
            }
        });
        return findings.list();
    }

    private void tooMuch(FindingList findings, String sample, List<AssayedShare> shares, double percent) {
        findings.add(
                FindingCode.ASSAY_SUM_IMPOSSIBLE,
                Severity.CHECK,
                shares.get(0).place(),
                Phrase.of(
                        "{}: {} add up to {} w/w",
                        sample,
                        shares.stream().map(AssayedShare::substance).collect(Collectors.joining(" + ")),
                        Figure.decimals(percent, 1, "%")),
                Phrase.of(
                        "{} at most, and no more than 100 % + U",
                        Figure.brief(substances.value(Threshold.ASSAY_MOST), "%")),
                FindingList.PRACTICE,
                Phrase.of("Check units, weighing of the standard and whether a result is area %."));
    }
}
