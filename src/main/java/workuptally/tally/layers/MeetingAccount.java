package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.chemistry.IdealGas;
import workuptally.measure.MeasuredValue;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.Reactivity.Membership;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.hazards.ReactivityPair.InWorkup;
import workuptally.reference.substances.MaterialRow;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.Meeting.Occasion;

/**
 * Follows the materials of a run along its steps and looks up every two that come together. What follows which layer, and what is gone,
 * is the business of {@link PortionContents}; where the record says nothing, a material is taken to be there still.
 */
public final class MeetingAccount {
    private static final Set<Operation> CONCENTRATING =
            Set.of(Operation.STRIP, Operation.CONCENTRATE, Operation.DISTIL, Operation.DRY_SOLID);
    private static final String EVAPORATION = "evaporation";

    private final Run run;
    private final Limits limits;
    private final Substances substances;
    private final LayerGraph graph;
    private final Reactivity reactivity;
    private final PortionContents contents;
    private final List<Meeting> meetings = new ArrayList<>();

    public MeetingAccount(
            Run run, Limits limits, Substances substances, LayerGraph graph, List<LayerIdentity> identities) {
        this.run = run;
        this.substances = substances;
        this.limits = limits;
        this.graph = graph;
        this.reactivity = substances.reference().reactivity();
        this.contents = new PortionContents(run, substances, reactivity, swapped(identities));
    }

    private static Set<String> swapped(List<LayerIdentity> identities) {
        Set<String> labels = new LinkedHashSet<>();
        identities.stream()
                .filter(i -> i.verdict() == LayerIdentity.Verdict.SWAPPED)
                .forEach(i -> labels.add(i.label()));
        return labels;
    }

    /** Every meeting of the run, and what its portions hold. */
    public Meetings of(List<ChargeAmount> amounts) {
        List<Present> charged = new ArrayList<>();
        for (ChargeAmount amount : amounts) {
            List<Present> brought = contents.ofCharge(
                    amount.charge(),
                    amount.amountMillimoles()
                            .map(MeasuredValue::value)
                            .map(OptionalDouble::of)
                            .orElse(OptionalDouble.empty()));
            meet(Optional.empty(), charged, brought);
            charged.addAll(brought);
        }
        contents.start(charged, OwnAmines.of(run, substances, reactivity));
        for (Step step : run.orderedSteps()) {
            follow(step);
        }
        return new Meetings(meetings.stream().map(this::withPortions).toList(), contents.byLabel());
    }

    private void follow(Step step) {
        List<Present> there = new ArrayList<>();
        for (String label : step.from()) {
            List<Present> source = contents.of(label);
            meet(Optional.of(step), without(there, source), without(source, there));
            there = PortionContents.union(there, source);
        }
        List<Present> added = contents.ofStep(step);
        meet(Optional.of(step), there, added);
        if (step.operation().filter(CONCENTRATING::contains).isPresent()) {
            concentrate(step, there);
        }
        contents.follow(step, there, added);
    }

    /** What only the first list holds: what both hold has met before. */
    private static List<Present> without(List<Present> list, List<Present> other) {
        Set<String> names = new LinkedHashSet<>();
        other.forEach(p -> names.add(p.name()));
        return list.stream().filter(p -> !names.contains(p.name())).toList();
    }

    private void meet(Optional<Step> step, List<Present> there, List<Present> added) {
        Set<String> classes = new LinkedHashSet<>();
        there.forEach(p -> classes.addAll(p.membership().classes()));
        added.forEach(p -> classes.addAll(p.membership().classes()));
        Map<String, Meeting> found = new LinkedHashMap<>();
        for (Present one : there) {
            for (Present other : added) {
                if (!one.name().equals(other.name())) {
                    reactivity
                            .between(one.membership(), other.membership(), classes)
                            .forEach(pair -> found.putIfAbsent(
                                    pair.key(),
                                    meeting(step, List.of(one, other), pair, occasion(step, one, other, pair))));
                }
            }
        }
        step.ifPresent(s -> broughtAbout(s, there, classes)
                .forEach(m -> found.putIfAbsent(m.pair().key(), m)));
        found.values().stream().filter(MeetingAccount::tells).forEach(meetings::add);
    }

    private static Occasion occasion(Optional<Step> step, Present one, Present other, ReactivityPair pair) {
        if (step.isPresent()) {
            return Occasion.STEP;
        }
        boolean meant = pair.where().contains(ReactivityPair.REACTION);
        return !meant && (one.solvent() || other.solvent()) ? Occasion.CHARGED_AS_SOLVENT : Occasion.CHARGED;
    }

