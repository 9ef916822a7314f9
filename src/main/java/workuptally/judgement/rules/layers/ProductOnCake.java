package workuptally.judgement.rules.layers;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.balance.Closure;
import workuptally.tally.bench.DriedLayer;

/** Solution that a drying-agent cake may hold back, above 0.5 % of theory (common practice). A range, since part of the gain is water. */
public final class ProductOnCake implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public ProductOnCake(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PRODUCT_ON_CAKE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Set<String> told = new HashSet<>();
        for (DriedLayer dried : tally.evidence().dried()) {
            Optional<ProductTheory> theory = tally.theory()
                    .flatMap(t -> t.products().stream()
                            .filter(p -> p.isOf(dried.product()))
                            .findFirst());
            Optional<Layer> cake = tally.run().layer(dried.cake());
            boolean balanced = tally.closures().stream()
                    .filter(c -> c.counts(dried.product()))
                    .anyMatch(c -> c.verdict() == Closure.Verdict.CLOSES);
            if (balanced
                    || theory.isEmpty()
                    || cake.isEmpty()
                    || dried.productHighGrams().isEmpty()) {
                continue;
            }
            double grams = theory.get().massGrams().value();
            double low = dried.productLowGrams().getAsDouble();
            double high = dried.productHighGrams().getAsDouble();
            // Two portions of agent for one layer end on one cake.
            if (100 * high / grams > substances.value(Threshold.CAKE_NOTE) && told.add(dried.cake())) {
                findings.add(
                        FindingCode.PRODUCT_ON_CAKE,
                        Severity.NOTE,
                        cake.get().row().at("Net"),
                        Phrase.of(
                                "cake {} ({}) may hold {} to {} of {}, {} to {} of theory (estimate)",
                                dried.cake(),
                                dried.rinsed() ? "rinsed" : "not rinsed",
                                Figure.digits(low, 2, ""),
                                Figure.digits(high, 2, "g"),
                                dried.product(),
                                Figure.decimals(100 * low / grams, 1, ""),
                                Figure.decimals(100 * high / grams, 1, "%")),
                        Phrase.of("{} of theory at most", Figure.brief(substances.value(Threshold.CAKE_NOTE), "%")),
                        "held = cake − agent − water, a third of it left after a rinse: common practice",
                        Phrase.of(
                                "Rinse the cake with a little solvent and weigh what that brings, if the balance is open."));
            }
        }
        return findings.list();
    }
}
