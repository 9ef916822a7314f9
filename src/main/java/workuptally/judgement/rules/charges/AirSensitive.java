package workuptally.judgement.rules.charges;

import java.util.Set;
import workuptally.material.Material;
import workuptally.reference.substances.MaterialClass;

/** Organometallics, strong amide bases and active hydrides: reagents that air and water spoil, and whose quench gives gas and heat. */
public final class AirSensitive {
    private static final Set<String> CLASSES = Set.of(
            MaterialClass.ORGANOMETALLIC,
            MaterialClass.STRONG_AMIDE_BASE,
            MaterialClass.HYDRIDE_STRONG,
            MaterialClass.BORANE);

    private AirSensitive() {}

    /** True for a material of such a class. */
    public static boolean is(Material material) {
        return material.classes().stream().anyMatch(CLASSES::contains);
    }
}
