package workuptally.model;

/**
 * An internal-standard NMR assay by its raw numbers.
 *
 * @param sample label of the lot or layer
 * @param substance substance assayed
 * @param standard internal standard
 * @param standardMolarMassGramsPerMole g/mol
 * @param standardPurityPercent % w/w
 * @param standardMassMilligrams mg
 * @param sampleMassMilligrams mg
 * @param standardIntegral area of the standard's signal
 * @param standardNuclei nuclei of that signal
 * @param substanceIntegral area of the substance's signal
 * @param substanceNuclei nuclei of that signal
 * @param relativeStandardUncertaintyPercent relative standard uncertainty, %
 * @param row its row
 */
public record NmrAssay(
        String sample,
        String substance,
        String standard,
        Field standardMolarMassGramsPerMole,
        Field standardPurityPercent,
        Field standardMassMilligrams,
        Field sampleMassMilligrams,
        Field standardIntegral,
        Field standardNuclei,
        Field substanceIntegral,
        Field substanceNuclei,
        Field relativeStandardUncertaintyPercent,
        RowPlace row) {}
