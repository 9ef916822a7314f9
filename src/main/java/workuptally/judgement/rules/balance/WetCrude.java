package workuptally.judgement.rules.balance;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Lot;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.SubstanceName;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotMoleRatios;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Substances;

/**
 * A crude mass at or above theory: over 100 % it holds something else, which is a finding unless assays
 * of it account for its mass; near 100 % without an assay it says nothing; with an assay well
 * below it, crude over theory is not the yield. Where mole ratios were read as well, they are compared with the assay.
 */
public final class WetCrude implements RunRule {

    private final Substances substances;

    public WetCrude(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(
                FindingCode.CRUDE_ABOVE_THEORY,
                FindingCode.CRUDE_WITHOUT_ASSAY,
                FindingCode.CRUDE_NOT_A_YIELD,
                FindingCode.ASSAY_BELOW_MOLE_RATIO);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (LotTally lot : tally.lots()) {
            boolean crude = lot.lot().stage().filter(s -> s != Lot.Stage.CRUDE).isEmpty();
            if (crude && lot.endsWorkup() && lot.overTheoryPercent().isPresent()) {
                judge(findings, tally, book, lot, lot.overTheoryPercent().get());
            }
            ratioAgainstAssay(findings, tally, book, lot);
        }
        return findings.list();
    }

    private static void aboveTheory(
            FindingList findings,
            LotTally lot,
            Phrase seen,
            double percent,
            double factor,
            Optional<MeasuredValue> corrected) {
        findings.add(
                FindingCode.CRUDE_ABOVE_THEORY,
                Severity.CHECK,
                lot.lot().row().at("Gross"),
                Phrase.of(
                        "{}{}",
                        seen,
                        corrected
                                .map(c -> Phrase.of(
                                        "; with its assay the yield is {}",
                                        Figure.pair(c.value(), c.expandedUncertainty(factor), 1, "%")))
                                .orElse(Phrase.of(
                                        "; at least {} of it is not product",
                                        Figure.decimals(100 - 10_000 / percent, 1, "%")))),
                Phrase.of("100 % at most for dry product"),
                "conservation of mass",
                corrected.isPresent()
                        ? Phrase.of("Report the assay-corrected yield; dry to constant mass before the final figure.")
                        : Phrase.of(
                                "Determine solvent and water (NMR, Karl Fischer) or dry to constant mass; no yield until then."));
    }

    private void judge(FindingList findings, RunTally tally, Book book, LotTally lot, MeasuredValue overTheory) {
        double factor = book.limits().value(Limit.COVERAGE_FACTOR);
        double percent = overTheory.value();
        Optional<MeasuredValue> corrected = lot.productFraction()
                .map(f -> f.times(overTheory))
                .filter(c -> lot.pureGrams().isPresent());
        Phrase seen = Phrase.of(
                "lot {}: crude mass over theory {}{}",
                lot.lot().label(),
                Figure.decimals(percent, 1, "%"),
                ratio(tally, book, lot));
        if (percent > 100 + overTheory.expandedUncertainty(factor)) {
            if (corrected.isEmpty() || !isExplained(tally, book, lot)) {
                aboveTheory(findings, lot, seen, percent, factor, corrected);
            }
        } else if (lot.productFraction().isEmpty() && percent > substances.value(Threshold.CRUDE_NEAR_THEORY)) {
            findings.add(
                    FindingCode.CRUDE_WITHOUT_ASSAY,
                    Severity.CHECK,
                    lot.lot().row().at("Assay"),
                    Phrase.of("{} without an assay", seen),
                    Phrase.of("an assay before a crude this near to theory is reported"),
                    "97 %, common practice",
                    Phrase.of("Take an assay with an internal standard, or integrate the solvent signals."));
        } else if (tally.run().kind() != Run.Kind.SEPARATION
                && percent > substances.value(Threshold.CRUDE_NEAR_THEORY)
                && corrected
                        .filter(c -> percent - c.value() > c.expandedUncertainty(factor))
                        .filter(c -> !isStated(lot, c, percent))
                        .isPresent()) {
            findings.add(
                    FindingCode.CRUDE_NOT_A_YIELD,
                    Severity.CHECK,
                    lot.lot().row().at("Assay"),
                    Phrase.of(
                            "{}; with its assay the yield is {}",
                            seen,
                            Figure.pair(corrected.get().value(), corrected.get().expandedUncertainty(factor), 1, "%")),
                    Phrase.of("the assay-corrected figure as the yield"),
                    "Y = m·w / m(theory)",
                    Phrase.of("Report the corrected yield; crude over theory is not a yield."));
        }
    }

