package workuptally.property;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * An invented run that is sound: everything was weighed, measured and assayed, readings scatter by the uncertainty of their instruments, one
 * per cent of the product at most stays on the glass, and some of the solvent goes into the air. Half of the vessels stand in the register.
 */
final class BenchRun {
    private static final double SUBSTRATE_GRAMS_PER_MOLE = 182.22;
    private static final double PRODUCT_GRAMS_PER_MOLE = 184.23;
    private static final double SOLVENT_GRAMS_PER_MILLILITRE = 0.902;

    final String run;
    private final Random random;
    private final CsvTables book;
    private double substrateGrams;
    private double productGrams;
    private int steps;

    BenchRun(String run, long seed, CsvTables book) {
        this.run = run;
        this.random = new Random(seed);
        this.book = book;
        write();
    }

    private static String text(double number, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", number);
    }

    private double about(double value, double relative) {
        return value * (1 + relative * random.nextGaussian());
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private void write() {
        book.add("runs.csv", List.of(run, "isolated"));
        book.add("products.csv", List.of(run, "benzhydrol", "yes", "C13H12O", "184.24", "1", "benzophenone 1"));
        book.add("products.csv", List.of(run, "benzophenone", "no", "C13H10O", "182.22", "", "benzophenone 1"));
        double charged = between(2, 20);
        double purity = between(0.97, 0.995);
        charge("benzophenone", "substrate", "C13H10O", "182.22", "1", charged, "g", 3, text(100 * purity, 1), "");
        double base = between(2, 8);
        charge("triethylamine", "base", "C6H15N", "101.19", "", base, "mL", 2, "99", "0.726");
        double solvent = between(50, 120);
        charge("ethyl acetate", "solvent", "C4H8O2", "", "", solvent, "mL", 0, "", "0.902");
        double conversion = between(0.8, 0.99);
        double moles = charged * purity / SUBSTRATE_GRAMS_PER_MOLE;
        double lost = between(0, 0.01);
        productGrams = moles * conversion * PRODUCT_GRAMS_PER_MOLE * (1 - lost);
        substrateGrams = moles * (1 - conversion) * SUBSTRATE_GRAMS_PER_MOLE;
        workup(solvent * SOLVENT_GRAMS_PER_MILLILITRE, base * 0.726);
    }

    private void charge(
            String material,
            String role,
            String formula,
            String molarMass,
            String coefficient,
            double amount,
            String unit,
            int decimals,
            String assay,
            String density) {
        String planned = String.format(Locale.ROOT, "%.2g", about(amount, 0.03));
        book.add(
                "charges.csv",
                List.of(
                        run,
                        material,
                        role,
                        formula,
                        molarMass,
                        coefficient,
                        Double.toString(Double.parseDouble(planned)),
                        unit,
                        text(amount, decimals),
                        unit,
                        assay,
                        density));
    }

    private void workup(double solventGrams, double baseGrams) {
        double organicGrams = solventGrams + productGrams + substrateGrams;
        int washes = 2 + random.nextInt(3);
        String from = "RM";
        for (int i = 1; i <= washes; i++) {
            double water = Math.rint(between(20, 80));
            String organic = "O" + i;
            step(i == 1 ? "extract" : "wash", from, "water", text(water, 0), "", organic, "A" + i, "");
            double crossed = between(0.02, 0.07) * water;
            double share = i == 1 ? between(0.001, 0.15) : between(0.001, 0.05);
            double product = productGrams * share;
            double substrate = substrateGrams * share * between(0.2, 1);
            productGrams -= product;
            substrateGrams -= substrate;
            double grams = water * 0.998 + crossed + product + substrate + (i == 1 ? baseGrams : 0);
            organicGrams -= crossed + product + substrate;
            layer("A" + i, "aqueous", grams, grams / between(0.99, 1.01), product, substrate);
            from = organic;
        }
        double agent = between(3, 9);
        step("dry", from, "sodium sulfate, anhydrous", "", text(agent, 1), "O" + (washes + 1), "", "K1");
        double held = between(0.1, 0.3) * agent;
        double onCake = productGrams * held / organicGrams;
        double substrateOnCake = substrateGrams * held / organicGrams;
        productGrams -= onCake;
        substrateGrams -= substrateOnCake;
        solid(agent + held, onCake, substrateOnCake);
        organicGrams -= held;
        step("concentrate", "O" + (washes + 1), "", "", "", "", "", "D1+CR1");
        double lot = (productGrams + substrateGrams) / between(0.97, 0.999);
        double distillate = (organicGrams - lot) * between(0.88, 0.98);
        book.add("layers.csv", row("D1", "distillate", "", "", "", "", text(distillate, 2), "to reuse"));
        lot(lot);
    }

    private void step(
            String operation,
            String from,
            String material,
            String volume,
            String mass,
            String organic,
            String aqueous,
            String other) {
        steps++;
        book.add(
                "workup.csv",
                List.of(
                        run,
                        Integer.toString(steps),
                        operation,
                        from,
                        material,
                        volume,
                        mass,
                        organic,
                        aqueous,
                        other));
    }

    private List<String> row(String... cells) {
        List<String> row = new ArrayList<>(List.of(run));
        row.addAll(List.of(cells));
        return row;
    }

    private void layer(String label, String phase, double grams, double millilitres, double product, double substrate) {
        String vessel = "E-" + run + label;
        double tare = Math.round(100 * between(55, 115)) / 100.0;
        double volume = about(millilitres, 0.01);
        registered(vessel, tare, 2, 0.5);
        book.add(
                "layers.csv",
                row(label, phase, vessel, text(volume, 0), text(tare + grams, 2), text(tare, 2), "", "kept"));
        assay(label, "benzhydrol", 1000 * product / millilitres, "mg/mL");
        assay(label, "benzophenone", 1000 * substrate / millilitres, "mg/mL");
    }

    private void registered(String vessel, double tare, int decimals, double chance) {
        if (random.nextDouble() < chance) {
            book.add("vessels.csv", List.of(vessel, "2026-03-02", text(tare, decimals)));
        }
    }

    private void solid(double grams, double product, double substrate) {
        book.add("layers.csv", row("K1", "solid", "", "", "", "", text(grams, 2), "kept"));
        assay("K1", "benzhydrol", 100 * product / grams, "% w/w");
        assay("K1", "benzophenone", 100 * substrate / grams, "% w/w");
    }

    private void assay(String sample, String substance, double result, String unit) {
        double limit = unit.equals("mg/mL") ? 0.1 : 0.05;
        String text = result < limit ? "<" + limit : threeDigits(about(result, 0.02));
        book.add("assays.csv", List.of(run, sample, substance, "HPLC", text, unit, "2.0"));
    }

    private static String threeDigits(double value) {
        int decimals = Math.max(0, 2 - (int) Math.floor(Math.log10(value)));
        return text(value, decimals);
    }

    private void lot(double grams) {
        String vessel = "F-" + run;
        double tare = Math.round(10000 * between(80, 120)) / 10000.0;
        registered(vessel, tare, 4, 0.8);
        double product = 100 * productGrams / grams;
        double substrate = 100 * substrateGrams / grams;
        book.add(
                "isolated.csv",
                List.of(
                        run,
                        "CR1",
                        "benzhydrol",
                        "crude",
                        vessel,
                        text(tare + grams, 4),
                        text(tare, 4),
                        text(Math.min(100, about(product, 0.007)), 1),
                        "1.0",
                        "1H NMR"));
        assay("CR1", "benzophenone", substrate, "% w/w");
    }

    static CsvTables emptyBook() {
        return CsvTables.of(Map.of(
                "runs.csv", List.of("Run", "Status"),
                "products.csv",
                        List.of("Run", "Product", "Wanted", "Formula", "Molar mass (g/mol)", "Coefficient", "Skeleton"),
                "charges.csv",
                        List.of(
                                "Run",
                                "Material",
                                "Role",
                                "Formula",
                                "Molar mass (g/mol)",
                                "Coefficient",
                                "Planned amount",
                                "Planned unit",
                                "Actual amount",
                                "Actual unit",
                                "Assay (% w/w)",
                                "Density (g/mL)"),
                "workup.csv",
                        List.of(
                                "Run",
                                "Step",
                                "Operation",
                                "From",
                                "Material",
                                "Volume (mL)",
                                "Mass (g)",
                                "Gives organic",
                                "Gives aqueous",
                                "Gives other"),
                "layers.csv",
                        List.of(
                                "Run",
                                "Layer",
                                "Phase",
                                "Vessel",
                                "Volume (mL)",
                                "Gross (g)",
                                "Tare (g)",
                                "Net (g)",
                                "Status"),
                "assays.csv",
                        List.of(
                                "Run",
                                "Sample",
                                "Substance",
                                "Method",
                                "Result",
                                "Unit",
                                "Relative standard uncertainty (%)"),
                "isolated.csv",
                        List.of(
                                "Run",
                                "Lot",
                                "Product",
                                "Stage",
                                "Vessel",
                                "Gross (g)",
                                "Tare (g)",
                                "Assay (% w/w)",
                                "Relative standard uncertainty (%)",
                                "Identity by"),
                "vessels.csv", List.of("Vessel", "Date", "Clean dry tare (g)")));
    }
}
