package workuptally.model;

/**
 * One part of a stated composition, {@code ethyl acetate 81 %}.
 *
 * @param substance name as typed
 * @param massPercent share by mass, %, 0 to 100
 */
public record CompositionPart(String substance, double massPercent) {
    /** Equal substance and share; see the contributor guide on records as keys. */
    @Override
    public boolean equals(Object other) {
        return other instanceof CompositionPart part
                && Double.compare(massPercent, part.massPercent) == 0
                && substance.equals(part.substance);
    }

    @Override
    public int hashCode() {
        return 31 * substance.hashCode() + Double.hashCode(massPercent);
    }
}
