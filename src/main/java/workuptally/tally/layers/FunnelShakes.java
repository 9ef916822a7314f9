package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.model.Step;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;

/** What stands in the funnel at each shake of a contact: volumes read, else those of the liquids that went in, mL before mixing. */
final class FunnelShakes {
    private final Substances substances;
    private final IngredientAccount materials;
    private final MeasuredPortions measured;

    FunnelShakes(Substances substances, MeasuredPortions measured) {
        this.substances = substances;
        this.materials = new IngredientAccount(substances);
        this.measured = measured;
    }

    /** First shake: all of the source and the portion. Later shakes: the portion and the phase that stays. */
    List<Double> volumes(Step step, Ingredients source, Ingredients added) {
        double whole = sourceMillilitres(step, materials.poured(source));
        if (added.millilitres() == 0) {
            return List.of(whole);
        }
        int portionCount = (int) Math.max(1, Math.round(step.added().portionCount()));
        double portion = added.millilitres() / portionCount;
        boolean organicAdded = materials.isOrganic(step);
        Ingredients staying =
                materials.poured(source).share(n -> substances.isOrganicSolvent(n) == organicAdded ? 0 : 1);
        boolean twoPhases = staying.millilitres() > 0;
        List<Double> volumes = new ArrayList<>();
        for (int i = 0; i < portionCount; i++) {
            double stays = i == 0 || !twoPhases ? whole : Math.min(staying.millilitres(), whole);
            volumes.add(stays + portion);
        }
        return volumes;
    }

    /** As read where every layer taken was, else as estimated. */
    private double sourceMillilitres(Step step, Ingredients source) {
        double sum = 0;
        for (String label : step.from()) {
            Optional<Double> volume = measured.millilitres(label);
            if (volume.isEmpty()) {
                return source.millilitres();
            }
            sum += volume.get();
        }
        return sum;
    }
}
