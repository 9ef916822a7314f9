package workuptally.measure;

/**
 * The share of one reading in the uncertainty of a result.
 *
 * @param reading the entered number
 * @param sensitivity partial derivative of the result by the reading, in unit of the result per unit of the reading
 * @param variancePercent share of the result's variance, 0 to 100 %
 */
public record Contribution(Reading reading, double sensitivity, double variancePercent) {}
