package workuptally.tally.layers;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.CompositionPart;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.UnreadParts;

/** Brings the estimates of the layer map to what was measured: a stated composition, a mass, and how one liquid is shared by its labels. */
final class MeasuredPortions {
    private static final double LEAST_GRAMS = 1e-9;

    private final Substances substances;
    private final IngredientAccount materials;
    private final UnreadParts unread;
    private final Map<String, LayerTally> layers;
    private final Map<String, Double> put = new LinkedHashMap<>();

    MeasuredPortions(Run run, Substances substances, Map<String, LayerTally> layers) {
        this.unread = new UnreadParts(run, substances);
        this.substances = substances;
        this.materials = new IngredientAccount(substances);
        this.layers = layers;
    }

    /** Remembers what was put in: no portion holds more of a solvent. */
    void put(Ingredients mixture) {
        mixture.parts().forEach((name, part) -> put.merge(name, part.grams(), Double::sum));
    }

    /** Mass of each component that was put in, g. */
    Map<String, Double> putGrams() {
        return Collections.unmodifiableMap(put);
    }

    Optional<Double> grams(String label) {
        return Optional.ofNullable(layers.get(label))
                .flatMap(LayerTally::massGrams)
                .map(MeasuredValue::value);
    }

    Optional<Double> millilitres(String label) {
        return Optional.ofNullable(layers.get(label))
                .flatMap(LayerTally::volumeMillilitres)
                .map(MeasuredValue::value);
    }

