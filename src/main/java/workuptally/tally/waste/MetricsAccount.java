package workuptally.tally.waste;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.SubstanceName;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Omissions;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.ProductYield.Stage;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.YieldBasis;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerTally;

/**
 * Mass metrics of a run. Per mass of product by assay in the crude, else in what was purified from it;
 * refused where a wanted product has neither, since a crude's mass is not a product's.
 */
public final class MetricsAccount {
    private static final String WHAT = "mass metrics (PMI, E-factor, reaction mass efficiency)";
    private static final double GRAMS_PER_MILLIGRAM = 1e-3;

    private final Run run;
    private final Readings readings;
    private final Substances substances;
    private final IngredientAccount materials;
    private final Omissions omissions;

    public MetricsAccount(Run run, Readings readings, Substances substances, Omissions omissions) {
        this.run = run;
        this.readings = readings;
        this.substances = substances;
        this.materials = new IngredientAccount(substances);
        this.omissions = omissions;
    }

    /** The metrics; empty without a workup or a mass balance, and for a product without an assay. */
    public Optional<Metrics> of(
            Optional<MassBalance> balance,
            Optional<Theory> theory,
            List<ProductYield> yields,
            List<ChargeAmount> amounts,
            List<Addition> additions,
            List<LayerTally> layers,
            LayerFlow flow) {
        if (balance.isEmpty()) {
            return Optional.empty();
        }
        List<ProductYield> products = products(yields);
        if (products.isEmpty()) {
            return Optional.empty();
        }
        List<MeasuredValue> solvents = new ArrayList<>();
        List<MeasuredValue> waters = new ArrayList<>();
        for (ChargeAmount amount : amounts) {
            MeasuredValue grams = amount.massGrams().orElseThrow();
            Ingredients mixture = materials.of(amount);
            boolean reagentItself = !amount.isSolvent()
                    && materials.solventName(amount.charge().material()).isPresent();
            split(mixture, grams, reagentItself, solvents, waters);
        }
        for (Addition addition : additions) {
            if (!addition.purification()) {
                split(materials.of(addition), addition.massGrams().orElseThrow(), false, solvents, waters);
            }
        }
        double reused = 0;
        double reusedWater = 0;
        for (LayerTally layer : layers) {
            if (isReused(layer)) {
                reused += layer.massGrams().map(MeasuredValue::value).orElse(0.0);
                reusedWater += flow.portion(layer.label()).grams(IngredientAccount.WATER);
            }
        }
        boolean separation = run.kind() == Run.Kind.SEPARATION;
        return Optional.of(new Metrics(
                balance.get().inGrams(),
                workupIn(additions),
                sum(products.stream().map(ProductYield::massGrams).toList()),
                products.stream().anyMatch(y -> y.stage() == Stage.PURIFIED),
                sum(solvents),
                sum(waters),
                reused,
                reusedWater,
                separation ? Optional.empty() : reactantGrams(amounts),
                separation ? OptionalDouble.empty() : atomEconomy(theory, amounts)));
    }

    /** Each wanted product's yield by assay: of the workup, else of what was purified; empty where one has neither. */
    private List<ProductYield> products(List<ProductYield> yields) {
        List<ProductYield> found = new ArrayList<>();
        for (Product product : run.products()) {
            if (!product.wanted()) {
                continue;
            }
            Optional<ProductYield> assayed = assayed(yields, product, true).or(() -> assayed(yields, product, false));
            if (assayed.isEmpty()) {
                boolean weighed = run.lots().stream()
                        .anyMatch(lot -> lot.isOf(product.name())
                                && lot.assayPercent().entered().isPresent());
                omissions.add(
                        WHAT,
                        weighed
                                ? "no yield of " + product.name()
                                : "no isolated mass of " + product.name() + " with an assay",
                        weighed
                                ? "what its yield waits for"
                                : "gross, tare and assay of " + product.name() + " in Isolated");
                return List.of();
            }
            found.add(assayed.get());
        }
        return found;
    }

    private static Optional<ProductYield> assayed(List<ProductYield> yields, Product product, boolean endsWorkup) {
        return yields.stream()
                .filter(y -> y.endsWorkup() == endsWorkup && isOf(y, product))
                .findFirst()
                .filter(y -> y.basis() == YieldBasis.ASSAY && y.massGrams().value() > 0);
    }

    private static boolean isOf(ProductYield yield, Product product) {
        return yield.product() == product;
    }

