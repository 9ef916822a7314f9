package workuptally.book.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.book.words.BookWords;
import workuptally.book.words.LabelsText;
import workuptally.book.words.SameName;
import workuptally.model.Assay;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Layer;
import workuptally.model.LeftOutRow;
import workuptally.model.Lot;
import workuptally.model.NmrAssay;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.RunHead;
import workuptally.model.Step;

/** A run while its parts are being read from the tables. */
public final class RunAssembly {
    /** The run as its own row says, still without parts and perhaps without a status. */
    private final RunHead head;

    /** How the status of a run was found; one that was not understood must not pass for isolated. */
    enum StatusEntry {
        TYPED,
        BLANK,
        UNREAD
    }

    private final StatusEntry status;
    private final Runnable plannedThoughDone;
    final List<Product> products = new ArrayList<>();
    final List<Charge> charges = new ArrayList<>();
    final List<Step> steps = new ArrayList<>();
    final List<Layer> layers = new ArrayList<>();
    final List<Assay> assays = new ArrayList<>();
    final List<NmrAssay> nmrAssays = new ArrayList<>();
    final List<Lot> lots = new ArrayList<>();
    final List<LeftOutRow> leftOut = new ArrayList<>();
    private final Map<String, String> spellings = new HashMap<>();
    private final Set<String> labels = new LinkedHashSet<>();
    private final Map<String, Set<String>> labelsByKey = new HashMap<>();
    private final Map<String, Layer> layersByVessel = new HashMap<>();

    /**
     * A run by its own row.
     *
     * @param plannedThoughDone tells that the row says planned and the record something else
     */
    RunAssembly(RunHead head, StatusEntry status, Runnable plannedThoughDone) {
        this.head = head;
        this.status = status;
        this.plannedThoughDone = plannedThoughDone;
        defineLabel(Step.REACTION_MIXTURE);
    }

    String id() {
        return head.id();
    }

    /** True where the run's own row stands there. */
    public boolean standsAt(String sheet, int row) {
        return head.row().row() == row && head.row().table().sheet().equals(sheet);
    }

    /** Remembers how a label is spelled where it is defined. */
    void defineLabel(String label) {
        if (labels.add(label)) {
            labelsByKey
                    .computeIfAbsent(SameName.key(label), key -> new LinkedHashSet<>())
                    .add(label);
        }
        spellings.put(label, label);
        spellings.putIfAbsent(loose(label), label);
    }

    /** A label as it is spelled where it is defined; as typed if it is defined nowhere. */
    String spelling(String label) {
        return defined(label).orElse(label);
    }

    private Optional<String> defined(String label) {
        String known = spellings.get(label);
        known = known == null ? spellings.get(loose(label)) : known;
        return known == null ? alike(label) : Optional.of(known);
    }

    /** As {@link SameName#of}, with the keys of the labels at hand. */
    private Optional<String> alike(String wanted) {
        for (String label : labels) {
            if (label.equalsIgnoreCase(wanted)) {
                return Optional.of(label);
            }
        }
        Set<String> alike = wanted.isBlank() ? Set.of() : labelsByKey.getOrDefault(SameName.key(wanted), Set.of());
        return alike.size() == 1 ? Optional.of(alike.iterator().next()) : Optional.empty();
    }

    /** True for a label that is defined somewhere. */
    boolean knows(String label) {
        return defined(label).isPresent();
    }

    List<String> spelling(List<String> labels) {
        return labels.stream().map(this::spelling).distinct().toList();
    }

    private static String loose(String label) {
        return label.replace(" ", "").toLowerCase(Locale.ROOT);
    }

    Optional<Product> product(String name) {
        return SameName.of(products, Product::name, name);
    }

    Optional<Charge> charge(String material) {
        return SameName.of(charges, Charge::material, material);
    }

    /** A substance as Products or Charges spell it; as typed where it is neither. */
    String substance(String typed) {
        return product(typed)
                .map(Product::name)
                .or(() -> charge(typed).map(Charge::material))
                .orElse(typed);
    }

