package workuptally.judgement.hazards;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.chemistry.Antoine;
import workuptally.chemistry.Formula;
import workuptally.judgement.rules.charges.AirSensitive;
import workuptally.material.Material;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.Reference;
import workuptally.reference.bench.Threshold;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.solutions.Solute;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.ClassBehaviour;
import workuptally.reference.substances.MaterialClass;
import workuptally.reference.substances.Solvent;
import workuptally.reference.tables.Basis;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.Meeting;
import workuptally.tally.layers.Meetings;

/**
 * Cautions about what a run does: pressure in the funnel, gas, heat, hot mixtures, peroxide formers, reactive quenches, emulsions, and
 * materials that should not meet. Reminders; the safety data sheet and the local rules win.
 */
final class OperationHazards {
    private static final String PRACTICE = "common practice";

    private final Reference reference;
    private final Substances substances;
    private final double roomCelsius;

    OperationHazards(Substances substances, Limits limits) {
        this.reference = substances.reference();
        this.substances = substances;
        this.roomCelsius = limits.value(Limit.ROOM_TEMPERATURE);
    }

    /** The cautions of a run, pressure and gas first. */
    List<HazardNote> of(Run run, Meetings meetings) {
        List<HazardNote> notes = new ArrayList<>();
        SolventsAtStep atStep = new SolventsAtStep(run, substances);
        List<Solvent> solvents = materials(run).stream()
                .flatMap(m -> atStep.solvent(m).stream())
                .distinct()
                .toList();
        List<Step> shaken =
                run.orderedSteps().stream().filter(OperationHazards::isShaken).toList();
        if (!shaken.isEmpty()) {
            solvents.forEach(s -> pressure(
                            s,
                            shaken.stream()
                                    .filter(step -> atStep.of(step).stream().anyMatch(there -> there == s))
                                    .toList())
                    .ifPresent(notes::add));
        }
        run.orderedSteps().forEach(step -> {
            gas(step, run).ifPresent(notes::add);
            heat(step).ifPresent(notes::add);
            hot(step, atStep).ifPresent(notes::add);
            emulsion(step).ifPresent(notes::add);
        });
        peroxides(run, atStep).ifPresent(notes::add);
        List<Step> quenches = run.orderedSteps().stream()
                .filter(s -> s.operation().filter(o -> o == Operation.QUENCH).isPresent())
                .toList();
        run.charges().forEach(charge -> quench(charge, quenches).ifPresent(notes::add));
        notes.addAll(meetings(meetings));
        azides(run).forEach(notes::add);
        return notes.stream().distinct().toList();
    }

    /** A product of a run with azide that holds little carbon and oxygen for its nitrogen. */
    private List<HazardNote> azides(Run run) {
        if (!holds(run, MaterialClass.AZIDE)) {
            return List.of();
        }
        List<HazardNote> notes = new ArrayList<>();
        for (Product product : run.products()) {
            carbonAndOxygenPerNitrogen(product.formula())
                    .filter(ratio -> ratio < reference.value(Threshold.AZIDE_RATIO))
                    .ifPresent(ratio -> notes.add(new HazardNote(
                            "product " + product.name(),
                            List.of(),
                            say(
                                    "If it keeps the azide: carbon and oxygen over nitrogen are %.1f, below 3. Such azides can"
                                            + " explode when concentrated, distilled or scraped; usual practice keeps them"
                                            + " dilute and small and does not isolate them.",
                                    ratio),
                            PRACTICE)));
        }
        return notes;
    }

    /** Atoms of carbon and oxygen for each of nitrogen; empty with fewer than three nitrogens and for no formula. */
    private static Optional<Double> carbonAndOxygenPerNitrogen(String formula) {
        return Formula.in(formula)
                .filter(read -> read.count("N") >= 3)
                .map(read -> (read.count("C") + read.count("O")) / read.count("N"));
    }

    private static List<String> materials(Run run) {
        Set<String> names = new LinkedHashSet<>();
        run.charges().stream().map(Charge::material).forEach(names::add);
        run.orderedSteps().stream()
                .map(s -> s.added().material())
                .filter(m -> !m.isBlank())
                .forEach(names::add);
        return List.copyOf(names);
    }

    private static boolean isShaken(Step step) {
        boolean shaken = step.operation()
                .filter(o -> o == Operation.EXTRACT || o == Operation.WASH || o == Operation.BACK_EXTRACT)
                .isPresent();
        return shaken
                || (!step.given().organic().isEmpty() && !step.given().aqueous().isEmpty());
    }

