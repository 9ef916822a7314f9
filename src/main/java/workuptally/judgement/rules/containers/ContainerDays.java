package workuptally.judgement.rules.containers;

import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerTally.Age;

/** A container that is open for longer than the local limit allows, or will be before the next weekly collection. */
public final class ContainerDays implements ProposalRule {

    private final Substances substances;

    /** With the reference data in force. */
    public ContainerDays(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CONTAINER_OVERDUE, FindingCode.CONTAINER_DUE_SOON);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            container.tally().age().filter(a -> a.dueOn().isPresent()).ifPresent(age -> {
                boolean soon = !age.lastWorkingDay()
                        .orElseThrow()
                        .isAfter(age.asOf().plusDays((long) substances.value(Threshold.CONTAINER_DAYS_AHEAD)));
                if (age.overdue() || soon) {
                    findings.add(
                            age.overdue() ? FindingCode.CONTAINER_OVERDUE : FindingCode.CONTAINER_DUE_SOON,
                            age.overdue() || age.dueNow() ? Severity.CHECK : Severity.NOTE,
                            container.tally().container().row().at("Opened"),
                            words(container.id(), age),
                            Phrase.of(
                                    "at most {} days from the first addition",
                                    Figure.decimals(
                                            book.limits()
                                                    .optional(Limit.CONTAINER_DAYS)
                                                    .orElse(0),
                                            0,
                                            "")),
                            "Container days, " + book.limits().origin(Limit.CONTAINER_DAYS),
                            age.overdue()
                                    ? Phrase.of("Close the container and have it collected; ask the waste contact.")
                                    : age.dueNow()
                                            ? Phrase.of("Have it collected today; ask the waste contact.")
                                            : Phrase.of("Have it collected by then."));
                }
            });
        }
        return findings.list();
    }

    private static Phrase words(String id, Age age) {
        return Phrase.of(
                "{} is open for {} days on {}; due {}{}",
                id,
                age.daysOpen(),
                age.asOf(),
                day(age.dueOn().orElseThrow()),
                age.dueOn().equals(age.lastWorkingDay())
                        ? Phrase.NONE
                        : Phrase.of(
                                ", so that the last working day in time is {}",
                                day(age.lastWorkingDay().orElseThrow())));
    }

    private static Phrase day(java.time.LocalDate day) {
        return Phrase.of("{} ({})", day, day.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH));
    }
}
