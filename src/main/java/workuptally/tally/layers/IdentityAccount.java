package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerIdentity.Expected;
import workuptally.tally.layers.LayerIdentity.PositionCheck;
import workuptally.tally.layers.LayerIdentity.Verdict;

/**
 * Which layer of a contact is which, by density.
 *
 * <p>ρ = m/V of each measured layer against what organic and aqueous phase of the contact should have, Σm/ΣV over their estimated parts, each at the
 * temperature of the layer.
 * Solutes whose phase is not known (the organic solids charged) are counted in neither and in both, which gives a range: 1.2 g/mL in an
 * organic phase, 2.5 g/mL as dissolved salt in an aqueous one (common practice). A layer is assigned to the phase that its density fits
 * within 3u when the other lies further off; where the two expectations differ by less than 0.05 g/mL or 3u, or neither fits, the
 * density cannot tell. Nothing is expected of a phase of which more than a tenth is the unknown rest of a charge. A contact whose measured layers do not all say the same cannot tell either.
 */
public final class IdentityAccount {

    private static final double TABLE_CELSIUS = 20;

    private final Run run;
    private final Substances substances;
    private final LayerFlow flow;

    public IdentityAccount(Run run, Substances substances, LayerFlow flow) {
        this.run = run;
        this.substances = substances;
        this.flow = flow;
    }

    /** One identity for each layer that a contact gave and the Layers table records as organic or aqueous. */
    public List<LayerIdentity> of(List<LayerTally> layers, List<ChargeAmount> amounts) {
        double solutes = amounts.stream().mapToDouble(this::soluteGrams).sum();
        boolean reactionMeasured = amounts.stream().noneMatch(this::isSolventOfUnknownAmount);
        List<LayerIdentity> identities = new ArrayList<>();
        for (Step step : run.orderedSteps()) {
            Optional<LayerFlow.Phases> phases = flow.phases(step);
            List<LayerTally> given = layers.stream()
                    .filter(l -> step.given().organic().contains(l.label())
                            || step.given().aqueous().contains(l.label()))
                    .filter(l -> !step.from().contains(l.label()))
                    .filter(l -> recorded(l).isPresent())
                    .toList();
            if (phases.isPresent() && !given.isEmpty()) {
                identities.addAll(ofContact(step, phases.get(), given, solutes, reactionMeasured));
            }
        }
        return identities;
    }

    /** Densities to expect of the two phases of a contact at 20 °C, if it is one and both phases have a liquid. */
    public Optional<PhaseDensities> densities(Step step, List<ChargeAmount> amounts) {
        double solutes = amounts.stream().mapToDouble(this::soluteGrams).sum();
        return flow.phases(step).flatMap(p -> densities(p, solutes, TABLE_CELSIUS));
    }

    private Optional<PhaseDensities> densities(LayerFlow.Phases phases, double solutes, double celsius) {
        return expected(phases.organic(), solutes, substances.value(Threshold.ORGANIC_SOLUTE_DENSITY), celsius)
                .flatMap(organic -> expected(
                                phases.aqueous(), solutes, substances.value(Threshold.DISSOLVED_SALT_DENSITY), celsius)
                        .map(aqueous -> new PhaseDensities(organic, aqueous)));
    }

