package workuptally.judgement.measurements;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A test that would settle something.
 *
 * @param kind what is done
 * @param samples labels of the portions, several for a composite sample
 * @param substances what to look for; empty for a test of no substance
 * @param aliquotsMillilitres of a composite, the volume to take of each portion, in order, mL; else empty
 * @param dilution of a composite, how many times its volume it is made up to with a common solvent; else 1
 * @param mustBeBelow the result below which the layers named have their evidence; empty where no result of it alone would do
 * @param unit unit of that result, of a composite before dilution; empty without one
 * @param settles labels of the layers whose evidence would be complete with such a result
 * @param releasesGrams what is looked for that these layers, or else the samples, can hold at most as things stand, g; 0 where nothing
 *     bounds it
 */
public record NextTest(
        Kind kind,
        List<String> samples,
        List<String> substances,
        List<Double> aliquotsMillilitres,
        double dilution,
        OptionalDouble mustBeBelow,
        String unit,
        List<String> settles,
        double releasesGrams) {
    /** Copies the lists. */
    public NextTest {
        samples = List.copyOf(samples);
        substances = List.copyOf(substances);
        aliquotsMillilitres = List.copyOf(aliquotsMillilitres);
        settles = List.copyOf(settles);
    }

    /** The same test with the layers that it settles. */
    NextTest settling(List<String> layers, double grams) {
        return new NextTest(kind, samples, substances, aliquotsMillilitres, dilution, mustBeBelow, unit, layers, grams);
    }

    /** Kinds of tests with their cost class. */
    public enum Kind {
        DROP("density or water drop", 1),
        TARE("missing tare", 1),
        DRY_RESIDUE("dry residue", 1.5),
        ASSAY("assay", 2),
        COMPOSITE("composite assay", 2.5);

        private final String word;
        private final double cost;

        Kind(String word, double cost) {
            this.word = word;
            this.cost = cost;
        }

        /** The words in reports and JSON. */
        public String word() {
            return word;
        }

        /** Cost class: a look at the bench or an empty vessel on the balance 1, an aliquot dried and weighed 1.5, an assay 2, a composite with its volumes a little more (common practice). */
        public double cost() {
            return cost;
        }
    }
}
