package workuptally.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import workuptally.model.Field.Entered;

/**
 * One workup operation.
 *
 * @param number step number or name as typed
 * @param operation what was done, if readable
 * @param from labels consumed ({@code RM} = reaction mixture)
 * @param added what was added
 * @param funnel the funnel, and what was seen in it
 * @param temperatureCelsius temperature, °C
 * @param pHAfter pH of the aqueous layer at the end
 * @param quenchTest result of the quench test
 * @param given what it gave
 * @param notes notes, with what they say that counts
 * @param row its row
 */
public record Step(
        String number,
        Optional<Operation> operation,
        List<String> from,
        Addition added,
        Funnel funnel,
        Field temperatureCelsius,
        Field pHAfter,
        Optional<QuenchTest> quenchTest,
        Given given,
        Notes notes,
        RowPlace row) {
    /** The label of the reaction mixture. */
    public static final String REACTION_MIXTURE = "RM";

    /** Below every liquid that goes through a column, of which pentane (0.626) is the lightest, g/mL. */
    private static final double LIGHTEST_ELUENT = 0.5;

    /** Copies the list. */
    public Step {
        from = List.copyOf(from);
    }

    /**
     * What a step added, in portions that are alike.
     *
     * @param material what it was; empty if nothing
     * @param portions number of portions; blank = 1
     * @param volumeMillilitres volume of each portion, mL
     * @param massGrams mass of each portion, g
     * @param molarityMolesPerLitre strength of the material, mol/L
     * @param densityGramsPerMillilitre density of the material, g/mL
     */
    public record Addition(
            String material,
            Field portions,
            Field volumeMillilitres,
            Field massGrams,
            Field molarityMolesPerLitre,
            Field densityGramsPerMillilitre) {
        /** Number of portions: as typed, 1 where blank. */
        public double portionCount() {
            return portions.entered().map(Field.Entered::value).orElse(1.0);
        }
    }

    /**
     * The funnel of a contact, and what was seen in it.
     *
     * @param millilitres nominal size, mL
     * @param loads number of loads; blank = 1
     * @param lowerLayer which layer was below
     * @param checkedBy how that was checked
     * @param emulsion emulsion seen
     */
    public record Funnel(
            Field millilitres,
            Field loads,
            Optional<Lower> lowerLayer,
            Optional<CheckedBy> checkedBy,
            Optional<Emulsion> emulsion) {}

    /**
     * Labels of what a step gave.
     *
     * @param organic organic layers
     * @param aqueous aqueous layers
     * @param other other portions and lots
     */
    public record Given(List<String> organic, List<String> aqueous, List<String> other) {
        /** Copies the lists. */
        public Given {
            organic = List.copyOf(organic);
            aqueous = List.copyOf(aqueous);
            other = List.copyOf(other);
        }

        /** All of them, organic first, then aqueous, then others. */
        public List<String> all() {
            if (aqueous.isEmpty() && other.isEmpty()) {
                return organic;
            }
            if (organic.isEmpty() && aqueous.isEmpty()) {
                return other;
            }
            List<String> labels = new ArrayList<>(organic.size() + aqueous.size() + other.size());
            labels.addAll(organic);
            labels.addAll(aqueous);
            labels.addAll(other);
            return Collections.unmodifiableList(labels);
        }
    }

    /** The same step, taken from other portions. */
    public Step takenFrom(List<String> portions) {
        return new Step(
                number, operation, portions, added, funnel, temperatureCelsius, pHAfter, quenchTest, given, notes, row);
    }

    /** Of the row alone; see the contributor guide on records as keys. */
    @Override
    public int hashCode() {
        return row.row();
    }

    /** True where its mass, without a material or beside the volume of an eluent, is how much of a lot it took. */
    public boolean isOfPartOf(Run run) {
        boolean withoutMaterial =
                added.material().isBlank() && added.volumeMillilitres().isBlank();
        return (withoutMaterial || isLoad())
                && added.massGrams().entered().isPresent()
                && from.stream().anyMatch(label -> run.lot(label).isPresent());
    }

    /** True on a column where a mass stands beside a volume that no liquid of that volume can have. */
    private boolean isLoad() {
        Optional<Double> volume = added.volumeMillilitres().entered().map(Entered::value);
        Optional<Double> mass = added.massGrams().entered().map(Entered::value);
        return operation.filter(o -> o == Operation.CHROMATOGRAPH).isPresent()
                && volume.isPresent()
                && mass.filter(m -> m < LIGHTEST_ELUENT * volume.get()).isPresent();
    }

    /** All labels given, organic first, then aqueous, then others. */
    public List<String> gives() {
        return given.all();
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

        /** True where solvent is evaporated or distilled off. */
        public boolean takesSolventOff() {
            return this == STRIP || this == CONCENTRATE || this == DISTIL;
        }

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
