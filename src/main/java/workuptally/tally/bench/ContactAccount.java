package workuptally.tally.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Field.Entered;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.bench.Glassware;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;

/** Fill of the funnel at every shake, and wherever else a step names a funnel: sum of the volumes before mixing over the nominal volume; mixing only shrinks it. */
public final class ContactAccount {

    private final Run run;
    private final Limits limits;
    private final Substances substances;
    private final IngredientAccount materials;

    public ContactAccount(Run run, Limits limits, Substances substances) {
        this.run = run;
        this.limits = limits;
        this.substances = substances;
        this.materials = new IngredientAccount(substances);
    }

    public List<Contact> of(LayerFlow flow, List<StepReaction> reactions) {
        List<Contact> contacts = new ArrayList<>();
        for (Step step : run.orderedSteps()) {
            List<Double> volumes = volumes(flow, step);
            Optional<StepReaction> gas = reactions.stream()
                    .filter(r -> r.step() == step && r.expectedMillimoles() > 0)
                    .findFirst();
            for (int i = 0; i < volumes.size(); i++) {
                contacts.add(contact(step, i + 1, volumes.get(i), gas));
            }
        }
        return contacts;
    }

    /** Of each shake; where nothing is shaken, as in a quench, all that a funnel named for the step has to take. */
    private List<Double> volumes(LayerFlow flow, Step step) {
        List<Double> shakes = flow.volumesInFunnel(step);
        Optional<Entered> portion = step.added().volumeMillilitres().entered();
        boolean named = step.funnel().millilitres().entered().isPresent();
        if (!shakes.isEmpty() || !named || portion.isEmpty()) {
            return shakes;
        }
        return List.of(materials.poured(flow.taken(step)).millilitres()
                + step.added().portionCount() * portion.get().value());
    }

    private Contact contact(Step step, int portion, double millilitres, Optional<StepReaction> gas) {
        double limit = limits.value(gas.isPresent() ? Limit.FUNNEL_FILL_WITH_GAS : Limit.FUNNEL_FILL) / 100;
        int loads = (int) Math.max(
                1,
                Math.round(step.funnel().loads().entered().map(Entered::value).orElse(1.0)));
        Optional<Double> recorded = step.funnel().millilitres().entered().map(Entered::value);
        double funnel = recorded.orElseGet(() -> smallestThatFits(millilitres / loads, limit));
        return new Contact(
                step,
                portion,
                millilitres,
                funnel,
                recorded.isPresent(),
                100 * millilitres / loads / funnel,
                100 * limit,
                loads,
                (int) Math.ceil(millilitres / (limit * funnel) - 1e-9),
                gas.isPresent(),
                gas.map(r -> OptionalDouble.of(r.expectedLitres())).orElse(OptionalDouble.empty()),
                gas.map(r -> OptionalDouble.of(r.worstLitres())).orElse(OptionalDouble.empty()));
    }

    private double smallestThatFits(double millilitres, double limit) {
        List<Double> sizes = substances.reference().glassware().stream()
                .map(Glassware::nominalMillilitres)
                .sorted()
                .toList();
        return sizes.stream()
                .filter(s -> s * limit >= millilitres)
                .findFirst()
                .orElseGet(() -> sizes.get(sizes.size() - 1));
    }
}
