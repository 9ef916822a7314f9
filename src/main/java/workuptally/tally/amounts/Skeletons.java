package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.chemistry.Formula;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.SubstanceName;

/** Which partner's skeleton a substance carries, and how many units per molecule. */
public final class Skeletons {
    private static final String CARBON = "C";

    private final Run run;
    private final List<ChargeAmount> amounts;

    public Skeletons(Run run, List<ChargeAmount> amounts) {
        this.run = run;
        this.amounts = amounts;
    }

    /** Partners that a wanted product carries, in order of the table; blank means the first substrate. */
    public List<String> partners() {
        Set<String> partners = new LinkedHashSet<>();
        for (Product product : run.products()) {
            if (product.wanted()) {
                of(product).forEach(p -> partners.add(p.partner()));
            }
        }
        return List.copyOf(partners);
    }

    /** Units of a partner in one molecule of a substance; 0 where it carries none or nothing is known of it. */
    public double units(String substance, String partner) {
        Optional<Product> product = run.product(substance);
        if (product.isPresent()) {
            return of(product.get()).stream()
                    .filter(p -> p.isOf(partner))
                    .mapToDouble(Product.SkeletonPart::units)
                    .sum();
        }
        return SubstanceName.same(substance, partner) ? 1 : 0;
    }

    /** Amount charged of a partner, summed over its rows, mmol. */
    public Optional<MeasuredValue> chargedMillimoles(String partner) {
        List<MeasuredValue> found = new ArrayList<>();
        for (ChargeAmount amount : amounts) {
            if (amount.charge().isOf(partner)) {
                if (amount.amountMillimoles().isEmpty()) {
                    return Optional.empty();
                }
                found.add(amount.amountMillimoles().get());
            }
        }
        return found.stream().reduce(MeasuredValue::plus);
    }

    /** The first wanted product that carries a partner. */
    public Optional<Product> wantedProduct(String partner) {
        return run.products().stream()
                .filter(Product::wanted)
                .filter(p -> units(p.name(), partner) > 0)
                .findFirst();
    }

    private List<Product.SkeletonPart> of(Product product) {
        if (!product.skeleton().isEmpty()) {
            return product.skeleton();
        }
        if (run.kind() == Run.Kind.SEPARATION) {
            return List.of(new Product.SkeletonPart(product.name(), 1));
        }
        if (isOriginUnclear(product)) {
            return List.of();
        }
        return firstSubstrate()
                .map(c -> List.of(new Product.SkeletonPart(c.material(), 1)))
                .orElse(List.of());
    }

    private Optional<Charge> firstSubstrate() {
        return run.charges().stream()
                .filter(c -> c.role().filter(r -> r == Charge.Role.SUBSTRATE).isPresent())
                .findFirst();
    }

    /**
     * True for a by-product without a skeleton that seems to come from a reagent and not from the substrate, as triphenylphosphine oxide
     * does: it holds an element that a carbon reagent brings and neither the substrate nor a wanted product has, its carbons are not those
     * of the substrate, and too few for both. Formulas that are missing or not read leave it to the substrate.
     */
    public boolean isOriginUnclear(Product product) {
        if (product.wanted() || !product.skeleton().isEmpty() || run.kind() == Run.Kind.SEPARATION) {
            return false;
        }
        Map<String, Double> own = elements(product.formula());
        Optional<Charge> substrate = firstSubstrate();
        Map<String, Double> ofSubstrate =
                substrate.map(c -> elements(c.formula())).orElse(Map.of());
        double carbons = own.getOrDefault(CARBON, 0.0);
        double ofSubstrateCarbons = ofSubstrate.getOrDefault(CARBON, 0.0);
        if (own.isEmpty() || ofSubstrate.isEmpty() || carbons == ofSubstrateCarbons) {
            return false;
        }
        Set<String> telling = new LinkedHashSet<>(own.keySet());
        telling.removeAll(ofSubstrate.keySet());
        run.products().stream()
                .filter(Product::wanted)
                .forEach(wanted -> telling.removeAll(elements(wanted.formula()).keySet()));
        return run.charges().stream()
                .filter(c -> c != substrate.get())
                .map(c -> elements(c.formula()))
                .filter(reagent -> reagent.keySet().stream().anyMatch(telling::contains))
                .mapToDouble(reagent -> reagent.getOrDefault(CARBON, 0.0))
                .anyMatch(ofReagent -> ofReagent > 0 && carbons < ofSubstrateCarbons + ofReagent);
    }

    private static Map<String, Double> elements(String formula) {
        return Formula.in(formula).map(Formula::composition).orElse(Map.of());
    }
}
