package workuptally.judgement.rules.quench;

import java.util.List;
import workuptally.model.Charge;
import workuptally.model.Run;
import workuptally.tally.amounts.Substances;

/** Charges that a quench must have destroyed: oxidants, peroxides, halogens, hydrides. */
final class ReactiveCharges {
    private final Substances substances;

    ReactiveCharges(Substances substances) {
        this.substances = substances;
    }

    /** Those of a run that have a test which shows them gone: a silver salt is an oxidiser by its counter-ion and needs none. */
    List<Charge> of(Run run) {
        return run.charges().stream().filter(this::isReactive).toList();
    }

    private boolean isReactive(Charge charge) {
        return substances.material(charge.material(), charge.formula()).parts().stream()
                .anyMatch(substances::needsQuenchTest);
    }

    /** True for a run whose product is isolated and whose workup nobody entered, as in a list of yields: no layer of it can be held. */
    static boolean isListedOnly(Run run) {
        return run.status() == Run.Status.ISOLATED
                && run.orderedSteps().isEmpty()
                && run.layers().isEmpty();
    }
}
