package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.reference.bench.Threshold;
import workuptally.reference.solutions.Solute;
import workuptally.reference.solutions.Wash;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;

/** Puts what the layer map carries and what was measured together to the make-up of each terminal layer. */
public final class LayerMakeUpAccount {
    /** What acid and base, added one after the other, have made of each other. */
    public static final String SALTS = "salts of neutralisation";

    /** Behind the name of an amine that the pH shows to be a salt. */
    public static final String AS_SALT = " as its salt";

    private static final String AMINE = "amine";
    private static final String SULFIDE = "sulfide";

    private static final double LEAST_GRAMS = 1e-9;

    private final Substances substances;
    private final LayerFlow flow;

    public LayerMakeUpAccount(Substances substances, LayerFlow flow) {
        this.substances = substances;
        this.flow = flow;
    }

    /**
     * One make-up for each terminal layer with a mass: as weighed, else by its volume and the density of what it should hold, else by what
     * went in. Cakes, whose solids are not followed, are left out.
     *
     * @param distillates what the stated compositions of distillates are held against
     */
    public List<LayerMakeUp> of(List<LayerTally> layers, StatedDistillates distillates) {
        List<LayerMakeUp> makeUps = new ArrayList<>();
        for (LayerTally layer : layers) {
            boolean solid = layer.phase().filter(p -> p == Layer.Phase.SOLID).isPresent();
            if (layer.terminal() && !solid) {
                Optional<Double> weighed = layer.massGrams().map(MeasuredValue::value);
                weighed.or(() -> estimatedGrams(layer))
                        .ifPresent(grams -> makeUps.add(of(layer, grams, weighed.isPresent(), distillates.of(layer))));
            }
        }
        return makeUps;
    }

