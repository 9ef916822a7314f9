package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import workuptally.chemistry.Drying;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.MolarMassAccount;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;
import workuptally.tally.balance.Closure.Candidate;
import workuptally.tally.layers.DryingCake;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.UnlabelledPhase;

/**
 * Where the unaccounted part of a product can be: layers that were not assayed for it, drying cakes, distillates of a volatile product,
 * by-products that were named and never looked for, and transfer. Each with a bound or a range, never with a claim.
 */
public final class ProductWhereabouts implements Whereabouts {
    /** Loss on glass at small scale, fraction of theory (common practice). */
    private static final Drying.Range TRANSFER_LOSS = new Drying.Range(0.01, 0.02);

    private final Run run;
    private final Substances substances;
    private final List<LayerTally> layers;
    private final List<DryingCake> cakes;
    private final List<UnlabelledPhase> unlabelled;
    private final Optional<Theory> theory;
    private final Found found;
    private final List<LotTally> lots;
    private final MolarMassAccount molarMasses;
    private final WhereToLook where;

    public ProductWhereabouts(
            Run run,
            Substances substances,
            Portions portions,
            List<DryingCake> cakes,
            List<UnlabelledPhase> unlabelled,
            Optional<Theory> theory,
            MolarMassAccount molarMasses) {
        this.run = run;
        this.substances = substances;
        this.layers = portions.layers();
        this.cakes = cakes;
        this.unlabelled = unlabelled;
        this.theory = theory;
        this.found = portions.found();
        this.lots = portions.lots();
        this.molarMasses = molarMasses;
        this.where = new WhereToLook(run, substances, portions.layers());
    }

