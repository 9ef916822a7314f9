package workuptally.judgement.rules.containers;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Container;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Transfer;

/**
 * Days of runs that were done, of containers and of made transfers that cannot be: after the day for which the book speaks, and a transfer before the day of its run.
 * Such a slip moves a transfer out of the account of its container, or into it, and a run out of its period.
 */
public final class DaysThatCannotBe implements ProposalRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.DAY_CANNOT_BE);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        Optional<LocalDate> asOf = book.limits().day(Limit.AS_OF);
        for (Container container : book.containers()) {
            afterTheBook(findings, asOf, container.weighedOn(), container.row().at("Weighed on"), container.id());
            afterTheBook(findings, asOf, container.opened(), container.row().at("Opened"), container.id());
        }
        for (Run run : book.runs()) {
            if (run.status() != Run.Status.PLANNED) {
                afterTheBook(findings, asOf, run.head().date(), run.row().at("Date"), run.id());
            }
        }
        Map<String, Run> runs = new LinkedHashMap<>();
        book.runs().forEach(r -> runs.put(r.id(), r));
        for (Transfer transfer : book.transfers()) {
            if (transfer.status() == Transfer.Status.DONE && transfer.date().isPresent()) {
                Place place = transfer.row().at("Date");
                afterTheBook(findings, asOf, transfer.date(), place, transfer.id());
                Optional<LocalDate> run = Optional.ofNullable(runs.get(transfer.run()))
                        .flatMap(r -> r.head().date());
                run.filter(day -> transfer.date().get().isBefore(day))
                        .ifPresent(day -> add(
                                findings,
                                place,
                                Phrase.of(
                                        "{} was made on {}, before the day of run {}, {}",
                                        transfer.id(),
                                        transfer.date().get(),
                                        transfer.run(),
                                        day),
                                Phrase.of("a day on which the layer was there")));
            }
        }
        return findings.list();
    }

    private static void afterTheBook(
            FindingList findings, Optional<LocalDate> asOf, Optional<LocalDate> day, Place place, String of) {
        if (asOf.isPresent() && day.filter(d -> d.isAfter(asOf.get())).isPresent()) {
            add(
                    findings,
                    place,
                    Phrase.of("read {} for {}, after the day for which the book speaks, {}", day.get(), of, asOf.get()),
                    Phrase.of("a day up to that one"));
        }
    }

    private static void add(FindingList findings, Place place, Phrase seen, Phrase expected) {
        findings.add(
                FindingCode.DAY_CANNOT_BE,
                Severity.CHECK,
                place,
                seen,
                expected,
                FindingList.PRACTICE,
                Phrase.of("Correct the day, or As of in Limits: containers and periods are counted by it."));
    }
}
