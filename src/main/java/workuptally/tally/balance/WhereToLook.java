package workuptally.tally.balance;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.material.Material;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.substances.MaterialClass;
import workuptally.tally.amounts.AcidsAndBases;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerTally;

/**
 * Which portions can hold a partner or by-product that nobody assayed: an amine is in the water of an acid wash, an acid in that of a base,
 * else all liquids and the crude; the crude not where its own weighing and assay leave room for less than half of what is missing.
 */
final class WhereToLook {
    private static final int MOST_LAYERS_NAMED = 3;
    private static final double WORTH_AN_ASSAY = 0.5;

    private final Run run;
    private final Substances substances;
    private final List<LayerTally> layers;

    WhereToLook(Run run, Substances substances, List<LayerTally> layers) {
        this.run = run;
        this.substances = substances;
        this.layers = layers;
    }

    /** The layers that an assay would be of; empty where the crude has room for all that is missing. */
    List<String> layers(String substance, double inLotsGrams, double missingGrams) {
        List<String> liquids = liquids();
        Set<String> taking = takenByWash(substance);
        List<String> taken = liquids.stream().filter(taking::contains).toList();
        return !taken.isEmpty() ? taken : inLotsGrams < missingGrams ? liquids : List.of();
    }

    /** The assay in words. */
    String assay(String substance, double inLotsGrams, double missingGrams) {
        List<String> liquids = layers(substance, inLotsGrams, missingGrams);
        boolean ofLayersAlone = !liquids.isEmpty()
                && (inLotsGrams < WORTH_AN_ASSAY * missingGrams
                        || takenByWash(substance).containsAll(liquids));
        return "assay "
                + (liquids.isEmpty() ? "the crude" : (ofLayersAlone ? "" : "crude, ") + named(liquids))
                + " for " + substance;
    }

    /** Layers by their names, many as such. */
    static String named(List<String> liquids) {
        return liquids.size() > MOST_LAYERS_NAMED ? "layers" : String.join(", ", liquids);
    }

    /** Labels of the liquids that the workup left and that can be assayed. */
    private List<String> liquids() {
        return layers.stream()
                .filter(l -> l.terminal() && l.endsWorkup() && l.entry().isPresent() && !l.isLost())
                .filter(l -> l.phase()
                        .filter(p -> p == Layer.Phase.SOLID || p == Layer.Phase.DISTILLATE)
                        .isEmpty())
                .map(LayerTally::label)
                .toList();
    }

    /** Water layers of the washes that take a base or an acid out of an organic layer. */
    private Set<String> takenByWash(String substance) {
        boolean base = isBase(substance);
        boolean acid = !base && isAcid(substance);
        return run.steps().stream()
                .filter(step -> base && isWash(step, true) || acid && isWash(step, false))
                .flatMap(step -> step.given().aqueous().stream())
                .collect(Collectors.toSet());
    }

    private boolean isBase(String substance) {
        Material material = substances.material(substance);
        return isOf(substance, Product.Character.BASE)
                || material.is(MaterialClass.AMINE) && !material.is(MaterialClass.AMINE_SALT);
    }

    private boolean isAcid(String substance) {
        return isOf(substance, Product.Character.ACID) || new AcidsAndBases(run, substances).isWeakAcid(substance);
    }

    private boolean isOf(String substance, Product.Character character) {
        return run.product(substance)
                .flatMap(p -> p.partitioning().character())
                .filter(c -> c == character)
                .isPresent();
    }

    private boolean isWash(Step step, boolean withAcid) {
        return substances
                .wash(step.added().material())
                .filter(wash ->
                        (withAcid ? wash.acidMillimolesPerMillilitre() : wash.baseMillimolesPerMillilitre()).orElse(0)
                                > 0)
                .isPresent();
    }
}
