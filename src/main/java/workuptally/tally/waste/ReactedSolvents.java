package workuptally.tally.waste;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.reference.substances.MaterialClass;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerTally;

/**
 * Solvents that the reaction uses up, an alcohol that becomes part of an ester: charged with a coefficient, they are in the product that was
 * found, by stoichiometry, and went to no air. What nobody found as product stays not found. An amine is left out: it mostly takes up an acid and
 * stands in a layer as its salt.
 */
final class ReactedSolvents {
    private final Run run;
    private final Substances substances;
    private final IngredientAccount materials;

    ReactedSolvents(Run run, Substances substances, IngredientAccount materials) {
        this.run = run;
        this.substances = substances;
        this.materials = materials;
    }

    /** Mass of each such solvent in the products of lots and kept layers, g; no more than was charged. */
    Ingredients of(
            List<ChargeAmount> amounts,
            List<LayerTally> layers,
            List<LotTally> lots,
            Map<String, List<Content>> lotContents) {
        double extent = extentMillimoles(layers, lots, lotContents);
        Ingredients reacted = Ingredients.EMPTY;
        for (ChargeAmount amount : amounts) {
            Optional<String> solvent = materials.solventName(amount.charge().material());
            Optional<Double> coefficient = positive(amount.charge().coefficient());
            boolean amine = substances.material(amount.charge().material()).is(MaterialClass.AMINE);
            if (solvent.isPresent()
                    && !amine
                    && coefficient.isPresent()
                    && !amount.isSolvent()
                    && amount.amountMillimoles().isPresent()
                    && amount.molarMassGramsPerMole().isPresent()) {
                double millimoles = Math.min(
                        coefficient.get() * extent,
                        amount.amountMillimoles().get().value());
                reacted = reacted.plus(Ingredients.of(
                        solvent.get(),
                        millimoles * amount.molarMassGramsPerMole().getAsDouble() / 1000,
                        0));
            }
        }
        return reacted;
    }

    /** How far the reaction went by the wanted products found, mmol over coefficient; of a separation and a planned run 0. */
    private double extentMillimoles(
            List<LayerTally> layers, List<LotTally> lots, Map<String, List<Content>> lotContents) {
        if (run.kind() == Run.Kind.SEPARATION) {
            return 0;
        }
        Set<String> counted = new HashSet<>();
        Stream<Content> inLots = lots.stream()
                .filter(lot -> lot.endsWorkup() && counted.add(lot.lot().label()))
                .flatMap(lot -> lotContents.getOrDefault(lot.lot().label(), List.of()).stream());
        Stream<Content> inLayers = layers.stream()
                .filter(layer -> layer.terminal() && layer.endsWorkup())
                .flatMap(layer -> layer.contents().stream());
        return Stream.concat(inLots, inLayers)
                .filter(content -> content.kind() != Content.Kind.BOUND)
                .mapToDouble(this::extentMillimoles)
                .sum();
    }

    private double extentMillimoles(Content content) {
        Optional<Product> wanted = run.product(content.substance()).filter(Product::wanted);
        return wanted.isEmpty()
                ? 0
                : content.amountMillimoles().map(MeasuredValue::value).orElse(0.0)
                        / positive(wanted.get().coefficient()).orElse(1.0);
    }

    private static Optional<Double> positive(Field coefficient) {
        return coefficient.entered().map(Entered::value).filter(c -> c > 0);
    }
}
