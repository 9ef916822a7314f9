package workuptally.tally.balance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import workuptally.measure.MeasuredValue;
import workuptally.model.Phrase;
import workuptally.model.SubstanceName;
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
 * @param because why it cannot be decided, in words; empty for another verdict
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
        Phrase because,
        double z,
        double unaccountedPercent,
        double unaccountedGrams,
        String unaccountedAs,
        List<Term> terms,
        List<Candidate> candidates) {
    private static final List<Verdict> THE_WORST_FIRST =
            List.of(Verdict.OVER, Verdict.OPEN, Verdict.CANNOT_DECIDE, Verdict.CLOSES);

    /** Copies the lists. */
    public Closure {
        terms = List.copyOf(terms);
        candidates = List.copyOf(candidates);
    }

    /** A closure that was decided, or whose reason is not told. */
    public Closure(
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
        this(
                skeleton,
                chargedMillimoles,
                percent,
                expandedUncertaintyPercent,
                coverageFactor,
                verdict,
                Phrase.NONE,
                z,
                unaccountedPercent,
                unaccountedGrams,
                unaccountedAs,
                terms,
                candidates);
    }

    /** Where the rest of a run is looked for of whose workup nothing was recorded. */
    public static String workupOf(String run) {
        return "the workup of " + run;
    }

    /** The one of a run's balances that its reader has to know of: by verdict, then by what is unaccounted for; empty where there is none. */
    public static Optional<Closure> worst(List<Closure> closures) {
        return closures.stream()
                .min(Comparator.<Closure>comparingInt(c -> THE_WORST_FIRST.indexOf(c.verdict()))
                        .thenComparing(Comparator.comparingDouble((Closure c) -> Math.abs(c.unaccountedPercent()))
                                .reversed()));
    }

    /** What the run lacks of this balance at most, one-sided 95 %, %; a balance above 100 % lacks no less than its own reach. */
    public double unaccountedAtMostPercent() {
        return Math.max(0, unaccountedPercent) + percent.oneSidedReach();
    }

    /**
     * What it seems to lack, %: its best estimate. Where it is above 100 % by what is only known not to be more, such as a wet lot without an
     * assay, that may as well hold nothing.
     */
    public double seemsToLackPercent() {
        double bounds = terms.stream()
                .filter(term -> term.kind() == Content.Kind.BOUND)
                .mapToDouble(Term::percent)
                .sum();
        return Math.max(0, unaccountedPercent < 0 ? unaccountedPercent + bounds : unaccountedPercent);
    }

    /** What it lacks at least, one-sided 95 %, %; 0 or less where nothing need be missing. */
    public double unaccountedAtLeastPercent() {
        return unaccountedPercent - percent.oneSidedReach();
    }

    /**
     * What its candidates can hold together at most, % of the units charged, but for kept portions, by-products, partners and lots that nobody assayed:
     * they can hold anything, and an assay is to show it.
     */
    public double candidatesAtMostPercent() {
        return atMostPercent(c -> !c.withoutAssay());
    }

    /** The same with by-products, partners and lots that nobody assayed, each at its own bound: what leaves the entries in agreement. */
    public double placesAtMostPercent() {
        return atMostPercent(c -> !c.keptWithoutAssay());
    }

    /**
     * What it lacks at least, one-sided 95 %, beyond all that its candidates can hold together at most, g of {@link #unaccountedAs}; 0 where
     * they can hold it.
     */
    public double withoutPlaceGrams() {
        double held = candidates.stream().mapToDouble(Candidate::highGrams).sum();
        return Math.max(0, unaccountedAtLeastPercent() * gramsPerPercent() - held);
    }

    /**
     * Another balance on the same product that leaves less of it missing than this one: of a partner taken in excess a part is in no product,
     * so that what its own balance lacks is no product lost. The one that leaves least; empty where none that was decided does.
     */
    public Optional<Closure> narrower(List<Closure> all) {
        return all.stream()
                .filter(other -> other.verdict == Verdict.CLOSES || other.verdict == Verdict.OPEN)
                .filter(other -> !SubstanceName.same(other.skeleton, skeleton)
                        && SubstanceName.same(other.unaccountedAs, unaccountedAs)
                        && other.gramsPerPercent() > 0
                        && other.missingAtMostGrams() < unaccountedGrams)
                .min(Comparator.comparingDouble(Closure::missingAtMostGrams));
    }

    /** What may be missing at most by this balance, one-sided 95 %, g of {@link #unaccountedAs}. */
    public double missingAtMostGrams() {
        return unaccountedAtMostPercent() * gramsPerPercent();
    }

    private double gramsPerPercent() {
        return unaccountedPercent == 0 ? 0 : unaccountedGrams / unaccountedPercent;
    }

    private double atMostPercent(Predicate<Candidate> counted) {
        double gramsPerPercent = gramsPerPercent();
        return gramsPerPercent <= 0
                ? Double.POSITIVE_INFINITY
                : candidates.stream()
                                .filter(counted)
                                .mapToDouble(Candidate::highGrams)
                                .sum()
                        / gramsPerPercent;
    }

    /** True for a substance that was found in this balance, or in which its unaccounted part is told. */
    public boolean counts(String substance) {
        return SubstanceName.same(unaccountedAs, substance) || terms.stream().anyMatch(term -> term.isOf(substance));
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
            Content.Kind kind) {
        /** True where it is found of a substance of this name. */
        public boolean isOf(String name) {
            return SubstanceName.same(substance, name);
        }
    }

    /**
     * A place where the unaccounted part can be.
     *
     * @param place label or description
     * @param lowGrams low end of a range, g; 0 for a bound
     * @param highGrams upper bound or high end, g
     * @param evidence what the figure rests on
     * @param settledBy the cheapest test that would settle it
     * @param looked whether anybody looked there
     * @param settlesGrams most that its test can find, g: more than the bound where it looks into portions that nothing bounds
     */
    public record Candidate(
            String place,
            double lowGrams,
            double highGrams,
            String evidence,
            String settledBy,
            Looked looked,
            double settlesGrams) {
        /** A place whose test finds no more than the place can hold. */
        public Candidate(
                String place, double lowGrams, double highGrams, String evidence, String settledBy, Looked looked) {
            this(place, lowGrams, highGrams, evidence, settledBy, looked, highGrams);
        }

        /** A place that is bounded by what was measured. */
        public Candidate(String place, double lowGrams, double highGrams, String evidence, String settledBy) {
            this(place, lowGrams, highGrams, evidence, settledBy, Looked.BOUNDED);
        }

        /** True for a kept portion that nobody assayed. */
        public boolean keptWithoutAssay() {
            return looked == Looked.IN_NO_KEPT_PORTION;
        }

        /** True for a kept portion, or a by-product, partner or lot, that nobody assayed: it can hold all that is missing, and an assay would show it. */
        public boolean withoutAssay() {
            return looked != Looked.BOUNDED;
        }
    }

    /** Whether anybody looked for what is missing in a place. */
    public enum Looked {
        /** It is bounded by what was measured, or by what is usual. */
        BOUNDED,
        /** Nobody assayed this kept portion. */
        IN_NO_KEPT_PORTION,
        /** Nobody assayed anything for this by-product, partner or lot, or rinsed this cake. */
        NOWHERE
    }

    /** What a closure says. */
    public enum Verdict {
        /** |1 − B| ≤ U, with U no wider than the resolution that this needs, and no upper bound in B. */
        CLOSES("closes"),
        /** 1 − B &gt; U. */
        OPEN("open"),
        /** B − 1 &gt; U. */
        OVER("over"),
        /** U is too wide, readings do not agree, B is an upper bound, or a layer has neither assay nor bound. */
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