    /** True where the yield that the chemist typed is the corrected one: nearer to it than to crude over theory. */
    private static boolean isStated(LotTally lot, MeasuredValue corrected, double crudePercent) {
        return lot.lot()
                .statedYieldPercent()
                .entered()
                .filter(y -> Math.abs(y.value() - corrected.value()) < Math.abs(y.value() - crudePercent))
                .isPresent();
    }

    /** True where product and other assays of a crude add up to its mass within U: nothing in it is unaccounted for. */
    private static boolean isExplained(RunTally tally, Book book, LotTally lot) {
        double sum = lot.productFraction().orElseThrow().value();
        double variance = Math.pow(lot.productFraction().orElseThrow().standardUncertainty(), 2);
        String product = SubstanceName.key(tally.run().countsAs(lot.product()));
        List<AssayedShare> others =
                AssayedShare.bySample(tally.run(), book.limits())
                        .getOrDefault(lot.lot().label(), List.of())
                        .stream()
                        .filter(share -> !SubstanceName.key(share.substance()).equals(product))
                        .toList();
        for (AssayedShare share : others) {
            sum += share.percent() / 100;
            variance += Math.pow(share.standardUncertaintyPercent() / 100, 2);
        }
        return !others.isEmpty() && sum + book.limits().value(Limit.COVERAGE_FACTOR) * Math.sqrt(variance) >= 1;
    }

    private Phrase ratio(RunTally tally, Book book, LotTally lot) {
        return LotMoleRatios.of(tally.run(), lot.lot(), book.limits(), substances)
                .map(r -> Phrase.of(
                        "; the mole ratios ({}) allow {} w/w product at most{}",
                        r.counted(),
                        Figure.decimals(100 * r.value(), 1, "%"),
                        lot.productFraction()
                                .map(f -> Phrase.of(", the assay gives {}", Figure.decimals(100 * f.value(), 1, "%")))
                                .orElse(Phrase.NONE)))
                .orElse(Phrase.NONE);
    }

    private void ratioAgainstAssay(FindingList findings, RunTally tally, Book book, LotTally lot) {
        Optional<LotMoleRatios.Fraction> ratio = LotMoleRatios.of(tally.run(), lot.lot(), book.limits(), substances);
        if (ratio.isEmpty()
                || lot.productFraction().isEmpty()
                || lot.basis() != workuptally.tally.amounts.YieldBasis.ASSAY) {
            return;
        }
        MeasuredValue assay = lot.productFraction().get();
        double u = Math.hypot(assay.standardUncertainty(), ratio.get().standardUncertainty());
        double below = ratio.get().value() - assay.value();
        if (Math.abs(below) > substances.value(Threshold.READINGS_AGREE) * u) {
            findings.add(
                    FindingCode.ASSAY_BELOW_MOLE_RATIO,
                    Severity.CHECK,
                    lot.lot().row().at("Assay"),
                    Phrase.of(
                            "lot {}: assay {} w/w, mole ratios {}, apart by more than 2u ({})",
                            lot.lot().label(),
                            Figure.decimals(100 * assay.value(), 1, "%"),
                            Figure.decimals(100 * ratio.get().value(), 1, "%"),
                            Figure.decimals(200 * u, 1, "%")),
                    Phrase.of("an assay equal to the mole-ratio figure, or below it where water or salts are present"),
                    "w = M/(M + Σ r·M)",
                    below > 0
                            ? Phrase.of("Look for water or inorganic matter: Karl Fischer, ash, or a sulfated residue.")
                            : Phrase.of(
                                    "An assay above its upper bound cannot be: check integrals, standard and weighing."));
        }
    }
}