    /** What two materials that stood beside each other do as soon as a third one comes, as arsenite and zinc with acid. */
    private List<Meeting> broughtAbout(Step step, List<Present> there, Set<String> classes) {
        Set<String> before = new LinkedHashSet<>();
        there.forEach(p -> before.addAll(p.membership().classes()));
        List<Meeting> meetings = new ArrayList<>();
        for (int i = 0; i < there.size(); i++) {
            for (Present other : there.subList(i + 1, there.size())) {
                Present one = there.get(i);
                reactivity.between(one.membership(), other.membership(), classes).stream()
                        .filter(pair -> pair.thirdClass()
                                .filter(third -> !before.contains(third))
                                .isPresent())
                        .forEach(pair ->
                                meetings.add(meeting(Optional.of(step), List.of(one, other), pair, Occasion.STEP)));
            }
        }
        return meetings;
    }

    /**
     * What is ordinary among the charges is the reaction itself, and what is ordinary in a container alone is no matter of the workup. The
     * wide groups of the published chart are for containers: in a flask they would name half of all reactions.
     */
    private static boolean tells(Meeting meeting) {
        return !meeting.pair().ofChart() && isTelling(meeting);
    }

    private static boolean isTelling(Meeting meeting) {
        return meeting.pair().inWorkup() != InWorkup.ORDINARY || meeting.step().isPresent() && meeting.concernsPlace();
    }

    private void concentrate(Step step, List<Present> there) {
        Membership evaporation = reactivity.membership(List.of(EVAPORATION), List.of());
        Set<String> seen = new LinkedHashSet<>();
        for (Present one : there) {
            for (ReactivityPair pair : reactivity.between(one.membership(), evaporation, Set.of())) {
                if (seen.add(pair.key())) {
                    Meeting meeting = meeting(Optional.of(step), List.of(one), pair, Occasion.CONCENTRATION);
                    meetings.add(new Meeting(
                            meeting.step(),
                            List.of(one.name(), EVAPORATION),
                            pair,
                            Occasion.CONCENTRATION,
                            meeting.gasLitres(),
                            true,
                            List.of()));
                }
            }
        }
    }

    private Meeting meeting(Optional<Step> step, List<Present> two, ReactivityPair pair, Occasion occasion) {
        return new Meeting(
                step,
                two.stream().map(Present::name).toList(),
                pair,
                occasion,
                gasLitres(two, pair),
                two.stream().noneMatch(p -> p.part().isDestroyedByWater())
                        && two.stream().anyMatch(Present::persists),
                List.of());
    }

    /** Gas that the amount of one of the two can set free, where its row says how much and the pair names it. */
    private OptionalDouble gasLitres(List<Present> two, ReactivityPair pair) {
        double moles = 0;
        for (Present present : two) {
            List<MaterialRow.Gas> gases =
                    present.part().row().map(r -> r.behaviour().gases()).orElse(List.of());
            for (MaterialRow.Gas gas : gases) {
                if (pair.setsFree(gas.name())
                        && gas.molesPerMole().isPresent()
                        && present.millimoles().isPresent()) {
                    moles += present.millimoles().getAsDouble()
                            / 1000
                            * gas.molesPerMole().getAsDouble();
                }
            }
        }
        return moles == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(IdealGas.volumeLitres(
                        moles, limits.value(Limit.ROOM_TEMPERATURE), limits.value(Limit.ROOM_PRESSURE)));
    }

    /** The layers that come from the step and hold one of the two still; for what was charged, any layer of the run. */
    private Meeting withPortions(Meeting meeting) {
        if (meeting.pair().inWorkup() == InWorkup.ORDINARY) {
            return meeting;
        }
        Set<String> from = new LinkedHashSet<>();
        if (meeting.step().isEmpty()) {
            from.addAll(graph.layerLabels());
        } else {
            Step step = meeting.step().get();
            List<String> open = new ArrayList<>(step.gives().isEmpty() ? step.from() : step.gives());
            while (!open.isEmpty()) {
                String next = open.remove(0);
                if (from.add(next)) {
                    open.addAll(graph.children(next));
                }
            }
        }
        return meeting.carriedBy(from.stream()
                .filter(label -> run.lot(label).isEmpty() && !label.equals(Step.REACTION_MIXTURE))
                .filter(label ->
                        contents.of(label).stream().anyMatch(p -> meeting.with().contains(p.name())))
                .toList());
    }
}