    /** The estimate brought to a stated composition, or to the measured mass by its main liquid. */
    Ingredients of(String label, Ingredients estimate) {
        Optional<Ingredients> stated = stated(label);
        Optional<Double> grams = grams(label);
        if (stated.isPresent() || grams.isEmpty()) {
            return stated.orElse(estimate);
        }
        if (estimate.parts().isEmpty()) {
            return estimate;
        }
        double solutes = Optional.ofNullable(layers.get(label)).stream()
                .flatMap(l -> l.contents().stream())
                .flatMap(c -> c.massGrams().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
        return toMass(estimate, Math.max(0, grams.get() - solutes));
    }

    /** A solid as its row states it, else the drying agent that was filtered off with it. */
    Ingredients solid(String label, Ingredients agents) {
        return stated(label).orElse(agents);
    }

    /**
     * The water that stays with the solid residue of a distillation, such as the pot of a steam distillation: what its mass leaves beside all
     * that does not go over. It is not in the distillate.
     */
    Ingredients wetting(Step step, String label, Ingredients all) {
        double water = all.grams(IngredientAccount.WATER);
        if (!StepOutputs.is(step, Operation.DISTIL) || grams(label).isEmpty() || water == 0) {
            return Ingredients.EMPTY;
        }
        double stays = all.share(n -> substances.isOrganicSolvent(n) || n.equals(IngredientAccount.WATER) ? 0 : 1)
                .totalGrams();
        double solids =
                all.share(n -> n.equals(IngredientAccount.SOLIDS) ? 1 : 0).millilitres()
                        * substances.value(Threshold.ORGANIC_SOLUTE_DENSITY);
        double wet = grams(label).get() - stays - solids;
        return wet > 0 ? liquid(IngredientAccount.WATER, Math.min(wet, water)) : Ingredients.EMPTY;
    }

    /** A sample of a source by its own mass or volume; nothing known of one that was not measured. */
    Ingredients aliquot(String label, Ingredients source) {
        double share = grams(label).isPresent() && source.totalGrams() > 0
                ? grams(label).get() / source.totalGrams()
                : source.millilitres() > 0 ? millilitres(label).orElse(0.0) / source.millilitres() : 0;
        return of(label, source.share(n -> share));
    }

    /**
     * One liquid under several labels: in proportion to their masses where all were weighed, else to their volumes where all were read;
     * else the weighed ones take their mass and the first of the others the rest.
     */
    Map<String, Ingredients> shared(List<String> labels, Ingredients mixture) {
        Map<String, Ingredients> parts = new LinkedHashMap<>();
        double grams = labels.stream().mapToDouble(l -> grams(l).orElse(0.0)).sum();
        double millilitres =
                labels.stream().mapToDouble(l -> millilitres(l).orElse(0.0)).sum();
        boolean allWeighed = grams > 0 && labels.stream().allMatch(l -> grams(l).isPresent());
        boolean allRead =
                millilitres > 0 && labels.stream().allMatch(l -> millilitres(l).isPresent());
        Optional<String> largest = labels.stream()
                .filter(l -> grams(l).isEmpty())
                .reduce((a, b) -> millilitres(b).orElse(0.0) > millilitres(a).orElse(0.0) ? b : a);
        double total = mixture.totalGrams();
        for (String label : labels) {
            double share;
            if (allWeighed) {
                share = grams(label).orElseThrow() / grams;
            } else if (allRead) {
                share = millilitres(label).orElseThrow() / millilitres;
            } else if (largest.filter(label::equals).isPresent()) {
                share = total > 0 ? Math.max(0, 1 - grams / total) : 1;
            } else {
                share = total > 0 ? grams(label).orElse(0.0) / total : 0;
            }
            parts.put(label, mixture.share(n -> share));
        }
        return parts;
    }

    /**
     * By the stated composition, with the mass or, by the densities of the parts, with the volume alone; nothing by volume where a part has
     * a name that no table knows, and so no density.
     */
    private Optional<Ingredients> stated(String label) {
        List<CompositionPart> parts = Optional.ofNullable(layers.get(label))
                .flatMap(LayerTally::entry)
                .map(Layer::composition)
                .orElse(List.of());
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> grams = grams(label);
        if (grams.isEmpty() && parts.stream().anyMatch(part -> unread.isUnread(part.substance()))) {
            return Optional.of(Ingredients.EMPTY);
        }
        double ofAHundredGrams = ofMass(parts, 100).millilitres();
        return grams.or(() ->
                        millilitres(label).filter(v -> ofAHundredGrams > 0).map(v -> 100 * v / ofAHundredGrams))
                .map(all -> ofMass(parts, all));
    }

    private Ingredients ofMass(List<CompositionPart> parts, double grams) {
        Ingredients mixture = Ingredients.EMPTY;
        double percent = 0;
        for (CompositionPart part : parts) {
            String name = materials.solventName(part.substance()).orElse(part.substance());
            double ofPart = grams * part.massPercent() / 100;
            Ingredients blend = materials.blend(part.substance(), ofPart, 0);
            if (!blend.parts().isEmpty()) {
                mixture = mixture.plus(blend);
            } else {
                mixture = mixture.plus(
                        unread.isUnread(part.substance()) ? Ingredients.of(name, ofPart, 0) : liquid(name, ofPart));
            }
            percent += part.massPercent();
        }
        double rest = grams * (100 - percent) / 100;
        return rest > LEAST_GRAMS ? mixture.plus(Ingredients.of(LayerFlow.UNSTATED, rest, 0)) : mixture;
    }

    private Ingredients toMass(Ingredients estimate, double grams) {
        String main = estimate.parts().entrySet().stream()
                .filter(e -> e.getValue().millilitres() > 0 && e.getValue().grams() > 0)
                .max((a, b) -> Double.compare(a.getValue().grams(), b.getValue().grams()))
                .map(Map.Entry::getKey)
                .orElse(IngredientAccount.WATER);
        double unknown = materials.unknownMillilitres(estimate);
        if (unknown > 0 && (main.equals(IngredientAccount.WATER) || estimate.grams(IngredientAccount.WATER) == 0)) {
            return withUnknown(estimate, unknown, grams);
        }
        double others = estimate.totalGrams() - estimate.grams(main);
        if (grams > others) {
            double most = main.equals(IngredientAccount.WATER) ? Double.MAX_VALUE : put.getOrDefault(main, 0.0);
            double ofMain = Math.min(grams - others, most);
            Ingredients scaled = estimate.without(main, Double.MAX_VALUE).plus(liquid(main, ofMain));
            double rest = grams - others - ofMain;
            return rest > LEAST_GRAMS ? scaled.plus(Ingredients.of(LayerFlow.UNSTATED, rest, 0)) : scaled;
        }
        double factor = estimate.totalGrams() == 0 ? 1 : grams / estimate.totalGrams();
        return estimate.share(n -> factor);
    }

    /** Water of which a part is a solution of unknown mass: what was weighed beyond the known parts is water by its share of the volume. */
    private Ingredients withUnknown(Ingredients estimate, double unknownMillilitres, double grams) {
        Ingredients known = estimate.without(IngredientAccount.WATER, Double.MAX_VALUE);
        double waterMillilitres = Optional.ofNullable(estimate.parts().get(IngredientAccount.WATER))
                .map(Ingredients.Part::millilitres)
                .orElse(0.0);
        double left = Math.max(0, grams - known.totalGrams());
        double water = left * waterMillilitres / (waterMillilitres + unknownMillilitres);
        return known.plus(liquid(IngredientAccount.WATER, water))
                .plus(Ingredients.of(LayerFlow.UNSTATED, left - water, 0));
    }

    private Ingredients liquid(String name, double grams) {
        return Ingredients.of(
                name, grams, grams / substances.densityGramsPerMillilitre(name).orElse(1));
    }
}