    /** Where it happens, for a heading: {@code , step 2} or {@code , steps 2, 4}; empty for none. */
    private static String at(List<Step> steps) {
        String numbers = steps.stream().map(Step::number).distinct().collect(Collectors.joining(", "));
        return numbers.isEmpty() ? "" : (steps.size() == 1 ? ", step " : ", steps ") + numbers;
    }

    private Optional<HazardNote> pressure(Solvent solvent, List<Step> steps) {
        return solvent.volatility()
                .antoine()
                .map(a -> new Antoine(a.a(), a.b(), a.c(), a.fromCelsius(), a.toCelsius()))
                .filter(a -> a.holdsAt(roomCelsius))
                .map(a -> a.kilopascals(roomCelsius))
                .filter(p -> p > reference.value(Threshold.FUNNEL_PRESSURE))
                .map(p -> new HazardNote(
                        "shaking with " + solvent.name() + at(steps),
                        List.of(),
                        say(
                                "Vapour pressure about %.0f kPa at %.0f °C: swirl open first, vent after the first shake and"
                                        + " often, stem pointing into the hood.",
                                p, roomCelsius),
                        "vapour pressure equation of the reference table; threshold " + PRACTICE));
    }

    /** What acid sets free always, since acid can be left anywhere; what base sets free where the run holds base. */
    private Optional<HazardNote> gas(Step step, Run run) {
        return substances
                .material(step.added().material())
                .wash()
                .flatMap(Wash::gas)
                .filter(gas -> gas.isByAcid() || holds(run, MaterialClass.BASE))
                .map(gas -> new HazardNote(
                        "step " + step.number() + ", " + step.added().material(),
                        List.of(),
                        gas.formula() + " comes off where it meets " + gas.setFreeBy()
                                + ": add slowly, swirl in the open until it is quiet, only then stopper, and vent often.",
                        "reference table of washes"));
    }

    private boolean holds(Run run, String materialClass) {
        return materials(run).stream()
                .flatMap(m -> hazard(m).stream())
                .anyMatch(h -> h.materialClasses().contains(materialClass));
    }

    private Optional<HazardNote> heat(Step step) {
        boolean neutralises = step.operation()
                .filter(o -> o == Operation.ACIDIFY || o == Operation.BASIFY || o == Operation.QUENCH)
                .isPresent();
        Optional<Wash> wash = substances.material(step.added().material()).wash();
        double strength = step.added()
                .molarityMolesPerLitre()
                .entered()
                .map(Entered::value)
                .orElseGet(() -> wash.map(
                                w -> w.concentration().molarityMolesPerLitre().orElse(0))
                        .orElse(0.0));
        boolean acidOrBase = wash.flatMap(Wash::solute)
                .flatMap(reference.solutes()::find)
                .flatMap(s -> s.acidBase().behaviour())
                .filter(b -> b == Solute.Behaviour.STRONG_ACID || b == Solute.Behaviour.STRONG_BASE)
                .isPresent();
        if (!neutralises || !acidOrBase || strength < reference.value(Threshold.HEAT_FROM)) {
            return Optional.empty();
        }
        return Optional.of(new HazardNote(
                "step " + step.number() + ", " + step.added().material(),
                List.of(),
                "Heat of neutralisation: cool the mixture, add in portions, watch the temperature.",
                PRACTICE));
    }

    private Optional<HazardNote> hot(Step step, SolventsAtStep atStep) {
        Optional<Double> temperature = step.temperatureCelsius().entered().map(Entered::value);
        if (!isShaken(step) || temperature.isEmpty() || temperature.get() <= roomCelsius) {
            return Optional.empty();
        }
        return atStep.of(step).stream()
                .filter(s -> temperature.get()
                        > s.volatility().boilingPointCelsius() - reference.value(Threshold.SHAKEN_BELOW_BOILING))
                .findFirst()
                .map(s -> new HazardNote(
                        "step " + step.number() + " at " + say("%.0f °C", temperature.get()),
                        List.of(),
                        say(
                                "%s boils at %.0f °C: a warm mixture is not shaken in a closed funnel; let it cool first.",
                                s.name(), s.volatility().boilingPointCelsius()),
                        PRACTICE));
    }

