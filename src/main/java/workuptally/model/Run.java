package workuptally.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One planned reaction (or separation) and its workup.
 *
 * @param head what its own row says
 * @param products wanted and tracked substances
 * @param charges materials put in
 * @param steps workup operations in order of the table
 * @param layers portions that were kept or measured
 * @param assays analyses of layers and lots
 * @param nmrAssays internal-standard NMR assays
 * @param lots weighed isolated products
 * @param leftOut rows of it that could not be read, of all but its charges
 */
public record Run(
        RunHead head,
        List<Product> products,
        List<Charge> charges,
        List<Step> steps,
        List<Layer> layers,
        List<Assay> assays,
        List<NmrAssay> nmrAssays,
        List<Lot> lots,
        List<LeftOutRow> leftOut) {
    private static final Pattern STEP_NUMBER = Pattern.compile("\\d{1,9}(\\.\\d{1,9})?");

    /** Digits of a whole number that needs no closer look. */
    private static final int SHORT = 9;

    /** Copies the lists. */
    public Run {
        products = List.copyOf(products);
        charges = List.copyOf(charges);
        steps = List.copyOf(steps);
        layers = List.copyOf(layers);
        assays = List.copyOf(assays);
        nmrAssays = List.copyOf(nmrAssays);
        lots = List.copyOf(lots);
        leftOut = List.copyOf(leftOut);
    }

    /** The same run with other steps, layers and lots. */
    public Run with(List<Step> otherSteps, List<Layer> otherLayers, List<Lot> otherLots) {
        return new Run(head, products, charges, otherSteps, otherLayers, assays, nmrAssays, otherLots, leftOut);
    }

    /** Run id as typed, trimmed. */
    public String id() {
        return head.id();
    }

    /** Reaction, separation or resolution. */
    public Kind kind() {
        return head.kind();
    }

    /** Planned, in workup, isolated or failed. */
    public Status status() {
        return head.status();
    }

    /** Its row in the Runs table. */
    public RowPlace row() {
        return head.row();
    }

    /** The steps in order of their numbers where all are numbers, else in order of the table. */
    public List<Step> orderedSteps() {
        // asked many times for each run, and nearly always they stand in order
        boolean inOrder = true;
        double before = -1;
        for (Step step : steps) {
            String number = step.number();
            if (!isWhole(number) && !STEP_NUMBER.matcher(number).matches()) {
                return steps;
            }
            double value = Double.parseDouble(number);
            inOrder &= value >= before;
            before = value;
        }
        return inOrder
                ? steps
                : steps.stream()
                        .sorted(Comparator.comparingDouble(s -> Double.parseDouble(s.number())))
                        .toList();
    }

    private static boolean isWhole(String number) {
        for (int i = 0; i < number.length(); i++) {
            if (number.charAt(i) < '0' || number.charAt(i) > '9') {
                return false;
            }
        }
        return !number.isEmpty() && number.length() <= SHORT;
    }

    /** The layer of that label, if the Layers table has one. */
    public Optional<Layer> layer(String label) {
        for (Layer layer : layers) {
            if (layer.label().equals(label)) {
                return Optional.of(layer);
            }
        }
        return Optional.empty();
    }

    /** The lot of that label, if the Isolated table has one. */
    public Optional<Lot> lot(String label) {
        for (Lot lot : lots) {
            if (lot.label().equals(label)) {
                return Optional.of(lot);
            }
        }
        return Optional.empty();
    }

    /** The product of that name, ignoring case, if listed. */
    public Optional<Product> product(String name) {
        for (Product product : products) {
            if (product.isOf(name)) {
                return Optional.of(product);
            }
        }
        return Optional.empty();
    }

    /** The name under which a substance counts: of a product in several forms that of the form isolated, else its own. */
    public String countsAs(String substance) {
        return product(substance)
                .map(Product::formOf)
                .filter(isolated -> !isolated.isEmpty())
                .orElse(substance);
    }

    /** Rows left out on which what is isolated may rest: lots, and assays that are not of a layer. */
    public List<LeftOutRow> leftOutOfYields() {
        return leftOut.stream()
                .filter(r -> r.of() == LeftOutRow.Of.LOT
                        || r.of() == LeftOutRow.Of.ASSAY && layer(r.label()).isEmpty())
                .toList();
    }

    /** True where a step or a layer of the workup is recorded; else only charges and lots say anything of the run. */
    public boolean recordsWorkup() {
        return !steps.isEmpty() || !layers.isEmpty();
    }

    /** What kind of run. */
    public enum Kind {
        /** A reaction with a product. */
        REACTION,
        /** A separation: theory is the mass charged of each component. */
        SEPARATION,
        /** A resolution without racemisation: theory is halved. */
        RESOLUTION
    }

    /** How far the run is. */
    public enum Status {
        /** Only planned. */
        PLANNED,
        /** Layers exist, nothing isolated yet. */
        IN_WORKUP,
        /** Product isolated. */
        ISOLATED,
        /** Given up; its yields enter no mean. */
        FAILED;

        /** The word in books and reports, for example {@code in workup}. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }
}