    private List<LayerIdentity> ofContact(
            Step step, LayerFlow.Phases phases, List<LayerTally> given, double solutes, boolean reactionMeasured) {
        List<PhaseDensities> densities = given.stream()
                .flatMap(l -> densities(phases, solutes, celsius(l)).stream())
                .toList();
        if (densities.size() < given.size()) {
            return List.of();
        }
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            verdicts.add(verdict(
                    given.get(i), densities.get(i).organic(), densities.get(i).aqueous()));
        }
        boolean allTell =
                verdicts.stream().filter(v -> v != Verdict.NOT_MEASURED).allMatch(v -> v == Verdict.SWAPPED);
        List<LayerIdentity> identities = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            LayerTally layer = given.get(i);
            Expected organic = densities.get(i).organic();
            Expected aqueous = densities.get(i).aqueous();
            boolean isGuess = verdicts.get(i) == Verdict.CONSISTENT
                    ? !isMeasured(step, reactionMeasured)
                    : verdicts.get(i) == Verdict.SWAPPED && !allTell;
            Verdict verdict = isGuess ? Verdict.CANNOT_TELL : verdicts.get(i);
            identities.add(new LayerIdentity(
                    layer.label(),
                    step,
                    recorded(layer).orElseThrow(),
                    layer.densityGramsPerMillilitre(),
                    organic,
                    aqueous,
                    verdict,
                    position(layer, given, verdict, organic, aqueous),
                    lower(given, organic, aqueous, isMeasured(step, reactionMeasured))));
        }
        return identities;
    }

    /**
     * False where this contact, a step that its portions went through, or the reaction brought a liquid of unknown amount: densities
     * expected are guesses.
     */
    private boolean isMeasured(Step contact, boolean reactionMeasured) {
        Set<String> upstream = new LinkedHashSet<>(contact.from());
        if (addsUnknown(contact)) {
            return false;
        }
        List<Step> backwards = new ArrayList<>(run.orderedSteps());
        Collections.reverse(backwards);
        boolean isBefore = false;
        for (Step step : backwards) {
            boolean earlier = isBefore;
            isBefore = isBefore || step == contact;
            if (earlier && step.gives().stream().anyMatch(upstream::contains)) {
                upstream.addAll(step.from());
                if (addsUnknown(step)) {
                    return false;
                }
            }
        }
        return !upstream.contains(Step.REACTION_MIXTURE) || reactionMeasured;
    }

    private boolean isSolventOfUnknownAmount(ChargeAmount amount) {
        return amount.massGrams().isEmpty()
                && amount.volumeMillilitres().isEmpty()
                && substances.isOrganicSolvent(amount.charge().material());
    }

    private static boolean addsUnknown(Step step) {
        return !step.added().material().isBlank()
                && step.added()
                        .volumeMillilitres()
                        .entered()
                        .filter(v -> v.value() > 0)
                        .isEmpty()
                && step.added().massGrams().entered().filter(m -> m.value() > 0).isEmpty();
    }

    /** Temperature at which the volume of a layer was read; that of the tables where none is entered, or one beyond their reach. */
    private double celsius(LayerTally layer) {
        return layer.entry()
                .flatMap(l -> l.temperatureCelsius().entered())
                .map(Entered::value)
                .filter(t -> Math.abs(t - TABLE_CELSIUS) <= substances.value(Threshold.DENSITY_REACH))
                .orElse(TABLE_CELSIUS);
    }

    private static Optional<Layer.Phase> recorded(LayerTally layer) {
        return layer.entry().flatMap(Layer::phase).filter(p -> p == Layer.Phase.ORGANIC || p == Layer.Phase.AQUEOUS);
    }

    /** Grams of a charge that is neither a listed solvent nor bound to the water; of a solution only what is dissolved. */
    private double soluteGrams(ChargeAmount amount) {
        String material = amount.charge().material();
        if (substances.isOrganicSolvent(material) || flow.goesWithWater(material)) {
            return 0;
        }
        double grams = amount.massGrams().map(MeasuredValue::value).orElse(0.0);
        boolean known = amount.amountMillimoles().isPresent()
                && amount.molarMassGramsPerMole().isPresent();
        return known
                ? Math.min(
                        grams,
                        amount.amountMillimoles().get().value()
                                * amount.molarMassGramsPerMole().getAsDouble()
                                / 1000)
                : grams;
    }

    private Optional<Expected> expected(Ingredients phase, double solutes, double soluteDensity, double celsius) {
        Ingredients liquid = phase.share(c -> substances.isOrganicSolvent(c) || flow.goesWithWater(c) ? 1 : 0);
        double rest =
                liquid.share(c -> c.equals(IngredientAccount.REST) ? 1 : 0).millilitres();
        if (liquid.millilitres() <= 0 || rest > substances.value(Threshold.PHASE_UNKNOWN_MOST) * liquid.millilitres()) {
            return Optional.empty();
        }
        double millilitres = 0;
        double grams = 0;
        for (Map.Entry<String, Ingredients.Part> part : liquid.parts().entrySet()) {
            OptionalDouble of = grams(part.getKey(), part.getValue());
            if (of.isEmpty()) {
                return Optional.empty();
            }
            grams += of.getAsDouble();
            millilitres += part.getValue().millilitres() / substances.densityOver20(part.getKey(), celsius);
        }
        double dissolving = liquid.share(
                        c -> substances.isOrganicSolvent(c) || c.equals(IngredientAccount.WATER) ? 1 : 0)
                .millilitres();
        double dissolved = liquid.parts().values().stream()
                .filter(part -> part.millilitres() <= 0)
                .mapToDouble(Ingredients.Part::grams)
                .sum();
        if (dissolving < substances.value(Threshold.PHASE_SOLVENT_LEAST) * millilitres
                || dissolved > grams - dissolved) {
            return Optional.empty(); // salts and acids in hardly any water are no phase whose density a sum would tell
        }
        double without = grams / millilitres;
        double with = (grams + solutes) / (millilitres + solutes / soluteDensity);
        return Optional.of(new Expected(Math.min(without, with), Math.max(without, with)));
    }

    /**
     * Of a liquid charged by volume whose density was not entered or not read, by the density of the tables; empty without one. The volume
     * that salts take up has no mass beside theirs.
     */
    private OptionalDouble grams(String component, Ingredients.Part part) {
        if (part.grams() > 0 || part.millilitres() <= 0 || component.equals(IngredientAccount.SALTS)) {
            return OptionalDouble.of(part.grams());
        }
        OptionalDouble density = substances.densityGramsPerMillilitre(component);
        return density.isPresent()
                ? OptionalDouble.of(part.millilitres() * density.getAsDouble())
                : OptionalDouble.empty();
    }

    private Verdict verdict(LayerTally layer, Expected organic, Expected aqueous) {
        if (layer.densityGramsPerMillilitre().isEmpty()) {
            return Verdict.NOT_MEASURED;
        }
        MeasuredValue density = layer.densityGramsPerMillilitre().get();
        double reach = substances.value(Threshold.DENSITY_FIT) * density.standardUncertainty();
        if (organic.gap(aqueous) < Math.max(substances.value(Threshold.DENSITY_DIFFERENCE), reach)) {
            return Verdict.CANNOT_TELL;
        }
        boolean fitsOrganic = organic.distance(density.value()) <= reach;
        boolean fitsAqueous = aqueous.distance(density.value()) <= reach;
        if (fitsOrganic == fitsAqueous) {
            return Verdict.CANNOT_TELL;
        }
        Layer.Phase byDensity = fitsOrganic ? Layer.Phase.ORGANIC : Layer.Phase.AQUEOUS;
        return byDensity == recorded(layer).orElseThrow() ? Verdict.CONSISTENT : Verdict.SWAPPED;
    }

    private PositionCheck position(
            LayerTally layer, List<LayerTally> given, Verdict verdict, Expected organic, Expected aqueous) {
        Optional<Layer.Position> position =
                layer.entry().flatMap(Layer::position).filter(p -> p != Layer.Position.MIDDLE);
        if (position.isEmpty()) {
            return PositionCheck.OPEN;
        }
        Optional<Boolean> denser = denserThanOther(layer, position.get(), given);
        if (denser.isEmpty() && (verdict == Verdict.CONSISTENT || verdict == Verdict.SWAPPED)) {
            boolean isOrganic =
                    (recorded(layer).orElseThrow() == Layer.Phase.ORGANIC) == (verdict == Verdict.CONSISTENT);
            boolean organicDenser = organic.lowGramsPerMillilitre() > aqueous.highGramsPerMillilitre();
            denser = Optional.of(isOrganic == organicDenser);
        }
        return denser.map(d -> d == (position.get() == Layer.Position.LOWER)
                        ? PositionCheck.AGREES
                        : PositionCheck.CONTRADICTS)
                .orElse(PositionCheck.OPEN);
    }

    private Optional<Layer.Phase> lower(
            List<LayerTally> given, Expected organic, Expected aqueous, boolean isMeasured) {
        Optional<MeasuredValue> ofOrganic = density(given, Layer.Phase.ORGANIC);
        Optional<MeasuredValue> ofAqueous = density(given, Layer.Phase.AQUEOUS);
        if (ofOrganic.isPresent() && ofAqueous.isPresent()) {
            MeasuredValue difference = ofOrganic.get().minus(ofAqueous.get());
            boolean apart = Math.abs(difference.value())
                    > substances.value(Threshold.DENSITY_FIT) * difference.standardUncertainty();
            return apart
                    ? Optional.of(difference.value() > 0 ? Layer.Phase.ORGANIC : Layer.Phase.AQUEOUS)
                    : Optional.empty();
        }
        return isMeasured && organic.gap(aqueous) >= substances.value(Threshold.DENSITY_DIFFERENCE)
                ? LayerIdentity.lower(organic, aqueous)
                : Optional.empty();
    }

    private static Optional<MeasuredValue> density(List<LayerTally> given, Layer.Phase phase) {
        return given.stream()
                .filter(l -> recorded(l).orElseThrow() == phase)
                .flatMap(l -> l.densityGramsPerMillilitre().stream())
                .findFirst();
    }

    /** By the measured densities of the two layers, where they differ by more than their uncertainty. */
    private Optional<Boolean> denserThanOther(LayerTally layer, Layer.Position position, List<LayerTally> given) {
        Optional<MeasuredValue> own = layer.densityGramsPerMillilitre();
        Optional<MeasuredValue> other = given.stream()
                .filter(l -> l.entry()
                        .flatMap(Layer::position)
                        .filter(p -> p != position && p != Layer.Position.MIDDLE)
                        .isPresent())
                .flatMap(l -> l.densityGramsPerMillilitre().stream())
                .findFirst();
        if (own.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        MeasuredValue difference = own.get().minus(other.get());
        boolean apart = Math.abs(difference.value())
                > substances.value(Threshold.DENSITY_FIT) * difference.standardUncertainty();
        return apart ? Optional.of(difference.value() > 0) : Optional.empty();
    }
}
