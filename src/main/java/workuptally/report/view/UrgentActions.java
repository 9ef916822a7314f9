package workuptally.report.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.MostInLayers;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.tally.bench.Reextraction;
import workuptally.tally.layers.Meeting;

/**
 * Finds what has to be done, joins what is alike and ranks it: what can hurt somebody first, then what stops a result, then what keeps a
 * layer, each by the product at stake.
 */
final class UrgentActions {
    /** Codes whose stops are about people rather than about a figure. */
    private static final Set<FindingCode> HARMFUL = Set.of(
            FindingCode.WASH_TOO_SMALL,
            FindingCode.FUNNEL_OVERFULL,
            FindingCode.MATERIALS_MUST_NOT_MEET,
            FindingCode.GAS_EXPECTED,
            FindingCode.QUENCH_NOT_SHOWN,
            FindingCode.QUENCH_NOT_ENTERED,
            FindingCode.QUENCH_TEST_POSITIVE,
            FindingCode.REDUCTANT_SHORT,
            FindingCode.OXIDANT_QUENCH);

    private static final int LEAST_ROOM = 34;
    /** Characters for what must not have met in one run, so that it stands behind what to do and the run. */
    private static final int MOST_OF_MEETINGS = 68;

    /** The same in a planned run, where it stands behind a longer sentence. */
    private static final int MOST_OF_MEETINGS_PLANNED = 38;

    private final Review review;
    private final ReadableNumbers numbers;

    UrgentActions(Review review, ReadableNumbers numbers) {
        this.review = review;
        this.numbers = numbers;
    }

    List<UrgentAction> ranked() {
        List<Ranked> all = new ArrayList<>();
        new ContainerActions(review).addTo(all);
        Map<FindingCode, List<Item>> alike = new LinkedHashMap<>();
        Map<Set<FindingCode>, List<Item>> planned = new LinkedHashMap<>();
        List<Item> product = new ArrayList<>();
        for (RunReview run : review.runs()) {
            ofRun(run, planned, alike, product);
        }
        planned.forEach((codes, items) -> all.add(planned(codes, items)));
        if (!product.isEmpty()) {
            all.add(product(product));
        }
        alike.forEach((code, items) -> {
            if (code == FindingCode.MATERIALS_MUST_NOT_MEET) {
                // each run by itself: what can hurt somebody is not counted away behind another run
                items.forEach(item -> all.add(alike(List.of(item))));
            } else {
                all.add(alike(items));
            }
        });
        book(all);
        return all.stream()
                .sorted(Comparator.comparingInt(Ranked::rank)
                        .thenComparing(Comparator.comparingDouble(Ranked::grams).reversed()))
                .map(Ranked::action)
                .toList();
    }

    private void ofRun(
            RunReview run,
            Map<Set<FindingCode>, List<Item>> planned,
            Map<FindingCode, List<Item>> alike,
            List<Item> product) {
        List<Finding> urgent = urgent(run);
        if (urgent.isEmpty()) {
            return;
        }
        Map<FindingCode, List<Finding>> byCode = new LinkedHashMap<>();
        urgent.forEach(
                f -> byCode.computeIfAbsent(f.code(), c -> new ArrayList<>()).add(f));
        if (run.tally().run().status() == Run.Status.PLANNED) {
            List<String> met = byCode.containsKey(FindingCode.MATERIALS_MUST_NOT_MEET)
                    ? met(run, MOST_OF_MEETINGS_PLANNED)
                    : List.of();
            planned.computeIfAbsent(new LinkedHashSet<>(byCode.keySet()), c -> new ArrayList<>())
                    .add(new Item(run, urgent, met.isEmpty() ? Subjects.of(urgent) : met));
            return;
        }
        byCode.forEach((code, findings) -> {
            List<String> met = code == FindingCode.MATERIALS_MUST_NOT_MEET ? met(run, MOST_OF_MEETINGS) : List.of();
            Item item = new Item(run, findings, met.isEmpty() ? Subjects.of(findings) : met);
            if (code == FindingCode.LAYER_HOLDS_PRODUCT) {
                product.add(item);
            } else {
                alike.computeIfAbsent(code, c -> new ArrayList<>()).add(item);
            }
        });
    }

