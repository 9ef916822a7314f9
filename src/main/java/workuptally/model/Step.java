package workuptally.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * One workup operation.
 *
 * @param number step number or name as typed
 * @param operation what was done, if readable
 * @param from labels consumed ({@code RM} = reaction mixture)
 * @param material what was added; empty if nothing
 * @param portions number of portions; blank = 1
 * @param volumeMillilitres volume of each portion, mL
 * @param massGrams mass of each portion, g
 * @param molarityMolesPerLitre strength of the material, mol/L
 * @param densityGramsPerMillilitre density of the material, g/mL
 * @param funnelMillilitres nominal size of the funnel, mL
 * @param loads number of funnel loads; blank = 1
 * @param temperatureCelsius temperature, °C
 * @param pHAfter pH of the aqueous layer at the end
 * @param quenchTest result of the quench test
 * @param lowerLayer which layer was below
 * @param checkedBy how that was checked
 * @param emulsion emulsion seen
 * @param givesOrganic labels of organic layers given
 * @param givesAqueous labels of aqueous layers given
 * @param givesOther labels of other portions and lots given
 * @param notes free text
 * @param row its row
 */
public record Step(
        String number,
        Optional<Operation> operation,
        List<String> from,
        String material,
        Field portions,
        Field volumeMillilitres,
        Field massGrams,
        Field molarityMolesPerLitre,
        Field densityGramsPerMillilitre,
        Field funnelMillilitres,
        Field loads,
        Field temperatureCelsius,
        Field pHAfter,
        Optional<QuenchTest> quenchTest,
        Optional<Lower> lowerLayer,
        Optional<CheckedBy> checkedBy,
        Optional<Emulsion> emulsion,
        List<String> givesOrganic,
        List<String> givesAqueous,
        List<String> givesOther,
        String notes,
        RowPlace row) {
    /** The label of the reaction mixture. */
    public static final String REACTION_MIXTURE = "RM";

    /** Copies the lists. */
    public Step {
        from = List.copyOf(from);
        givesOrganic = List.copyOf(givesOrganic);
        givesAqueous = List.copyOf(givesAqueous);
        givesOther = List.copyOf(givesOther);
    }

    /** The same step, taken from other portions. */
    public Step takenFrom(List<String> portions) {
        return new Step(
                number,
                operation,
                portions,
                material,
                this.portions,
                volumeMillilitres,
                massGrams,
                molarityMolesPerLitre,
                densityGramsPerMillilitre,
                funnelMillilitres,
                loads,
                temperatureCelsius,
                pHAfter,
                quenchTest,
                lowerLayer,
                checkedBy,
                emulsion,
                givesOrganic,
                givesAqueous,
                givesOther,
                notes,
                row);
    }

    /** Of the row alone; see the contributor guide on records as keys. */
    @Override
    public int hashCode() {
        return row.row();
    }

    /** All labels given, organic first, then aqueous, then others. */
    public List<String> gives() {
        List<String> labels = new ArrayList<>(givesOrganic);
        labels.addAll(givesAqueous);
        labels.addAll(givesOther);
        return Collections.unmodifiableList(labels);
    }

    /** Number of portions: as typed, 1 where blank. */
    public double portionCount() {
        return portions.entered().map(Field.Entered::value).orElse(1.0);
    }

    /** Workup operations. */
    public enum Operation {
        QUENCH,
        DILUTE,
        STRIP,
        EXTRACT,
        WASH,
        BACK_EXTRACT,
        ACIDIFY,
        BASIFY,
        COMBINE,
        DRY,
        FILTER,
        RINSE,
        CONCENTRATE,
        DISTIL,
        CRYSTALLISE,
        SAMPLE,
        CHROMATOGRAPH,
        DRY_SOLID;

        /** The word in books and reports, for example {@code back-extract}. */
        public String word() {
            return this == DRY_SOLID
                    ? "dry solid"
                    : name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /** Result of a test for left-over oxidant or hydride. */
    public enum QuenchTest {
        NEGATIVE,
        POSITIVE,
        NOT_DONE
    }

    /** Which phase was below. */
    public enum Lower {
        ORGANIC,
        AQUEOUS
    }

    /** How the order of the layers was checked. */
    public enum CheckedBy {
        DENSITY,
        WATER_DROP,
        VOLUMES,
        NOT_CHECKED
    }

    /** Emulsion seen at a contact. */
    public enum Emulsion {
        NONE,
        SLIGHT,
        PERSISTENT
    }
}
