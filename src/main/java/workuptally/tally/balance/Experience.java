package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.chemistry.Statistics;
import workuptally.measure.NormalPlot;
import workuptally.measure.ToleranceFactor;
import workuptally.model.Book;
import workuptally.model.EarlierContent;
import workuptally.model.Field;
import workuptally.model.Field.Qualifier;
import workuptally.model.HistoryPoint;
import workuptally.model.Limit;
import workuptally.model.Run;

/**
 * What layers of a label held in earlier batches of a series, as the one-sided upper tolerance limit x̄ + k·s that covers 95 % of batches
 * with 95 % confidence (ISO 16269-6:2014, normal population with unknown mean and standard deviation). From five batches on, and never
 * below the largest of them.
 *
 * <p>A content below a limit counts as nothing or as the limit, whichever makes the bound higher. A batch that stands both in History and in
 * an earlier review counts once.
 */
public final class Experience {
    /** Fewest batches that make a bound. */
    public static final int LEAST_BATCHES = 5;

    private static final double SHARE = 0.95;
    private static final double CONFIDENCE = 0.95;
    private static final double SAME_PERCENT = 0.005;

    private final Map<String, List<EarlierContent>> byLayer = new LinkedHashMap<>();
    private final boolean counts;

    private Experience(List<EarlierContent> earlier, boolean counts) {
        earlier.forEach(e -> byLayer.computeIfAbsent(key(e.series(), e.layer()), k -> new ArrayList<>())
                .add(e));
        this.counts = counts;
    }

    /** Nobody knows of earlier batches. */
    public static Experience none() {
        return new Experience(List.of(), false);
    }

    /** Of the History of a book and the earlier reviews it was given; batches that the book itself holds are not earlier ones. */
    public static Experience of(Book book) {
        Set<String> own = new HashSet<>();
        book.runs().forEach(run -> own.add(loose(run.id())));
        List<EarlierContent> all = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (EarlierContent earlier : book.earlier()) {
            String batch = loose(earlier.run()) + "|" + earlier.date() + "|" + key(earlier.series(), earlier.layer())
                    + "|" + loose(earlier.substance());
            if (!own.contains(loose(earlier.run())) && seen.add(batch)) {
                all.add(earlier);
            }
        }
        List<EarlierContent> reviewed = List.copyOf(all);
        for (HistoryPoint point : book.history()) {
            earlier(point)
                    .filter(e -> reviewed.stream().noneMatch(r -> isSameBatch(r, e)))
                    .ifPresent(all::add);
        }
        return new Experience(all, book.limits().isYes(Limit.EXPERIENCE_COUNTS));
    }

    private static boolean isSameBatch(EarlierContent reviewed, EarlierContent noted) {
        return key(reviewed.series(), reviewed.layer()).equals(key(noted.series(), noted.layer()))
                && noted.date().isPresent()
                && noted.date().equals(reviewed.date())
                && Math.abs(noted.percentOfTheory() - reviewed.percentOfTheory()) <= SAME_PERCENT;
    }

    private static Optional<EarlierContent> earlier(HistoryPoint point) {
        if (point.layer().isBlank()) {
            return Optional.empty();
        }
        return point.contentPercent()
                .entered()
                .filter(e -> e.qualifier() != Qualifier.ABOVE && e.qualifier() != Qualifier.NOT_DETECTED)
                .map(Field.Entered::value)
                .map(value -> new EarlierContent(
                        point.series(),
                        point.layer(),
                        "",
                        "",
                        point.date(),
                        value,
                        point.contentPercent().entered().orElseThrow().qualifier() == Qualifier.BELOW));
    }

    /**
     * What a layer of a run is expected to hold of a wanted product at most.
     *
     * @param label label of the layer
     * @param product name of the product
     */
    public Optional<Bound> bound(Run run, String label, String product) {
        boolean only = run.products().stream().filter(p -> p.wanted()).count() == 1;
        List<EarlierContent> earlier = byLayer.getOrDefault(key(run.head().series(), label), List.of()).stream()
                .filter(e ->
                        e.substance().isEmpty() ? only : loose(e.substance()).equals(loose(product)))
                .toList();
        if (run.head().series().isBlank() || earlier.size() < LEAST_BATCHES) {
            return Optional.empty();
        }
        List<Double> values =
                earlier.stream().map(EarlierContent::percentOfTheory).toList();
        double largest = Collections.max(values);
        return Optional.of(new Bound(
                label,
                product,
                Math.max(largest, toleranceLimit(earlier)),
                earlier.size(),
                NormalPlot.isDoubtful(values),
                counts));
    }

    /** x̄ + k·s, with those below a limit at 0 or at it; the limit is convex in each of them, so that it is largest at one of the ends. */
    private static double toleranceLimit(List<EarlierContent> earlier) {
        List<Double> measured = earlier.stream()
                .filter(e -> !e.below())
                .map(EarlierContent::percentOfTheory)
                .toList();
        List<Double> limits = earlier.stream()
                .filter(EarlierContent::below)
                .map(EarlierContent::percentOfTheory)
                .sorted(Collections.reverseOrder())
                .toList();
        double factor = ToleranceFactor.oneSided(earlier.size(), SHARE, CONFIDENCE);
        double most = 0;
        for (int atLimit = 0; atLimit <= limits.size(); atLimit++) {
            List<Double> values = new ArrayList<>(measured);
            values.addAll(limits.subList(0, atLimit));
            values.addAll(Collections.nCopies(limits.size() - atLimit, 0.0));
            most = Math.max(most, Statistics.mean(values) + factor * Statistics.standardDeviation(values));
        }
        return most;
    }

    private static String key(String series, String layer) {
        return loose(series) + "|" + loose(layer);
    }

    private static String loose(String text) {
        return text.replace(" ", "").toLowerCase(Locale.ROOT);
    }

    /**
     * A bound from earlier batches.
     *
     * @param layer label of the layer
     * @param product product
     * @param percentOfTheory upper tolerance limit, % of theory
     * @param batches number of earlier batches
     * @param normalityDoubted true where these do not look like a normal population, so that the limit is a rough one
     * @param counts true where the laboratory takes it for evidence
     */
    public record Bound(
            String layer,
            String product,
            double percentOfTheory,
            int batches,
            boolean normalityDoubted,
            boolean counts) {
        /** {@code 6 earlier batches: at most 0.84 % of theory}, and what there is to doubt. */
        public String inWords() {
            return String.format(
                    Locale.ROOT,
                    "%d earlier batches: at most %.2g %% of theory (95 %% of batches, 95 %% confidence%s)%s",
                    batches,
                    roundedUp(percentOfTheory),
                    normalityDoubted ? "; they do not look normally distributed" : "",
                    counts ? "" : ", which does not count here");
        }

        private static double roundedUp(double percent) {
            return percent <= 0
                    ? 0
                    : new java.math.BigDecimal(percent)
                            .round(new java.math.MathContext(2, java.math.RoundingMode.UP))
                            .doubleValue();
        }
    }
}
