package workuptally.judgement.rules.balance;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Lot;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Run;
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
        sums(tally.run(), book.limits()).forEach((sample, sum) -> {
            if (sum.percent()
                    > Math.max(substances.value(Threshold.ASSAY_MOST), 100 + factor * Math.sqrt(sum.variance()))) {
                tooMuch(findings, sample, sum);
            }
        });
        return findings.list();
    }

    /** Mass per cent of all that was assayed in each lot and sample, by its label. */
    private static Map<String, Sum> sums(Run run, Limits limits) {
        Map<String, Sum> sums = new LinkedHashMap<>();
        for (Lot lot : run.lots()) {
            add(
                    sums,
                    lot.label(),
                    lot.assayPercent(),
                    lot.product(),
                    lot.relativeStandardUncertaintyPercent(),
                    run,
                    limits);
        }
        for (Assay assay : run.assays()) {
            if (assay.unit().filter(u -> u == Assay.Unit.MASS_PERCENT).isPresent()) {
                add(
                        sums,
                        assay.sample(),
                        assay.result(),
                        assay.substance(),
                        assay.relativeStandardUncertaintyPercent(),
                        run,
                        limits);
            }
        }
        return sums;
    }

    private static void add(
            Map<String, Sum> sums,
            String sample,
            Field result,
            String substance,
            Field relativePercent,
            Run run,
            Limits limits) {
        result.entered().filter(AssayImpossible::isNumber).ifPresent(percent -> {
            Sum sum = sums.getOrDefault(sample, new Sum(percent.place()));
            sums.put(
                    sample,
                    sum.plus(
                            run.countsAs(substance),
                            percent.value(),
                            relativePercent.entered().map(Entered::value).orElse(limits.value(Limit.ASSAY_OTHER))));
        });
    }

    private void tooMuch(FindingList findings, String sample, Sum sum) {
        findings.add(
                FindingCode.ASSAY_SUM_IMPOSSIBLE,
                Severity.CHECK,
                sum.place(),
                Phrase.of(
                        "{}: {} add up to {} w/w",
                        sample,
                        String.join(" + ", sum.parts()),
                        Figure.decimals(sum.percent(), 1, "%")),
                Phrase.of(
                        "{} at most, and no more than 100 % + U",
                        Figure.brief(substances.value(Threshold.ASSAY_MOST), "%")),
                FindingList.PRACTICE,
                Phrase.of("Check units, weighing of the standard and whether a result is area %."));
    }

    private static boolean isNumber(Entered entered) {
        return entered.qualifier() == Qualifier.EXACT || entered.qualifier() == Qualifier.ABOUT;
    }

    private record Sum(Place place, double percent, double variance, List<String> parts) {
        Sum(Place place) {
            this(place, 0, 0, List.of());
        }

        /** The same substance assayed twice counts once. */
        Sum plus(String substance, double value, double relativePercent) {
            if (parts.stream().anyMatch(substance::equalsIgnoreCase)) {
                return this;
            }
            List<String> more = new java.util.ArrayList<>(parts);
            more.add(substance);
            double u = value * relativePercent / 100;
            return new Sum(place, percent + value, variance + u * u, more);
        }
    }
}
