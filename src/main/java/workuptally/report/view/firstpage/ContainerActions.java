package workuptally.report.view.firstpage;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.view.lines.ProposalLine;

/** What has to be done about waste containers: transfers not to be made or to be kept back, and containers that are due. */
final class ContainerActions {
    /** Characters for transfers of one kind. */
    private static final int MOST_OF_IDS = 24;

    private static final Map<FindingCode, String> BECAUSE = Map.of(
            FindingCode.PROPOSAL_WRONG_STREAM, "another stream",
            FindingCode.CONTAINER_OVERFULL, "too full",
            FindingCode.CONTAINER_UNKNOWN, "no such container");

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
        Severity gravest = stopped.isEmpty() ? Severity.HOLD : Severity.STOP;
        int rank = rank(stopped);
        String dueToday = "; " + listed(due, false) + " due today";
        String together = transfers(stopped, held, UrgentAction.MOST_CHARACTERS - dueToday.length()) + dueToday;
        if (stopped.size() + held.size() > 0 && !due.isEmpty() && together.length() <= UrgentAction.MOST_CHARACTERS) {
            add(all, rank, gravest, "waste", together);
            return;
        }
        String transfers = transfers(stopped, held, UrgentAction.MOST_CHARACTERS);
        if (!transfers.isEmpty()) {
            add(all, rank, gravest, "transfers", transfers);
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
            if (finding.code() == FindingCode.TRANSFER_IN_WRONG_STREAM) {
                continue; // it is made: nothing is left to keep back
            }
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

    /** Deadly where a pair can kill, harm where it can hurt; another stream or a full container is asked about beside them. */
    private int rank(Set<String> stopped) {
        List<ProposalFit.Clash> clashes =
                stopped.stream().flatMap(t -> clashes(t).stream()).toList();
        return clashes.stream().anyMatch(ProposalFit.Clash::isCritical)
                ? RankedAction.DEADLY
                : clashes.isEmpty() ? 1 : 0;
    }

    /** What a proposal would bring together, the gravest first. */
    private List<ProposalFit.Clash> clashes(String transfer) {
        return review.containers().stream()
                .flatMap(c -> c.proposals().stream())
                .filter(fit -> fit.addition().transfer().id().equals(transfer))
                .flatMap(fit -> fit.clashes().stream())
                .filter(clash -> clash.isHazardous() && clash.shownPresent())
                .sorted(Comparator.comparing(ProposalFit.Clash::isCritical).reversed())
                .toList();
    }

    /** Why a transfer is not to be made, in a word or two. */
    private String because(String transfer) {
        return clashes(transfer).stream()
                .map(ProposalFit.Clash::dangerInAWord)
                .findFirst()
                .orElseGet(() -> review.findings().stream()
                        .filter(f -> f.subject().transfer().equals(transfer) && f.severity() == Severity.STOP)
                        .map(f -> BECAUSE.getOrDefault(f.code(), f.code().inWords()))
                        .findFirst()
                        .orElse(""));
    }

    private String transfers(Set<String> stopped, Set<String> held, int most) {
        if (stopped.isEmpty()) {
            return held.isEmpty() ? "" : "Keep back " + ids(held, held.size() == 1 ? "transfer " : "transfers ", all());
        }
        String keep = held.isEmpty() ? "" : "; keep back " + ids(held, "", " others");
        List<String> reasons = stopped.stream()
                .sorted(Comparator.comparing(t -> clashes(t).stream().noneMatch(ProposalFit.Clash::isCritical)))
                .map(t -> t + " (" + because(t) + ")")
                .toList();
        String each = "Do not make " + String.join(", ", reasons);
        if (each.length() + keep.length() <= most) {
            return each + keep;
        }
        String few = held.isEmpty() ? "" : "; keep back " + held.size();
        if (each.length() + few.length() <= most) {
            return each + few;
        }
        return "Do not make " + ids(stopped, "", all()) + " (first " + reasons.get(0) + ")" + few;
    }

    private String all() {
        return " of the " + ProposalLine.of(review).size() + " transfers";
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
