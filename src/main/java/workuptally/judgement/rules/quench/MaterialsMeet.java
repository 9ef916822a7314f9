package workuptally.judgement.rules.quench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.hazards.ReactivityPair.InWorkup;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.StepReaction;
import workuptally.tally.layers.Meeting;
import workuptally.tally.layers.Meeting.Occasion;

/**
 * What must not meet, or only in a planned quench. A pair that must not meet stops a plan and holds the layers that carry it where it was
 * done; two reagents of the reaction itself are a check. A planned quench is a note with its gas, and a stop where the plan lacks wash,
 * headspace or, for what water does not destroy, the test behind it. An ordinary wash or quench is no finding.
 */
public final class MaterialsMeet implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public MaterialsMeet(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(
                FindingCode.MATERIALS_MUST_NOT_MEET, FindingCode.CHARGED_TOGETHER, FindingCode.CONTROLLED_MEETING);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Map<String, List<Meeting>> never = new LinkedHashMap<>();
        Map<String, List<Meeting>> controlled = new LinkedHashMap<>();
        for (Meeting meeting : tally.evidence().meetings().list()) {
            if (meeting.isForbidden()) {
                never.computeIfAbsent(subject(meeting), k -> new ArrayList<>()).add(meeting);
            } else if (isControlled(meeting)) {
                controlled
                        .computeIfAbsent(meeting.place(), k -> new ArrayList<>())
                        .add(meeting);
            }
        }
        never.values().forEach(meetings -> forbidden(findings, tally, meetings));
        controlled.values().forEach(meetings -> controlled(findings, tally, meetings));
        return findings.list();
    }

    private boolean isControlled(Meeting meeting) {
        return meeting.pair().inWorkup() == InWorkup.PLANNED_QUENCH
                && meeting.step().isPresent()
                && meeting.concernsPlace()
                && isWorthAWord(meeting);
    }

    /** What is deadly, sets gas free or outlasts the water; the heat of an anhydride in water is no news. */
    private boolean isWorthAWord(Meeting meeting) {
        boolean mild = meeting.pair().severity() == ReactivityPair.Severity.CAUTION;
        return meeting.gasLitres().orElse(0) > substances.value(Threshold.GAS_NOTE)
                || !mild
                        && (meeting.lasting()
                                || !meeting.pair().gases().isEmpty()
                                || meeting.pair().severity() == ReactivityPair.Severity.CRITICAL);
    }

    /** One cause is one finding: the same pair of materials, whatever steps repeat it. */
    private static String subject(Meeting meeting) {
        boolean reaction = meeting.occasion() == Occasion.CHARGED;
        return meeting.with().get(0)
                + '\u0000'
                + meeting.pair().classB()
                + '\u0000'
                + meeting.pair().classA()
                + '\u0000'
                + reaction;
    }

    private static void forbidden(FindingList findings, RunTally tally, List<Meeting> meetings) {
        Meeting first = meetings.get(0);
        boolean planned = tally.run().status() == Run.Status.PLANNED;
        Set<String> portions = new LinkedHashSet<>();
        meetings.forEach(m -> portions.addAll(m.portions()));
        Phrase where = meetings.stream().map(MaterialsMeet::where).distinct().collect(Phrase.joining(", "));
        Phrase what = Phrase.of("{}: {}", String.join(" meets ", first.with()), consequence(first));
        if (first.occasion() == Occasion.CHARGED) {
            findings.add(
                    FindingCode.CHARGED_TOGETHER,
                    Severity.CHECK,
                    place(tally, first),
                    Phrase.of("{}: {}", where, what),
                    Phrase.of("a reaction that wants this pair, under a procedure that says how{}", note(first)),
                    source(meetings),
                    Phrase.of(
                            "See that the procedure means this pair and says how it is kept in hand; read the safety data sheets."
                                    + " What is left of it must be destroyed before the workup."));
            return;
        }
        Phrase carried = portions.isEmpty() ? Phrase.NONE : Phrase.of("; carried by {}", String.join(", ", portions));
        findings.add(
                FindingCode.MATERIALS_MUST_NOT_MEET,
                planned ? Severity.STOP : portions.isEmpty() ? Severity.CHECK : Severity.HOLD,
                place(tally, first),
                Phrase.of("{}: {}{}", where, what, planned ? Phrase.NONE : carried),
                Phrase.of("never together in a workup{}", note(first)),
                source(meetings),
                planned
                        ? Phrase.of(
                                "Do not start it like this: change solvent, quench or wash, or destroy {} first, with the person"
                                        + " responsible; the safety data sheets and the local rules win.",
                                first.with().get(0))
                        : Phrase.of(
                                "Keep {} open and apart, do not warm or concentrate; ask the person responsible for safety now, with the"
                                        + " safety data sheets, how it is made harmless.",
                                portions.size() > 1 ? Phrase.of("these layers") : Phrase.of("it")));
    }

    private static void controlled(FindingList findings, RunTally tally, List<Meeting> meetings) {
        Meeting first = meetings.get(0);
        Step step = first.step().orElseThrow();
        boolean planned = tally.run().status() == Run.Status.PLANNED;
        List<Phrase> lacks = planned ? lacks(tally, step, meetings) : List.of();
        Phrase what = meetings.stream()
                .map(m -> Phrase.of("{}: {}", String.join(" meets ", m.with()), consequence(m)))
                .distinct()
                .collect(Phrase.joining("; "));
        findings.add(
                FindingCode.CONTROLLED_MEETING,
                lacks.isEmpty() ? Severity.NOTE : Severity.STOP,
                place(tally, first),
                Phrase.of(
                        "{}: {}{}",
                        where(first),
                        what,
                        lacks.isEmpty() ? Phrase.NONE : Phrase.of("; the plan lacks {}", Phrase.join(", ", lacks))),
                Phrase.of("a quench of its own: cold, slow, vented, with room for the gas, and tested"),
                source(meetings),
                lacks.isEmpty()
                        ? Phrase.of(
                                "Add slowly, cold, to the open vessel, and see that it is over before anything is stoppered; the safety"
                                        + " data sheets and the local rules win.")
                        : Phrase.of(
                                "Do not start it like this: plan what is missing, with the person responsible; the safety data sheets and"
                                        + " the local rules win."));
    }

    private static List<Phrase> lacks(RunTally tally, Step step, List<Meeting> meetings) {
        List<Phrase> lacks = new ArrayList<>();
        boolean grave =
                meetings.stream().anyMatch(m -> m.pair().severity() != ReactivityPair.Severity.CAUTION && m.lasting());
        if (grave && !isTestForeseen(tally.run(), step)) {
            lacks.add(Phrase.of("a test afterwards (Quench test)"));
        }
        tally.contacts().stream()
                .filter(contact -> contact.step() == step && gasDoesNotFit(contact, meetings))
                .findFirst()
                .ifPresent(contact -> lacks.add(
                        Phrase.of("headspace ({} in the funnel)", Figure.decimals(headspaceLitres(contact), 2, "L"))));
        for (StepReaction reaction : tally.evidence().reactions()) {
            boolean tooLittle = reaction.step() == step
                    && reaction.capacityRatio().isPresent()
                    && reaction.capacityRatio().getAsDouble() < 1;
            if (tooLittle) {
                lacks.add(Phrase.of(
                        "capacity (ratio {})",
                        Figure.decimals(reaction.capacityRatio().getAsDouble(), 2, "")));
            }
        }
        return lacks;
    }

    private static boolean isTestForeseen(Run run, Step quench) {
        List<Step> steps = run.orderedSteps();
        return steps.subList(steps.indexOf(quench), steps.size()).stream()
                .anyMatch(step -> step.quenchTest().isPresent());
    }

    /** Gas that a stoppered funnel cannot hold; a quench in the flask is open. */
    private static boolean gasDoesNotFit(Contact contact, List<Meeting> meetings) {
        boolean inFunnel = contact.step().funnel().millilitres().entered().isPresent();
        double litres = meetings.stream()
                .filter(m -> m.gasLitres().isPresent())
                .mapToDouble(m -> m.gasLitres().getAsDouble())
                .max()
                .orElse(0);
        return inFunnel && litres / contact.loads() > headspaceLitres(contact);
    }

    private static double headspaceLitres(Contact contact) {
        return Math.max(0, contact.funnelMillilitres() - contact.volumeMillilitres() / contact.loads()) / 1000;
    }

    private static Phrase note(Meeting meeting) {
        return meeting.pair().note().map(note -> Phrase.of("; {}", note)).orElse(Phrase.NONE);
    }

    private static Phrase where(Meeting meeting) {
        return meeting.step().map(step -> Phrase.of("step {}", step.number())).orElse(Phrase.of("charged together"));
    }

    private static Phrase consequence(Meeting meeting) {
        Phrase litres = meeting.gasLitres().isPresent()
                ? Phrase.of(
                        ", up to {} of gas", Figure.decimals(meeting.gasLitres().getAsDouble(), 2, "L"))
                : Phrase.NONE;
        return Phrase.of("{}{}{}", meeting.pair().consequence(), meeting.pair().gasInBrackets(), litres);
    }

    static String source(List<Meeting> meetings) {
        return meetings.stream()
                        .flatMap(m -> m.pair().sources().stream())
                        .distinct()
                        .collect(Collectors.joining("; "))
                + " (" + meetings.get(0).pair().basis().word() + ")";
    }

    private static Place place(RunTally tally, Meeting meeting) {
        return meeting.step()
                .map(step -> step.row().at("Material"))
                .orElseGet(() -> tally.run().charges().stream()
                        .filter(charge -> meeting.with().contains(charge.material()))
                        .reduce((earlier, later) -> later)
                        .map(charge -> charge.row().at("Material"))
                        .orElse(tally.run().row().at("Run")));
    }
}
