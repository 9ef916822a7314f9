package workuptally.judgement.containers;

import workuptally.reference.hazards.Reactivity.Membership;

/**
 * A material in a container or in what is proposed for it.
 *
 * @param material name
 * @param membership classes it belongs to
 * @param shown false where only a missing quench test keeps it in
 */
record Carried(String material, Membership membership, boolean shown) {}
