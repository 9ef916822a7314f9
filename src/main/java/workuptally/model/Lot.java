package workuptally.model;

import java.util.List;
import java.util.Optional;

/**
 * A weighed isolated product. A lot that holds several products stands once for each of them, with one label and one weighing, and an
 * assay and identity for each.
 *
 * @param label label as typed
 * @param product product it is
 * @param stage crude, crop or purified, if readable
 * @param from labels of layers or lots it came from; empty if not stated
 * @param vessel vessel
 * @param weighing how it was weighed
 * @param assayPercent assay, % w/w; {@code BELOW} is an upper limit
 * @param relativeStandardUncertaintyPercent relative standard uncertainty of the assay, %
 * @param identity what is entered as evidence of identity
 * @param statedYieldPercent yield as the chemist typed it, %; only compared
 * @param notes notes, with what they say that counts
 * @param row its row
 */
public record Lot(
        String label,
        String product,
        Optional<Stage> stage,
        List<String> from,
        String vessel,
        Weighing weighing,
        Field assayPercent,
        Field relativeStandardUncertaintyPercent,
        LotIdentity identity,
        Field statedYieldPercent,
        Notes notes,
        RowPlace row) {
    /** Copies the list. */
    public Lot {
        from = List.copyOf(from);
    }

    /** The same product, assay and identity in a lot that is weighed, staged and made as in another row of it. */
    public Lot weighedAs(Lot first) {
        return new Lot(
                label,
                product,
                first.stage,
                first.from,
                first.vessel,
                first.weighing,
                assayPercent,
                relativeStandardUncertaintyPercent,
                identity,
                statedYieldPercent,
                notes,
                row);
    }

    /** The same made from layers of these labels. */
    public Lot madeFrom(List<String> layers) {
        return new Lot(
                label,
                product,
                stage,
                layers,
                vessel,
                weighing,
                assayPercent,
                relativeStandardUncertaintyPercent,
                identity,
                statedYieldPercent,
                notes,
                row);
    }

    /** True for a lot of a product of this name. */
    public boolean isOf(String name) {
        return SubstanceName.same(product, name);
    }

    /**
     * How a lot was weighed.
     *
     * @param grossGrams vessel and contents, g
     * @param tareGrams vessel alone, g
     * @param netGrams net mass typed instead, g
     * @param secondGrossGrams gross of a second weighing, g
     */
    public record Weighing(Field grossGrams, Field tareGrams, Field netGrams, Field secondGrossGrams) {
        /** Heading of the cell where the mass was entered. */
        public String heading() {
            return grossGrams.entered().isEmpty() && netGrams.entered().isPresent() ? "Net" : "Gross";
        }
    }

    /** Stage of a lot. */
    public enum Stage {
        CRUDE,
        CROP,
        PURIFIED;

        /** The word in books and reports. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
