package workuptally.judgement.rules.quench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.StepReaction;

/** A funnel filled above its limit, and volumes beyond any funnel without a vessel: a stop for a planned run above the stop limit, a check below that; a note once it has been done. */
public final class FunnelTooFull implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.FUNNEL_OVERFULL);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Map<Step, Contact> fullest = new LinkedHashMap<>();
        for (Contact contact : tally.contacts()) {
            fullest.merge(
                    contact.step(), contact, BinaryOperator.maxBy(Comparator.comparingDouble(Contact::fillPercent)));
        }
        double stopPercent = book.limits().value(Limit.FUNNEL_FILL_STOP);
        boolean planned = tally.run().status() == Run.Status.PLANNED;
        List<Contact> unnamed = new ArrayList<>();
        for (Contact contact : fullest.values()) {
            if (contact.fillPercent() > contact.fillLimitPercent() && !contact.funnelRecorded()) {
                unnamed.add(contact);
            } else if (contact.fillPercent() > contact.fillLimitPercent()) {
                Severity severity =
                        !planned ? Severity.NOTE : contact.fillPercent() > stopPercent ? Severity.STOP : Severity.CHECK;
                findings.add(
                        FindingCode.FUNNEL_OVERFULL,
                        severity,
                        contact.step().row().at("Funnel"),
                        seen(contact),
                        Phrase.of(
                                "{} at most ({})",
                                Figure.decimals(contact.fillLimitPercent(), contact.percentDecimals(), "%"),
                                Figure.decimals(
                                        contact.fillLimitPercent() / 100 * contact.funnelMillilitres(), 0, "mL")),
                        book.limits().isSetByBook(Limit.FUNNEL_FILL)
                                ? "limit 'Funnel fill' of the book"
                                : FindingList.PRACTICE,
                        action(contact, planned ? shortWash(tally, contact) : Optional.empty()));
            }
        }
        vesselNotNamed(unnamed, planned, findings);
        return findings.list();
    }

    /** Volumes beyond the largest funnel are shaken in a vessel that the book does not name: one question for the run. */
    private static void vesselNotNamed(List<Contact> contacts, boolean planned, FindingList findings) {
        if (contacts.isEmpty()) {
            return;
        }
        Contact largest = contacts.stream()
                .max(Comparator.comparingDouble(c -> c.volumeMillilitres() / c.loads()))
                .orElseThrow();
        findings.add(
                FindingCode.FUNNEL_OVERFULL,
                planned ? Severity.CHECK : Severity.NOTE,
                largest.step().row().at("Funnel"),
                Phrase.of(
                        "{}: up to {} at a time, more than the largest funnel of the tables ({}) takes; no vessel is named",
                        contacts.stream().map(c -> "step " + c.step().number()).collect(Collectors.joining(", ")),
                        Figure.decimals(largest.volumeMillilitres() / largest.loads(), 0, "mL"),
                        Figure.decimals(largest.funnelMillilitres(), 0, "mL")),
                Phrase.of("a vessel filled to {} at most", Figure.decimals(largest.fillLimitPercent(), 0, "%")),
                FindingList.PRACTICE,
                Phrase.of("Enter the volume of the vessel under Funnel, or the loads."));
    }

    /** The wash of this contact where it is short of what it meets: the volume in the funnel is then not the one to come. */
    private static Optional<StepReaction> shortWash(RunTally tally, Contact contact) {
        return tally.evidence().reactions().stream()
                .filter(r -> r.step() == contact.step())
                .filter(r ->
                        r.capacityRatio().orElse(1) < 1 && r.neededMillilitres().isPresent())
                .findFirst();
    }

    private static Phrase action(Contact contact, Optional<StepReaction> wash) {
        if (wash.isEmpty()) {
            return Phrase.of("Step {}: use {}.", contact.step().number(), room(contact, contact.volumeMillilitres()));
        }
        double needed = wash.get().neededMillilitres().getAsDouble();
        double planned = needed * wash.get().capacityRatio().getAsDouble();
        double worst = wash.get().neededAtWorstMillilitres().getAsDouble();
        return Phrase.of(
                "Step {}: with the {} of wash that it takes use {}; with the {} of the worst case {}.",
                contact.step().number(),
                Figure.decimals(needed, 0, "mL"),
                room(contact, contact.volumeMillilitres() + needed - planned),
                Figure.decimals(worst, 0, "mL"),
                room(contact, contact.volumeMillilitres() + worst - planned));
    }

    private static Phrase room(Contact contact, double millilitres) {
        double most = contact.fillLimitPercent() / 100;
        return Phrase.of(
                "{} loads, or a funnel of {} at least",
                Figure.decimals(Math.max(2, Math.ceil(millilitres / (most * contact.funnelMillilitres()))), 0, ""),
                Figure.decimals(Math.ceil(millilitres / most), 0, "mL"));
    }

    private static Phrase seen(Contact contact) {
        return Phrase.of(
                "step {} ({}): {} in {} a funnel of {} is {}",
                contact.step().number(),
                contact.step().added().material(),
                Figure.decimals(contact.volumeMillilitres(), 0, "mL"),
                contact.loads() == 1 ? "one load in" : contact.loads() + " loads in",
                Figure.decimals(contact.funnelMillilitres(), 0, "mL"),
                Figure.decimals(contact.fillPercent(), contact.percentDecimals(), "%"));
    }
}
