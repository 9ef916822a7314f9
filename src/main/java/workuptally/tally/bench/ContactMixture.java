package workuptally.tally.bench;

import java.util.OptionalDouble;
import workuptally.model.Step;

/**
 * What a contact is estimated to hold, and what came out of it.
 *
 * @param step the contact
 * @param waterMisciblePercent water-miscible solvent as a share of all organic solvent, % v/v
 * @param waterMiscible names of those solvents, joined by comma; empty if none
 * @param alcoholInAqueousPercent alcohols in the aqueous phase, % w/w
 * @param inMillilitres all liquids before mixing, portions together, mL
 * @param organicGrams organic phase as estimated, before anything measured overrides it, g
 * @param aqueousGrams aqueous phase as estimated, without what of the solutes goes there, g
 * @param organicMillilitres solvents in the organic phase that do not mix with water, mL
 * @param waterMillilitres water in the aqueous phase, mL
 * @param outMillilitres sum of the layers that came out; empty where one of them was not measured
 */
public record ContactMixture(
        Step step,
        double waterMisciblePercent,
        String waterMiscible,
        double alcoholInAqueousPercent,
        double inMillilitres,
        double organicGrams,
        double aqueousGrams,
        double organicMillilitres,
        double waterMillilitres,
        OptionalDouble outMillilitres) {}
