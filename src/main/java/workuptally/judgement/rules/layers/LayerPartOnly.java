package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.OptionalDouble;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.bench.ContactMixture;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerTally;

/**
 * A layer entered with clearly less than the liquid of its phase that went into the contact: the row is of a sample or of one of several
 * vessels, and its evidence says nothing of the rest. Counted is only what belongs to one phase: the water, and solvents that do not mix
 * with it. Where liquid was distilled off before, or a step has no operation that is read, the volume that went in is not certain, and nothing is said.
 */
public final class LayerPartOnly implements RunRule {
    private final Substances substances;

    /** With the reference data in force. */
    public LayerPartOnly(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LAYER_PART_ONLY);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (ContactMixture contact : tally.evidence().contactMixtures()) {
            judge(tally, contact.step(), contact.step().given().organic(), contact.organicMillilitres(), findings);
            judge(tally, contact.step(), contact.step().given().aqueous(), contact.waterMillilitres(), findings);
        }
        return findings.list();
    }

    private void judge(RunTally tally, Step contact, List<String> labels, double millilitres, FindingList findings) {
        List<LayerTally> layers =
                labels.stream().flatMap(label -> tally.layer(label).stream()).toList();
        boolean whole = !labels.isEmpty()
                && layers.size() == labels.size()
                && layers.stream()
                        .allMatch(l -> l.terminal()
                                && !l.aliquot()
                                && !l.isLost()
                                && !isSwapped(tally, l)
                                && l.entry().isPresent()
                                && !contact.from().contains(l.label()));
        if (!whole || !isCertain(tally, contact)) {
            return;
        }
        double found = 0;
        for (LayerTally layer : layers) {
            OptionalDouble of = amount(layer);
            if (of.isEmpty()) {
                return;
            }
            found += of.getAsDouble();
        }
        boolean part = found < substances.value(Threshold.LAYER_PART_LEAST) * millilitres;
        if (!part && found >= substances.value(Threshold.LAYER_PART_USUAL) * millilitres) {
            return;
        }
        findings.add(
                FindingCode.LAYER_PART_ONLY,
                part ? Severity.HOLD : Severity.CHECK,
                layers.get(0).entry().orElseThrow().row().at("Volume"),
                Phrase.of(
                        "{}: {} of at least {} that went into step {}",
                        String.join(" + ", labels),
                        Figure.decimals(found, 0, "mL"),
                        Figure.decimals(millilitres, 0, "mL"),
                        contact.number()),
                Phrase.of("{} of it at least", Figure.brief(100 * substances.value(Threshold.LAYER_PART_USUAL), "%")),
                FindingList.PRACTICE,
                Phrase.of("Read the volume again, or give what stands elsewhere a row of its own."));
    }

    /** Of a layer that is the other phase by its density another finding speaks. */
    private static boolean isSwapped(RunTally tally, LayerTally layer) {
        return tally.identity(layer.label())
                .filter(identity -> identity.verdict() == LayerIdentity.Verdict.SWAPPED)
                .isPresent();
    }

    /** By volume, else by mass as if of 1 g/mL, mL; empty where neither was measured. */
    private static OptionalDouble amount(LayerTally layer) {
        return layer.volumeMillilitres()
                .or(layer::massGrams)
                .map(MeasuredValue::value)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static boolean isCertain(RunTally tally, Step contact) {
        return tally.run().orderedSteps().stream()
                .takeWhile(step -> step != contact)
                .allMatch(step -> step.operation()
                        .filter(operation -> !operation.takesSolventOff())
                        .isPresent());
    }
}
