package workuptally.tally.balance;

import java.util.List;
import workuptally.measure.MeasuredValue;
import workuptally.tally.amounts.Content;

/**
 * Units of one skeleton found, over units charged.
 *
 * @param skeleton the partner, as named in Charges
 * @param chargedMillimoles units charged, mmol
 * @param percent closure B = 100·Σ aⱼ·nⱼ / n₀, %
 * @param expandedUncertaintyPercent U(B), %
 * @param coverageFactor k used
 * @param verdict what it says
 * @param z (1 − B)/u(B)
 * @param unaccountedPercent 100 − B, %
 * @param unaccountedGrams the same as grams of the first wanted product with this skeleton, g
 * @param unaccountedAs name of that product
 * @param terms what was found, where
 * @param candidates where the rest can be, largest first; empty unless the closure is open or cannot decide
 */
public record Closure(
        String skeleton,
        MeasuredValue chargedMillimoles,
        MeasuredValue percent,
        double expandedUncertaintyPercent,
        double coverageFactor,
        Verdict verdict,
        double z,
        double unaccountedPercent,
        double unaccountedGrams,
        String unaccountedAs,
        List<Term> terms,
        List<Candidate> candidates) {
    /** Copies the lists. */
    public Closure {
        terms = List.copyOf(terms);
        candidates = List.copyOf(candidates);
    }

    /** True for a substance that was found in this balance, or in which its unaccounted part is told. */
    public boolean counts(String substance) {
        return unaccountedAs.equalsIgnoreCase(substance)
                || terms.stream().anyMatch(term -> term.substance().equalsIgnoreCase(substance));
    }

    /**
     * Units found in one place.
     *
     * @param place label of a lot or layer
     * @param substance substance
     * @param unitsPerMolecule a, units of the skeleton per molecule
     * @param unitsMillimoles a·n, mmol
     * @param percent share of the units charged, %
     * @param kind how it is known
     */
    public record Term(
            String place,
            String substance,
            double unitsPerMolecule,
            MeasuredValue unitsMillimoles,
            double percent,
            Content.Kind kind) {}

    /**
     * A place where the unaccounted part can be.
     *
     * @param place label or description
     * @param lowGrams low end of a range, g; 0 for a bound
     * @param highGrams upper bound or high end, g
     * @param evidence what the figure rests on
     * @param settledBy the cheapest test that would settle it
     */
    public record Candidate(String place, double lowGrams, double highGrams, String evidence, String settledBy) {}

    /** What a closure says. */
    public enum Verdict {
        /** |1 − B| ≤ U. */
        CLOSES("closes"),
        /** 1 − B &gt; U. */
        OPEN("open"),
        /** B − 1 &gt; U. */
        OVER("over"),
        /** U is too wide, or a layer has neither assay nor bound. */
        CANNOT_DECIDE("cannot decide");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /** The word in reports and JSON. */
        public String word() {
            return word;
        }
    }
}
