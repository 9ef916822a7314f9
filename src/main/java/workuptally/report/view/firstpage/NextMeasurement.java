package workuptally.report.view.firstpage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.measurements.NextTest;
import workuptally.judgement.measurements.WeekTest;
import workuptally.model.Severity;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;
import workuptally.tally.balance.Closure;

/**
 * A measurement that would settle where product is: the few tests that tell most about all runs together first, then the others by the
 * layers they complete for their cost, then what else a balance lacks.
 *
 * @param run run id; the number of runs where it concerns many
 * @param test what to do, in a few words
 * @param settles what it would settle
 * @param layersPerCost layers whose evidence it would complete, over its cost class
 * @param grams product that it is about at most, g
 */
public record NextMeasurement(String run, String test, String settles, double layersPerCost, double grams) {
    /** Lines that a first page has for measurements. */
    public static final int MOST_LINES = 3;

    private static final String SPACE = "\u00A0";

    /** A test that can find less than this share of what is missing settles nothing. */
    private static final double WORTH_A_TEST = 0.5;

    /** How many are left when the first {@link #MOST_LINES} are shown, in words; empty where none is. */
    public static Optional<String> left(List<NextMeasurement> all) {
        return all.size() <= MOST_LINES
                ? Optional.empty()
                : Optional.of((all.size() - MOST_LINES) + " more: each run tells its own");
    }

    /** All measurements, each once, the one that settles most first. */
    public static List<NextMeasurement> of(Review review, Wording wording) {
        ReadableNumbers numbers = new ReadableNumbers(wording.mark());
        List<NextMeasurement> first = new ArrayList<>();
        Set<List<Object>> told = new HashSet<>();
        for (WeekTest one : review.nextTests()) {
            RunReview run = review.runs().stream()
                    .filter(r -> r.id().equals(one.runs().get(0)))
                    .findFirst()
                    .orElseThrow();
            first.add(of(run, one.test(), numbers));
            one.runs()
                    .forEach(id ->
                            told.add(List.of(id, one.test().kind(), one.test().samples())));
        }
        List<NextMeasurement> all = new ArrayList<>();
        List<NextMeasurement> unrecorded = new ArrayList<>();
        for (RunReview run : review.runs()) {
            // with a stop open the balance itself is in doubt, and its own action comes first
            if (!run.has(Severity.STOP)) {
                run.nextTests().stream()
                        .filter(test -> !told.contains(List.of(run.id(), test.kind(), test.samples())))
                        .forEach(test -> all.add(of(run, test, numbers)));
                ofClosures(run, numbers, all, unrecorded);
            }
        }
        ofUnrecorded(unrecorded, numbers).forEach(all::add);
        return Stream.concat(first.stream(), ranked(all)).toList();
    }

    /** Runs without a workup are told of together: a list that has none would say the same of each of its rows. */
    private static Stream<NextMeasurement> ofUnrecorded(List<NextMeasurement> each, ReadableNumbers numbers) {
        if (each.size() < 2) {
            return each.stream();
        }
        double grams = each.stream().mapToDouble(NextMeasurement::grams).sum();
        return Stream.of(new NextMeasurement(
                each.size() + " runs",
                each.get(0).test(),
                "nothing of their workup is recorded; up to " + numbers.most(grams) + SPACE + "g may be there",
                0,
                grams));
    }

    private static Stream<NextMeasurement> ranked(List<NextMeasurement> all) {
        return all.stream()
                .sorted(Comparator.comparingDouble(NextMeasurement::layersPerCost)
                        .thenComparingDouble(NextMeasurement::grams)
                        .reversed());
    }

    private static NextMeasurement of(RunReview run, NextTest test, ReadableNumbers numbers) {
        return new NextMeasurement(
                run.id(),
                words(run, test, numbers),
                settles(test, numbers),
                test.settles().size() / test.kind().cost(),
                test.releasesGrams());
    }

