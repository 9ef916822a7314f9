package workuptally.tally.bench;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.IdealGas;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.model.SubstanceName;
import workuptally.reference.substances.Oxidant;
import workuptally.tally.amounts.AcidsAndBases;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Equivalents;
import workuptally.tally.amounts.PutIn;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;
import workuptally.tally.layers.LayerTally;

/**
 * What each wash neutralises and which gas it sets free.
 *
 * <p>A base wash meets the acids that were measured in the layer it gave and every other acid charged less what full conversion uses up,
 * if no water went over the mixture before. In a plan it meets every acid charged less what full conversion uses up, and in the worst case every acid charged. Gases of the
 * reagents where water first comes in: hydrogen of hydrides, hydrogen chloride and sulfur dioxide of acid chlorides, by the table of materials,
 * less what the reaction uses up; in the worst case all of them.
 */
public final class StepReactionAccount {
    private final Run run;
    private final Limits limits;
    private final AcidsAndBases acidsAndBases;
    private final List<ChargeAmount> amounts;
    private final Map<Step, Addition> additions = new IdentityHashMap<>();
    private final Map<String, LayerTally> layers = new LinkedHashMap<>();
    private final Optional<Theory> theory;
    private final Substances substances;

    public StepReactionAccount(
            Run run,
            Limits limits,
            Substances substances,
            PutIn putIn,
            List<LayerTally> layers,
            Optional<Theory> theory) {
        this.run = run;
        this.limits = limits;
        this.substances = substances;
        this.acidsAndBases = new AcidsAndBases(run, substances);
        this.amounts = putIn.charges();
        this.theory = theory;
        putIn.additions().forEach(a -> this.additions.put(a.step(), a));
        layers.forEach(l -> this.layers.put(l.label(), l));
    }

    public List<StepReaction> list() {
        List<StepReaction> reactions = new ArrayList<>();
        boolean waterBefore = false;
        boolean quenched = false;
        for (Step step : run.orderedSteps()) {
            Optional<Addition> addition = Optional.ofNullable(additions.get(step));
            if (!quenched && bringsWater(step)) {
                reactions.addAll(gasesOfReagents(step));
                quenched = true;
            }
            if (addition.isPresent()) {
                Equivalents wash = acidsAndBases.of(addition.get());
                if (wash.base() > 0) {
                    baseWash(addition.get(), wash, waterBefore).ifPresent(reactions::add);
                } else if (wash.acid() > 0 && !step.given().aqueous().isEmpty()) {
                    acidWash(addition.get(), wash).ifPresent(reactions::add);
                }
            }
            waterBefore |= !step.given().aqueous().isEmpty();
        }
        return reactions;
    }

    /** Gases that water sets free from the reagents charged. */
    private List<StepReaction> gasesOfReagents(Step step) {
        boolean bringsBase = Optional.ofNullable(additions.get(step))
                .filter(a -> acidsAndBases.of(a).base() > 0)
                .isPresent();
        return new ReagentGases(acidsAndBases, amounts, extentMillimoles())
                .of(bringsBase).entrySet().stream()
                        .map(gas -> new StepReaction(
                                step,
                                gas.getKey(),
                                gas.getValue().expectedMillimoles(),
                                gas.getValue().worstMillimoles(),
                                litres(gas.getValue().expectedMillimoles()),
                                litres(gas.getValue().worstMillimoles()),
                                loads(step),
                                0,
                                0,
                                0,
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                gas.getValue().because()))
                        .toList();
    }

    private static boolean bringsWater(Step step) {
        return step.operation().filter(o -> o == Operation.QUENCH).isPresent()
                || !step.given().aqueous().isEmpty();
    }

    private Optional<StepReaction> baseWash(Addition addition, Equivalents wash, boolean waterBefore) {
        boolean planned = run.status() == Run.Status.PLANNED;
        List<ChargeAmount> acids = planned ? amounts : notMeasuredIn(addition.step());
        Equivalents charged = chargedAcids(acids);
        double left = Math.max(0, charged.acid() - weakAcidUsedMillimoles(acids) - basesChargedMillimoles());
        double measured =
                Math.max(measuredAcidMillimoles(addition.step()), waterBefore ? 0 : acidFromOxidantMillimoles());
        double expected = planned ? left : measured + (waterBefore ? 0 : left);
        double worst = planned ? charged.acid() : measured + (waterBefore ? charged.strongAcid() : charged.acid());
        if (wash.isMild()) {
            // Acetate takes protons from mineral acids only.
            expected = planned || !waterBefore ? charged.strongAcid() : 0;
            worst = charged.strongAcid();
        }
        if (worst <= 0) {
            return Optional.empty();
        }
        // Of a plan all the acid counts, since a wash found too small is made larger before it is used.
        boolean gives = wash.givesCarbonDioxide();
        double gas = gives
                ? AcidBase.carbonDioxideMillimoles(
                        planned ? expected : Math.min(expected, wash.base()),
                        wash.carbonate(),
                        planned ? Math.max(wash.hydrogencarbonate(), expected) : wash.hydrogencarbonate())
                : 0;
        double worstGas = !gives ? 0 : planned ? worst : Math.min(worst, wash.carbonate() + wash.hydrogencarbonate());
        double millilitres =
                addition.volumeMillilitres().map(MeasuredValue::value).orElse(0.0);
        return Optional.of(new StepReaction(
                addition.step(),
                gives ? LeavingGas.CARBON_DIOXIDE.formula() : "",
                gas,
                worstGas,
                litres(gas),
                litres(worstGas),
                loads(addition.step()),
                wash.base(),
                expected,
                worst,
                expected > 0
                        ? OptionalDouble.of(AcidBase.capacityRatio(wash.base(), expected))
                        : OptionalDouble.empty(),
                expected > 0 ? OptionalDouble.of(millilitres * expected / wash.base()) : OptionalDouble.empty(),
                planned
                        ? Phrase.of(
                                "every acid charged or set free by water, less what full conversion uses up and bases bind")
                        : Phrase.of(
                                "{}{}",
                                acidSource(addition.step(), waterBefore),
                                waterBefore
                                        ? Phrase.of("; acid charged went with the water before")
                                        : Phrase.of(
                                                " and the acid charged or set free by water, less what full conversion"
                                                        + " uses up and bases bind"))));
    }

