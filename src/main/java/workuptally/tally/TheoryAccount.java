package workuptally.tally;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Field.Entered;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.Theory.Limiting;
import workuptally.tally.Theory.ProductTheory;

/**
 * Theory by the limiting reagent: ξ = min(nᵢ/νᵢ) over the charges with a coefficient, m = ξ·ν·M of the form isolated.
 *
 * <p>A separation has as theory the mass charged of each component; a resolution without racemisation half of ξ. Two smallest amounts
 * that differ by less than twice the uncertainty of their difference are both named as limiting. n in mmol, M in g/mol, m in g.
 */
final class TheoryAccount {
    private static final double TELLS_APART = 2;
    private static final double HALF = 0.5;

    private final Readings readings;
    private final MolarMasses molarMasses;
    private final Omissions omissions;

    TheoryAccount(Readings readings, MolarMasses molarMasses, Omissions omissions) {
        this.readings = readings;
        this.molarMasses = molarMasses;
        this.omissions = omissions;
    }

    Optional<Theory> of(Run run, List<ChargeAmount> amounts) {
        if (run.kind() == Run.Kind.SEPARATION) {
            return separation(run, amounts);
        }
        List<ChargeAmount> stoichiometric =
                amounts.stream().filter(a -> coefficient(a).isPresent()).toList();
        if (stoichiometric.isEmpty()) {
            omissions.add("theory", "no charge has a coefficient", "Coefficient in Charges");
            return Optional.empty();
        }
        for (ChargeAmount amount : stoichiometric) {
            if (amount.amountMillimoles().filter(a -> a.value() > 0).isEmpty()) {
                String material = amount.charge().material();
                omissions.add(
                        "theory",
                        "the amount of " + material + (amount.amountMillimoles().isEmpty() ? " is not known" : " is 0"),
                        "amount, density or molar mass of " + material);
                return Optional.empty();
            }
        }
        List<ChargeAmount> ranked = stoichiometric.stream()
                .sorted(Comparator.comparingDouble(a -> extent(a).value()))
                .toList();
        MeasuredValue extent = extent(ranked.get(0));
        List<Limiting> limiting = new ArrayList<>();
        for (ChargeAmount candidate : ranked) {
            MeasuredValue excess = extent(candidate).minus(extent);
            if (candidate == ranked.get(0) || excess.value() < TELLS_APART * excess.standardUncertainty()) {
                limiting.add(new Limiting(
                        candidate.charge().material(),
                        candidate.amountMillimoles().get()));
            }
        }
        OptionalDouble extentAsTyped = extentAsTyped(stoichiometric);
        List<ProductTheory> products = new ArrayList<>();
        for (Product product : run.products()) {
            if (product.wanted()) {
                product(run, product, extent, extentAsTyped).ifPresent(products::add);
            }
        }
        return Optional.of(new Theory(limiting, extent, products));
    }

    private Optional<ProductTheory> product(
            Run run, Product product, MeasuredValue extent, OptionalDouble extentAsTyped) {
        OptionalDouble molarMass = molarMasses.of(product.formula(), product.molarMassGramsPerMole());
        if (molarMass.isEmpty()) {
            omissions.add(
                    "theory of " + product.name(), "no molar mass", "Formula of " + product.name() + " in Products");
            return Optional.empty();
        }
        if (product.coefficient().isUnreadable()) {
            omissions.add("theory of " + product.name(), "its coefficient cannot be read", "Coefficient in Products");
            return Optional.empty();
        }
        double share = product.coefficient().entered().map(Entered::value).orElse(1.0)
                * (run.kind() == Run.Kind.RESOLUTION ? HALF : 1);
        MeasuredValue amount = extent.times(share);
        OptionalDouble asTyped = OptionalDouble.empty();
        if (extentAsTyped.isPresent()) {
            double typedMolarMass = product.molarMassGramsPerMole()
                    .entered()
                    .map(Entered::value)
                    .orElse(molarMass.getAsDouble());
            asTyped = OptionalDouble.of(extentAsTyped.getAsDouble() * share * typedMolarMass / 1000);
        }
        return Optional.of(new ProductTheory(
                product, amount, amount.times(molarMass.getAsDouble() / 1000), molarMass.getAsDouble(), asTyped));
    }

    private Optional<Theory> separation(Run run, List<ChargeAmount> amounts) {
        List<ProductTheory> products = new ArrayList<>();
        for (Product product : run.products()) {
            if (!product.wanted()) {
                continue;
            }
            Optional<ChargeAmount> component = amounts.stream()
                    .filter(a -> a.charge().material().equalsIgnoreCase(product.name()))
                    .findFirst();
            Optional<MeasuredValue> amount =
                    component.flatMap(ChargeAmount::amountMillimoles).filter(a -> a.value() > 0);
            OptionalDouble molarMass = molarMasses.of(product.name());
            if (amount.isEmpty() || molarMass.isEmpty()) {
                omissions.add(
                        "theory of " + product.name(),
                        component.isEmpty() ? "no charge of that name" : "its amount is not known, or 0",
                        "a charge named " + product.name() + " with amount and formula");
                continue;
            }
            products.add(new ProductTheory(
                    product,
                    amount.get(),
                    amount.get().times(molarMass.getAsDouble() / 1000),
                    molarMass.getAsDouble(),
                    OptionalDouble.empty()));
        }
        return products.isEmpty() ? Optional.empty() : Optional.of(new Theory(List.of(), readings.exact(0), products));
    }

    private static OptionalDouble extentAsTyped(List<ChargeAmount> stoichiometric) {
        if (stoichiometric.stream().allMatch(a -> a.asTypedMillimoles().isEmpty())) {
            return OptionalDouble.empty();
        }
        return stoichiometric.stream()
                .mapToDouble(a -> a.asTypedMillimoles()
                                .orElseGet(
                                        () -> a.amountMillimoles().orElseThrow().value())
                        / coefficient(a).orElseThrow())
                .min();
    }

    private static MeasuredValue extent(ChargeAmount amount) {
        return amount.amountMillimoles().orElseThrow().over(coefficient(amount).orElseThrow());
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
