package workuptally.report.view;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.UrgentActions.Ranked;

/** What has to be done about waste containers: transfers not to be made or to be kept back, and containers that are due. */
final class ContainerActions {
    /** Characters for transfers of one kind. */
    private static final int MOST_OF_IDS = 18;

    private final Review review;

    ContainerActions(Review review) {
        this.review = review;
    }

    /** Adds them with their ranks. */
    void addTo(List<Ranked> all) {
        transfers(all);
        containers(all);
    }

    /** Proposed transfers that should not be made or should wait, on one line. */
    private void transfers(List<Ranked> all) {
        Set<String> stopped = new LinkedHashSet<>();
        Set<String> held = new LinkedHashSet<>();
        for (Finding finding : review.findings()) {
            String transfer = finding.subject().transfer();
            if (!transfer.isEmpty() && finding.severity() == Severity.STOP) {
                stopped.add(transfer);
            } else if (!transfer.isEmpty() && finding.severity() == Severity.HOLD && !stopped.contains(transfer)) {
                held.add(transfer);
            }
        }
        if (stopped.isEmpty() && held.isEmpty()) {
            return;
        }
        String of = " of the " + ProposalLine.of(review).size() + " transfers";
        String none = stopped.isEmpty() ? "" : "Do not make " + ids(stopped, of);
        String wait = held.isEmpty()
                ? ""
                : (stopped.isEmpty() ? "Keep back " : "; keep back ") + ids(held, stopped.isEmpty() ? of : " others");
        all.add(new Ranked(
                stopped.isEmpty() ? 1 : 0,
                Double.MAX_VALUE,
                new UrgentAction(
                        stopped.isEmpty() ? Severity.HOLD : Severity.STOP,
                        "transfers",
                        List.of(),
                        none + wait + ": see the account for safety staff",
                        OptionalDouble.empty())));
    }

    /** The transfers by name, or how many of all where they are more than a line holds: naming two of seventeen would read as two. */
    private static String ids(Set<String> ids, String others) {
        String all = String.join(", ", ids);
        return all.length() <= MOST_OF_IDS ? all : ids.size() + others;
    }

    /** Containers that no working day is left for, on one line: it is the only day on which something can be done about them. */
    private void containers(List<Ranked> all) {
        List<String> due = new ArrayList<>();
        for (ContainerReview container : review.containers()) {
            container
                    .tally()
                    .age()
                    .filter(a -> a.overdue() || a.dueNow())
                    .ifPresent(age -> due.add(container.id() + (age.overdue() ? " (overdue)" : " (last working day)")));
        }
        if (!due.isEmpty()) {
            String text = "Have collected today: "
                    + Words.listed(due, ", ", UrgentAction.MOST_CHARACTERS - 22, more -> more + " more");
            all.add(new Ranked(
                    1,
                    Double.MAX_VALUE,
                    new UrgentAction(Severity.CHECK, "containers", List.of(), text, OptionalDouble.empty())));
        }
    }
}
