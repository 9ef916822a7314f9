package workuptally.report.view.firstpage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.view.wording.Words;

/** Stops and holds about the book itself: lines of tables that belong to no run. Those of one kind in one table are one action. */
final class BookActions {
    private final Review review;

    BookActions(Review review) {
        this.review = review;
    }

    void addTo(List<RankedAction> all) {
        Set<String> runs = new LinkedHashSet<>();
        review.runs().forEach(r -> runs.add(r.id()));
        Map<Kind, List<Finding>> alike = new LinkedHashMap<>();
        for (Finding finding : review.findings()) {
            boolean urgent = finding.severity() == Severity.STOP || finding.severity() == Severity.HOLD;
            boolean ofBook = !runs.contains(finding.run())
                    && finding.subject().transfer().isEmpty();
            if (urgent && (ofBook || isMade(finding))) {
                alike.computeIfAbsent(Kind.of(finding), kind -> new ArrayList<>())
                        .add(finding);
            }
        }
        alike.values().forEach(findings -> all.add(action(findings)));
    }

    private static RankedAction action(List<Finding> alike) {
        Finding first = alike.get(0);
        String frame = UrgentActionRanking.frame(first);
        String container = first.subject().container();
        String where = isMade(first)
                ? "containers"
                : !first.run().isEmpty() ? first.run() : container.isEmpty() ? "the book" : container;
        List<String> places =
                alike.stream().map(f -> f.place().inWords()).distinct().toList();
        int room = Math.max(UrgentActionRanking.room(frame), places.get(0).length());
        String named = isMade(first)
                ? alike.stream()
                        .map(f -> f.subject().transfer() + " in " + f.subject().container())
                        .collect(Collectors.joining(", "))
                : container.isEmpty()
                        ? Words.listed(places, "; ", room, more -> Words.count(more, "more cell"))
                        : container;
        boolean harmful =
                UrgentActionRanking.isHarmful(first.code()) || first.code() == FindingCode.CONTAINER_INCOMPATIBLE;
        return new RankedAction(
                harmful ? 0 : first.severity() == Severity.STOP ? 2 : 3,
                new UrgentAction(
                        first.severity(), where, List.of(), frame.replace("%s", named), OptionalDouble.empty()),
                first.code().inWords() + (alike.size() == 1 ? "" : " (" + alike.size() + ")"),
                Map.of());
    }

    /** A transfer made into another stream is about the container it went into, also where it came from a run. */
    private static boolean isMade(Finding finding) {
        return finding.code() == FindingCode.TRANSFER_IN_WRONG_STREAM;
    }

    /** What makes findings one action. */
    private record Kind(FindingCode code, Severity severity, String run, String container, String file, String sheet) {
        static Kind of(Finding finding) {
            return new Kind(
                    finding.code(),
                    finding.severity(),
                    finding.run(),
                    finding.subject().container(),
                    finding.place().file(),
                    finding.place().sheet());
        }
    }
}