    /** Stops and holds of a run without those that follow from others of it; a stop never hides what can hurt somebody. */
    private static List<Finding> urgent(RunReview run) {
        boolean stop = run.has(Severity.STOP);
        Set<FindingCode> codes = new LinkedHashSet<>();
        run.findings().forEach(f -> codes.add(f.code()));
        return run.findings().stream()
                .filter(f -> f.severity() == Severity.STOP
                        || f.severity() == Severity.HOLD && (!stop || isHarmful(f.code())))
                .filter(f -> !(f.code() == FindingCode.LAYER_WAITS
                        && (codes.contains(FindingCode.RAG_NOT_ASSAYED)
                                || codes.contains(FindingCode.LAYER_HOLDS_PRODUCT))))
                .toList();
    }

    /** What must not have met, with what comes of it, the gravest first: {@code sodium azide + dichloromethane (explodes)}. */
    private static List<String> met(RunReview run, int most) {
        List<String> met = run.tally().evidence().meetings().list().stream()
                .filter(Meeting::holdsItsPortions)
                .sorted(Comparator.comparing(Meeting::isCritical).reversed())
                .map(meeting -> inShort(meeting, most))
                .distinct()
                .toList();
        return met.isEmpty() ? met : List.of(Words.listed(met, "; ", most, more -> more + " more"));
    }

    /** The two materials with the first words of what comes of it; without them where the names are long. */
    private static String inShort(Meeting meeting, int most) {
        String two = String.join(" + ", meeting.with());
        String danger = " (" + meeting.consequence().split("[;,]")[0] + ")";
        return two.length() + danger.length() <= most - 8 ? two + danger : two;
    }

    private static boolean isHarmful(FindingCode code) {
        return HARMFUL.contains(code);
    }

    /** Planned runs that ask for the same before they start, on one line. */
    private static Ranked planned(Set<FindingCode> codes, List<Item> items) {
        List<String> parts = codes.stream().map(UrgentActions::words).toList();
        String about = items.size() == 1
                ? " ("
                        + Words.listed(
                                items.get(0).subjects(),
                                ", ",
                                UrgentAction.MOST_CHARACTERS - 50,
                                more -> more + " more")
                        + ")"
                : "";
        String text = (items.size() == 1 ? "Before it starts: " : "Before they start: ")
                + Words.listed(parts, "; ", UrgentAction.MOST_CHARACTERS - 20 - about.length(), more -> more + " more")
                + about;
        UrgentAction action = new UrgentAction(
                items.get(0).findings().get(0).severity(), where(items), runs(items), text, OptionalDouble.empty());
        return new Ranked(codes.stream().anyMatch(UrgentActions::isHarmful) ? 0 : 2, 0, action);
    }

    private static String words(FindingCode code) {
        return ShortRemedies.beforeTheStart(code).orElseGet(() -> code.inWords());
    }

    /** One line for all layers on hold because of what they hold: where it is, and what a further extraction would bring back. */
    private Ranked product(List<Item> items) {
        List<Item> sorted = items.stream()
                .sorted(Comparator.comparingDouble(Item::grams).reversed())
                .toList();
        List<String> parts = new ArrayList<>();
        double gain = 0;
        double grams = 0;
        for (Item item : sorted) {
            parts.add((items.size() == 1 ? "" : item.run().id() + "\u00A0")
                    + String.join(", ", item.subjects())
                    + (items.size() == 1 ? "" : "\u00A0" + numbers.significant(item.grams(), 2) + "\u00A0g"));
            grams += item.grams();
            for (String layer : item.subjects()) {
                gain += item.run().tally().evidence().bestGain(layer).stream()
                        .mapToDouble(Reextraction::gainGrams)
                        .sum();
            }
        }
        String recover = gain > 0
                ? "; one more extraction brings " + numbers.significant(gain, 2) + "\u00A0g"
                : "; recover it, or say why not";
        String text = "Keep "
                + Words.listed(
                        parts,
                        ", ",
                        UrgentAction.MOST_CHARACTERS - 5 - recover.length(),
                        more -> Words.count(more, "more run"))
                + recover;
        return new Ranked(
                3, grams, new UrgentAction(Severity.HOLD, where(sorted), runs(sorted), text, OptionalDouble.of(grams)));
    }

