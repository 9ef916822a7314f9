package workuptally.tally.bench;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Hydride;
import workuptally.chemistry.IdealGas;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.Oxidant;
import workuptally.tally.amounts.AcidsAndBases;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Equivalents;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;
import workuptally.tally.layers.LayerTally;

/**
 * What each wash neutralises and which gas it sets free.
 *
 * <p>A base wash meets the acids that were measured in the layer it gave and the mineral acid charged, if no water went over the mixture
 * before. In a plan it meets every acid charged less what full conversion uses up, and in the worst case every acid charged. Hydrogen at the
 * first quench: every hydride equivalent less what the reaction uses up; in the worst case all of them.
 */
public final class StepReactions {
    private final Run run;
    private final Limits limits;
    private final AcidsAndBases acidsAndBases;
    private final List<ChargeAmount> amounts;
    private final Map<Step, Addition> additions = new IdentityHashMap<>();
    private final Map<String, LayerTally> layers = new LinkedHashMap<>();
    private final Optional<Theory> theory;
    private final Substances substances;

    public StepReactions(
            Run run,
            Limits limits,
            Substances substances,
            AcidsAndBases acidsAndBases,
            List<ChargeAmount> amounts,
            List<Addition> additions,
            List<LayerTally> layers,
            Optional<Theory> theory) {
        this.run = run;
        this.limits = limits;
        this.substances = substances;
        this.acidsAndBases = acidsAndBases;
        this.amounts = amounts;
        this.theory = theory;
        additions.forEach(a -> this.additions.put(a.step(), a));
        layers.forEach(l -> this.layers.put(l.label(), l));
    }

    public List<StepReaction> list() {
        List<StepReaction> reactions = new ArrayList<>();
        boolean waterBefore = false;
        boolean quenched = false;
        for (Step step : run.orderedSteps()) {
            Optional<Addition> addition = Optional.ofNullable(additions.get(step));
            if (!quenched && step.operation().filter(o -> o == Operation.QUENCH).isPresent()) {
                hydrogen(step).ifPresent(reactions::add);
                quenched = true;
            }
            if (addition.isPresent()) {
                Equivalents wash = acidsAndBases.of(addition.get());
                if (wash.base() > 0) {
                    baseWash(addition.get(), wash, waterBefore).ifPresent(reactions::add);
                } else if (wash.strongAcid() > 0 && !step.givesAqueous().isEmpty()) {
                    acidWash(addition.get(), wash).ifPresent(reactions::add);
                }
            }
            waterBefore |= !step.givesAqueous().isEmpty();
        }
        return reactions;
    }

    /** Hydrogen of every hydride charged; what one reagent has left does not make up for what another has used. */
    private Optional<StepReaction> hydrogen(Step step) {
        double expected = 0;
        double worst = 0;
        List<String> sources = new ArrayList<>();
        for (List<ChargeAmount> portions : hydrides().values()) {
            Hydride hydride = hydride(portions.get(0).charge().formula()).orElseThrow();
            double charged = portions.stream()
                    .flatMap(p -> p.amountMillimoles().stream())
                    .mapToDouble(MeasuredValue::value)
                    .sum();
            double perExtent = portions.stream()
                    .flatMap(p -> p.charge().coefficient().entered().stream())
                    .mapToDouble(Entered::value)
                    .max()
                    .orElse(0);
            double consumed = extentMillimoles() * perExtent * hydride.equivalentsPerMole();
            expected += hydride.hydrogenMillimoles(charged, consumed);
            worst += hydride.hydrogenMillimoles(charged, 0);
            sources.add(String.format(
                    Locale.ROOT,
                    "%d hydrides in each of %.3g mmol %s, less %.3g mmol used by the reaction",
                    hydride.equivalentsPerMole(),
                    charged,
                    portions.get(0).charge().material(),
                    consumed));
        }
        if (sources.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new StepReaction(
                step,
                "H2",
                expected,
                worst,
                litres(expected),
                litres(worst),
                loads(step),
                0,
                0,
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                String.join("; ", sources)));
    }

    /** Charges of each hydride whose amount is known; rows of one name are portions of it, which the reaction uses up once. */
    private Map<String, List<ChargeAmount>> hydrides() {
        Map<String, List<ChargeAmount>> hydrides = new LinkedHashMap<>();
        for (ChargeAmount amount : amounts) {
            if (hydride(amount.charge().formula()).isPresent()
                    && amount.amountMillimoles().isPresent()) {
                hydrides.computeIfAbsent(amount.charge().material().toLowerCase(Locale.ROOT), m -> new ArrayList<>())
                        .add(amount);
            }
        }
        return hydrides;
    }

    private Optional<Hydride> hydride(String formula) {
        try {
            return formula.isBlank() ? Optional.empty() : Hydride.of(substances.formula(formula));
        } catch (IllegalFormulaException e) {
            return Optional.empty();
        }
    }

    private Optional<StepReaction> baseWash(Addition addition, Equivalents wash, boolean waterBefore) {
        boolean planned = run.status() == Run.Status.PLANNED;
        Equivalents charged = chargedAcids();
        double consumed = planned ? weakAcidUsedMillimoles() : 0;
        double measured =
                Math.max(measuredAcidMillimoles(addition.step()), waterBefore ? 0 : acidFromOxidantMillimoles());
        double expected =
                planned ? Math.max(0, charged.acid() - consumed) : measured + (waterBefore ? 0 : charged.strongAcid());
        double worst = planned ? charged.acid() : measured + charged.strongAcid();
        if (worst <= 0) {
            return Optional.empty();
        }
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
                gives ? "CO2" : "",
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
                        ? "every acid charged, less what full conversion uses up"
                        : acidSource(addition.step(), waterBefore)
                                + (waterBefore
                                        ? "; mineral acid went with the water before"
                                        : " and the mineral acid charged")));
    }

    private Optional<StepReaction> acidWash(Addition addition, Equivalents wash) {
        double bases = 0;
        for (String label : addition.step().givesAqueous()) {
            for (Content content : contents(label)) {
                boolean isBase = run.product(content.substance())
                        .flatMap(p -> p.character())
                        .filter(c -> c == workuptally.model.Product.Character.BASE)
                        .isPresent();
                if (isBase) {
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
                "bases measured in the layer it gave"));
    }

    private Equivalents chargedAcids() {
        return amounts.stream()
                .map(acidsAndBases::of)
                .map(e -> new Equivalents(e.strongAcid(), e.weakAcid(), 0, 0, 0))
                .reduce(Equivalents.NONE, Equivalents::plus);
    }

    private double weakAcidUsedMillimoles() {
        return amounts.stream()
                .filter(a -> acidsAndBases.of(a).weakAcid() > 0)
                .mapToDouble(a ->
                        a.charge().coefficient().entered().map(Entered::value).orElse(0.0) * extentMillimoles())
                .sum();
    }

    private double measuredAcidMillimoles(Step step) {
        double millimoles = 0;
        for (String label : step.givesAqueous()) {
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
                1, Math.round(step.loads().entered().map(Entered::value).orElse(1.0)));
    }

    private double litres(double millimoles) {
        return IdealGas.volumeLitres(
                millimoles / 1000, limits.value(Limit.ROOM_TEMPERATURE), limits.value(Limit.ROOM_PRESSURE));
    }
}
