package workuptally.judgement.rules.balance;

import java.util.List;
import workuptally.model.Charge;
import workuptally.model.Product;
import workuptally.reference.substances.MaterialClass;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;

/**
 * Whether what was charged leaves an ion of a product before any workup: acid beyond all base for at least half of a basic product, as after
 * a cleavage with trifluoroacetic acid, or base beyond all acid for half of an acidic one, as after a saponification. Only what has the
 * role of neither substrate nor catalyst counts, one equivalent for each mole (common practice).
 */
final class ChargedIon {
    private static final List<String> ACIDS = List.of(MaterialClass.ACID);

    /** Amines and carbonates take up acid; alone they are too weak to keep an acidic product in doubt. */
    private static final List<String> BASES_FOR_ACID =
            List.of(MaterialClass.BASE, MaterialClass.AMINE, MaterialClass.CARBONATE, MaterialClass.BASE_WEAK);

    private static final List<String> BASES = List.of(MaterialClass.BASE);

    private final Substances substances;

    ChargedIon(Substances substances) {
        this.substances = substances;
    }

    /** True where it does. */
    boolean leaves(RunTally tally, Product product, boolean base) {
        double acid = millimoles(tally, ACIDS);
        double bases = millimoles(tally, base ? BASES_FOR_ACID : BASES);
        double excess = base ? acid - bases : bases - acid;
        return tally.theory().stream()
                .flatMap(theory -> theory.products().stream())
                .filter(of -> of.product() == product)
                .anyMatch(of -> excess > of.amountMillimoles().value() / 2);
    }

    private double millimoles(RunTally tally, List<String> classes) {
        return tally.amounts().stream()
                .filter(amount -> amount.charge()
                        .role()
                        .filter(role -> role == Charge.Role.SUBSTRATE || role == Charge.Role.CATALYST)
                        .isEmpty())
                .filter(amount -> classes.stream()
                        .anyMatch(c ->
                                substances.material(amount.charge().material()).is(c)))
                .map(ChargeAmount::amountMillimoles)
                .mapToDouble(amount -> amount.map(n -> n.value()).orElse(0.0))
                .sum();
    }
}
