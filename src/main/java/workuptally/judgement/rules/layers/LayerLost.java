package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/** A portion that was spilled or went without a record: what it held by assay is a known loss, else it is where the rest can be. */
public final class LayerLost implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LAYER_LOST);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (LayerTally layer : tally.layers()) {
            if (layer.isLost()) {
                List<Phrase> known = layer.contents().stream()
                        .filter(c -> c.kind() == Content.Kind.MEASURED || c.isOwnEvidence())
                        .filter(c -> tally.run()
                                .product(c.substance())
                                .filter(Product::wanted)
                                .isPresent())
                        .flatMap(c -> held(c).stream())
                        .toList();
                findings.add(
                        FindingCode.LAYER_LOST,
                        Severity.CHECK,
                        layer.entry().orElseThrow().row().at("Status"),
                        Phrase.of(
                                "layer {} is entered as lost, {}",
                                layer.label(),
                                known.isEmpty()
                                        ? Phrase.of("and what it held is not known")
                                        : Phrase.of("with {} by assay", Phrase.join(", ", known))),
                        Phrase.of("every portion kept until its evidence is complete"),
                        FindingList.PRACTICE,
                        known.isEmpty()
                                ? Phrase.of(
                                        "It stands among the places where the rest of the product can be; no later assay settles it.")
                                : Phrase.of("It counts as a known loss; say so in the write-up."));
            }
        }
        return findings.list();
    }

    /** What an assay found, or the most that it can have missed. */
    private static Optional<Phrase> held(Content content) {
        if (content.kind() == Content.Kind.MEASURED) {
            return content.massGrams()
                    .map(mass -> Phrase.of("{} of {}", Figure.digits(mass.value(), 3, "g"), content.substance()));
        }
        return content.upperBoundGrams().isPresent()
                ? Optional.of(Phrase.of(
                        "at most {} of {}",
                        Figure.bound(content.upperBoundGrams().getAsDouble(), "g"),
                        content.substance()))
                : Optional.empty();
    }
}
