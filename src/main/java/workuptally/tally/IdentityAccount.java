package workuptally.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.tally.LayerIdentity.Expected;
import workuptally.tally.LayerIdentity.PositionCheck;
import workuptally.tally.LayerIdentity.Verdict;

/**
 * Which layer of a contact is which, by density.
 *
 * <p>ρ = m/V of each measured layer against what organic and aqueous phase of the contact should have, Σm/ΣV over their estimated parts.
 * Solutes whose phase is not known (the organic solids charged) are counted in neither and in both, which gives a range: 1.2 g/mL in an
 * organic phase, 2.5 g/mL as dissolved salt in an aqueous one (common practice). A layer is assigned to the phase that its density fits
 * within 3u when the other lies further off; where the two expectations differ by less than 0.05 g/mL or 3u, or neither fits, the
 * density cannot tell. A contact whose measured layers do not all say the same cannot tell either.
 */
final class IdentityAccount {
    /** Standard uncertainties within which a density fits; common practice. */
    static final double STANDARD_UNCERTAINTIES = 3;

    private static final double LEAST_DIFFERENCE_GRAMS_PER_MILLILITRE = 0.05;
    private static final double ORGANIC_SOLUTE_GRAMS_PER_MILLILITRE = 1.2;
    private static final double DISSOLVED_SALT_GRAMS_PER_MILLILITRE = 2.5;

    private final Run run;
    private final LayerFlow flow;

    IdentityAccount(Run run, LayerFlow flow) {
        this.run = run;
        this.flow = flow;
    }

    /** One identity for each layer that a contact gave and the Layers table records as organic or aqueous. */
    List<LayerIdentity> of(List<LayerTally> layers, List<ChargeAmount> amounts) {
        double solutes = amounts.stream().mapToDouble(this::soluteGrams).sum();
        List<LayerIdentity> identities = new ArrayList<>();
        for (Step step : run.orderedSteps()) {
            Optional<LayerFlow.Phases> phases = flow.phases(step);
            List<LayerTally> given = layers.stream()
                    .filter(l -> step.givesOrganic().contains(l.label())
                            || step.givesAqueous().contains(l.label()))
                    .filter(l -> !step.from().contains(l.label()))
                    .filter(l -> recorded(l).isPresent())
                    .toList();
            if (phases.isPresent() && !given.isEmpty()) {
                identities.addAll(ofContact(step, phases.get(), given, solutes));
            }
        }
        return identities;
    }

    /** Densities to expect of the two phases of a contact, if it is one and both phases have a liquid. */
    Optional<Plan.Densities> densities(Step step, List<ChargeAmount> amounts) {
        double solutes = amounts.stream().mapToDouble(this::soluteGrams).sum();
        return flow.phases(step)
                .flatMap(p -> expected(p.organic(), solutes, ORGANIC_SOLUTE_GRAMS_PER_MILLILITRE)
                        .flatMap(organic -> expected(p.aqueous(), solutes, DISSOLVED_SALT_GRAMS_PER_MILLILITRE)
                                .map(aqueous -> new Plan.Densities(organic, aqueous))));
    }

    private List<LayerIdentity> ofContact(Step step, LayerFlow.Phases phases, List<LayerTally> given, double solutes) {
        Optional<Expected> organic = expected(phases.organic(), solutes, ORGANIC_SOLUTE_GRAMS_PER_MILLILITRE);
        Optional<Expected> aqueous = expected(phases.aqueous(), solutes, DISSOLVED_SALT_GRAMS_PER_MILLILITRE);
        if (organic.isEmpty() || aqueous.isEmpty()) {
            return List.of();
        }
        List<Verdict> verdicts = given.stream()
                .map(l -> verdict(l, organic.get(), aqueous.get()))
                .toList();
        boolean allTell =
                verdicts.stream().filter(v -> v != Verdict.NOT_MEASURED).allMatch(v -> v == Verdict.SWAPPED);
        List<LayerIdentity> identities = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            LayerTally layer = given.get(i);
            Verdict verdict = verdicts.get(i) == Verdict.SWAPPED && !allTell ? Verdict.CANNOT_TELL : verdicts.get(i);
            identities.add(new LayerIdentity(
                    layer.label(),
                    step,
                    recorded(layer).orElseThrow(),
                    layer.densityGramsPerMillilitre(),
                    organic.get(),
                    aqueous.get(),
                    verdict,
                    position(layer, given, verdict, organic.get(), aqueous.get())));
        }
        return identities;
    }

    private static Optional<Layer.Phase> recorded(LayerTally layer) {
        return layer.entry().flatMap(Layer::phase).filter(p -> p == Layer.Phase.ORGANIC || p == Layer.Phase.AQUEOUS);
    }

    /** Grams of a charge that is neither a listed solvent nor bound to the water; of a solution only what is dissolved. */
    private double soluteGrams(ChargeAmount amount) {
        String material = amount.charge().material();
        if (flow.isOrganicSolvent(material) || flow.goesWithWater(material)) {
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

    private Optional<Expected> expected(Mixture phase, double solutes, double soluteDensity) {
        Mixture liquid = phase.share(c -> flow.isOrganicSolvent(c) || flow.goesWithWater(c) ? 1 : 0);
        if (liquid.millilitres() <= 0) {
            return Optional.empty();
        }
        double without = liquid.totalGrams() / liquid.millilitres();
        double with = (liquid.totalGrams() + solutes) / (liquid.millilitres() + solutes / soluteDensity);
        return Optional.of(new Expected(Math.min(without, with), Math.max(without, with)));
    }

    private static Verdict verdict(LayerTally layer, Expected organic, Expected aqueous) {
        if (layer.densityGramsPerMillilitre().isEmpty()) {
            return Verdict.NOT_MEASURED;
        }
        MeasuredValue density = layer.densityGramsPerMillilitre().get();
        double reach = STANDARD_UNCERTAINTIES * density.standardUncertainty();
        if (organic.gap(aqueous) < Math.max(LEAST_DIFFERENCE_GRAMS_PER_MILLILITRE, reach)) {
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

    private static PositionCheck position(
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

    /** By the measured densities of the two layers, where they differ by more than their uncertainty. */
    private static Optional<Boolean> denserThanOther(
            LayerTally layer, Layer.Position position, List<LayerTally> given) {
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
        boolean apart = Math.abs(difference.value()) > STANDARD_UNCERTAINTIES * difference.standardUncertainty();
        return apart ? Optional.of(difference.value() > 0) : Optional.empty();
    }
}