    private Optional<Double> estimatedGrams(LayerTally layer) {
        Ingredients portion = flow.portion(layer.label());
        if (flow.run().status() == Run.Status.PLANNED
                || layer.entry().isEmpty()
                || portion.totalGrams() <= 0
                || layer.aliquot() && layer.volumeMillilitres().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(layer.volumeMillilitres()
                .map(MeasuredValue::value)
                .filter(v -> portion.millilitres() > 0)
                .map(v -> v * portion.totalGrams() / portion.millilitres())
                .orElseGet(portion::totalGrams));
    }

    private LayerMakeUp of(LayerTally layer, double grams, boolean weighed, List<SolventMismatch> mismatches) {
        Ingredients whole = flow.portion(layer.label());
        Ingredients mixture = weighed ? whole : whole.times(grams / whole.totalGrams());
        boolean stated =
                layer.entry().map(Layer::composition).filter(c -> !c.isEmpty()).isPresent();
        Map<String, Double> components = new LinkedHashMap<>();
        mixture.parts().forEach((name, part) -> components.merge(fullName(name), part.grams(), Double::sum));
        if (!stated) {
            layer.contents()
                    .forEach(c -> c.massGrams()
                            .map(MeasuredValue::value)
                            .ifPresent(m -> components.merge(fullName(c.substance()), m, Double::sum)));
        }
        neutralise(components);
        layer.entry().map(Layer::pH).flatMap(Field::entered).ifPresent(pH -> settle(components, pH));
        double rest = grams
                - components.values().stream().mapToDouble(Double::doubleValue).sum();
        if (rest > LEAST_GRAMS) {
            components.merge(LayerFlow.UNSTATED, rest, Double::sum);
        }
        Map<String, Double> largestFirst = new LinkedHashMap<>();
        components.entrySet().stream()
                .filter(e -> e.getValue() > LEAST_GRAMS)
                .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(e -> largestFirst.put(e.getKey(), e.getValue()));
        double volume = layer.volumeMillilitres().map(MeasuredValue::value).orElseGet(mixture::millilitres);
        return new LayerMakeUp(layer.label(), largestFirst, volume, stated, mismatches, weighed);
    }

    /** Acids and bases of the solute table react as far as they go; their masses pass to the salts, gas and water not apart. */
    private void neutralise(Map<String, Double> components) {
        double acid = equivalents(components, LayerMakeUpAccount::acidMolesPerMole);
        double base = equivalents(components, s -> s.acidBase().baseMolesPerMole());
        double reacting = Math.min(acid, base);
        if (reacting <= 0) {
            return;
        }
        double salts = 0;
        for (Map.Entry<String, Double> component : components.entrySet()) {
            Optional<Solute> solute = substances.solute(component.getKey());
            double share = solute.filter(s -> acidMolesPerMole(s) > 0).isPresent()
                    ? reacting / acid
                    : solute.filter(s -> s.acidBase().baseMolesPerMole() > 0).isPresent() ? reacting / base : 0;
            salts += share * component.getValue();
            component.setValue((1 - share) * component.getValue());
        }
        components.merge(SALTS, salts, Double::sum);
    }

    /**
     * What the pH that was read rules out: strong base is a salt below pH 11 and strong acid above pH 3, either at 1 mmol/L and less beside
     * them; an amine is one below pH 8, two units below the usual pKa of an alkylamine, hydrogencarbonate, carbonate and sulfide are gone below
     * pH 5 (common practice). The mass of strong acid and base passes to the salts, an amine keeps its name.
     */
    private void settle(Map<String, Double> components, Entered pH) {
        double least = pH.qualifier() == Field.Qualifier.BELOW ? 0 : pH.value() - pH.halfWidth();
        double most = pH.qualifier() == Field.Qualifier.ABOVE ? 14 : pH.value() + pH.halfWidth();
        Map<String, Double> settled = new LinkedHashMap<>();
        components.forEach((name, grams) -> {
            Optional<Solute.Behaviour> behaviour =
                    substances.solute(name).flatMap(s -> s.acidBase().behaviour());
            boolean salt = behaviour.filter(b -> isSettled(b, least, most)).isPresent()
                    || substances.material(name).main().classes().contains(SULFIDE)
                            && most < substances.value(Threshold.CARBONATE_FROM);
            boolean amine = behaviour.isEmpty()
                    && substances.material(name).main().classes().contains(AMINE)
                    && most < substances.value(Threshold.AMINE_SALT_BELOW);
            settled.merge(salt ? SALTS : amine ? name + AS_SALT : name, grams, Double::sum);
        });
        components.clear();
        components.putAll(settled);
    }

    private boolean isSettled(Solute.Behaviour behaviour, double leastPh, double mostPh) {
        return switch (behaviour) {
            case STRONG_BASE -> mostPh < substances.value(Threshold.STRONG_BASE_FROM);
            case STRONG_ACID -> leastPh > substances.value(Threshold.STRONG_ACID_UP_TO);
            case CARBONATE, HYDROGENCARBONATE -> mostPh < substances.value(Threshold.CARBONATE_FROM);
            default -> false;
        };
    }

    /** Very weak acids do not free carbon dioxide for certain. */
    private static double acidMolesPerMole(Solute solute) {
        return solute.acidBase()
                        .behaviour()
                        .filter(b -> b == Solute.Behaviour.VERY_WEAK_ACID)
                        .isPresent()
                ? 0
                : solute.acidBase().acidMolesPerMole();
    }

    private double equivalents(Map<String, Double> components, ToDoubleFunction<Solute> perMole) {
        return components.entrySet().stream()
                .mapToDouble(e -> substances
                        .solute(e.getKey())
                        .map(s -> perMole.applyAsDouble(s) * e.getValue() / s.molarMassGramsPerMole())
                        .orElse(0.0))
                .sum();
    }

    /** A solvent under its listed name, a solution under its solute's; the water of the solution is a component of its own. */
    public String fullName(String component) {
        return new IngredientAccount(substances)
                .solventName(component)
                .or(() -> Optional.of(component)
                        .filter(c -> substances.dryingAgent(c).isEmpty())
                        .flatMap(substances::wash)
                        .flatMap(Wash::solute))
                .orElse(component)
                .intern();
    }
}
