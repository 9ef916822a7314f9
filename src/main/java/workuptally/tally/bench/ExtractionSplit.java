package workuptally.tally.bench;

import workuptally.chemistry.Extraction;

/**
 * How the volume planned for an extraction is best divided, for one product: an estimate from its partition ratio, at equilibrium in every
 * contact. Equal portions are the best split of a fixed volume; more of them always take out more, but ever less more.
 *
 * @param product the wanted product
 * @param ratio c(extracting phase)/c(extracted phase): D where solvent is added, 1/D where water is
 * @param factor the ratio is known to within this factor either way, 1 or more
 * @param origin where it comes from, in words
 * @param totalMillilitres all portions together, mL
 * @param extractedMillilitres the phase that is extracted, mL
 * @param plannedPortions portions planned
 * @param bestPortions fewest portions after which one more would gain less than {@link #SMALLEST_GAIN_PERCENT} of the product
 */
public record ExtractionSplit(
        String product,
        double ratio,
        double factor,
        String origin,
        double totalMillilitres,
        double extractedMillilitres,
        int plannedPortions,
        int bestPortions) {
    /** Gain that is still worth a portion more, % of the product; common practice. */
    public static final double SMALLEST_GAIN_PERCENT = 2;

    /** Product that stays behind as planned, %. */
    public double leftAsPlannedPercent() {
        return leftPercent(plannedPortions, ratio);
    }

    /** Product that stays behind with the best split, %. */
    public double leftAtBestPercent() {
        return leftPercent(bestPortions, ratio);
    }

    /** Product that stays behind with everything added at once, %. */
    public double leftAtOncePercent() {
        return leftPercent(1, ratio);
    }

    /** Least that stays behind as planned, the ratio being as high as its factor allows, %. */
    public double leastLeftAsPlannedPercent() {
        return leftPercent(plannedPortions, ratio * factor);
    }

    /** Most that stays behind as planned, the ratio being as low as its factor allows, %. */
    public double mostLeftAsPlannedPercent() {
        return leftPercent(plannedPortions, ratio / factor);
    }

    private double leftPercent(int portions, double atRatio) {
        return 100 * Extraction.fractionLeft(atRatio, totalMillilitres / portions, extractedMillilitres, portions);
    }
}
