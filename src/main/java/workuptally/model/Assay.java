package workuptally.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * An analysis of a layer or lot.
 *
 * @param sample label of the layer or lot; of a composite sample all labels, joined by {@code " + "} in a fixed order
 * @param substance substance found
 * @param formula its formula, if not listed elsewhere
 * @param method how
 * @param result the number in the unit; {@code BELOW} and {@code NOT_DETECTED} are non-detects
 * @param unit unit of the result, if readable
 * @param relativeStandardUncertaintyPercent relative standard uncertainty, %
 * @param calibration name of a calibration shared with other rows; empty if none
 * @param replicates number of repeats behind the stated uncertainty; blank = taken as well known
 * @param aliquotMillilitres aliquot taken, mL
 * @param residueMilligrams dry residue of the aliquot, mg
 * @param notes notes, with what they say that counts
 * @param row its row
 */
public record Assay(
        String sample,
        String substance,
        String formula,
        Optional<Method> method,
        Field result,
        Optional<Unit> unit,
        Field relativeStandardUncertaintyPercent,
        String calibration,
        Field replicates,
        Field aliquotMillilitres,
        Field residueMilligrams,
        Notes notes,
        RowPlace row) {
    /** Stands between the labels of a composite sample. */
    public static final String TOGETHER = " + ";

    /** The labels of the layers, of a composite sample two or more. */
    public List<String> samples() {
        return Arrays.asList(sample.split(Pattern.quote(TOGETHER)));
    }

    /** True for one analysis of aliquots of several layers. */
    public boolean isComposite() {
        return sample.contains(TOGETHER);
    }

    /** True where it tells of a substance of this name. */
    public boolean isOf(String name) {
        return SubstanceName.same(substance, name);
    }

    /** Methods of analysis. */
    public enum Method {
        HPLC("HPLC"),
        GC("GC"),
        /** A trace of ions: a bound at best, and only where the laboratory says so. */
        LC_MS("LC-MS"),
        /** A spot on a plate: a bound at best, and only where the laboratory says so. */
        TLC("TLC"),
        NMR("NMR"),
        QNMR("qNMR"),
        TITRATION("titration"),
        DRY_RESIDUE("dry residue"),
        LOD("LOD"),
        KF("KF"),
        OTHER("other");

        private final String word;

        Method(String word) {
            this.word = word;
        }

        /** The word in books and reports. */
        public String word() {
            return word;
        }

        /** True for a method that is shown and counts only where the laboratory says so in Limits. */
        public boolean isWeak() {
            return this == TLC || this == LC_MS;
        }
    }

    /** Units of a result. */
    public enum Unit {
        MILLIGRAMS_PER_MILLILITRE("mg/mL"),
        MASS_PERCENT("% w/w"),
        MOLES_PER_LITRE("mol/L"),
        GRAMS("g"),
        MILLIMOLES("mmol"),
        MOLE_RATIO_TO_PRODUCT("mol ratio to product"),
        /** A chromatographic area share: no assay, kept so that it can be refused with a reason. */
        AREA_PERCENT("area %");

        private final String word;

        Unit(String word) {
            this.word = word;
        }

        /** The word in books and reports. */
        public String word() {
            return word;
        }
    }
}
