package workuptally.model;

import java.util.List;
import java.util.Optional;

/**
 * A wanted or tracked substance of a run.
 *
 * @param name name as typed
 * @param wanted true for a product, false for a by-product or recovered substrate
 * @param formula formula of the isolated form; empty if blank
 * @param molarMassGramsPerMole molar mass as typed, g/mol
 * @param coefficient stoichiometric coefficient; blank counts as 1 for a wanted product
 * @param skeleton units of each partner per molecule; empty = first substrate 1
 * @param plannedYieldPercent planned yield, %
 * @param character acid, base or neutral, if stated
 * @param pKa pKa (of the conjugate acid for a base)
 * @param partitionRatio P = c(organic)/c(water) of the neutral form
 * @param partitionSolvent solvent of P
 * @param logP octanol/water log P
 * @param boilingPointCelsius normal boiling point, °C
 * @param row its row
 */
public record Product(
        String name,
        boolean wanted,
        String formula,
        Field molarMassGramsPerMole,
        Field coefficient,
        List<SkeletonPart> skeleton,
        Field plannedYieldPercent,
        Optional<Character> character,
        Field pKa,
        Field partitionRatio,
        String partitionSolvent,
        Field logP,
        Field boilingPointCelsius,
        RowPlace row) {
    /** Copies the list. */
    public Product {
        skeleton = List.copyOf(skeleton);
    }

    /**
     * Units of a partner in one molecule.
     *
     * @param partner material of the Charges table
     * @param units units per molecule, above 0
     */
    public record SkeletonPart(String partner, double units) {
        /** Equal partner and units; see the contributor guide on records as keys. */
        @Override
        public boolean equals(Object other) {
            return other instanceof SkeletonPart part
                    && Double.compare(units, part.units) == 0
                    && partner.equals(part.partner);
        }

        @Override
        public int hashCode() {
            return 31 * partner.hashCode() + Double.hashCode(units);
        }
    }

    /** Acid-base character. */
    public enum Character {
        /** Loses a proton. */
        ACID,
        /** Takes up a proton. */
        BASE,
        /** Neither. */
        NEUTRAL
    }
}
