package workuptally.chemistry;

/**
 * Atomic weight of an element, or mass of a nuclide, with the half-width it is known to.
 *
 * @param gramsPerMole g/mol, above 0
 * @param halfWidthGramsPerMole half-width, g/mol, 0 or more
 */
public record AtomicMass(double gramsPerMole, double halfWidthGramsPerMole) {
    /** Checks the numbers. */
    public AtomicMass {
        if (!(gramsPerMole > 0 && halfWidthGramsPerMole >= 0)) {
            throw new IllegalArgumentException(
                    "atomic mass " + gramsPerMole + " +/- " + halfWidthGramsPerMole + " g/mol");
        }
    }
}
