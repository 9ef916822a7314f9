package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.FoundDownstream;
import workuptally.tally.bench.Contact;
import workuptally.tally.layers.LayerTally;

/**
 * A portion that was worked up and whose assay finds less of a product than was found in what was made of it alone, by more than U of the
 * difference. No balance counts such a portion, so that a wrong dilution factor or volume of it shows nowhere else.
 */
public final class PortionHeldMore implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public PortionHeldMore(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PORTION_HELD_MORE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        FoundDownstream downstream = new FoundDownstream(tally.run(), tally.layers(), tally.lots());
        double factor = book.limits().value(Limit.COVERAGE_FACTOR);
        for (LayerTally layer : tally.layers()) {
            if (layer.terminal() || layer.aliquot()) {
                continue;
            }
            for (Product product : tally.run().products()) {
                Optional<Content> held = own(layer, product);
                Optional<FoundDownstream.Amount> found = held.flatMap(c -> downstream.of(layer.label(), product));
                if (found.isPresent()) {
                    judge(tally, layer, held.get(), found.get(), factor, findings);
                } else if (held.isEmpty()) {
                    byContact(tally, layer, product, downstream, findings);
                }
            }
        }
        return findings.list();
    }

    private static Optional<Content> own(LayerTally layer, Product product) {
        return layer.contents().stream()
                .filter(c -> c.isOf(product.name())
                        && c.isOwnEvidence()
                        && c.massGrams().isPresent())
                .findFirst();
    }

    private static void judge(
            RunTally tally,
            LayerTally layer,
            Content held,
            FoundDownstream.Amount found,
            double factor,
            FindingList findings) {
        MeasuredValue missing = found.grams().minus(held.massGrams().get());
        if (missing.value() <= missing.expandedUncertainty(factor)) {
            return;
        }
        findings.add(
                FindingCode.PORTION_HELD_MORE,
                Severity.CHECK,
                place(tally, layer, held),
                Phrase.of(
                        "portion {} held {} of {} by its assay ({}), but {} of it was found in {}, which was made of it alone",
                        layer.label(),
                        Figure.digits(held.massGrams().get().value(), 3, "g"),
                        held.substance(),
                        held.evidence(),
                        Figure.digits(found.grams().value(), 3, "g"),
                        String.join(", ", found.labels())),
                Phrase.of("at least what was found in what came of it, within U"),
                "conservation of mass",
                Phrase.of(
                        "Look at the dilution factor, unit and volume of this assay, then at weighing and assay of {}.",
                        String.join(", ", found.labels())));
    }

    /** A portion assayed by strength and never measured holds no more than its strength times all that stood in the funnel. */
    private void byContact(
            RunTally tally, LayerTally layer, Product product, FoundDownstream downstream, FindingList findings) {
        OptionalDouble funnel = tally.contacts().stream()
                .filter(c -> c.step().gives().contains(layer.label()))
                .mapToDouble(Contact::volumeMillilitres)
                .max();
        Optional<Entered> strength = tally.run().assays().stream()
                .filter(a -> a.sample().equals(layer.label()) && a.isOf(product.name()))
                .filter(a -> a.unit()
                        .filter(u -> u == Assay.Unit.MILLIGRAMS_PER_MILLILITRE)
                        .isPresent())
                .flatMap(a -> a.result().entered().stream())
                .filter(r -> r.qualifier() == Qualifier.EXACT)
                .findFirst();
        if (funnel.isEmpty() || strength.isEmpty() || layer.volumeMillilitres().isPresent()) {
            return;
        }
        double most = strength.get().value() * funnel.getAsDouble() / 1000;
        Optional<FoundDownstream.Amount> found = downstream
                .of(layer.label(), product)
                .filter(f -> f.grams().value() - f.grams().oneSidedReach()
                        > substances.value(Threshold.PORTION_FAR_MORE) * most);
        if (found.isPresent()) {
            findings.add(
                    FindingCode.PORTION_HELD_MORE,
                    Severity.CHECK,
                    strength.get().place(),
                    Phrase.of(
                            "portion {} of {} mg/mL held {} of {} at most, in all {} of the funnel; but {} of it was found in {},"
                                    + " which was made of it alone",
                            layer.label(),
                            strength.get().asTyped(),
                            Figure.bound(most, "g"),
                            product.name(),
                            Figure.decimals(funnel.getAsDouble(), 0, "mL"),
                            Figure.digits(found.get().grams().value(), 3, "g"),
                            String.join(", ", found.get().labels())),
                    Phrase.of("at least what was found in what came of it"),
                    "conservation of mass",
                    Phrase.of(
                            "Look at sample name, dilution factor and unit of this assay, then at weighing and assay of {}.",
                            String.join(", ", found.get().labels())));
        }
    }

    private static Place place(RunTally tally, LayerTally layer, Content held) {
        return tally.run().assays().stream()
                .filter(a -> a.sample().equals(layer.label()) && a.isOf(held.substance()))
                .map(Assay::row)
                .map(r -> r.at("Result"))
                .findFirst()
                .or(() -> layer.entry().map(Layer::row).map(r -> r.at("Volume")))
                .orElse(tally.run().row().at("Run"));
    }
}
