package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Closure;

/**
 * A yield near a simple fraction or multiple that the balance does not share: nearly all substrate is found again in products, yet the
 * yield reads a half or a third; or the yield reads double. Within 6 % of the ratio (common practice).
 */
public final class CoefficientForgotten implements RunRule {

    private static final double[] RATIOS = {1.0 / 3, 0.5, 2, 3};
    private static final String[] WORDS = {"a third", "a half", "twice", "three times"};

    private final Substances substances;

    /** With the reference data in force. */
    public CoefficientForgotten(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.COEFFICIENT_SUSPECT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        if (tally.run().kind() != Run.Kind.REACTION) {
            return findings.list();
        }
        for (ProductYield product : tally.yields()) {
            if (product.endsWorkup() && product.percentOf() == ProductYield.PercentOf.THEORY) {
                judge(findings, tally, product);
            }
        }
        return findings.list();
    }

    private void judge(FindingList findings, RunTally tally, ProductYield product) {
        double percent = product.percent().value();
        for (int i = 0; i < RATIOS.length; i++) {
            boolean nearRatio =
                    Math.abs(percent / 100 / RATIOS[i] - 1) <= substances.value(Threshold.COEFFICIENT_TOLERANCE);
            Optional<Closure> telling = nearRatio ? telling(tally, RATIOS[i]) : Optional.empty();
            if (telling.isPresent()) {
                findings.add(
                        FindingCode.COEFFICIENT_SUSPECT,
                        Severity.CHECK,
                        product.product().row().at("Coefficient"),
                        Phrase.of(
                                "yield of {} {}, near {} of theory, while the balance on {} finds {}",
                                product.product().name(),
                                Figure.decimals(percent, 1, "%"),
                                WORDS[i],
                                telling.get().skeleton(),
                                Figure.decimals(telling.get().percent().value(), 1, "%")),
                        Phrase.of("coefficients of substrate and product as in the equation of the reaction"),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Write the balanced equation beside the coefficients of Charges and Products and correct them."));
            }
        }
    }

    /** A balance that is near 100 % by wanted products, or as far off as the yield itself. */
    private Optional<Closure> telling(RunTally tally, double ratio) {
        return tally.closures().stream()
                .filter(c -> {
                    double percent = c.percent().value();
                    boolean closed = Math.abs(percent - 100) <= substances.value(Threshold.COEFFICIENT_CLOSED)
                            && wantedPercent(tally.run(), c) > 100 - 2 * substances.value(Threshold.COEFFICIENT_CLOSED);
                    return closed
                            || Math.abs(percent / 100 / ratio - 1) <= substances.value(Threshold.COEFFICIENT_TOLERANCE);
                })
                .findFirst();
    }

    private static double wantedPercent(Run run, Closure closure) {
        return closure.terms().stream()
                .filter(t -> run.product(t.substance()).filter(p -> p.wanted()).isPresent())
                .mapToDouble(Closure.Term::percent)
                .sum();
    }
}
