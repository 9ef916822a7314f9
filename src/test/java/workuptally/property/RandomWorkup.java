package workuptally.property;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * An invented workup of which everything is known: every portion's true mass, volume and product are followed while steps split and join
 * portions, and the tables are then written from them, with some assays and weighings left out where a test wants that.
 */
final class RandomWorkup {
    private static final int MOST_STEPS = 9;

    /** A portion with what it truly holds. */
    private static final class Portion {
        final String label;
        final String phase;
        final double grams;
        final double product;
        final double millilitres;
        boolean consumed;

        Portion(String label, String phase, double grams, double product, double waterGramsPerMillilitre) {
            this.label = label;
            this.phase = phase;
            this.grams = grams;
            this.product = product;
            this.millilitres = grams / (phase.equals("organic") ? 0.9 : waterGramsPerMillilitre);
        }
    }

    /** How well a workup is recorded. */
    enum Style {
        /** Every portion left is weighed and assayed, without error of measurement. */
        COMPLETE,
        /** Some assays are left out. */
        WITH_GAPS,
        /**
         * As at a bench: nearly all product stays organic, readings scatter by their uncertainty, what lies below the limit is not detected,
         * one in eight assays is left out, and now and then a composite sample, a rag, a purified lot or a proposed transfer comes with it.
         */
        SOUND
    }

    /** Limit of detection of a sound workup's assays, mg/mL. */
    static final double DETECTION_LIMIT = 0.1;

    final String run;
    final double chargedGrams;
    private final Random random;
    private final Style style;
    private final List<List<String>> transfers = new ArrayList<>();
    private final Map<String, Portion> portions = new LinkedHashMap<>();
    private final List<List<String>> workup = new ArrayList<>();
    private final List<List<String>> layers = new ArrayList<>();
    private final List<List<String>> assays = new ArrayList<>();
    private final List<String> unassayed = new ArrayList<>();
    private double addedGrams;
    private double productGrams;
    private double lotGrams;
    private double missingProductGrams;
    private int labels;

    /**
     * A workup.
     *
     * @param style how well it is recorded
     */
    RandomWorkup(String run, long seed, Style style) {
        this.run = run;
        this.random = new Random(seed);
        this.style = style;
        this.productGrams = rounded(1 + 19 * random.nextDouble());
        this.chargedGrams = productGrams + 100;
        portions.put("RM", new Portion("RM", "organic", chargedGrams, productGrams, water()));
        int steps = 2 + random.nextInt(MOST_STEPS);
        for (int i = 0; i < steps; i++) {
            step();
        }
        isolate();
        portions.values().stream().filter(p -> !p.consumed).forEach(this::record);
        if (style == Style.SOUND) {
            pool(new Random(31 * seed));
        }
    }

    /** In one of three workups the water layers are assayed together instead of one by one, in some of these the first one alone as well. */
    private void pool(Random chance) {
        List<Portion> water = layers.stream()
                .filter(row -> row.get(2).equals("aqueous"))
                .map(row -> portions.get(row.get(1)))
                .toList();
        if (water.size() < 2 || chance.nextInt(3) > 0) {
            return;
        }
        boolean first = chance.nextBoolean();
        List<String> labels = water.stream().map(p -> p.label).toList();
        assays.removeIf(
                row -> labels.contains(row.get(1)) && !(first && row.get(1).equals(labels.get(0))));
        double result = 1000
                * water.stream().mapToDouble(p -> p.product).sum()
                / water.stream().mapToDouble(p -> p.millilitres).sum();
        String typed = result < DETECTION_LIMIT
                ? "<" + DETECTION_LIMIT
                : String.format(Locale.ROOT, "%.4f", result * (1 + 0.02 * chance.nextGaussian()));
        assays.add(List.of(run, String.join("+", labels), "product", "HPLC", typed, "mg/mL", ""));
    }

    /** Density of the water layers, g/mL: as a wash with water has it, or off by what makes a density doubtful. */
    private double water() {
        return style == Style.SOUND ? 1.0 : 1.05;
    }

    double productGrams() {
        return productGrams;
    }

    /** Product that a portion truly holds, g. */
    double productGrams(String label) {
        return portions.get(label).product;
    }

    /** The same in its volume, mg/mL. */
    double milligramsPerMillilitre(String label) {
        return 1000 * portions.get(label).product / portions.get(label).millilitres;
    }

    double inGrams() {
        return chargedGrams + addedGrams;
    }

    double lotGrams() {
        return lotGrams;
    }