    private Optional<StepReaction> acidWash(Addition addition, Equivalents wash) {
        double bases = 0;
        for (String label : addition.step().given().aqueous()) {
            for (Content content : contents(label)) {
                boolean isBase = run.product(content.substance())
                        .flatMap(p -> p.partitioning().character())
                        .filter(c -> c == Product.Character.BASE)
                        .isPresent();
                if (isBase && content.kind() == Content.Kind.MEASURED) {
                    bases +=
                            content.amountMillimoles().map(MeasuredValue::value).orElse(0.0);
                }
            }
        }
        if (bases == 0) {
            return Optional.empty();
        }
        double millilitres =
                addition.volumeMillilitres().map(MeasuredValue::value).orElse(0.0);
        return Optional.of(new StepReaction(
                addition.step(),
                "",
                0,
                0,
                0,
                0,
                loads(addition.step()),
                wash.acid(),
                bases,
                bases,
                OptionalDouble.of(AcidBase.capacityRatio(wash.acid(), bases)),
                OptionalDouble.of(millilitres * bases / wash.acid()),
                Phrase.of("bases measured in the layer it gave")));
    }

    /** Charges of which no assay of the aqueous layers of a step tells how much came there. */
    private List<ChargeAmount> notMeasuredIn(Step step) {
        Set<String> measured = step.given().aqueous().stream()
                .flatMap(label -> contents(label).stream())
                .filter(c -> c.kind() == Content.Kind.MEASURED)
                .map(c -> SubstanceName.key(c.substance()))
                .collect(Collectors.toSet());
        return amounts.stream()
                .filter(a -> !measured.contains(SubstanceName.key(a.charge().material())))
                .toList();
    }

    private Equivalents chargedAcids(List<ChargeAmount> acids) {
        return acids.stream()
                .map(acidsAndBases::of)
                .map(e -> new Equivalents(e.strongAcid(), e.weakAcid(), 0, 0, 0, 0, 0))
                .reduce(Equivalents.NONE, Equivalents::plus);
    }

    /** Amines and other bases charged that the reaction does not use up; they bind acid before any wash. */
    private double basesChargedMillimoles() {
        double left = 0;
        for (Reagent reagent : Reagent.of(amounts)) {
            double charged = reagent.chargedMillimoles();
            double used = reagent.usedMillimoles(extentMillimoles());
            double base = reagent.portions().stream()
                    .mapToDouble(p -> acidsAndBases.of(p).base())
                    .sum();
            left += charged > 0 ? base * Math.max(0, charged - used) / charged : 0;
        }
        return left;
    }

    private double weakAcidUsedMillimoles(List<ChargeAmount> acids) {
        return Reagent.of(acids).stream()
                .filter(r -> acidsAndBases.of(r.portions().get(0)).weakAcid() > 0)
                .mapToDouble(r -> r.usedMillimoles(extentMillimoles()))
                .sum();
    }

    private double measuredAcidMillimoles(Step step) {
        double millimoles = 0;
        for (String label : step.given().aqueous()) {
            for (Content content : contents(label)) {
                if (acidsAndBases.isWeakAcid(content.substance()) && content.kind() == Content.Kind.MEASURED) {
                    millimoles +=
                            content.amountMillimoles().map(MeasuredValue::value).orElse(0.0);
                }
            }
        }
        return millimoles;
    }

    private String acidSource(Step step, boolean waterBefore) {
        return !waterBefore && acidFromOxidantMillimoles() > measuredAcidMillimoles(step)
                ? "acids that the oxidant sets free"
                : "acids measured in the layer it gave";
    }

    private double acidFromOxidantMillimoles() {
        return amounts.stream()
                .mapToDouble(a -> substances
                                .oxidant(a.charge().material())
                                .map(Oxidant::acidSetFree)
                                .orElse(0.0)
                        * a.amountMillimoles().map(MeasuredValue::value).orElse(0.0))
                .sum();
    }

    private List<Content> contents(String label) {
        return Optional.ofNullable(layers.get(label)).map(LayerTally::contents).orElse(List.of());
    }

    private double extentMillimoles() {
        return theory.map(t -> t.extentMillimoles().value()).orElse(0.0);
    }

    private static int loads(Step step) {
        return (int) Math.max(
                1,
                Math.round(step.funnel().loads().entered().map(Entered::value).orElse(1.0)));
    }

    private double litres(double millimoles) {
        return IdealGas.volumeLitres(
                millimoles / 1000, limits.value(Limit.ROOM_TEMPERATURE), limits.value(Limit.ROOM_PRESSURE));
    }
}
