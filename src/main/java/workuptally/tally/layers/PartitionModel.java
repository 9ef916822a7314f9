package workuptally.tally.layers;

import java.util.List;
import java.util.Optional;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Distribution;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.reference.bench.Threshold;

/**
 * How a product divides between a solvent and water, by the partition ratio, character and pKa of the Products table.
 *
 * <p>The factor says how far P can be off: 3 where it was measured in another solvent, 10 from octanol (common practice), 1.2 in the same
 * solvent.
 *
 * @param partitionRatio P of the neutral form, above 0
 * @param character acid, base or neutral
 * @param pKa pKa, of the conjugate acid for a base; not used for a neutral product
 * @param factor P is known to within this factor either way, 1 or more
 * @param origin where P comes from, in words
 */
public record PartitionModel(
        double partitionRatio, Product.Character character, double pKa, double factor, String origin) {

    /** The model of a product in a solvent; empty without P or log P, and for an acid or base without pKa. */
    public static Optional<PartitionModel> of(Product product, String solvent, IngredientAccount materials) {
        Product.Character character = product.partitioning().character().orElse(Product.Character.NEUTRAL);
        Optional<Double> pKa = product.partitioning().pKa().entered().map(Entered::value);
        if (character != Product.Character.NEUTRAL && pKa.isEmpty()) {
            return Optional.empty();
        }
        Optional<Entered> ratio =
                product.partitioning().partitionRatio().entered().filter(p -> p.value() > 0);
        if (ratio.isPresent()) {
            boolean same = materials
                    .solventName(product.partitioning().partitionSolvent())
                    .equals(materials.solventName(solvent));
            return Optional.of(new PartitionModel(
                    ratio.get().value(),
                    character,
                    pKa.orElse(AcidBase.NEUTRAL_PH),
                    materials.value(same ? Threshold.PARTITION_SAME : Threshold.PARTITION_OTHER),
                    "P = " + ratio.get().asTyped()
                            + (product.partitioning().partitionSolvent().isBlank()
                                    ? ""
                                    : " in " + product.partitioning().partitionSolvent())));
        }
        return product.partitioning()
                .logP()
                .entered()
                .map(l -> new PartitionModel(
                        Math.pow(10, l.value()),
                        character,
                        pKa.orElse(AcidBase.NEUTRAL_PH),
                        materials.value(Threshold.PARTITION_OCTANOL),
                        "octanol log P = " + l.asTyped()));
    }

    public boolean isIonisable() {
        return character != Product.Character.NEUTRAL;
    }

    /** D at a pH; the pH is not used for a neutral product. */
    public double distributionRatio(double pH) {
        return switch (character) {
            case ACID -> Distribution.acid(partitionRatio, List.of(pKa), pH);
            case BASE -> Distribution.base(partitionRatio, List.of(pKa), pH);
            case NEUTRAL -> Distribution.neutral(partitionRatio);
        };
    }

    /** The equation of D with its numbers. */
    public Phrase equation(double pH) {
        return switch (character) {
            case ACID ->
                Phrase.of(
                        "D = {} / (1 + 10^({} − {}))",
                        Figure.digits(partitionRatio, 3, ""),
                        Figure.decimals(pH, 1, ""),
                        Figure.decimals(pKa, 2, ""));
            case BASE ->
                Phrase.of(
                        "D = {} / (1 + 10^({} − {}))",
                        Figure.digits(partitionRatio, 3, ""),
                        Figure.decimals(pKa, 2, ""),
                        Figure.decimals(pH, 1, ""));
            case NEUTRAL -> Phrase.of("D = P");
        };
    }

    /** A pH that far from the pKa on the neutral side, to one decimal; 2.2 leaves less than 1 % of the ion. */
    public double pHOfNeutralForm(double beyondPKa) {
        double shift = character == Product.Character.ACID ? -beyondPKa : beyondPKa;
        return Math.round(10 * (pKa + shift)) / 10.0;
    }
}
