package workuptally.tally;

import java.util.List;
import java.util.Optional;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.NotComputed;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.balance.Purification;
import workuptally.tally.balance.PurificationAccount;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.Plan;
import workuptally.tally.bench.WorkupEvidence;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerMakeUp;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.waste.Metrics;
import workuptally.tally.waste.SolventUse;
import workuptally.tally.waste.WasteLine;

/**
 * All results of one run.
 *
 * @param run the entries
 * @param amounts charges as amounts, in order of the table
 * @param theory what the limiting reagent allows, if it could be computed
 * @param lots lots
 * @param yields yields, workup first
 * @param layers layers in order of the steps
 * @param closures closure per skeleton
 * @param massBalance total mass balance, if there is a workup
 * @param contacts every shake in a funnel
 * @param solvents solvents of the run
 * @param waste waste account of the run
 * @param evidence what the steps show beside masses and contents
 * @param notComputed what was not computed and why
 */
public record RunTally(
        Run run,
        List<ChargeAmount> amounts,
        Optional<Theory> theory,
        List<LotTally> lots,
        List<ProductYield> yields,
        List<LayerTally> layers,
        List<Closure> closures,
        Optional<MassBalance> massBalance,
        List<Contact> contacts,
        List<SolventUse> solvents,
        List<WasteLine> waste,
        WorkupEvidence evidence,
        List<NotComputed> notComputed) {
    /** Copies the lists. */
    public RunTally {
        amounts = List.copyOf(amounts);
        lots = List.copyOf(lots);
        yields = List.copyOf(yields);
        layers = List.copyOf(layers);
        closures = List.copyOf(closures);
        contacts = List.copyOf(contacts);
        solvents = List.copyOf(solvents);
        waste = List.copyOf(waste);
        notComputed = List.copyOf(notComputed);
    }

    /** The layer of that label, if it is known. */
    public Optional<LayerTally> layer(String label) {
        for (LayerTally layer : layers) {
            if (layer.label().equals(label)) {
                return Optional.of(layer);
            }
        }
        return Optional.empty();
    }

    /** The identity of a layer by its density, if it came from a contact. */
    public Optional<LayerIdentity> identity(String label) {
        return evidence.identities().stream()
                .filter(i -> i.label().equals(label))
                .findFirst();
    }

    /**
     * Whether it is known which phase a layer is: its density fits what it is recorded as, or the other phase, which is then reported; the
     * check at the bench counts where the density cannot tell; and a portion whose step gave no second liquid can be mistaken for none.
     */
    public boolean isPhaseKnown(String label) {
        Optional<LayerIdentity> identity = identity(label);
        if (identity.isPresent()) {
            LayerIdentity.Verdict verdict = identity.get().verdict();
            return verdict == LayerIdentity.Verdict.CONSISTENT
                    || verdict == LayerIdentity.Verdict.SWAPPED
                    || isChecked(identity.get().step());
        }
        boolean rag = layer(label)
                .flatMap(LayerTally::phase)
                .filter(p -> p == Layer.Phase.RAG)
                .isPresent();
        return rag
                || run.orderedSteps().stream()
                        .filter(s -> s.gives().contains(label) && !s.from().contains(label))
                        .filter(s -> !s.given().organic().isEmpty()
                                && !s.given().aqueous().isEmpty())
                        .findFirst()
                        .map(RunTally::isChecked)
                        .orElse(true);
    }

    private static boolean isChecked(Step step) {
        return step.funnel()
                .checkedBy()
                .filter(c -> c != Step.CheckedBy.NOT_CHECKED)
                .isPresent();
    }

    /** The purifications' own balances, those of lots without an assay among them. */
    public List<Purification> purifications() {
        return new PurificationAccount(run, lots, layers).list();
    }

    /** What a terminal layer is made of, if it was followed. */
    public Optional<LayerMakeUp> makeUp(String label) {
        return evidence.makeUps().stream().filter(m -> m.layer().equals(label)).findFirst();
    }

    /** Mass metrics, if the product was assayed. */
    public Optional<Metrics> metrics() {
        return evidence.metrics();
    }

    /** What to expect, of a run that is only planned. */
    public Optional<Plan> plan() {
        return evidence.plan();
    }

    RunTally with(Plan expected) {
        return new RunTally(
                run,
                amounts,
                theory,
                lots,
                yields,
                layers,
                closures,
                massBalance,
                contacts,
                solvents,
                waste,
                evidence.with(expected),
                notComputed);
    }
}