    /** Product in what was neither assayed nor isolated, g. */
    double missingProductGrams() {
        return missingProductGrams;
    }

    List<String> unassayed() {
        return unassayed;
    }

    private static double rounded(double grams) {
        return Math.round(grams * 1e4) / 1e4;
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.7f", number);
    }

    /** As it is read: with scatter and decimals of a sound workup, else exactly. */
    private String read(double number, double relativeScatter, int decimals) {
        return style == Style.SOUND
                ? String.format(
                        Locale.ROOT, "%." + decimals + "f", number * (1 + relativeScatter * random.nextGaussian()))
                : text(number);
    }

    private Portion anyOpen(String phase) {
        List<Portion> open = portions.values().stream()
                .filter(p -> !p.consumed && p.phase.equals(phase))
                .toList();
        return open.isEmpty() ? null : open.get(random.nextInt(open.size()));
    }

    private Portion give(String phase, double grams, double product) {
        labels++;
        String prefix = phase.equals("organic") ? "O" : phase.equals("aqueous") ? "A" : "K";
        Portion portion = new Portion(prefix + labels, phase, grams, product, water());
        portions.put(portion.label, portion);
        return portion;
    }

    private void step() {
        switch (random.nextInt(4)) {
            case 0 -> shake("organic", "water", "wash");
            case 1 -> shake("aqueous", "ethyl acetate", "extract");
            case 2 -> combine();
            default -> dry();
        }
    }

    private void shake(String phase, String material, String operation) {
        Portion source = anyOpen(phase);
        if (source == null) {
            return;
        }
        source.consumed = true;
        double added = rounded(20 + 80 * random.nextDouble());
        addedGrams += added;
        double staysOrganic = phase.equals("organic") ? source.grams : added;
        double crossing = staysOrganic * 0.05 * random.nextDouble();
        double share = style == Style.SOUND ? 1 - 0.02 * Math.pow(random.nextDouble(), 3) : random.nextDouble();
        Portion organic = give("organic", staysOrganic - crossing, source.product * share);
        Portion aqueous = give("aqueous", source.grams + added - organic.grams, source.product - organic.product);
        row(operation, source.label, material, added, organic.label, aqueous.label, "");
    }

    private void combine() {
        Portion first = anyOpen("organic");
        Portion second = anyOpen("organic");
        if (first == null || first == second || first.label.equals("RM") || second.label.equals("RM")) {
            return;
        }
        first.consumed = true;
        second.consumed = true;
        Portion both = give("organic", first.grams + second.grams, first.product + second.product);
        row("combine", first.label + "+" + second.label, "", 0, both.label, "", "");
    }

    private void dry() {
        Portion source = anyOpen("organic");
        if (source == null || source.label.equals("RM")) {
            return;
        }
        source.consumed = true;
        double agent = rounded(1 + 9 * random.nextDouble());
        addedGrams += agent;
        double held = Math.min(agent, source.grams) * 0.3;
        double productHeld = source.product * held / source.grams;
        Portion dried = give("organic", source.grams - held, source.product - productHeld);
        Portion cake = give("solid", agent + held, productHeld);
        row("dry", source.label, "sodium sulfate", agent, dried.label, "", cake.label);
    }

    private void isolate() {
        Portion source = anyOpen("organic");
        if (source == null) {
            return;
        }
        if (source.label.equals("RM")) {
            shake("organic", "water", "wash");
            source = anyOpen("organic");
        }
        source.consumed = true;
        lotGrams = source.product;
        double solvent = source.grams - source.product;
        Portion distillate = new Portion("D1", "distillate", solvent, 0, water());
        portions.put(distillate.label, distillate);
        row("concentrate", source.label, "", 0, "", "", "D1+CR1");
    }

    private void row(
            String operation,
            String from,
            String material,
            double grams,
            String organic,
            String aqueous,
            String other) {
        workup.add(List.of(
                run,
                Integer.toString(workup.size() + 1),
                operation,
                from,
                material,
                grams > 0 ? text(grams) : "",
                organic,
                aqueous,
                other));
    }

