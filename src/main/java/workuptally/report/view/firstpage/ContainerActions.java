package workuptally.report.view.firstpage;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.lines.ProposalLine;

/** What has to be done about waste containers: transfers not to be made or to be kept back, and containers that are due. */
final class ContainerActions {
    /** Characters for transfers of one kind. */
    private static final int MOST_OF_IDS = 24;

    private final Review review;

    ContainerActions(Review review) {
        this.review = review;
    }

    /** Adds them with their ranks; on one line, where that holds both, since both are for the same people. */
    void addTo(List<RankedAction> all) {
        Set<String> stopped = new LinkedHashSet<>();
        Set<String> held = new LinkedHashSet<>();
        sort(stopped, held);
        List<ContainerReview> due = due();
        String transfers = transfers(stopped, held);
        String together = transfers + "; have " + listed(due, false) + " collected today";
        Severity gravest = stopped.isEmpty() ? Severity.HOLD : Severity.STOP;
        if (!transfers.isEmpty() && !due.isEmpty() && together.length() <= UrgentAction.MOST_CHARACTERS) {
            add(all, stopped.isEmpty() ? 1 : 0, gravest, "waste", together);
            return;
        }
        if (!transfers.isEmpty()) {
            add(all, stopped.isEmpty() ? 1 : 0, gravest, "transfers", transfers);
        }
        if (!due.isEmpty()) {
            // the last working day is the only one on which something can be done about them
            add(all, 1, Severity.CHECK, "containers", "Have collected today: " + listed(due, true));
        }
    }

    private static void add(List<RankedAction> all, int rank, Severity severity, String where, String text) {
        UrgentAction action = new UrgentAction(severity, where, List.of(), text, OptionalDouble.empty());
        all.add(new RankedAction(rank, action, where, Map.of()));
    }

    /** Proposed transfers that should not be made, and those that should wait, in the order in which they were proposed. */
    private void sort(Set<String> stopped, Set<String> held) {
        Set<String> stops = new LinkedHashSet<>();
        Set<String> holds = new LinkedHashSet<>();
        for (Finding finding : review.findings()) {
            String transfer = finding.subject().transfer();
            if (!transfer.isEmpty() && finding.severity() == Severity.STOP) {
                stops.add(transfer);
            } else if (!transfer.isEmpty() && finding.severity() == Severity.HOLD) {
                holds.add(transfer);
            }
        }
        Set<String> order = new LinkedHashSet<>();
        review.book().transfers().forEach(t -> order.add(t.id()));
        order.addAll(stops);
        order.addAll(holds);
        order.stream().filter(stops::contains).forEach(stopped::add);
        order.stream().filter(t -> holds.contains(t) && !stops.contains(t)).forEach(held::add);
    }

    private String transfers(Set<String> stopped, Set<String> held) {
        String of = " of the " + ProposalLine.of(review).size() + " transfers";
        if (stopped.isEmpty()) {
            return held.isEmpty() ? "" : "Keep back " + ids(held, "transfers ", of);
        }
        String none = "Do not make " + ids(stopped, "transfers ", of);
        return held.isEmpty() ? none : none + "; keep back " + ids(held, "", " others");
    }

    /** The transfers by name, or how many of all where they are more than a line holds: naming two of seventeen would read as two. */
    private static String ids(Set<String> ids, String before, String others) {
        String all = String.join(", ", ids);
        return all.length() <= MOST_OF_IDS ? before + all : ids.size() + others;
    }

    /** Containers that no working day is left for. */
    private List<ContainerReview> due() {
        return review.containers().stream()
                .filter(c ->
                        c.tally().age().filter(a -> a.overdue() || a.dueNow()).isPresent())
                .toList();
    }

    private static String listed(List<ContainerReview> due, boolean why) {
        return due.stream()
                .map(c -> c.id()
                        + (why ? c.tally().age().orElseThrow().overdue() ? " (overdue)" : " (last working day)" : ""))
                .collect(Collectors.joining(", "));
    }
}
