package workuptally.judgement.layers;

import java.util.Locale;
import java.util.Optional;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Figure;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Step;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerIdentity.PositionCheck;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.PartedLiquids;

/**
 * R1: which phase the layer is. Met where its density fits the recorded phase or the step gave one liquid; where the density cannot tell,
 * the check recorded at the bench counts.
 */
final class PhaseKnown implements LayerCondition {
    private static final Phrase NOT_MEASURED = Phrase.of("density not measured");
    private static final Phrase NOT_KNOWN = Phrase.of("densities of this contact not known");

    @Override
    public Condition judge(LayerEvidence evidence) {
        Optional<LayerTally> unrecorded = KeptLayers.of(evidence.run()).stream()
                .filter(layer -> layer.phase().isEmpty())
                .findFirst();
        if (unrecorded.isPresent()) {
            // make-up and density of every layer rest on what went into which
            return new Condition(
                    Criterion.IDENTITY,
                    State.MISSING,
                    Phrase.of(
                            "phase of {}, which is not recorded",
                            unrecorded.get().label()));
        }
        Optional<Condition> impossible = impossible(evidence);
        if (impossible.isPresent()) {
            return impossible.get();
        }
        Optional<LayerIdentity> identity =
                evidence.run().identity(evidence.layer().label());
        if (identity.isEmpty()) {
            return withoutDensity(evidence);
        }
        Phrase density = identity.get()
                .densityGramsPerMillilitre()
                .map(d -> Phrase.of("density {}", Figure.decimals(d.value(), 3, "g/mL")))
                .orElse(NOT_MEASURED);
        return switch (identity.get().verdict()) {
            case CONSISTENT ->
                new Condition(Criterion.IDENTITY, State.MET, Phrase.of("{} fits the recorded phase", density));
            case SWAPPED ->
                new Condition(Criterion.IDENTITY, State.NOT_MET, Phrase.of("{} fits the other phase", density));
            case CANNOT_TELL, NOT_MEASURED ->
                drainedFirst(identity.get())
                        .orElseGet(() -> byCheck(identity.get().step(), density));
        };
    }

    /** Missing for a layer recorded as what no liquid from a funnel can be: somebody wrote of another portion, or the wrong word. */
    private static Optional<Condition> impossible(LayerEvidence evidence) {
        String label = evidence.layer().label();
        return evidence.layer()
                .entry()
                .flatMap(Layer::phase)
                .filter(PartedLiquids::cannotBe)
                .flatMap(recorded -> PartedLiquids.contact(evidence.run().run(), label)
                        .map(step -> new Condition(
                                Criterion.IDENTITY,
                                State.MISSING,
                                Phrase.of(
                                        "which phase it is: recorded as {}, step {} gives it as {}",
                                        recorded.word(),
                                        step.number(),
                                        PartedLiquids.given(step, label).word()))));
    }

    /** Missing where what was written of the layers' places contradicts their densities: then labels may have been swapped with them. */
    private static Optional<Condition> drainedFirst(LayerIdentity identity) {
        Step step = identity.step();
        boolean otherBelow = step.funnel()
                .lowerLayer()
                .map(l -> l == Step.Lower.ORGANIC ? Layer.Phase.ORGANIC : Layer.Phase.AQUEOUS)
                .filter(typed -> identity.lower().filter(l -> l != typed).isPresent())
                .isPresent();
        return otherBelow || identity.position() == PositionCheck.CONTRADICTS
                ? Optional.of(new Condition(
                        Criterion.IDENTITY,
                        State.MISSING,
                        Phrase.of("which layer of step {} was drained first: by density the other one", step.number())))
                : Optional.empty();
    }

    /** A layer whose densities could not be estimated: only where its step gave no second liquid is there nothing to mistake it for. */
    private static Condition withoutDensity(LayerEvidence evidence) {
        Optional<Layer.Phase> phase = evidence.layer().phase();
        if (phase.filter(p -> p == Layer.Phase.RAG).isPresent()) {
            return new Condition(Criterion.IDENTITY, State.MET, Phrase.of("a rag, between the two liquids"));
        }
        String label = evidence.layer().label();
        Optional<Step> contact = evidence.run().run().orderedSteps().stream()
                .filter(s -> s.gives().contains(label) && !s.from().contains(label))
                .filter(s ->
                        !s.given().organic().isEmpty() && !s.given().aqueous().isEmpty())
                .findFirst();
        return contact.map(s -> byCheck(s, NOT_KNOWN))
                .orElse(new Condition(Criterion.IDENTITY, State.MET, Phrase.of("the step gave one liquid")));
    }

    /** A measured density that does not tell, or why there is none. */
    private static Phrase unknown(Phrase density) {
        return density == NOT_MEASURED || density == NOT_KNOWN
                ? Phrase.of("{}; ", density)
                : Phrase.of("{} cannot tell; ", density);
    }

    private static Condition byCheck(Step step, Phrase density) {
        boolean checked = step.funnel()
                .checkedBy()
                .filter(c -> c != Step.CheckedBy.NOT_CHECKED)
                .isPresent();
        return checked
                ? new Condition(
                        Criterion.IDENTITY,
                        State.MET,
                        Phrase.of(
                                "{}checked at the bench by {}",
                                unknown(density),
                                step.funnel()
                                        .checkedBy()
                                        .get()
                                        .name()
                                        .toLowerCase(Locale.ROOT)
                                        .replace('_', ' ')))
                : new Condition(
                        Criterion.IDENTITY, State.MISSING, Phrase.of("{}test with a drop of water", unknown(density)));
    }
}
