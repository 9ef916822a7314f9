package workuptally.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A material put into the reaction.
 *
 * @param material name as typed
 * @param role what it is for, if readable
 * @param formula formula; empty if blank
 * @param molarMassGramsPerMole molar mass as typed, g/mol
 * @param coefficient stoichiometric coefficient; blank = not stoichiometric
 * @param planned planned amount, if the cell is not blank
 * @param actual actual amount, if the cell is not blank
 * @param statedMillimoles amount of substance as typed beside the amount, mmol; counts where the amount cannot give it
 * @param statedEquivalents equivalents as typed beside the amount, of what {@code equivalents} are counted; compared with the amount only
 * @param assayPercent assay, % w/w
 * @param molarityMolesPerLitre concentration by the label, mol/L
 * @param titreMolesPerLitre titrated concentration, mol/L; wins over the label
 * @param titreDate day of the titration
 * @param densityGramsPerMillilitre density, g/mL
 * @param assayUncertaintyPercent standard uncertainty of the assay, % of the assay
 * @param titreUncertaintyPercent standard uncertainty of the titre, % of the titre
 * @param supplierLot number on the bottle
 * @param row its row
 */
public record Charge(
        String material,
        Optional<Role> role,
        String formula,
        Field molarMassGramsPerMole,
        Field coefficient,
        Optional<Amount> planned,
        Optional<Amount> actual,
        Field statedMillimoles,
        Field statedEquivalents,
        Field assayPercent,
        Field molarityMolesPerLitre,
        Field titreMolesPerLitre,
        Optional<LocalDate> titreDate,
        Field densityGramsPerMillilitre,
        Field assayUncertaintyPercent,
        Field titreUncertaintyPercent,
        String supplierLot,
        RowPlace row) {

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
