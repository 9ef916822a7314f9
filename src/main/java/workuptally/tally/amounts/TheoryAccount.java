package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.SubstanceName;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Theory.Limiting;
import workuptally.tally.amounts.Theory.ProductTheory;

/**
 * Theory by the limiting reagent: ξ = min(nᵢ/νᵢ) over the charges with a coefficient, m = ξ·ν·M of the form isolated.
 *
 * <p>Several rows of one material are portions of it and count together. A separation has as theory the mass charged of each component; a resolution without racemisation half of ξ. Two smallest amounts
 * that differ by less than twice the uncertainty of their difference are both named as limiting. n in mmol, M in g/mol, m in g.
 */
public final class TheoryAccount {
    private static final double HALF = 0.5;

    private final Readings readings;
    private final MolarMassAccount molarMasses;
    private final Substances substances;
    private final Omissions omissions;

    public TheoryAccount(Readings readings, MolarMassAccount molarMasses, Substances substances, Omissions omissions) {
        this.substances = substances;
        this.readings = readings;
        this.molarMasses = molarMasses;
        this.omissions = omissions;
    }

    public Optional<Theory> of(Run run, List<ChargeAmount> amounts) {
        if (run.kind() == Run.Kind.SEPARATION) {
            return separation(run, amounts);
        }
        List<ChargeAmount> stoichiometric =
                amounts.stream().filter(a -> coefficient(a).isPresent()).toList();
        if (!areUsable(amounts, stoichiometric)) {
            return Optional.empty();
        }
        List<Partner> ranked = partners(stoichiometric).stream()
                .sorted(Comparator.comparingDouble(p -> p.extentMillimoles().value()))
                .toList();
        MeasuredValue extent = ranked.get(0).extentMillimoles();
        return Optional.of(new Theory(limiting(ranked), extent, products(run, ranked)));
    }

    /** True where every coefficient can be read, there is one, and every charge with one has an amount above 0; else says what is missing. */
    private boolean areUsable(List<ChargeAmount> amounts, List<ChargeAmount> stoichiometric) {
        for (ChargeAmount amount : amounts) {
            if (amount.charge().coefficient().isUnreadable()) {
                String material = amount.charge().material();
                omissions.addTheory(
                        "theory",
                        "the coefficient of " + material + " cannot be read",
                        amount.charge().row().entry("Coefficient", material, "Charges"));
                return false;
            }
        }
        for (ChargeAmount amount : amounts) {
            // with another charge's coefficient alone the theory would rest on a reagent in excess
            if (!stoichiometric.isEmpty()
                    && amount.charge()
                            .role()
                            .filter(r -> r == Charge.Role.SUBSTRATE)
                            .isPresent()
                    && coefficient(amount).isEmpty()) {
                String material = amount.charge().material();
                omissions.addTheory(
                        "theory",
                        "the substrate " + material + " has no coefficient, while another charge has one",
                        amount.charge().row().entry("Coefficient", material, "Charges"));
                return false;
            }
        }
        for (ChargeAmount amount : stoichiometric) {
            if (amount.amountMillimoles().filter(a -> a.value() > 0).isEmpty()) {
                String material = amount.charge().material();
                omissions.addTheory(
                        "theory",
                        "the amount of " + material + (amount.amountMillimoles().isEmpty() ? " is not known" : " is 0"),
                        "amount, density or molar mass of " + material);
                return false;
            }
        }
        if (stoichiometric.isEmpty()) {
            omissions.addTheory(
                    "theory",
                    "no charge has a coefficient",
                    "Coefficient in Charges (1 where the equation has it once)");
        }
        return !stoichiometric.isEmpty();
    }

    /** The partner that allows the least, and those that cannot be told from it. */
    private List<Limiting> limiting(List<Partner> ranked) {
        List<Limiting> limiting = new ArrayList<>();
        for (Partner candidate : ranked) {
            MeasuredValue excess =
                    candidate.extentMillimoles().minus(ranked.get(0).extentMillimoles());
            if (excess.value() <= substances.value(Threshold.LIMITING_TOLD_APART) * excess.standardUncertainty()) {
                limiting.add(new Limiting(candidate.material(), candidate.amountMillimoles()));
            }
        }
        return limiting;
    }

    private List<ProductTheory> products(Run run, List<Partner> ranked) {
        double extentAsTyped = ranked.stream()
                .mapToDouble(Partner::extentAsTypedMillimoles)
                .min()
                .orElseThrow();
        List<ProductTheory> products = new ArrayList<>();
        for (Product product : run.products()) {
            if (product.wanted()) {
                product(run, product, ranked.get(0).extentMillimoles(), extentAsTyped)
                        .ifPresent(products::add);
            }
        }
        return products;
    }

