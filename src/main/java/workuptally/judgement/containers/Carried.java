package workuptally.judgement.containers;

import workuptally.model.SubstanceName;
import workuptally.reference.hazards.Reactivity.Membership;

/**
 * A material in a container or in what is proposed for it.
 *
 * @param material name
 * @param membership classes it belongs to
 * @param shown false where only a missing quench test keeps it in
 * @param minor true for a solvent of which there is little: enough for what must never meet
 */
record Carried(String material, Membership membership, boolean shown, boolean minor) {
    /** More than a little of a material. */
    Carried(String material, Membership membership, boolean shown) {
        this(material, membership, shown, false);
    }

    /** True for a material of this name. */
    public boolean isOf(String name) {
        return SubstanceName.same(material, name);
    }
}
