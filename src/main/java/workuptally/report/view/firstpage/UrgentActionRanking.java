package workuptally.report.view.firstpage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.RunNames;
import workuptally.report.view.wording.SubjectNames;
import workuptally.report.view.wording.Words;

/**
 * Finds what has to be done, joins what is alike and ranks it: what can hurt somebody first, then what stops a result, then what keeps a
 * layer, each by the product at stake.
 */
final class UrgentActionRanking {
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
    private static final String ON_HOLD = "the layers on hold of ";
    /** Characters for what must not have met in one run, so that it stands behind what to do and the run. */
    private static final int MOST_OF_MEETINGS = 68;

    /** The same in a planned run, where it stands behind a longer sentence. */
    private static final int MOST_OF_MEETINGS_PLANNED = 38;

    private final Review review;
    private final ReadableNumbers numbers;

    UrgentActionRanking(Review review, ReadableNumbers numbers) {
        this.review = review;
        this.numbers = numbers;
    }

    List<RankedAction> ranked() {
        List<RankedAction> all = new ArrayList<>();
        new ContainerActions(review).addTo(all);
        Map<FindingCode, List<UrgentItem>> alike = new LinkedHashMap<>();
        Map<Set<FindingCode>, List<UrgentItem>> planned = new LinkedHashMap<>();
        List<UrgentItem> product = new ArrayList<>();
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
                .sorted(Comparator.comparingInt(RankedAction::rank)
                        .thenComparing(
                                Comparator.comparingDouble(RankedAction::grams).reversed()))
                .toList();
    }

    private void ofRun(
            RunReview run,
            Map<Set<FindingCode>, List<UrgentItem>> planned,
            Map<FindingCode, List<UrgentItem>> alike,
            List<UrgentItem> product) {
        List<Finding> urgent = urgent(run);
        if (urgent.isEmpty()) {
            return;
        }
        Map<FindingCode, List<Finding>> byCode = new LinkedHashMap<>();
        urgent.forEach(
                f -> byCode.computeIfAbsent(f.code(), c -> new ArrayList<>()).add(f));
        if (run.tally().run().status() == Run.Status.PLANNED) {
            List<String> met = byCode.containsKey(FindingCode.MATERIALS_MUST_NOT_MEET)
                    ? MeetingWords.met(run, byCode.size() == 1 ? MOST_OF_MEETINGS : MOST_OF_MEETINGS_PLANNED)
                    : List.of();
            planned.computeIfAbsent(new LinkedHashSet<>(byCode.keySet()), c -> new ArrayList<>())
                    .add(new UrgentItem(run, urgent, met.isEmpty() ? SubjectNames.of(urgent) : met));
            return;
        }
        byCode.forEach((code, findings) -> {
            List<String> met =
                    code == FindingCode.MATERIALS_MUST_NOT_MEET ? MeetingWords.met(run, MOST_OF_MEETINGS) : List.of();
            UrgentItem item = new UrgentItem(run, findings, met.isEmpty() ? SubjectNames.of(findings) : met);
            if (code == FindingCode.LAYER_HOLDS_PRODUCT) {
                product.add(item);
            } else {
                alike.computeIfAbsent(code, c -> new ArrayList<>()).add(item);
            }
        });
    }

    /** Stops and holds of a run; before a stop its holds stand back, but for what can hurt somebody. */
    private static List<Finding> urgent(RunReview run) {
        boolean stop = run.has(Severity.STOP);
        return run.findings().stream()
                .filter(f -> f.severity() == Severity.STOP
                        || f.severity() == Severity.HOLD && (!stop || isHarmful(f.code())))
                .toList();
    }

    private static boolean isHarmful(FindingCode code) {
        return HARMFUL.contains(code);
    }