    /** Shares of a material that are solvent and water, by its mass. */
    private void split(
            Ingredients mixture,
            MeasuredValue grams,
            boolean reagentItself,
            List<MeasuredValue> solvents,
            List<MeasuredValue> waters) {
        double total = grams.value();
        if (total <= 0) {
            return;
        }
        mixture.parts().forEach((name, part) -> {
            double share = Math.min(1, part.grams() / total);
            if (name.equals(IngredientAccount.WATER)) {
                waters.add(grams.times(share));
            } else if (substances.isOrganicSolvent(name) && !reagentItself) {
                solvents.add(grams.times(share));
            }
        });
    }

    private MeasuredValue workupIn(List<Addition> additions) {
        List<Step> ordered = run.orderedSteps();
        int start = 0;
        for (int i = 0; i < ordered.size(); i++) {
            if (ordered.get(i)
                    .operation()
                    .filter(o -> o == Step.Operation.QUENCH)
                    .isPresent()) {
                start = i;
                break;
            }
        }
        List<Step> counted = ordered.subList(Math.min(start, ordered.size()), ordered.size());
        return sum(additions.stream()
                .filter(a -> !a.purification() && counted.stream().anyMatch(step -> step == a.step()))
                .flatMap(a -> a.massGrams().stream())
                .toList());
    }

    private static boolean isReused(LayerTally layer) {
        return layer.terminal()
                && layer.endsWorkup()
                && layer.entry()
                        .flatMap(l -> l.custody().status())
                        .filter(s -> s == Layer.Status.TO_REUSE)
                        .isPresent();
    }

    /** The mass charged; of a solution the solute alone. */
    private Optional<MeasuredValue> reactantGrams(List<ChargeAmount> amounts) {
        List<MeasuredValue> reactants = new ArrayList<>();
        for (ChargeAmount amount : stoichiometric(amounts)) {
            boolean solution = amount.charge()
                            .goods()
                            .molarityMolesPerLitre()
                            .entered()
                            .isPresent()
                    || amount.charge().goods().titreMolesPerLitre().entered().isPresent();
            Optional<MeasuredValue> grams = amount.massGrams();
            if (solution) {
                grams = amount.molarMassGramsPerMole().isEmpty()
                        ? Optional.empty()
                        : amount.amountMillimoles()
                                .map(n -> n.times(amount.molarMassGramsPerMole().getAsDouble() * GRAMS_PER_MILLIGRAM));
            }
            if (grams.isEmpty()) {
                omissions.add(
                        "reaction mass efficiency",
                        "no molar mass of " + amount.charge().material(),
                        amount.charge().row().entry("Formula", amount.charge().material(), "Charges"));
                return Optional.empty();
            }
            reactants.add(grams.get());
        }
        return reactants.isEmpty() ? Optional.empty() : Optional.of(sum(reactants));
    }

    private OptionalDouble atomEconomy(Optional<Theory> theory, List<ChargeAmount> amounts) {
        List<ChargeAmount> reactants = stoichiometric(amounts);
        if (theory.isEmpty()
                || reactants.isEmpty()
                || reactants.stream().anyMatch(a -> a.molarMassGramsPerMole().isEmpty())) {
            return OptionalDouble.empty();
        }
        double products = theory.get().products().stream()
                .mapToDouble(p -> p.molarMassGramsPerMole()
                        * p.amountMillimoles().value()
                        / theory.get().extentMillimoles().value())
                .sum();
        Map<String, Double> byMaterial = new LinkedHashMap<>();
        reactants.forEach(a -> byMaterial.put(
                SubstanceName.key(a.charge().material()),
                coefficient(a) * a.molarMassGramsPerMole().getAsDouble()));
        double charged =
                byMaterial.values().stream().mapToDouble(Double::doubleValue).sum();
        double percent = Metrics.atomEconomyPercent(products, charged);
        if (percent > 100) {
            omissions.add(
                    "atom economy",
                    "the product weighs more than the charges with a coefficient",
                    "the coefficient of every reactant that ends in the product, in Charges");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(percent);
    }

    private static List<ChargeAmount> stoichiometric(List<ChargeAmount> amounts) {
        return amounts.stream().filter(a -> coefficient(a) > 0).toList();
    }

    private static double coefficient(ChargeAmount amount) {
        return amount.charge().coefficient().entered().map(Entered::value).orElse(0.0);
    }

    private MeasuredValue sum(List<MeasuredValue> values) {
        return values.stream().reduce(MeasuredValue::plus).orElse(readings.exact(0));
    }
}
