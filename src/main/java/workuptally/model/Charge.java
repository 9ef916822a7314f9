package workuptally.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A material put into the reaction.
 *
 * @param material name as typed; of a charge that was not read what stands for it in sentences
 * @param role what it is for, if readable
 * @param formula formula; empty if blank
 * @param molarMassGramsPerMole molar mass as typed, g/mol
 * @param coefficient stoichiometric coefficient; blank = not stoichiometric
 * @param quantity how much was planned and taken
 * @param goods what stands on the bottle, or was found of what is in it
 * @param reading how far its row was read
 * @param row its row
 */
public record Charge(
        String material,
        Optional<Role> role,
        String formula,
        Field molarMassGramsPerMole,
        Field coefficient,
        Quantity quantity,
        Goods goods,
        Reading reading,
        RowPlace row) {
    private static final char NO_BREAK = '\u00A0';

    /**
     * A charge whose row was left out.
     *
     * @param material its name, where that alone could be read; else empty. What stands for it then has spaces that no name keeps when it is
     *     read, so that it is never taken for a name
     */
    public static Charge unread(String material, Optional<Role> role, RowPlace row) {
        Field unreadable = Field.NoNumber.UNREADABLE;
        Field blank = Field.NoNumber.BLANK;
        return new Charge(
                material.isEmpty() ? ("unread charge in row " + row.row()).replace(' ', NO_BREAK) : material,
                role,
                "",
                unreadable,
                role.equals(Optional.of(Role.SOLVENT)) ? blank : unreadable,
                new Quantity(
                        Optional.empty(),
                        Optional.of(new Amount(unreadable, Dimension.MASS, "g")),
                        unreadable,
                        unreadable),
                new Goods(unreadable, blank, blank, blank, blank, Optional.empty(), blank, ""),
                material.isEmpty() ? Reading.LEFT_OUT : Reading.NAME_ONLY,
                row);
    }

    /** True for the charge of a material of this name. */
    public boolean isOf(String name) {
        return SubstanceName.same(material, name);
    }

    /** How far the row of a charge was read. */
    public enum Reading {
        /** As a whole. */
        READ,
        /** Left out but for the name: nobody knows how much was charged. */
        NAME_ONLY,
        /** Left out: something was charged, and nobody knows what. */
        LEFT_OUT
    }

    /**
     * How much of it.
     *
     * @param planned planned amount, if the cell is not blank
     * @param actual actual amount, if the cell is not blank
     * @param statedMillimoles amount of substance as typed beside the amount, mmol; counts where the amount cannot give it
     * @param statedEquivalents equivalents as typed beside the amount, of what {@code equivalents} are counted; compared with the amount
     *     only
     */
    public record Quantity(
            Optional<Amount> planned, Optional<Amount> actual, Field statedMillimoles, Field statedEquivalents) {}

    /**
     * What is in the bottle.
     *
     * @param assayPercent assay, % w/w
     * @param assayUncertaintyPercent standard uncertainty of the assay, % of the assay
     * @param molarityMolesPerLitre concentration by the label, mol/L
     * @param titreMolesPerLitre titrated concentration, mol/L; wins over the label
     * @param titreUncertaintyPercent standard uncertainty of the titre, % of the titre
     * @param titreDate day of the titration
     * @param densityGramsPerMillilitre density, g/mL
     * @param supplierLot number on the bottle
     */
    public record Goods(
            Field assayPercent,
            Field assayUncertaintyPercent,
            Field molarityMolesPerLitre,
            Field titreMolesPerLitre,
            Field titreUncertaintyPercent,
            Optional<LocalDate> titreDate,
            Field densityGramsPerMillilitre,
            String supplierLot) {}

    /** What a charge is for. */
    public enum Role {
        /** The material that is converted. */
        SUBSTRATE,
        /** A partner. */
        REAGENT,
        /** Catalyst. */
        CATALYST,
        /** Base. */
        BASE,
        /** Solvent. */
        SOLVENT,
        /** Additive. */
        ADDITIVE,
        /** One component of a mixture to be separated. */
        COMPONENT
    }
}
