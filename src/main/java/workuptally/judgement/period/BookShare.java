package workuptally.judgement.period;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import workuptally.judgement.BasisRow;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.totals.RunShare;
import workuptally.model.Container;
import workuptally.model.Field;
import workuptally.model.InputFile;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.tally.containers.ContainerTally.Age;
import workuptally.tally.series.SeriesTally.Together;

/**
 * What one book adds to a period. It names no person.
 *
 * @param book name of the book, that tells it from the other books of the period
 * @param places group and site that the book names, as far as it does
 * @param files its files with their hashes
 * @param coverageFactor k in force in it
 * @param runs shares of its runs, in order of the book
 * @param containers its containers as it leaves them
 * @param classes its preparations of which it holds many runs
 * @param corrections corrections of its record
 * @param limits limits in force in it
 * @param basis reference values and equations that its figures rest on
 */
public record BookShare(
        String book,
        List<String> places,
        List<InputFile> files,
        double coverageFactor,
        List<RunShare> runs,
        List<ContainerShare> containers,
        List<ClassShare> classes,
        List<CorrectionShare> corrections,
        List<LimitShare> limits,
        List<BasisRow> basis) {
    /** Copies the lists. */
    public BookShare {
        places = List.copyOf(places);
        files = List.copyOf(files);
        runs = List.copyOf(runs);
        containers = List.copyOf(containers);
        classes = List.copyOf(classes);
        corrections = List.copyOf(corrections);
        limits = List.copyOf(limits);
        basis = List.copyOf(basis);
    }

    /**
     * The share of a reviewed book.
     *
     * @param name name that tells it from the other books, for example its path inside the folder
     */
    public static BookShare of(String name, Review review) {
        Limits limits = review.book().limits();
        List<ClassShare> classes = new ArrayList<>();
        review.series()
                .forEach(s -> s.together().ifPresent(class_ -> classes.add(new ClassShare(name, s.series(), class_))));
        return new BookShare(
                name,
                Stream.of(Limit.GROUP, Limit.SITE)
                        .map(limits::text)
                        .filter(text -> !text.isBlank())
                        .toList(),
                review.book().files(),
                limits.value(Limit.COVERAGE_FACTOR),
                review.runs().stream()
                        .map(RunReview::tally)
                        .map(t -> RunShare.of(t, limits))
                        .toList(),
                review.containers().stream()
                        .map(c -> ContainerShare.of(name, limits, c))
                        .toList(),
                classes,
                review.book().corrections().stream()
                        .map(c ->
                                new CorrectionShare(name, c.when(), c.record(), c.oldValue(), c.newValue(), c.reason()))
                        .toList(),
                LimitShare.list(limits),
                review.basis().stream()
                        .filter(row -> row.kind() != BasisRow.Kind.INPUT
                                && row.kind() != BasisRow.Kind.LIMIT
                                && row.kind() != BasisRow.Kind.ASSUMPTION)
                        .toList());
    }

    /** Hashes of the files, joined by blanks. */
    public String hashes() {
        return String.join(" ", files.stream().map(InputFile::sha256).toList());
    }

    /**
     * Many runs of one preparation in a book.
     *
     * @param book the book
     * @param series the preparation
     * @param together its figures
     */
    public record ClassShare(String book, String series, Together together) {}

    /**
     * A correction of a record. Who made it stands in the book.
     *
     * @param book the book
     * @param when time as typed
     * @param record what was corrected
     * @param oldValue value before, as typed
     * @param newValue value after, as typed
     * @param reason why
     */
    public record CorrectionShare(
            String book, String when, String record, String oldValue, String newValue, String reason) {}

    /**
     * A limit in force in a book. Texts that name persons are no part of it.
     *
     * @param limit which
     * @param value its value in its unit; empty for a text
     * @param text its text; empty for a number
     * @param origin where it comes from
     * @param set true where the book, or whoever asked for the review, sets it
     */
    public record LimitShare(Limit limit, OptionalDouble value, String text, String origin, boolean set) {
        private static List<LimitShare> list(Limits limits) {
            List<LimitShare> list = new ArrayList<>();
            for (Limit limit : Limit.values()) {
                if (!limit.isText() && limits.optional(limit).isPresent()) {
                    list.add(new LimitShare(
                            limit, limits.optional(limit), "", limits.origin(limit), limits.isSet(limit)));
                }
            }
            for (Limit rule : Arrays.asList(Limit.LOCAL_RULE_WASTE, Limit.LOCAL_RULE_LAYERS)) {
                if (!limits.text(rule).isBlank()) {
                    list.add(new LimitShare(
                            rule, OptionalDouble.empty(), limits.text(rule), limits.origin(rule), limits.isSet(rule)));
                }
            }
            return list;
        }
    }

    /**
     * A container as a book leaves it.
     *
     * @param container id
     * @param wasteStream stream as named by the lab
     * @param location where it stands
     * @param book the book that says so
     * @param asOf day for which the book speaks, if it sets one
     * @param fill how full it is with the transfers done
     * @param addedGrams transfers done, g
     * @param proposedGrams transfers proposed that fit, g
     * @param open since when and how long it may be
     */
    public record ContainerShare(
            String container,
            String wasteStream,
            String location,
            String book,
            Optional<LocalDate> asOf,
            Fill fill,
            double addedGrams,
            double proposedGrams,
            Open open) {
        static ContainerShare of(String book, Limits limits, ContainerReview reviewed) {
            Container entry = reviewed.tally().container();
            Optional<Age> age = reviewed.tally().age();
            double now = reviewed.tally().now().totalGrams();
            return new ContainerShare(
                    entry.id(),
                    entry.wasteStream(),
                    entry.location(),
                    book,
                    limits.day(Limit.AS_OF),
                    new Fill(
                            entry.capacityLitres()
                                    .entered()
                                    .map(Field.Entered::value)
                                    .map(OptionalDouble::of)
                                    .orElse(OptionalDouble.empty()),
                            now,
                            reviewed.tally().now().litres(),
                            reviewed.tally().now().fillPercent(),
                            limits.value(Limit.CONTAINER_FILL)),
                    reviewed.tally().done().stream()
                            .mapToDouble(a -> a.totalGrams())
                            .sum(),
                    reviewed.afterProposals().totalGrams() - now,
                    new Open(
                            entry.opened(),
                            age.map(Age::daysOpen),
                            age.flatMap(Age::dueOn),
                            age.filter(Age::dueNow).isPresent()));
        }

        /** True where it was open longer than the local limit on the day for which the book speaks. */
        public boolean overdue() {
            return asOf.isPresent() && open.dueOn().filter(asOf.get()::isAfter).isPresent();
        }
    }

    /**
     * How full a container is.
     *
     * @param capacityLitres capacity, L
     * @param massGrams contents, g
     * @param litres volume, L
     * @param percent fill, %
     * @param limitPercent largest fill in force in the book, %
     */
    public record Fill(
            OptionalDouble capacityLitres,
            double massGrams,
            double litres,
            OptionalDouble percent,
            double limitPercent) {
        /** True where it holds more than the limit in force. */
        public boolean isAboveLimit() {
            return percent.isPresent() && percent.getAsDouble() > limitPercent;
        }
    }

    /**
     * How long a container is open.
     *
     * @param since day of the first addition
     * @param days days open on the day for which the book speaks
     * @param dueOn last day of the local limit; empty where the book sets none
     * @param dueNow whether no working day was left before that day
     */
    public record Open(Optional<LocalDate> since, Optional<Long> days, Optional<LocalDate> dueOn, boolean dueNow) {}
}