    private static String words(RunReview run, NextTest test, ReadableNumbers numbers) {
        boolean several =
                run.tally().run().products().stream().filter(p -> p.wanted()).count() > 1;
        String substances = several && !test.substances().isEmpty() ? " for " + listed(test.substances()) : "";
        String samples = String.join("+", test.samples());
        return switch (test.kind()) {
            case DROP -> "check " + samples + " with a drop of water, or by its density";
            case TARE -> "weigh the vessel of " + samples + " empty, clean and dry, and enter its tare";
            case DRY_RESIDUE -> "dry an aliquot of " + samples + " to constant mass and weigh the residue";
            case ASSAY -> "assay " + samples + substances;
            case COMPOSITE ->
                "one assay of " + samples + substances + ": take "
                        + test.aliquotsMillilitres().stream()
                                .map(v -> numbers.fixed(v, 2))
                                .collect(Collectors.joining(" + "))
                        + SPACE + "mL, make up to " + numbers.significant(test.dilution(), 1)
                        + " times that with a solvent that takes all of them";
        };
    }

    private static String settles(NextTest test, ReadableNumbers numbers) {
        String grams = test.releasesGrams() > 0
                ? "up to " + numbers.most(test.releasesGrams()) + SPACE + "g can be there"
                : "nothing bounds what it holds";
        if (test.settles().isEmpty()) {
            return "needed before another test can tell; " + grams;
        }
        String layers =
                listed(test.settles()) + (test.settles().size() == 1 ? " has its" : " have their") + " evidence";
        if (test.kind() == NextTest.Kind.TARE) {
            return "then what was assayed in " + listed(test.settles()) + " counts; " + grams;
        }
        return (test.mustBeBelow().isPresent()
                        ? "below " + numbers.significant(test.mustBeBelow().getAsDouble(), 2) + SPACE + test.unit()
                                + (test.dilution() > 1
                                        ? " undiluted, "
                                                + numbers.significant(
                                                        test.mustBeBelow().getAsDouble() / test.dilution(), 2)
                                                + " as made up, "
                                        : " ")
                        : "")
                + layers + "; " + grams;
    }

    private static String listed(List<String> words) {
        return words.size() < 2
                ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }

    private static void ofClosures(
            RunReview run, ReadableNumbers numbers, List<NextMeasurement> all, List<NextMeasurement> unrecorded) {
        Set<String> told = new HashSet<>();
        Set<String> tested = run.nextTests().stream()
                .flatMap(t -> t.samples().stream())
                .map(label -> "layer " + label)
                .collect(Collectors.toSet());
        for (Closure closure : run.tally().closures()) {
            double missing = closure.unaccountedGrams();
            Optional<Closure> narrower = closure.narrower(run.tally().closures());
            for (Closure.Candidate candidate : closure.candidates()) {
                boolean workup = candidate.place().equals(Closure.workupOf(run.id()));
                boolean settles = missing > 0
                        && closure.verdict() != Closure.Verdict.CLOSES
                        && candidate.settlesGrams() >= WORTH_A_TEST * missing;
                if ((workup || settles) && !tested.contains(candidate.place()) && told.add(candidate.settledBy())) {
                    (workup ? unrecorded : all)
                            .add(new NextMeasurement(
                                    run.id(),
                                    candidate.settledBy(),
                                    narrower.map(other -> settles(other, candidate, closure.skeleton(), numbers))
                                            .orElseGet(() -> settles(closure, candidate, numbers)),
                                    0,
                                    Math.min(
                                            candidate.settlesGrams(),
                                            narrower.map(Closure::missingAtMostGrams)
                                                    .orElse(Math.max(0, missing)))));
                }
            }
        }
    }

    /** The same of a partner of which more is missing than the product can lack by another balance. */
    private static String settles(
            Closure narrower, Closure.Candidate candidate, String partner, ReadableNumbers numbers) {
        return "what the balance on " + partner + " lacks is perhaps " + candidate.place() + "; at most "
                + numbers.most(narrower.missingAtMostGrams()) + SPACE + "g " + narrower.unaccountedAs()
                + " is missing by that on " + narrower.skeleton();
    }

    /** How much is missing, as which product, and how much of it the test can find. */
    private static String settles(Closure closure, Closure.Candidate candidate, ReadableNumbers numbers) {
        double missing = closure.unaccountedGrams();
        return numbers.significant(Math.abs(missing), 2) + SPACE + "g " + closure.unaccountedAs()
                + " is missing: perhaps "
                + candidate.place()
                + (candidate.settlesGrams() >= missing
                        ? ""
                        : ", up to " + numbers.most(candidate.settlesGrams()) + SPACE + "g of it");
    }
}
