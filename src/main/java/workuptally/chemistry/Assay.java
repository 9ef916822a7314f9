package workuptally.chemistry;

import java.util.List;

/** Content of a sample from what was measured. Each function on plain numbers; uncertainty is the caller's. */
public final class Assay {
    private Assay() {}

    /**
     * One signal of a proton spectrum.
     *
     * @param integral area, any unit, above 0
     * @param nuclei nuclei behind it, above 0
     */
    public record Signal(double integral, double nuclei) {
        /** Checks the numbers. */
        public Signal {
            Require.positive(integral, "integral");
            Require.positive(nuclei, "nuclei");
        }

        /** Area per nucleus, proportional to amount. */
        public double perNucleus() {
            return integral / nuclei;
        }
    }

    /**
     * Purity by an internal standard, P = (I/N)ₐ/(I/N)ₛ · Mₐ/Mₛ · mₛ/mₐ · Pₛ.
     *
     * <p>Holds for full relaxation and signals free of overlap. Source: the equation of quantitative NMR, common practice.
     *
     * @param analyte signal of the substance
     * @param standard signal of the standard
     * @param analyteGramsPerMole Mₐ, g/mol, above 0
     * @param standardGramsPerMole Mₛ, g/mol, above 0
     * @param sampleMilligrams mₐ, mg, above 0
     * @param standardMilligrams mₛ, mg, above 0
     * @param standardPurityPercent Pₛ, mass %, above 0
     * @return mass %; above 100 when a weighing or integral is wrong
     * @throws IllegalArgumentException if out of range
     */
    public static double internalStandardPurityPercent(
            Signal analyte,
            Signal standard,
            double analyteGramsPerMole,
            double standardGramsPerMole,
            double sampleMilligrams,
            double standardMilligrams,
            double standardPurityPercent) {
        return analyte.perNucleus()
                / standard.perNucleus()
                * Require.positive(analyteGramsPerMole, "molar mass")
                / Require.positive(standardGramsPerMole, "molar mass of the standard")
                * Require.positive(standardMilligrams, "mass of the standard")
                / Require.positive(sampleMilligrams, "mass of the sample")
                * Require.positive(standardPurityPercent, "purity of the standard");
    }

    /** Mole ratio of a substance to the product from two signals, r = (I/N)ₛ/(I/N)ₚ. */
    public static double moleRatio(Signal substance, Signal product) {
        return substance.perNucleus() / product.perNucleus();
    }

    /**
     * A substance beside the product.
     *
     * @param molesPerMoleOfProduct r, 0 or more
     * @param gramsPerMole M, g/mol, above 0
     */
    public record Companion(double molesPerMoleOfProduct, double gramsPerMole) {
        /** Checks the numbers. */
        public Companion {
            Require.notNegative(molesPerMoleOfProduct, "mole ratio");
            Require.positive(gramsPerMole, "molar mass");
        }
    }

    /**
     * Mass fraction of the product from mole ratios, w = M/(M + Σ rᵢMᵢ). An upper bound: salts, water and whatever gives no signal are not
     * seen.
     *
     * @param productGramsPerMole M, g/mol, above 0
     * @param companions what was seen beside it
     * @return 0 to 1
     * @throws IllegalArgumentException if out of range
     */
    public static double massFractionFromMoleRatios(double productGramsPerMole, List<Companion> companions) {
        double rest = companions.stream()
                .mapToDouble(other -> other.molesPerMoleOfProduct() * other.gramsPerMole())
                .sum();
        return Require.positive(productGramsPerMole, "molar mass") / (productGramsPerMole + rest);
    }

    /**
     * Concentration from the residue of an evaporated aliquot; counts everything that does not evaporate.
     *
     * @param residueMilligrams mg, 0 or more
     * @param aliquotMillilitres mL, above 0
     * @return mg/mL
     * @throws IllegalArgumentException if out of range
     */
    public static double dryResidueMilligramsPerMillilitre(double residueMilligrams, double aliquotMillilitres) {
        return Require.notNegative(residueMilligrams, "residue") / Require.positive(aliquotMillilitres, "aliquot");
    }

    /**
     * Amount by titration, n = V·c/ν.
     *
     * @param titrantMillilitres V, mL, 0 or more
     * @param titrantMolesPerLitre c, mol/L, above 0
     * @param titrantPerAnalyte ν, mol of titrant per mol of substance, above 0
     * @return mmol
     * @throws IllegalArgumentException if out of range
     */
    public static double titratedMillimoles(
            double titrantMillilitres, double titrantMolesPerLitre, double titrantPerAnalyte) {
        return Require.notNegative(titrantMillilitres, "titrant")
                * Require.positive(titrantMolesPerLitre, "titrant strength")
                / Require.positive(titrantPerAnalyte, "titrant per substance");
    }

    /**
     * Amount by back titration, n = (n(added) − n(left))/ν.
     *
     * @param addedMillimoles reagent added, mmol, 0 or more
     * @param leftMillimoles reagent found by the back titration, mmol, 0 or more
     * @param reagentPerAnalyte ν, above 0
     * @return mmol
     * @throws IllegalArgumentException if out of range or more is left than was added
     */
    public static double backTitratedMillimoles(
            double addedMillimoles, double leftMillimoles, double reagentPerAnalyte) {
        double used = Require.notNegative(addedMillimoles, "added") - Require.notNegative(leftMillimoles, "left");
        return Require.notNegative(used, "reagent used") / Require.positive(reagentPerAnalyte, "reagent per substance");
    }

    /**
     * Concentration by an external standard, c = A/Aₛ·cₛ·f, response in proportion through the origin.
     *
     * @param sampleResponse area, any unit, 0 or more
     * @param standardResponse area, same unit, above 0
     * @param standardConcentration any unit, above 0
     * @param dilutionFactor f, volume after over volume before dilution, 1 or more
     * @return unit of the standard's concentration
     * @throws IllegalArgumentException if out of range
     */
    public static double externalStandardConcentration(
            double sampleResponse, double standardResponse, double standardConcentration, double dilutionFactor) {
        if (!(dilutionFactor >= 1)) {
            throw new IllegalArgumentException("dilution factor " + dilutionFactor);
        }
        return Require.notNegative(sampleResponse, "response")
                / Require.positive(standardResponse, "response of the standard")
                * Require.positive(standardConcentration, "concentration of the standard")
                * dilutionFactor;
    }
}