    /** Planned runs that ask for the same before they start, on one line. */
    private static RankedAction planned(Set<FindingCode> codes, List<UrgentItem> items) {
        String what = "Before starting: "
                + (isMeeting(codes, items)
                        ? "keep apart"
                        : codes.stream().map(UrgentActionRanking::words).collect(Collectors.joining("; ")));
        int room = UrgentAction.MOST_CHARACTERS - what.length() - 3;
        String about = items.size() == 1
                ? Words.listed(items.get(0).subjects(), ", ", Math.max(LEAST_ROOM, room), more -> more + " others")
                : RunNames.listed(UrgentItem.runs(items));
        String shortly = codes.stream().map(FindingCode::inWords).collect(Collectors.joining(", "));
        String text = about.isEmpty() ? what : what + (isMeeting(codes, items) ? " " + about : " (" + about + ")");
        if (items.size() > 1 && text.length() > UrgentAction.MOST_CHARACTERS) {
            text = "Before starting, " + shortly + ": " + about;
        }
        UrgentAction action = new UrgentAction(
                items.get(0).findings().get(0).severity(),
                where(items),
                UrgentItem.runs(items),
                text,
                OptionalDouble.empty());
        boolean deadly = items.stream()
                .anyMatch(item -> codes.stream().anyMatch(code -> MeetingWords.isDeadly(code, item.run())));
        return new RankedAction(
                deadly ? RankedAction.DEADLY : codes.stream().anyMatch(UrgentActionRanking::isHarmful) ? 0 : 2,
                action,
                shortly,
                Map.of());
    }

    /** One run of which nothing else is asked than to keep materials apart: these are then named in full. */
    private static boolean isMeeting(Set<FindingCode> codes, List<UrgentItem> items) {
        return items.size() == 1 && codes.equals(Set.of(FindingCode.MATERIALS_MUST_NOT_MEET));
    }

    private static String words(FindingCode code) {
        return ShortRemedies.beforeTheStart(code).orElseGet(() -> code.inWords());
    }

    /** One line for all layers on hold because of what they hold: where it is, and what a further extraction would bring back. */
    private RankedAction product(List<UrgentItem> items) {
        List<UrgentItem> sorted = items.stream()
                .sorted(Comparator.comparingDouble(UrgentItem::grams).reversed())
                .toList();
        double gain = 0;
        double best = 0;
        String worthIt = "";
        for (UrgentItem item : sorted) {
            for (String layer : item.subjects()) {
                double one = item.run().tally().evidence().bestGain(layer).stream()
                        .mapToDouble(r -> r.gain().grams())
                        .sum();
                gain += one;
                if (one > best) {
                    best = one;
                    worthIt = "one more extraction of " + item.run().id() + "\u00A0" + layer + " brings "
                            + numbers.significant(one, 2) + "\u00A0g";
                }
            }
        }
        String recover =
                gain > 0 ? "; one more extraction brings " + numbers.significant(gain, 2) + "\u00A0g" : remedy(sorted);
        String text = "Keep " + kept(items, sorted, UrgentAction.MOST_CHARACTERS - 5 - recover.length()) + recover;
        return ranked(3, text, FindingCode.LAYER_HOLDS_PRODUCT, sorted, worthIt);
    }

    /** What nobody measured is measured first, and not recovered on a guess. */
    private static String remedy(List<UrgentItem> items) {
        if (items.stream().allMatch(UrgentItem::isAssayed)) {
            return "; recover it, or say why not";
        }
        boolean none = items.stream().noneMatch(UrgentItem::isAssayed);
        boolean one = items.size() == 1 && items.get(0).subjects().size() == 1;
        return !none ? "; recover it, or assay what was not" : one ? "; assay it" : "; assay them";
    }

    /** The layers with the product in each run, the most first; of many runs their names, and with more than a line holds their number. */
    private String kept(List<UrgentItem> items, List<UrgentItem> sorted, int room) {
        if (sorted.size() == 1) {
            return Words.listed(sorted.get(0).subjects(), ", ", room, more -> more + " others");
        }
        List<String> parts = sorted.stream()
                .map(item -> item.run().id() + "\u00A0" + String.join(",\u00A0", item.subjects()) + "\u00A0"
                        + (item.isAssayed() ? numbers.significant(item.grams(), 2) + "\u00A0g" : "not assayed"))
                .toList();
        String all = String.join("; ", parts);
        if (all.length() <= room) {
            return all;
        }
        String each = UrgentItem.each(items);
        return each.length() <= room
                ? each
                : ON_HOLD + RunNames.listed(UrgentItem.runs(items), room - ON_HOLD.length());
    }

