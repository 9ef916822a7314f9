package workuptally.tally;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import workuptally.chemistry.Drying;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.tally.Closure.Candidate;

/**
 * Where the unaccounted part of a product can be: layers that were not assayed for it, drying cakes, distillates of a volatile product,
 * by-products that were named and never looked for, and transfer. Each with a bound or a range, never with a claim.
 */
final class ProductWhereabouts implements Whereabouts {
    /** Loss on glass at small scale, fraction of theory (common practice). */
    private static final Drying.Range TRANSFER_LOSS = new Drying.Range(0.01, 0.02);
    /** Normal boiling point below which a product can leave with the solvent, °C (common practice). */
    private static final double VOLATILE_BELOW_CELSIUS = 150;

    private final Run run;
    private final Substances substances;
    private final List<LayerTally> layers;
    private final List<LotTally> lots;
    private final List<Addition> additions;
    private final LayerFlow flow;
    private final Optional<Theory> theory;
    private final Found found;

    ProductWhereabouts(
            Run run,
            Substances substances,
            List<LayerTally> layers,
            List<LotTally> lots,
            List<Addition> additions,
            LayerFlow flow,
            Optional<Theory> theory,
            Found found) {
        this.run = run;
        this.substances = substances;
        this.layers = layers;
        this.lots = lots;
        this.additions = additions;
        this.flow = flow;
        this.theory = theory;
        this.found = found;
    }

    @Override
    public List<Candidate> of(Product product, double unaccountedGrams, double standardUncertaintyGrams) {
        double most = Math.max(0, unaccountedGrams + Contents.ONE_SIDED_95 * standardUncertaintyGrams);
        List<Candidate> candidates = new ArrayList<>();
        for (LayerTally layer : layers) {
            if (!layer.terminal() || !layer.endsWorkup()) {
                continue;
            }
            Layer.Phase phase = layer.phase().orElse(Layer.Phase.AQUEOUS);
            if (phase == Layer.Phase.SOLID) {
                cake(layer, product).ifPresent(candidates::add);
            } else if (phase == Layer.Phase.DISTILLATE) {
                distillate(layer, product, most).ifPresent(candidates::add);
            } else {
                unassayed(layer, product, most).ifPresent(candidates::add);
            }
        }
        for (Product other : run.products()) {
            byProduct(other, product, most).ifPresent(candidates::add);
        }
        theory.flatMap(t -> t.products().stream()
                        .filter(p -> p.product().equals(product))
                        .findFirst())
                .ifPresent(p -> candidates.add(new Candidate(
                        "transfer and glassware",
                        TRANSFER_LOSS.low() * p.massGrams().value(),
                        TRANSFER_LOSS.high() * p.massGrams().value(),
                        "1 to 2 % of theory is usual at bench scale (common practice)",
                        "rinse the flasks and weigh the residue")));
        candidates.sort(Comparator.comparingDouble(Candidate::highGrams).reversed());
        return candidates;
    }

    private static Optional<Candidate> unassayed(LayerTally layer, Product product, double most) {
        if (layer.entry().isEmpty()) {
            return Optional.of(new Candidate(
                    "layer " + layer.label(),
                    0,
                    most,
                    "given by a step, never recorded",
                    "find the portion and enter it in Layers"));
        }
        return layer.contents().stream()
                .filter(c -> c.substance().equalsIgnoreCase(product.name())
                        && c.massGrams().isEmpty())
                .findFirst()
                .map(c -> new Candidate(
                        "layer " + layer.label(),
                        0,
                        Math.min(most, c.upperBoundGrams().orElse(most)),
                        c.evidence(),
                        "assay " + layer.label()));
    }

    private Optional<Candidate> cake(LayerTally cake, Product product) {
        Optional<Step> filter = run.orderedSteps().stream()
                .filter(s -> s.gives().contains(cake.label()))
                .findFirst();
        double agent = additions.stream()
                .filter(a -> substances.dryingAgent(a.material()).isPresent())
                .flatMap(a -> a.massGrams().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
        double wet = cake.massGrams().map(MeasuredValue::value).orElse(0.0);
        double isolated = lots.stream()
                .filter(l -> l.endsWorkup() && l.lot().product().equalsIgnoreCase(product.name()))
                .flatMap(l -> l.pureGrams().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
        if (filter.isEmpty() || wet <= agent || agent == 0 || isolated == 0) {
            return Optional.empty();
        }
        Mixture solution = filter.get().from().stream()
                .map(flow::portion)
                .reduce(Mixture.EMPTY, Mixture::plus)
                .share(n -> substances.isOrganicSolvent(n) ? 1 : 0);
        boolean rinsed = run.orderedSteps().stream()
                .dropWhile(s -> !s.equals(filter.get()))
                .anyMatch(s -> s.operation().filter(o -> o == Operation.RINSE).isPresent());
        double fraction = isolated / (isolated + solution.totalGrams());
        Drying.Range held = Drying.productOnCakeGrams(
                wet, agent, mostWaterGrams(solution), fraction, rinsed ? Drying.LEFT_AFTER_RINSE_FRACTION : 1);
        return Optional.of(new Candidate(
                "cake " + cake.label(),
                held.low(),
                held.high(),
                String.format(
                        Locale.ROOT,
                        "gain %.2f g over the agent, %s; solution about %.1f %% product",
                        wet - agent,
                        rinsed ? "rinsed" : "not rinsed",
                        100 * fraction),
                "rinse the cake and weigh the residue of the rinse"));
    }

    private double mostWaterGrams(Mixture solution) {
        double dissolved = 0;
        for (var part : solution.parts().entrySet()) {
            dissolved += part.getValue().grams()
                    * substances
                            .solvent(part.getKey())
                            .map(s ->
                                    s.waterMixing().waterInSolventMassPercent().orElse(0))
                            .orElse(0.0)
                    / 100;
        }
        return dissolved;
    }

    private static Optional<Candidate> distillate(LayerTally distillate, Product product, double most) {
        Optional<Entered> boils =
                product.boilingPointCelsius().entered().filter(b -> b.value() < VOLATILE_BELOW_CELSIUS);
        return boils.map(b -> new Candidate(
                "distillate " + distillate.label(),
                0,
                most,
                product.name() + " boils at " + b.asTyped() + " °C",
                "assay " + distillate.label()));
    }

    private Optional<Candidate> byProduct(Product other, Product product, double most) {
        boolean shares = other.skeleton().stream()
                .anyMatch(a ->
                        product.skeleton().stream().anyMatch(b -> a.partner().equalsIgnoreCase(b.partner())));
        boolean lookedFor =
                found.terms().stream().anyMatch(t -> t.content().substance().equalsIgnoreCase(other.name()));
        if (other.wanted() || !shares || lookedFor) {
            return Optional.empty();
        }
        return Optional.of(new Candidate(
                other.name(), 0, most, "named in Products, assayed nowhere", "assay the crude for " + other.name()));
    }
}