    private void record(Portion portion) {
        boolean assayed = style == Style.COMPLETE || random.nextInt(style == Style.SOUND ? 8 : 4) > 0;
        boolean rag = style == Style.SOUND && portion.phase.equals("aqueous") && random.nextInt(25) == 0;
        layers.add(List.of(
                run,
                portion.label,
                rag ? "rag" : portion.phase,
                read(portion.millilitres, 0.01, 1),
                read(portion.grams, 0, 2),
                portion.phase.equals("distillate") ? "to reuse" : "kept"));
        if (style == Style.SOUND && portion.phase.equals("aqueous") && random.nextInt(3) == 0) {
            transfers.add(
                    List.of("T" + portion.label, run, portion.label, "BIN", read(portion.grams, 0, 2), "proposed"));
        }
        if (portion.phase.equals("distillate")) {
            return;
        }
        if (assayed) {
            boolean solid = portion.phase.equals("solid");
            double result =
                    solid ? 100 * portion.product / portion.grams : 1000 * portion.product / portion.millilitres;
            boolean found = style != Style.SOUND || result >= DETECTION_LIMIT;
            assays.add(List.of(
                    run,
                    portion.label,
                    "product",
                    "HPLC",
                    found ? read(result, 0.02, 4) : "<" + DETECTION_LIMIT,
                    solid ? "% w/w" : "mg/mL",
                    ""));
        } else {
            missingProductGrams += portion.product;
            if (!portion.phase.equals("solid")) {
                unassayed.add(portion.label);
            }
        }
    }

    void addTo(CsvTables book) {
        book.add("runs.csv", List.of(run, "isolated"));
        book.add("products.csv", List.of(run, "product", "yes", "C7H6O2", "1", "start 1"));
        book.add("charges.csv", List.of(run, "start", "substrate", "C7H6O2", "1", text(productGrams), "g", "100"));
        book.add("charges.csv", List.of(run, "ethyl acetate", "solvent", "", "", "100", "g", ""));
        workup.forEach(row -> book.add("workup.csv", row));
        layers.forEach(row -> book.add("layers.csv", row));
        assays.forEach(row -> book.add("assays.csv", row));
        if (workup.stream().anyMatch(row -> row.get(8).endsWith("CR1"))) {
            isolated().forEach(lot -> book.add("isolated.csv", lot));
        }
        if (!transfers.isEmpty()) {
            book.add("containers.csv", List.of("BIN", "aqueous, neutral", "10", "400", "3400", "water 3000 g"));
            transfers.forEach(row -> book.add("transfers.csv", row));
        }
    }

    private List<List<String>> isolated() {
        if (style != Style.SOUND) {
            return List.of(List.of(run, "CR1", "product", "crude", "", text(lotGrams), "100", "", "NMR"));
        }
        double purity = 0.9 + 0.1 * random.nextDouble();
        String crude = read(lotGrams / purity, 0, 4);
        String assay = read(100 * purity, 0.01, 1);
        return switch (random.nextInt(5)) {
            case 0 ->
                List.of(
                        List.of(run, "CR1", "product", "crude", "", crude, "", "", "NMR"),
                        List.of(
                                run,
                                "P1",
                                "product",
                                "purified",
                                "CR1",
                                read(0.95 * lotGrams, 0, 4),
                                "99.5",
                                "1",
                                "NMR"));
            case 1 ->
                List.of(
                        List.of(run, "CR1", "product", "crude", "", crude, assay, "1", "NMR"),
                        List.of(run, "P1", "product", "purified", "CR1", read(0.95 * lotGrams, 0, 4), "", "", "NMR"));
            default -> List.of(List.of(run, "CR1", "product", "crude", "", crude, assay, "1", "NMR"));
        };
    }

    static CsvTables emptyBook() {
        return CsvTables.of(Map.of(
                "runs.csv", List.of("Run", "Status"),
                "products.csv", List.of("Run", "Product", "Wanted", "Formula", "Coefficient", "Skeleton"),
                "charges.csv",
                        List.of(
                                "Run",
                                "Material",
                                "Role",
                                "Formula",
                                "Coefficient",
                                "Actual amount",
                                "Actual unit",
                                "Assay (% w/w)"),
                "workup.csv",
                        List.of(
                                "Run",
                                "Step",
                                "Operation",
                                "From",
                                "Material",
                                "Mass (g)",
                                "Gives organic",
                                "Gives aqueous",
                                "Gives other"),
                "layers.csv", List.of("Run", "Layer", "Phase", "Volume (mL)", "Net (g)", "Status"),
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
                                "From",
                                "Net (g)",
                                "Assay (% w/w)",
                                "Relative standard uncertainty (%)",
                                "Identity by"),
                "containers.csv",
                        List.of(
                                "Container",
                                "Waste stream",
                                "Capacity (L)",
                                "Tare (g)",
                                "Gross then (g)",
                                "Contents then"),
                "transfers.csv", List.of("Transfer", "Run", "Layer", "Container", "Amount (g)", "Status")));
    }
}