    private static String where(List<Item> items) {
        return items.size() == 1 ? items.get(0).run().id() : items.size() + " runs";
    }

    private static List<String> runs(List<Item> items) {
        return items.stream().map(i -> i.run().id()).toList();
    }

    private Ranked alike(List<Item> items) {
        List<Item> sorted = items.stream()
                .sorted(Comparator.comparingDouble(Item::grams).reversed())
                .toList();
        Finding first = sorted.get(0).findings().get(0);
        List<String> about = sorted.stream()
                .map(i -> (items.size() == 1 ? "" : i.run().id() + "\u00A0") + String.join(", ", i.subjects()))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .toList();
        double grams = sorted.stream().mapToDouble(Item::grams).sum();
        int rank =
                first.severity() == Severity.STOP ? isHarmful(first.code()) ? 0 : 2 : isHarmful(first.code()) ? 1 : 3;
        return new Ranked(
                rank,
                grams,
                new UrgentAction(
                        first.severity(),
                        where(sorted),
                        runs(sorted),
                        text(first, about),
                        grams > 0 ? OptionalDouble.of(grams) : OptionalDouble.empty()));
    }

    private static String text(Finding finding, List<String> about) {
        String frame = ShortRemedies.of(finding.code()).orElseGet(() -> sentence(finding) + ": %s");
        int room = Math.max(LEAST_ROOM, UrgentAction.MOST_CHARACTERS - frame.length() + 2);
        String subject =
                about.isEmpty() ? finding.place().inWords() : Words.listed(about, ", ", room, more -> more + " more");
        return frame.replace("%s", subject);
    }

    /** A finding without a line of its own: its code as words. */
    private static String sentence(Finding finding) {
        String words = finding.code().inWords();
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** Stops and holds about the book itself: lines of tables that belong to no run. */
    private void book(List<Ranked> all) {
        Set<String> runs = new LinkedHashSet<>();
        review.runs().forEach(r -> runs.add(r.id()));
        for (Finding finding : review.findings()) {
            boolean urgent = finding.severity() == Severity.STOP || finding.severity() == Severity.HOLD;
            if (urgent
                    && !runs.contains(finding.run())
                    && finding.subject().transfer().isEmpty()) {
                String where = finding.run().isEmpty() ? "the book" : finding.run();
                all.add(new Ranked(
                        isHarmful(finding.code()) ? 0 : 2,
                        0,
                        new UrgentAction(
                                finding.severity(),
                                where,
                                List.of(),
                                text(finding, List.of(finding.place().inWords())),
                                OptionalDouble.empty())));
            }
        }
    }

    /**
     * Findings of one code in one run.
     *
     * @param run run
     * @param findings findings
     * @param subjects what they are about
     */
    private record Item(RunReview run, List<Finding> findings, List<String> subjects) {
        /** With a stop the whole of the product is at stake, else the most that the layers may hold, g. */
        double grams() {
            return run.has(Severity.STOP) ? theory() : most();
        }

        private double theory() {
            return run.tally().theory().stream()
                    .flatMap(t -> t.products().stream())
                    .filter(p -> p.product().wanted())
                    .mapToDouble(p -> p.massGrams().value())
                    .max()
                    .orElse(0);
        }

        private double most() {
            List<String> layers = run.decisions().stream()
                    .map(LayerDecision::layer)
                    .filter(subjects::contains)
                    .toList();
            List<String> wanted = run.tally().run().products().stream()
                    .filter(Product::wanted)
                    .map(Product::name)
                    .toList();
            return MostInLayers.of(run.tally(), layers, wanted).atStakeGrams();
        }
    }

    /**
     * An action with what it is ranked by.
     *
     * @param rank 0 harm, 1 possible harm, 2 a stop, 3 a hold
     * @param grams product at stake, g
     * @param action the action
     */
    record Ranked(int rank, double grams, UrgentAction action) {}
}
