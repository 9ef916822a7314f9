package workuptally.tally.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import workuptally.measure.MeasuredValue;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.substances.Solvent;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerTally;

/** Estimates of what stands in the funnel at each contact of a run, for rules that ask about solvents and volumes. Estimates, never data. */
public final class ContactMixtureAccount {
    private final Run run;
    private final List<LayerTally> layers;
    private final Substances substances;
    private final LayerFlow flow;

    private ContactMixtureAccount(Run run, List<LayerTally> layers, Substances substances, LayerFlow flow) {
        this.run = run;
        this.layers = layers;
        this.substances = substances;
        this.flow = flow;
    }

    /** Every contact of a run, in order of the steps. */
    public static List<ContactMixture> of(Run run, List<LayerTally> layers, Substances substances, LayerFlow flow) {
        return new ContactMixtureAccount(run, layers, substances, flow).list();
    }

    private List<ContactMixture> list() {
        List<ContactMixture> mixtures = new ArrayList<>();
        for (Step step : run.orderedSteps()) {
            flow.phases(step).ifPresent(p -> mixtures.add(mixture(step, p)));
        }
        return mixtures;
    }

    private ContactMixture mixture(Step step, LayerFlow.Phases phases) {
        Ingredients all = phases.organic().plus(phases.aqueous());
        List<String> miscible = all.parts().keySet().stream()
                .filter(this::isWaterMiscible)
                .sorted()
                .toList();
        double miscibleMillilitres = all.share(n -> isWaterMiscible(n) ? 1 : 0).millilitres();
        double solventMillilitres =
                all.share(n -> substances.isOrganicSolvent(n) ? 1 : 0).millilitres();
        double aqueousGrams = phases.aqueous().totalGrams();
        double alcoholGrams = phases.aqueous().share(n -> isAlcohol(n) ? 1 : 0).totalGrams();
        return new ContactMixture(
                step,
                solventMillilitres == 0 ? 0 : 100 * miscibleMillilitres / solventMillilitres,
                miscible.stream().collect(Collectors.joining(", ")),
                aqueousGrams == 0 ? 0 : 100 * alcoholGrams / aqueousGrams,
                all.millilitres(),
                phases.organic().totalGrams(),
                aqueousGrams,
                phases.organic()
                        .share(n -> substances.isOrganicSolvent(n) && !isWaterMiscible(n) ? 1 : 0)
                        .millilitres(),
                phases.aqueous()
                        .share(n -> n.equals(IngredientAccount.WATER) ? 1 : 0)
                        .millilitres(),
                out(step));
    }

    private OptionalDouble out(Step step) {
        if (step.gives().isEmpty()) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (String label : step.gives()) {
            Optional<MeasuredValue> volume = layer(label).flatMap(LayerTally::volumeMillilitres);
            if (volume.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += volume.get().value();
        }
        return OptionalDouble.of(sum);
    }

    private Optional<LayerTally> layer(String label) {
        return layers.stream().filter(l -> l.label().equals(label)).findFirst();
    }

    private boolean isWaterMiscible(String name) {
        return substances
                .solvent(name)
                .filter(s -> substances.isOrganicSolvent(name))
                .filter(s -> s.waterMixing().miscible() == Solvent.Miscibility.YES)
                .isPresent();
    }

    private boolean isAlcohol(String name) {
        return substances.material(name).is("alcohol");
    }
}