    private static RankedAction ranked(
            int rank, String text, FindingCode code, List<UrgentItem> sorted, String worthIt) {
        double grams = sorted.stream().mapToDouble(UrgentItem::grams).sum();
        Map<String, Double> byRun = new LinkedHashMap<>();
        sorted.forEach(item -> byRun.put(item.run().id(), item.grams()));
        return new RankedAction(
                rank,
                new UrgentAction(
                        sorted.get(0).findings().get(0).severity(),
                        where(sorted),
                        UrgentItem.runs(sorted),
                        text,
                        grams > 0 ? OptionalDouble.of(grams) : OptionalDouble.empty()),
                code.inWords(),
                worthIt,
                byRun);
    }

    private static String where(List<UrgentItem> items) {
        return items.size() == 1 ? items.get(0).run().id() : items.size() + " runs";
    }

    private RankedAction alike(List<UrgentItem> items) {
        List<UrgentItem> sorted = items.stream()
                .sorted(Comparator.comparingDouble(UrgentItem::grams).reversed())
                .toList();
        Finding first = sorted.get(0).findings().get(0);
        boolean stop = first.severity() == Severity.STOP;
        int rank = sorted.stream().anyMatch(item -> MeetingWords.isDeadly(first.code(), item.run()))
                ? RankedAction.DEADLY
                : stop ? isHarmful(first.code()) ? 0 : 2 : isHarmful(first.code()) ? 1 : 3;
        String frame = frame(first);
        String text = frame.replace("%s", about(items, room(frame), stop));
        if (items.size() > 1 && text.length() > UrgentAction.MOST_CHARACTERS) {
            String runs = RunNames.listed(UrgentItem.runs(items));
            text = sentence(first) + ": "
                    + (stop ? runs : RunNames.listed(UrgentItem.runs(items), UrgentAction.MOST_CHARACTERS - 24));
        }
        return ranked(rank, text, first.code(), sorted, "");
    }

    private static String frame(Finding finding) {
        return ShortRemedies.of(finding.code()).orElseGet(() -> sentence(finding) + ": %s");
    }

    private static int room(String frame) {
        return Math.max(LEAST_ROOM, UrgentAction.MOST_CHARACTERS - frame.length() + 2);
    }

    private static String about(List<UrgentItem> items, int room, boolean stop) {
        if (items.size() > 1) {
            String each = UrgentItem.each(items);
            return each.length() <= room ? each : RunNames.listed(UrgentItem.runs(items));
        }
        List<String> subjects = items.get(0).subjects();
        if (subjects.isEmpty()) {
            List<String> places = items.get(0).findings().stream()
                    .map(f -> f.place().inWords())
                    .distinct()
                    .toList();
            return Words.listed(places, ", ", room, more -> Words.count(more, "more cell"));
        }
        return Words.listed(subjects, ", ", stop ? Integer.MAX_VALUE : room, more -> more + " others");
    }

    /** A finding without a line of its own: its code as words. */
    private static String sentence(Finding finding) {
        String words = finding.code().inWords();
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** Stops and holds about the book itself: lines of tables that belong to no run. */
    private void book(List<RankedAction> all) {
        Set<String> runs = new LinkedHashSet<>();
        review.runs().forEach(r -> runs.add(r.id()));
        for (Finding finding : review.findings()) {
            boolean urgent = finding.severity() == Severity.STOP || finding.severity() == Severity.HOLD;
            boolean made = finding.code() == FindingCode.TRANSFER_IN_WRONG_STREAM;
            if (urgent
                    && (made
                            || !runs.contains(finding.run())
                                    && finding.subject().transfer().isEmpty())) {
                String where = made ? "containers" : finding.run().isEmpty() ? "the book" : finding.run();
                all.add(new RankedAction(
                        isHarmful(finding.code()) ? 0 : 2,
                        new UrgentAction(
                                finding.severity(),
                                where,
                                List.of(),
                                frame(finding)
                                        .replace(
                                                "%s",
                                                made
                                                        ? finding.subject().transfer() + " in "
                                                                + finding.subject()
                                                                        .container()
                                                        : finding.place().inWords()),
                                OptionalDouble.empty()),
                        finding.code().inWords(),
                        Map.of()));
            }
        }
    }
}
