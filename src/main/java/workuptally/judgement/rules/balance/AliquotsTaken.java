package workuptally.judgement.rules.balance;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory.ProductTheory;

/** Product taken out in aliquots, above 0.5 % of theory (common practice): the corrected yield stands beside the yield. */
public final class AliquotsTaken implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public AliquotsTaken(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.ALIQUOTS_TAKEN);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (ProductTheory theory : tally.theory().map(t -> t.products()).orElse(List.of())) {
            String name = theory.product().name();
            double grams = tally.layers().stream()
                    .flatMap(l -> (l.aliquot() ? l.contents() : l.taken()).stream())
                    .filter(c -> c.isOf(name))
                    .flatMap(c -> c.massGrams().stream())
                    .mapToDouble(m -> m.value())
                    .sum();
            double percent = 100 * grams / theory.massGrams().value();
            if (percent > substances.value(Threshold.ALIQUOTS_NOTE)) {
                Optional<ProductYield> yield = tally.yields().stream()
                        .filter(y -> y.product() == theory.product()
                                && y.aliquotCorrectedPercent().isPresent())
                        .findFirst();
                findings.add(
                        FindingCode.ALIQUOTS_TAKEN,
                        Severity.NOTE,
                        theory.product().row().at("Product"),
                        Phrase.of(
                                "aliquots took {} of {}, {} of theory{}",
                                Figure.decimals(grams, 3, "g"),
                                name,
                                Figure.decimals(percent, 1, "%"),
                                yield.map(y -> Phrase.of(
                                                "; yield {}, with the aliquots put back {}",
                                                Figure.decimals(y.percent().value(), 1, "%"),
                                                Figure.decimals(
                                                        y.aliquotCorrectedPercent()
                                                                .get()
                                                                .value(),
                                                        1,
                                                        "%")))
                                        .orElse(Phrase.NONE)),
                        Phrase.of(
                                "{} at most, or both figures reported",
                                Figure.brief(substances.value(Threshold.ALIQUOTS_NOTE), "%")),
                        "Y / Π(1 − f), f the share taken; threshold common practice",
                        Phrase.of("Report both figures, the yield first."));
            }
        }
        return findings.list();
    }
}