    private Optional<ProductTheory> product(Run run, Product product, MeasuredValue extent, double extentAsTyped) {
        OptionalDouble molarMass = molarMasses.of(product.formula(), product.molarMassGramsPerMole());
        if (molarMass.isEmpty()) {
            omissions.addTheory(
                    "theory of " + product.name(), "no molar mass", "Formula of " + product.name() + " in Products");
            return Optional.empty();
        }
        if (product.coefficient().isUnreadable()) {
            omissions.addTheory(
                    "theory of " + product.name(), "its coefficient cannot be read", "Coefficient in Products");
            return Optional.empty();
        }
        double share = product.coefficient().entered().map(Entered::value).orElse(1.0)
                * (run.kind() == Run.Kind.RESOLUTION ? HALF : 1);
        MeasuredValue amount = extent.times(share);
        double typedMolarMass =
                product.molarMassGramsPerMole().entered().map(Entered::value).orElse(molarMass.getAsDouble());
        boolean differs = Math.abs(extentAsTyped / extent.value() - 1) > substances.value(Threshold.MOLAR_MASS_DIFFERS)
                || Math.abs(typedMolarMass / molarMass.getAsDouble() - 1)
                        > substances.value(Threshold.MOLAR_MASS_DIFFERS);
        OptionalDouble asTyped =
                differs ? OptionalDouble.of(extentAsTyped * share * typedMolarMass / 1000) : OptionalDouble.empty();
        return Optional.of(new ProductTheory(
                product,
                amount,
                amount.times(molarMass.getAsDouble() / 1000),
                molarMass.getAsDouble(),
                substances.molarMassUncertaintyIn(product.formula()),
                asTyped,
                OptionalDouble.empty()));
    }

    private Optional<Theory> separation(Run run, List<ChargeAmount> amounts) {
        Optional<Charge> unread = amounts.stream()
                .map(ChargeAmount::charge)
                .filter(c -> c.coefficient().isUnreadable()
                        && c.quantity()
                                .actual()
                                .filter(a -> a.value().isUnreadable())
                                .isPresent())
                .findFirst();
        if (unread.isPresent()) {
            omissions.addTheory(
                    "theory",
                    unread.get().material() + " cannot be read",
                    unread.get().row().entry("Actual amount", unread.get().material(), "Charges"));
            return Optional.empty();
        }
        List<ProductTheory> products = new ArrayList<>();
        for (Product product : run.products()) {
            if (!product.wanted()) {
                continue;
            }
            List<ChargeAmount> rows = amounts.stream()
                    .filter(a -> a.charge().isOf(product.name()))
                    .toList();
            boolean known = rows.stream().allMatch(a -> a.amountMillimoles().isPresent());
            Optional<MeasuredValue> amount = rows.stream()
                    .flatMap(a -> a.amountMillimoles().stream())
                    .reduce(MeasuredValue::plus)
                    .filter(n -> known && n.value() > 0);
            OptionalDouble molarMass = molarMasses.of(product.name());
            if (amount.isEmpty() || molarMass.isEmpty()) {
                omissions.addTheory(
                        "theory of " + product.name(),
                        rows.isEmpty() ? "no charge of that name" : "its amount is 0 or not known",
                        "a charge named " + product.name() + " with amount and formula");
                continue;
            }
            products.add(new ProductTheory(
                    product,
                    amount.get(),
                    amount.get().times(molarMass.getAsDouble() / 1000),
                    molarMass.getAsDouble(),
                    substances.molarMassUncertaintyIn(product.formula()),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()));
        }
        return products.isEmpty() ? Optional.empty() : Optional.of(new Theory(List.of(), readings.exact(0), products));
    }

    /** The charges with a coefficient, portions of one material that were charged in several rows added up. */
    private static List<Partner> partners(List<ChargeAmount> stoichiometric) {
        Map<String, Partner> partners = new LinkedHashMap<>();
        for (ChargeAmount amount : stoichiometric) {
            MeasuredValue millimoles = amount.amountMillimoles().orElseThrow();
            double coefficient = coefficient(amount).orElseThrow();
            Partner partner = new Partner(
                    amount.charge().material(),
                    millimoles,
                    millimoles.over(coefficient),
                    amount.asTypedMillimoles().orElse(millimoles.value()) / coefficient);
            partners.merge(SubstanceName.key(amount.charge().material()), partner, Partner::plus);
        }
        return List.copyOf(partners.values());
    }

    /** One material with a coefficient: n, n/ν, and n/ν with the molar mass as typed, mmol. */
    private record Partner(
            String material,
            MeasuredValue amountMillimoles,
            MeasuredValue extentMillimoles,
            double extentAsTypedMillimoles) {
        Partner plus(Partner other) {
            return new Partner(
                    material,
                    amountMillimoles.plus(other.amountMillimoles),
                    extentMillimoles.plus(other.extentMillimoles),
                    extentAsTypedMillimoles + other.extentAsTypedMillimoles);
        }
    }

    private static OptionalDouble coefficient(ChargeAmount amount) {
        return amount.charge()
                .coefficient()
                .entered()
                .map(Entered::value)
                .filter(c -> c > 0)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
