package workuptally.tally.balance;

import workuptally.model.Phrase;

/**
 * One way to the product in a layer, independent of the others.
 *
 * @param layer label
 * @param substance product
 * @param route {@code assay}, {@code charge balance} or {@code partition at the pH}
 * @param massGrams the figure, g
 * @param lowGrams low end of its band, g
 * @param highGrams high end, g
 * @param equation the equation with its numbers
 */
public record Route(
        String layer,
        String substance,
        String route,
        double massGrams,
        double lowGrams,
        double highGrams,
        Phrase equation) {}
