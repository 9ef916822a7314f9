package workuptally.tally.amounts;

import java.util.List;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.model.Product;
import workuptally.model.SubstanceName;

/**
 * What the limiting reagent allows.
 *
 * @param limiting the limiting material; two or more where the smallest amounts cannot be told apart
 * @param extentMillimoles largest extent of reaction min(nᵢ/νᵢ), mmol; for a separation 0
 * @param products theory of each product
 */
public record Theory(List<Limiting> limiting, MeasuredValue extentMillimoles, List<ProductTheory> products) {
    /** Copies the lists. */
    public Theory {
        limiting = List.copyOf(limiting);
        products = List.copyOf(products);
    }

    /**
     * A limiting material.
     *
     * @param material name as typed
     * @param amountMillimoles its amount n (not n/ν), mmol
     */
    public record Limiting(String material, MeasuredValue amountMillimoles) {
        /** True for a material of this name. */
        public boolean isOf(String name) {
            return SubstanceName.same(material, name);
        }
    }

    /**
     * Theory of one product.
     *
     * @param product the product
     * @param amountMillimoles theoretical amount, mmol
     * @param massGrams theoretical mass in the form isolated, g
     * @param molarMassGramsPerMole molar mass used, g/mol
     * @param molarMassUncertaintyGramsPerMole its standard uncertainty by the atomic weights, g/mol; no account counts it, so small is it;
     *     empty where the molar mass comes from no formula
     * @param massAsTypedGrams theory with all molar masses as typed where that differs, g
     * @param plannedMassGrams theory by the planned amounts, g; empty where one of them is not known
     */
    public record ProductTheory(
            Product product,
            MeasuredValue amountMillimoles,
            MeasuredValue massGrams,
            double molarMassGramsPerMole,
            OptionalDouble molarMassUncertaintyGramsPerMole,
            OptionalDouble massAsTypedGrams,
            OptionalDouble plannedMassGrams) {
        private ProductTheory withPlanned(OptionalDouble grams) {
            return new ProductTheory(
                    product,
                    amountMillimoles,
                    massGrams,
                    molarMassGramsPerMole,
                    molarMassUncertaintyGramsPerMole,
                    massAsTypedGrams,
                    grams);
        }

        /** True for the theory of a product of this name. */
        public boolean isOf(String name) {
            return SubstanceName.same(product.name(), name);
        }
    }

    /** The same with each product's mass by another theory, that of the planned amounts, beside its own. */
    public Theory withPlanned(Theory planned) {
        return new Theory(
                limiting,
                extentMillimoles,
                products.stream()
                        .map(p -> p.withPlanned(planned.massGrams(p.product())))
                        .toList());
    }

    private OptionalDouble massGrams(Product product) {
        return products.stream()
                .filter(p -> p.product() == product)
                .mapToDouble(p -> p.massGrams().value())
                .findFirst();
    }
}
