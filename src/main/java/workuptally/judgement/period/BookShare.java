package workuptally.judgement.period;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.RunShare;
import workuptally.judgement.containers.ContainerReview;
import workuptally.model.InputFile;
import workuptally.model.Limit;
import workuptally.tally.ContainerTally.Age;

/**
 * What one book adds to a period.
 *
 * @param book name of the book
 * @param files its files with their hashes
 * @param coverageFactor k in force in it
 * @param runs shares of its runs, in order of the book
 * @param containers its containers as it leaves them
 */
public record BookShare(
        String book,
        List<InputFile> files,
        double coverageFactor,
        List<RunShare> runs,
        List<ContainerShare> containers) {
    /** Copies the lists. */
    public BookShare {
        files = List.copyOf(files);
        runs = List.copyOf(runs);
        containers = List.copyOf(containers);
    }

    /** The share of a reviewed book. */
    public static BookShare of(Review review) {
        List<ContainerShare> containers = new ArrayList<>();
        for (ContainerReview container : review.containers()) {
            containers.add(ContainerShare.of(review, container));
        }
        return new BookShare(
                review.book().name(),
                review.book().files(),
                review.book().limits().value(Limit.COVERAGE_FACTOR),
                review.runs().stream()
                        .map(RunReview::tally)
                        .map(t -> RunShare.of(t, review.book().limits()))
                        .toList(),
                containers);
    }

    /**
     * A container as a book leaves it.
     *
     * @param container id
     * @param wasteStream stream as named by the lab
     * @param book the book that says so
     * @param asOf day for which the book speaks, if it sets one
     * @param massGrams contents with the transfers done, g
     * @param litres volume, L
     * @param fillPercent fill, %
     * @param addedGrams transfers done, g
     * @param proposedGrams transfers proposed that fit, g
     * @param daysOpen days open on that day
     */
    public record ContainerShare(
            String container,
            String wasteStream,
            String book,
            Optional<LocalDate> asOf,
            double massGrams,
            double litres,
            OptionalDouble fillPercent,
            double addedGrams,
            double proposedGrams,
            Optional<Long> daysOpen) {
        static ContainerShare of(Review review, ContainerReview container) {
            return new ContainerShare(
                    container.id(),
                    container.tally().container().wasteStream(),
                    review.book().name(),
                    review.book().limits().day(Limit.AS_OF),
                    container.tally().now().totalGrams(),
                    container.tally().now().litres(),
                    container.tally().now().fillPercent(),
                    container.tally().done().stream()
                            .mapToDouble(a -> a.totalGrams())
                            .sum(),
                    container.afterProposals().totalGrams()
                            - container.tally().now().totalGrams(),
                    container.tally().age().map(Age::daysOpen));
        }
    }
}