    @Override
    public List<Candidate> of(Product product, Predicate<String> counts, double unaccountedGrams, double reachGrams) {
        double missing = Math.max(0, unaccountedGrams + reachGrams);
        List<Candidate> candidates = new ArrayList<>();
        Optional<Enantiomers> resolved = run.kind() == Run.Kind.RESOLUTION
                ? Enantiomers.of(run, product, counts, theory, found)
                : Optional.empty();
        double most =
                Math.min(missing, resolved.map(Enantiomers::wantedAtMostGrams).orElse(missing));
        resolved.flatMap(r -> r.other(missing)).ifPresent(candidates::add);
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
                unassayed(layer, counts, most).ifPresent(candidates::add);
            }
        }
        unlabelled.forEach(phase -> candidates.add(new Candidate(
                phase.name(),
                0,
                most,
                "given by a step, without a label",
                "find the portion, label it in Workup and enter it in Layers",
                Closure.Looked.IN_NO_KEPT_PORTION)));
        for (Product other : run.products()) {
            if (resolved.filter(r -> r.isOther(other)).isEmpty()) {
                byProduct(other, product, counts, missing).ifPresent(candidates::add);
            }
        }
        for (Charge charge : run.charges()) {
            unreacted(charge, product, counts, missing).ifPresent(candidates::add);
        }
        theory.flatMap(t -> t.products().stream()
                        .filter(p -> p.product() == product)
                        .findFirst())
                .ifPresent(p -> candidates.add(new Candidate(
                        "transfer and glassware",
                        TRANSFER_LOSS.low() * p.massGrams().value(),
                        TRANSFER_LOSS.high() * p.massGrams().value(),
                        "1 to 2 % of theory is usual at bench scale (common practice)",
                        "rinse the flasks and weigh the residue")));
        unconverted(product, counts, missing).ifPresent(candidates::add);
        candidates.sort(Comparator.comparingDouble(Candidate::highGrams).reversed());
        return candidates;
    }

    /**
     * Product that was never formed, as a conversion says that was measured and entered, where no assay tells of the starting material; a
     * limit or nought says nothing.
     */
    private Optional<Candidate> unconverted(Product product, Predicate<String> counts, double missing) {
        Optional<Double> ofTheory = theory.flatMap(t -> t.products().stream()
                .filter(p -> p.product() == product)
                .findFirst()
                .map(p -> p.massGrams().value()));
        Optional<Double> left = run.head()
                .conversionPercent()
                .entered()
                .filter(c -> c.qualifier() == Qualifier.EXACT && c.value() > 0 && c.value() < 100)
                .map(c -> 1 - c.value() / 100);
        boolean lookedFor = run.charges().stream().map(Charge::material).anyMatch(m -> counts.test(m) && isFound(m));
        return run.kind() != Run.Kind.REACTION || ofTheory.isEmpty() || lookedFor
                ? Optional.empty()
                : left.map(share -> new Candidate(
                        "starting material that did not react",
                        0,
                        Math.min(missing, share * ofTheory.get()),
                        "conversion as entered in Runs",
                        "assay the crude for the starting material"));
    }

    private Optional<Candidate> unassayed(LayerTally layer, Predicate<String> counts, double most) {
        if (layer.entry().isEmpty()) {
            return Optional.of(new Candidate(
                    "layer " + layer.label(),
                    0,
                    most,
                    "given by a step, never recorded",
                    "find the portion and enter it in Layers",
                    Closure.Looked.IN_NO_KEPT_PORTION));
        }
        boolean several = run.products().stream().filter(Product::wanted).count() > 1;
        return layer.contents().stream()
                .filter(c -> c.massGrams().isEmpty() && !c.isOwnEvidence() && counts.test(c.substance()))
                .filter(c -> run.product(c.substance()).filter(Product::wanted).isPresent())
                .findFirst()
                .map(c -> new Candidate(
                        "layer " + layer.label(),
                        0,
                        Math.min(most, c.upperBoundGrams().orElse(most)),
                        c.evidence(),
                        layer.isLost()
                                ? "say in Corrections what became of " + layer.label()
                                : "assay " + layer.label() + (several ? " for " + c.substance() : ""),
                        layer.isLost() ? Closure.Looked.BOUNDED : Closure.Looked.IN_NO_KEPT_PORTION));
    }

    private Optional<Candidate> cake(LayerTally layer, Product product) {
        return cakes.stream()
                .filter(cake -> cake.label().equals(layer.label()))
                .findFirst()
                .flatMap(cake -> cake.productGrams(product.name())
                        .map(held -> new Candidate(
                                "cake " + cake.label(),
                                held.low(),
                                held.high(),
                                String.format(
                                        Locale.ROOT,
                                        "gain %.2f g over the agent, %s; solution about %.1f %% product",
                                        cake.gainGrams(),
                                        cake.rinsed() ? "rinsed" : "not rinsed",
                                        100 * cake.productFraction(product.name())),
                                "rinse the cake and weigh the residue of the rinse",
                                cake.rinsed() ? Closure.Looked.BOUNDED : Closure.Looked.NOWHERE)));
    }

    private Optional<Candidate> distillate(LayerTally distillate, Product product, double most) {
        boolean assayed = distillate.contents().stream()
                .anyMatch(c -> c.isOf(product.name()) && c.massGrams().isPresent());
        Optional<Entered> boils =
                product.boilingPointCelsius().entered().filter(b -> !assayed && substances.isVolatile(product));
        return boils.map(b -> new Candidate(
                "distillate " + distillate.label(),
                0,
                most,
                product.name() + " boils at " + b.asTyped() + " °C",
                "assay " + distillate.label()));
    }

    /** A partner that nobody looked for: what is left of it is in the lots at most for what they weigh beyond their product. */
    private Optional<Candidate> unreacted(Charge charge, Product product, Predicate<String> counts, double most) {
        String name = charge.material();
        OptionalDouble ofPartner = molarMasses.of(name);
        OptionalDouble ofProduct = molarMasses.of(product.name());
        boolean lookedFor = isFound(name);
        boolean isProduct = run.product(name).isPresent();
        if (!counts.test(name) || lookedFor || isProduct || ofPartner.isEmpty() || ofProduct.isEmpty()) {
            return Optional.empty();
        }
        double inLots = inLotsGrams() * ofProduct.getAsDouble() / ofPartner.getAsDouble();
        List<String> liquids = where.layers(name, inLots, most);
        return Optional.of(new Candidate(
                "unreacted " + name,
                0,
                Math.min(most, inLots),
                "assayed nowhere; in the lots at most for what they weigh beyond their product"
                        + (liquids.isEmpty() ? "" : "; more may be in " + WhereToLook.named(liquids)),
                where.assay(name, inLots, most),
                Closure.Looked.NOWHERE,
                liquids.isEmpty() ? Math.min(most, inLots) : most));
    }

    /** What the lots can hold beside their products at most, g; without end where one of them is not known. */
    private double inLotsGrams() {
        return restOfLots().values().stream()
                .mapToDouble(rest -> rest.map(r -> Math.max(0, r.value()) + r.oneSidedReach())
                        .orElse(Double.POSITIVE_INFINITY))
                .sum();
    }

    /** What each lot of the workup weighs beyond its products, g; empty where one of them is not known. */
    private Map<String, Optional<MeasuredValue>> restOfLots() {
        Map<String, Optional<MeasuredValue>> rests = new LinkedHashMap<>();
        for (LotTally lot : lots) {
            if (lot.endsWorkup()) {
                rests.merge(
                        lot.lot().label(),
                        lot.netGrams().flatMap(net -> lot.pureGrams().map(net::minus)),
                        (rest, next) -> rest.flatMap(r -> lot.pureGrams().map(r::minus)));
            }
        }
        return rests;
    }

    private boolean isFound(String substance) {
        return found.terms().stream()
                .map(Found.Term::content)
                .anyMatch(c -> c.isOf(substance) && c.kind() != Content.Kind.UNKNOWN);
    }

    private Optional<Candidate> byProduct(Product other, Product product, Predicate<String> counts, double most) {
        boolean lookedFor = found.terms().stream().anyMatch(t -> t.content().isOf(other.name()));
        if (other.wanted() || !other.formOf().isEmpty() || !counts.test(other.name()) || lookedFor) {
            return Optional.empty();
        }
        double inLots = inLotsGrams(other, product);
        return Optional.of(new Candidate(
                run.charges().stream().anyMatch(c -> c.isOf(other.name())) ? "unreacted " + other.name() : other.name(),
                0,
                most,
                "named in Products, assayed nowhere",
                where.assay(other.name(), inLots, most),
                Closure.Looked.NOWHERE));
    }

    /** The same of one substance, as so much product; without end where a molar mass is not known. */
    private double inLotsGrams(Product other, Product product) {
        OptionalDouble ofOther = molarMasses.of(other.name());
        OptionalDouble ofProduct = molarMasses.of(product.name());
        return ofOther.isEmpty() || ofProduct.isEmpty()
                ? Double.POSITIVE_INFINITY
                : inLotsGrams() * ofProduct.getAsDouble() / ofOther.getAsDouble();
    }
}
