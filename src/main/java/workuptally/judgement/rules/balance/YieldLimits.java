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
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ProductYield;

/**
 * A yield above 100 % by more than U stops, and so does the mass of a purified lot: whatever its assay, it is not all product. A yield that
 * is only an upper bound is a note.
 */
public final class YieldLimits implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.YIELD_ABOVE_100, FindingCode.YIELD_UPPER_BOUND, FindingCode.CONVERSION_BELOW_YIELD);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        double factor = book.limits().value(Limit.COVERAGE_FACTOR);
        for (ProductYield product : tally.yields()) {
            conversion(tally, product, factor, findings);
            double percent = product.percent().value();
            double expanded = product.percent().expandedUncertainty(factor);
            Phrase seen = Phrase.of(
                    "{} {} ({})",
                    product.product().name(),
                    Figure.pair(percent, expanded, 1, "%"),
                    product.stage().name().toLowerCase(java.util.Locale.ROOT));
            boolean over = product.isAboveAll(factor) && tally.run().kind() != Run.Kind.RESOLUTION;
            if (product.basis().isUpperBound() && !(over && product.stage() == ProductYield.Stage.PURIFIED)) {
                findings.add(
                        FindingCode.YIELD_UPPER_BOUND,
                        Severity.NOTE,
                        product.product().row().at("Product"),
                        Phrase.of(
                                "{} is an upper bound: {}",
                                seen,
                                product.basis().word()),
                        Phrase.of("an assay of lot {}", String.join(", ", product.lots())),
                        "Y = m·w / m(theory)",
                        Phrase.of("Assay the lot; until then it stays out of the means of the week."));
            } else if (over) {
                findings.add(
                        FindingCode.YIELD_ABOVE_100,
                        Severity.STOP,
                        product.product().row().at("Product"),
                        seen,
                        Phrase.of("100 % + U at most"),
                        "conservation of mass",
                        Phrase.of(
                                "Look at molar masses, coefficients, tare, assay and rows counted twice; the figure enters no mean."));
            }
        }
        return findings.list();
    }

    /** A conversion below the yield by more than the expanded uncertainty of their ratio. */
    private static void conversion(RunTally tally, ProductYield product, double factor, FindingList findings) {
        product.conversionAdjustedPercent()
                .filter(adjusted -> adjusted.value() - adjusted.expandedUncertainty(factor) > 100)
                .ifPresent(adjusted -> {
                    boolean typed =
                            tally.run().head().conversionPercent().entered().isPresent();
                    findings.add(
                            FindingCode.CONVERSION_BELOW_YIELD,
                            Severity.CHECK,
                            typed
                                    ? tally.run().row().at("Conversion")
                                    : product.product().row().at("Product"),
                            Phrase.of(
                                    "yield of {} is {}, conversion {}: adjusted for it {}",
                                    product.product().name(),
                                    Figure.decimals(product.percent().value(), 1, "%"),
                                    Figure.decimals(100 * product.percent().value() / adjusted.value(), 1, "%"),
                                    Figure.decimals(adjusted.value(), 1, "%")),
                            Phrase.of("a conversion not below the yield"),
                            "a product forms from what was converted",
                            typed
                                    ? Phrase.of(
                                            "See whether Conversion was meant for what is left, and how it was determined.")
                                    : Phrase.of(
                                            "See whether recovered substrate was counted twice, or its assay took the product with it."));
                });
    }
}
