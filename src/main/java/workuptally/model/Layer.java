package workuptally.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A portion that a step gave and that was measured or kept.
 *
 * @param label label as typed
 * @param phase phase as recorded, if readable
 * @param position position in the funnel, if recorded
 * @param vessel vessel it is kept in
 * @param volumeMillilitres volume, mL
 * @param volumeUncertaintyMillilitres standard uncertainty of the volume, mL
 * @param weighing how it was weighed
 * @param temperatureCelsius temperature of the reading, °C
 * @param pH pH
 * @param composition stated composition by mass; empty if none
 * @param custody what has become of it, and who answers for it
 * @param notes notes, with what they say that counts
 * @param row its row
 */
public record Layer(
        String label,
        Optional<Phase> phase,
        Optional<Position> position,
        String vessel,
        Field volumeMillilitres,
        Field volumeUncertaintyMillilitres,
        Weighing weighing,
        Field temperatureCelsius,
        Field pH,
        List<CompositionPart> composition,
        Custody custody,
        Notes notes,
        RowPlace row) {
    /** Copies the list. */
    public Layer {
        composition = List.copyOf(composition);
    }

    /** The same layer, which another run took. */
    public Layer takenInto(String run) {
        return new Layer(
                label,
                phase,
                position,
                vessel,
                volumeMillilitres,
                volumeUncertaintyMillilitres,
                weighing,
                temperatureCelsius,
                pH,
                composition,
                new Custody(custody.status, custody.releasedBy, custody.madeOn, custody.reviewBy, run),
                notes,
                row);
    }

    /** True where its status says that it went on into something else. */
    public boolean saysConsumed() {
        return custody.status()
                .filter(s -> s == Status.CONSUMED || s == Status.USED_UP)
                .isPresent();
    }

    /** True where another run took it: it is no longer there, and what it held goes on in that run. */
    public boolean isTakenIntoAnotherRun() {
        return !custody.takenInto().isEmpty();
    }

    /**
     * How a layer was weighed.
     *
     * @param grossGrams vessel and contents, g
     * @param tareGrams vessel alone, g
     * @param netGrams net mass typed instead, g
     * @param balance balance used
     */
    public record Weighing(Field grossGrams, Field tareGrams, Field netGrams, String balance) {}

    /**
     * What has become of a layer, and who answers for it.
     *
     * @param status status as typed, if readable
     * @param releasedBy who released it; empty if nobody
     * @param madeOn day it was made
     * @param reviewBy day to review it
     * @param takenInto id of another run that took it, as that run names it; empty for none
     */
    public record Custody(
            Optional<Status> status,
            String releasedBy,
            Optional<LocalDate> madeOn,
            Optional<LocalDate> reviewBy,
            String takenInto) {}

    /** What a layer is. */
    public enum Phase {
        ORGANIC,
        AQUEOUS,
        SOLID,
        RAG,
        DISTILLATE,
        MOTHER_LIQUOR;

        /** The word in books and reports, for example {@code mother liquor}. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }

    /** Position in the funnel. */
    public enum Position {
        UPPER,
        LOWER,
        MIDDLE
    }

    /** What has become of a layer. */
    public enum Status {
        KEPT,
        USED_UP,
        TO_REUSE,
        CONSUMED,
        RELEASED,
        /** Spilled, or gone unrecorded: no longer there to be assayed. */
        LOST;

        /** The word in books and reports, for example {@code used up}. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }
}
