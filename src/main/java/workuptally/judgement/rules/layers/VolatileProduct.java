package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** A product that boils below 150 °C in a run whose solvent is taken off (common practice): part of it can be in the distillate. */
public final class VolatileProduct implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public VolatileProduct(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PRODUCT_VOLATILE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Optional<Step> evaporation = tally.run().orderedSteps().stream()
                .filter(s -> s.operation()
                        .filter(o -> o == Step.Operation.CONCENTRATE || o == Step.Operation.STRIP)
                        .isPresent())
                .reduce((a, b) -> b);
        if (evaporation.isEmpty()) {
            return findings.list();
        }
        boolean planned = tally.run().status() == Run.Status.PLANNED;
        for (Product product : tally.run().products()) {
            Optional<Double> boiling = product.boilingPointCelsius().entered().map(Entered::value);
            if (product.wanted() && substances.isVolatile(product)) {
                findings.add(
                        FindingCode.PRODUCT_VOLATILE,
                        planned ? Severity.NOTE : Severity.CHECK,
                        product.row().at("Boiling point"),
                        Phrase.of(
                                "{} boils at {}; step {} takes the solvent off",
                                product.name(),
                                Figure.decimals(boiling.get(), 0, "°C"),
                                evaporation.get().number()),
                        Phrase.of(
                                "a product that boils above {}, or gentle evaporation",
                                Figure.brief(substances.value(Threshold.VOLATILE_BELOW), "°C")),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Use a column or little vacuum, and keep the distillate until the crude is assayed."));
            }
        }
        return findings.list();
    }
}
