package workuptally.judgement.hazards;

import java.util.List;
import java.util.Optional;
import workuptally.reference.hazards.FlashPoint;

/**
 * What a mixture of water with one or more solvents is to be called by its flash point.
 *
 * <p>Between the points of the table the flash point is linear in mass per cent, below the first it is that of the first. Several solvents
 * count as one, that with the lowest flash point at their share together. Source of the classes and of the margin: Regulation (EC)
 * 1272/2008, Annex I, table 2.6.1 (below 23 °C, up to 60 °C) and 2.6.4: a flash point that is not measured is to lie 5 °C away from the
 * limit (from memory).
 */
final class FlashPointInWater {
    /** Category 3 of flammable liquids. */
    static final String FLAMMABLE = "H226";

    private static final String HIGHLY_FLAMMABLE = "H225";
    private static final double HIGHLY_FLAMMABLE_BELOW_CELSIUS = 23;
    private static final double FLAMMABLE_UP_TO_CELSIUS = 60;
    private static final double MARGIN_CELSIUS = 5;

    private FlashPointInWater() {}

    /**
     * The statement of a mixture.
     *
     * @param tables points of each solvent in order of mass per cent, none empty
     * @param massPercent solvents together, mass % of solvents and water
     * @return {@code H225}, {@code H226} or nothing
     */
    static Optional<String> statement(List<List<FlashPoint>> tables, double massPercent) {
        double celsius = tables.stream()
                        .mapToDouble(points -> celsius(points, massPercent))
                        .min()
                        .orElseThrow()
                - MARGIN_CELSIUS;
        if (celsius < HIGHLY_FLAMMABLE_BELOW_CELSIUS) {
            return Optional.of(HIGHLY_FLAMMABLE);
        }
        return celsius <= FLAMMABLE_UP_TO_CELSIUS ? Optional.of(FLAMMABLE) : Optional.empty();
    }

    /** Flash point at a strength, °C; beyond the last point that of the last. */
    static double celsius(List<FlashPoint> points, double massPercent) {
        FlashPoint below = points.get(0);
        for (FlashPoint point : points) {
            if (massPercent <= point.massPercent()) {
                double span = point.massPercent() - below.massPercent();
                double share = span == 0 ? 0 : (massPercent - below.massPercent()) / span;
                return below.celsius() + share * (point.celsius() - below.celsius());
            }
            below = point;
        }
        return below.celsius();
    }
}