    private static Optional<HazardNote> emulsion(Step step) {
        return step.funnel()
                .emulsion()
                .filter(e -> e == Step.Emulsion.PERSISTENT)
                .map(e -> new HazardNote(
                        "emulsion in step " + step.number(),
                        List.of(),
                        "Swirl instead of shaking, add brine, or filter; an emulsion can hold gas and hide the interface.",
                        PRACTICE));
    }

    private static Optional<HazardNote> peroxides(Run run, SolventsAtStep atStep) {
        List<String> formers = run.orderedSteps().stream()
                .filter(SolventsAtStep::takesSolventOff)
                .flatMap(s -> atStep.of(s).stream())
                .distinct()
                .filter(s -> s.hazards().peroxideFormer())
                .map(s -> s.name()
                        + s.hazards()
                                .peroxideClass()
                                .map(c -> " (class " + c + ")")
                                .orElse(""))
                .toList();
        if (formers.isEmpty()) {
            return Optional.empty();
        }
        List<Step> steps = run.orderedSteps().stream()
                .filter(SolventsAtStep::takesSolventOff)
                .filter(s -> atStep.of(s).stream()
                        .anyMatch(solvent -> solvent.hazards().peroxideFormer()))
                .toList();
        return Optional.of(new HazardNote(
                "evaporating " + String.join(", ", formers) + at(steps),
                List.of("EUH019 May form explosive peroxides."),
                "Forms peroxides on standing: test before evaporating, and do not take it to dryness.",
                "reference table of solvents"));
    }

    private Optional<HazardNote> quench(Charge charge, List<Step> steps) {
        Material material = substances.material(charge.material(), charge.formula());
        Optional<Hazard> listed = material.hazard();
        boolean reacts = material.classes().stream()
                .flatMap(c -> reference.classBehaviours().find(c).stream())
                .anyMatch(ClassBehaviour::reactsWithWater);
        if (!reacts && !AirSensitive.is(material)) {
            return Optional.empty();
        }
        return Optional.of(new HazardNote(
                "quench of " + charge.material() + at(steps),
                List.of(),
                "Reacts with water: quench cold, slowly and in the open, away from ignition; gas and heat come late"
                        + " when it is rushed.",
                listed.map(h -> origin(h.basis(), h.sources())).orElse(PRACTICE)));
    }

    private static String origin(Basis basis, List<String> sources) {
        return basis == Basis.SOURCE ? String.join("; ", sources) : basis.word();
    }

    private Optional<Hazard> hazard(String material) {
        return substances.material(material).hazard();
    }

    /** What the run brings together that is not ordinary; gas of a wanted neutralisation is noted elsewhere. */
    private static List<HazardNote> meetings(Meetings meetings) {
        Map<String, List<Meeting>> byPair = new LinkedHashMap<>();
        for (Meeting meeting : meetings.list()) {
            ReactivityPair pair = meeting.pair();
            boolean told = pair.inWorkup() != ReactivityPair.InWorkup.ORDINARY
                    && pair.severity() != ReactivityPair.Severity.CAUTION
                    && meeting.concernsPlace();
            if (told) {
                byPair.computeIfAbsent(pair.key(), k -> new ArrayList<>()).add(meeting);
            }
        }
        return byPair.values().stream().map(OperationHazards::note).toList();
    }

    private static HazardNote note(List<Meeting> alike) {
        Meeting meeting = alike.get(0);
        ReactivityPair pair = meeting.pair();
        List<Step> steps =
                alike.stream().flatMap(m -> m.step().stream()).distinct().toList();
        return new HazardNote(
                String.join(" and ", meeting.with()) + at(steps),
                List.of(),
                Character.toUpperCase(pair.consequence().charAt(0))
                        + pair.consequence().substring(1) + pair.gasInBrackets() + ". " + how(meeting),
                origin(pair.basis(), pair.sources()));
    }

    private static String how(Meeting meeting) {
        if (meeting.occasion() == Meeting.Occasion.CHARGED) {
            return "Both are charged: the procedure has to mean this pair and to say how it is kept in hand.";
        }
        if (meeting.occasion() == Meeting.Occasion.CONCENTRATION) {
            return "Usual practice tests it before it is concentrated, and never takes it to dryness.";
        }
        return meeting.pair().inWorkup() == ReactivityPair.InWorkup.NEVER
                ? "Usual practice never lets them meet in a workup."
                : "Only as a quench of its own: cold, slow, vented.";
    }

    /** A sentence with numbers put in, with a decimal point whatever the locale. */
    private static String say(String format, Object... numbers) {
        return String.format(Locale.ROOT, format, numbers);
    }
}
