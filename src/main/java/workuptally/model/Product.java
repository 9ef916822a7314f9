package workuptally.model;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A wanted or tracked substance of a run.
 *
 * @param name name as typed
 * @param wanted true for a product, false for a by-product, a recovered substrate, or another form of a product than the one isolated
 * @param formula formula of the isolated form; empty if blank
 * @param molarMassGramsPerMole molar mass as typed, g/mol
 * @param coefficient stoichiometric coefficient; blank counts as 1 for a wanted product
 * @param skeleton units of each partner per molecule; empty = first substrate 1
 * @param plannedYieldPercent planned yield, %
 * @param partitioning acid, base or neutral, and how it parts between water and a solvent
 * @param boilingPointCelsius normal boiling point, °C
 * @param formOf the product of the run that this is another form of (salt, base, hydrate or solvate), in the form isolated; empty for that
 *     one, and where there is one form only
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
        Partitioning partitioning,
        Field boilingPointCelsius,
        String formOf,
        RowPlace row) {
    /** Copies the list. */
    public Product {
        skeleton = List.copyOf(skeleton);
    }

    /** The same as another form of a product, counted as that; not wanted beside it. */
    public Product asFormOf(String isolated) {
        return new Product(
                name,
                false,
                formula,
                molarMassGramsPerMole,
                coefficient,
                skeleton,
                plannedYieldPercent,
                partitioning,
                boilingPointCelsius,
                isolated,
                row);
    }

    /** The same as the form isolated: wanted where one of its forms is, and with what only another form tells of the free substance. */
    public Product isolatedOf(List<Product> forms) {
        return new Product(
                name,
                wanted || forms.stream().anyMatch(Product::wanted),
                formula,
                molarMassGramsPerMole,
                coefficient,
                skeleton,
                plannedYieldPercent,
                partitioning.orOf(forms.stream().map(Product::partitioning).toList()),
                boilingPointCelsius,
                "",
                row);
    }

    /** True for the product of this name. */
    public boolean isOf(String name) {
        return SubstanceName.same(this.name, name);
    }

    /**
     * Acid, base or neutral, and how a product parts between water and a solvent.
     *
     * @param character acid, base or neutral, if stated
     * @param pKa pKa (of the conjugate acid for a base)
     * @param partitionRatio P = c(organic)/c(water) of the neutral form
     * @param partitionSolvent solvent of P
     * @param logP octanol/water log P
     */
    public record Partitioning(
            Optional<Character> character, Field pKa, Field partitionRatio, String partitionSolvent, Field logP) {
        /** The same, with what is left blank filled in from the first of other forms that tells it; a pKa goes with the character of its form. */
        Partitioning orOf(List<Partitioning> forms) {
            Partitioning inWater = first(forms, character.isEmpty(), f -> f.character.isPresent());
            Partitioning between = first(forms, partitionRatio.isBlank(), f -> !f.partitionRatio.isBlank());
            Partitioning byOctanol = first(forms, logP.isBlank(), f -> !f.logP.isBlank());
            return new Partitioning(
                    inWater.character,
                    pKa.isBlank() ? inWater.pKa : pKa,
                    between.partitionRatio,
                    between.partitionSolvent,
                    byOctanol.logP);
        }

        private Partitioning first(List<Partitioning> forms, boolean blank, Predicate<Partitioning> tells) {
            return forms.stream()
                    .filter(f -> blank && tells.test(f))
                    .findFirst()
                    .orElse(this);
        }
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

        /** True where it is of a partner of this name. */
        public boolean isOf(String name) {
            return SubstanceName.same(partner, name);
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
