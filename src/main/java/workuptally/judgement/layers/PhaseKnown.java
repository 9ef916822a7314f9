package workuptally.judgement.layers;

import java.util.Locale;
import java.util.Optional;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Layer;
import workuptally.model.Step;
import workuptally.tally.layers.LayerIdentity;

/**
 * R1: which phase the layer is. Met where its density fits the recorded phase or the step gave one liquid; where the density cannot tell,
 * the check recorded at the bench counts.
 */
final class PhaseKnown implements LayerCondition {
    private static final String ID = "R1";
    private static final String TITLE = "identity of the layer";

    @Override
    public Condition judge(LayerEvidence evidence) {
        Optional<LayerIdentity> identity =
                evidence.run().identity(evidence.layer().label());
        if (identity.isEmpty()) {
            return withoutDensity(evidence);
        }
        String density = identity.get()
                .densityGramsPerMillilitre()
                .map(d -> String.format(Locale.ROOT, "density %.3f g/mL", d.value()))
                .orElse("density not measured");
        return switch (identity.get().verdict()) {
            case CONSISTENT -> new Condition(ID, TITLE, State.MET, density + " fits the recorded phase");
            case SWAPPED -> new Condition(ID, TITLE, State.NOT_MET, density + " fits the other phase");
            case CANNOT_TELL, NOT_MEASURED -> byCheck(identity.get().step(), density);
        };
    }

    /** A layer whose densities could not be estimated: only where its step gave no second liquid is there nothing to mistake it for. */
    private static Condition withoutDensity(LayerEvidence evidence) {
        Optional<Layer.Phase> phase = evidence.layer().phase();
        if (phase.filter(p -> p == Layer.Phase.RAG).isPresent()) {
            return new Condition(ID, TITLE, State.MET, "a rag, between the two liquids");
        }
        String label = evidence.layer().label();
        Optional<Step> contact = evidence.run().run().orderedSteps().stream()
                .filter(s -> s.gives().contains(label) && !s.from().contains(label))
                .filter(s -> !s.givesOrganic().isEmpty() && !s.givesAqueous().isEmpty())
                .findFirst();
        return contact.map(s -> byCheck(s, "densities of this contact not known"))
                .orElse(new Condition(ID, TITLE, State.MET, "the step gave one liquid"));
    }

    /** A measured density that does not tell, or why there is none. */
    private static String unknown(String density) {
        return density + (density.contains("not ") ? "; " : " cannot tell; ");
    }

    private static Condition byCheck(Step step, String density) {
        boolean checked =
                step.checkedBy().filter(c -> c != Step.CheckedBy.NOT_CHECKED).isPresent();
        return checked
                ? new Condition(
                        ID,
                        TITLE,
                        State.MET,
                        unknown(density) + "checked at the bench by "
                                + step.checkedBy()
                                        .get()
                                        .name()
                                        .toLowerCase(Locale.ROOT)
                                        .replace('_', ' '))
                : new Condition(ID, TITLE, State.MISSING, unknown(density) + "test with a drop of water");
    }
}