    /** The layer of a label, but for case and spaces. */
    Optional<Layer> layer(String label) {
        String wanted = loose(label);
        return layers.stream()
                .filter(layer -> loose(layer.label()).equals(wanted))
                .findFirst();
    }

    /** The lot of a label, but for case and spaces. */
    Optional<Lot> lot(String label) {
        String wanted = loose(label);
        return lots.stream().filter(lot -> loose(lot.label()).equals(wanted)).findFirst();
    }

    /** Steps and lots may name what a later row defines. */
    private List<Step> spelledSteps() {
        return steps.stream()
                .map(step -> {
                    List<String> from = spelledAnew(step.from());
                    return from.equals(step.from()) ? step : step.takenFrom(from);
                })
                .toList();
    }

    private List<Lot> spelledLots() {
        return lots.stream()
                .map(lot -> {
                    List<String> from = spelledAnew(lot.from());
                    return from.equals(lot.from()) ? lot : lot.madeFrom(from);
                })
                .toList();
    }

    private List<String> spelledAnew(List<String> from) {
        return from.stream().allMatch(labels::contains)
                ? from
                : spelling(LabelsText.read(String.join("+", from), this::knows));
    }

    /** The earlier layer in a vessel, if any is still in it by its status. */
    Optional<Layer> layerInVessel(String vessel) {
        return vessel.isEmpty() ? Optional.empty() : Optional.ofNullable(layersByVessel.get(BookWords.loose(vessel)));
    }

    void add(Layer layer) {
        layers.add(layer);
        defineLabel(layer.label());
        if (!layer.vessel().isEmpty() && stillInItsVessel(layer)) {
            layersByVessel.putIfAbsent(BookWords.loose(layer.vessel()), layer);
        }
    }

    /** False for a layer that was consumed, used up or lost, whose vessel may have been taken again. */
    static boolean stillInItsVessel(Layer layer) {
        return layer.custody()
                .status()
                .map(status -> status != Layer.Status.CONSUMED
                        && status != Layer.Status.USED_UP
                        && status != Layer.Status.LOST)
                .orElse(true);
    }

    public Run build() {
        if (status == StatusEntry.TYPED && isPlannedThoughDone()) {
            plannedThoughDone.run();
        }
        return new Run(
                head.withStatus(status()),
                ProductForms.settled(products, lots),
                charges,
                new StepSources(steps, layers, lots).settled(spelledSteps()),
                layers,
                assays,
                nmrAssays,
                spelledLots(),
                leftOut);
    }

    private Run.Status status() {
        return switch (status) {
            case TYPED -> isPlannedThoughDone() ? statusByRecord() : head.status();
            case BLANK -> statusByRecord();
            case UNREAD -> statusByRecord() == Run.Status.PLANNED ? Run.Status.PLANNED : Run.Status.IN_WORKUP;
        };
    }

    /** True where the plan has become the record: what was weighed or measured was done. */
    private boolean isPlannedThoughDone() {
        return head.status() == Run.Status.PLANNED
                && (lots.stream()
                                .anyMatch(l -> isEntered(
                                        l.weighing().grossGrams(), l.weighing().netGrams()))
                        || layers.stream()
                                .anyMatch(l -> isEntered(
                                        l.weighing().grossGrams(), l.weighing().netGrams(), l.volumeMillilitres()))
                        || !assays.isEmpty());
    }

    private static boolean isEntered(Field... fields) {
        return Arrays.stream(fields).anyMatch(f -> f.entered().isPresent());
    }

    private static boolean wasCharged(Charge charge) {
        return charge.quantity().actual().isPresent()
                || !charge.quantity().statedMillimoles().isBlank();
    }

    private Run.Status statusByRecord() {
        if (!lots.isEmpty()) {
            return Run.Status.ISOLATED;
        }
        boolean begun = !layers.isEmpty() || charges.stream().anyMatch(RunAssembly::wasCharged);
        return begun ? Run.Status.IN_WORKUP : Run.Status.PLANNED;
    }
}
