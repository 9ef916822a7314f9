package workuptally.judgement.rules.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.tally.amounts.Substances;

/**
 * The densities of what a run brought, charged or added in a step, as entered or by the tables: what a layer of it is made of, so
 * that its own density lies among them, but for what is dissolved.
 *
 * @param lowGramsPerMillilitre the lightest, g/mL
 * @param highGramsPerMillilitre the heaviest, g/mL
 */
record LiquidsOfRun(double lowGramsPerMillilitre, double highGramsPerMillilitre) {

    /** Those of a run; empty where none is known. */
    static Optional<LiquidsOfRun> of(Run run, Substances substances) {
        List<Double> densities = new ArrayList<>();
        for (Charge charge : run.charges()) {
            add(densities, charge.goods().densityGramsPerMillilitre(), charge.material(), substances);
        }
        for (Step step : run.steps()) {
            add(
                    densities,
                    step.added().densityGramsPerMillilitre(),
                    step.added().material(),
                    substances);
        }
        return densities.isEmpty()
                ? Optional.empty()
                : Optional.of(new LiquidsOfRun(
                        densities.stream().mapToDouble(d -> d).min().getAsDouble(),
                        densities.stream().mapToDouble(d -> d).max().getAsDouble()));
    }

    private static void add(List<Double> densities, Field entered, String material, Substances substances) {
        OptionalDouble listed = substances.densityGramsPerMillilitre(material);
        entered.entered().map(Entered::value).filter(d -> d > 0).ifPresent(densities::add);
        listed.ifPresent(densities::add);
    }

    /** How far a density lies outside of them, g/mL; 0 within. */
    double distance(double gramsPerMillilitre) {
        return Math.max(
                0, Math.max(lowGramsPerMillilitre - gramsPerMillilitre, gramsPerMillilitre - highGramsPerMillilitre));
    }
}
