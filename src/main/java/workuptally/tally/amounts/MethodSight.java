package workuptally.tally.amounts;

import java.util.Optional;
import workuptally.material.Material;
import workuptally.model.Assay;
import workuptally.model.Product;
import workuptally.model.Run;

/**
 * Whether a method can see the substance that it is said to have found (common practice): Karl Fischer reagent takes water alone, drying
 * drives off what is volatile, an acid or base titrates no neutral product. A result of the method for another substance tells nothing of it.
 */
public final class MethodSight {
    private final Run run;
    private final Substances substances;

    public MethodSight(Run run, Substances substances) {
        this.run = run;
        this.substances = substances;
    }

    /** True where the method of an assay can see its substance. */
    public boolean sees(Assay assay) {
        return whyNot(assay).isEmpty();
    }

    /** Why the method of an assay cannot see its substance, for what is not computed; empty where it can. */
    public Optional<String> whyNot(Assay assay) {
        if (assay.method().isEmpty()) {
            return Optional.empty();
        }
        String what = assay.substance();
        return switch (assay.method().get()) {
            case KF -> isWater(what) ? Optional.empty() : Optional.of("KF sees water alone");
            case LOD ->
                product(what).isEmpty() || isWater(what) || isSolvent(what)
                        ? Optional.empty()
                        : Optional.of("loss on drying sees what leaves on drying, not a product that stays");
            case TITRATION ->
                product(what)
                                .flatMap(p -> p.partitioning().character())
                                .filter(c -> c == Product.Character.NEUTRAL)
                                .isPresent()
                        ? Optional.of("a titration by acid or base does not see a neutral product")
                        : Optional.empty();
            default -> Optional.empty();
        };
    }

    /** What unlocks a result that its method cannot have given. */
    public static String remedy() {
        return "an assay that sees it in Assays, or 'other' as its Method where the laboratory has shown that it does";
    }

    private Optional<Product> product(String substance) {
        return run.product(substance);
    }

    private boolean isWater(String substance) {
        return substances.material(substance).main().isWater();
    }

    private boolean isSolvent(String substance) {
        Material material = substances.material(substance);
        return material.solvent().isPresent();
    }
}
