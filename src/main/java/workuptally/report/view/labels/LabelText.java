package workuptally.report.view.labels;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.hazards.MixtureStatements;
import workuptally.model.Charge;
import workuptally.model.Container;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.SubstanceName;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerMakeUp;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.Present;

/**
 * The words of a label for a kept layer or a container.
 *
 * @param name run and layer, or container
 * @param contents what it is and holds
 * @param hazards hazard words by what it holds
 * @param deferring who knows more
 * @param made day and pH, or lines to fill in
 * @param owner owner and place, or lines to fill in
 */
public record LabelText(String name, String contents, String hazards, String deferring, String made, String owner) {
    private static final int NAMED = 5;
    private static final String TO_FILL = "____________";

    /** A label for each layer that a decision is about. */
    public static List<LabelText> ofLayers(Review review, ReadableNumbers numbers) {
        List<LabelText> labels = new ArrayList<>();
        for (RunReview run : review.runs()) {
            run.tally().layers().stream()
                    .filter(layer -> run.decision(layer.label()).isPresent() || isKeptBesideDecisions(run, layer))
                    .forEach(layer -> labels.add(of(run, layer, numbers)));
        }
        return labels;
    }

    /** Cakes and distillates stand in bottles too, though no decision is about them. */
    private static boolean isKeptBesideDecisions(RunReview run, LayerTally layer) {
        return run.tally().run().status() != Run.Status.PLANNED
                && layer.terminal()
                && !layer.aliquot()
                && layer.entry()
                        .filter(e -> e.custody()
                                .status()
                                .filter(s -> s != Layer.Status.KEPT && s != Layer.Status.TO_REUSE)
                                .isEmpty())
                        .isPresent();
    }

    private static LabelText of(RunReview run, LayerTally layer, ReadableNumbers numbers) {
        Optional<LayerMakeUp> makeUp = run.tally().makeUp(layer.label());
        Map<String, Double> grams =
                makeUp.map(m -> afterWater(m.grams(), run.materials())).orElse(Map.of());
        List<HazardNote> ofPortion = LabelHazards.ofPortion(run, layer.label(), grams);
        StringJoiner contents = new StringJoiner("; ");
        openStops(run, layer.label()).forEach(contents::add);
        contents.add(layer.phase().map(Layer.Phase::word).orElse("phase: " + TO_FILL));
        boolean solid = layer.phase().filter(p -> p == Layer.Phase.SOLID).isPresent();
        if (solid) {
            run.tally().waste().stream()
                    .filter(line -> line.layer().equals(layer.label()))
                    .map(line -> line.why())
                    .forEach(contents::add);
        } else {
            contents.add(
                    grams.keySet().stream().allMatch(LayerFlow.UNSTATED::equals)
                            ? "contents: " + TO_FILL + TO_FILL
                            : parts(grams, numbers));
        }
        Set<String> mayHold = mayHold(run, layer.label(), grams, contents.toString());
        if (!mayHold.isEmpty()) {
            contents.add("may hold " + String.join(", ", mayHold));
        }
        Optional<Layer> entry = layer.entry();
        return new LabelText(
                run.id() + "  " + layer.label(),
                contents.toString(),
                isUnknown(grams)
                        ? byWhatWentIn(run, layer.label(), ofPortion, numbers)
                        : LabelHazards.line(
                                MixtureStatements.of(
                                        grams, run.hazards(), ofPortion, LabelHazards.mayBe(run, layer.label(), grams)),
                                LabelHazards.notJudged(run, grams),
                                numbers),
                LabelHazards.deferring(LabelHazards.hasOwn(run)),
                "Made on: "
                        + entry.flatMap(l -> l.custody().madeOn())
                                .or(() -> run.tally().run().head().date())
                                .map(LocalDate::toString)
                                .orElse(TO_FILL)
                        + "    pH: "
                        + entry.flatMap(l -> l.pH().entered())
                                .map(e -> numbers.inWords(e.asTyped()))
                                .orElse("______"),
                "Owner: "
                        + (run.tally().run().head().chemist().isBlank()
                                ? TO_FILL
                                : run.tally().run().head().chemist()) + "    Phone: " + TO_FILL);
    }

    /** What a label must not hide: that a stop is open about the very layer, such as which phase it is. */
    private static List<String> openStops(RunReview run, String label) {
        return run.findings().stream()
                .filter(f ->
                        f.severity() == Severity.STOP && f.subject().layers().contains(label))
                .map(f -> f.code().inWords())
                .distinct()
                .map(words -> "IN QUESTION, a stop is open (" + words + ")")
                .toList();
    }

    /** Products, and what follows the layers until it is destroyed; without what the make-up names. */
    private static Set<String> mayHold(RunReview run, String label, Map<String, Double> grams, String said) {
        Set<String> names = new LinkedHashSet<>();
        run.tally().run().products().stream()
                .map(Product::name)
                .filter(name -> grams.keySet().stream().limit(named(grams)).noneMatch(name::equalsIgnoreCase))
                .forEach(names::add);
        run.tally().evidence().meetings().in(label).stream()
                .filter(Present::persists)
                .filter(present -> grams.keySet().stream().noneMatch(present::isNamed))
                .map(present -> isSolution(run, present) ? present.dissolvedName() : present.name())
                .forEach(names::add);
        LabelHazards.saltsOfFirstWater(run, label, grams).keySet().forEach(salt -> names.add(salt.written()));
        LabelHazards.notShownGone(run, label, grams).stream()
                .filter(present -> !said.contains(present.name()))
                .forEach(present -> names.add(present.dissolvedName() + " (not shown gone)"));
        if (LabelHazards.holdsMagnesiumSalts(run, label)) {
            names.add("magnesium salts");
        }
        return names;
    }

    /** A wash by its strength is not what stays of it in another layer: that is what was dissolved in it. */
    private static boolean isSolution(RunReview run, Present present) {
        return run.materials().stream()
                .filter(m -> m.written().equals(present.name()))
                .anyMatch(RunMaterial::isSolution);
    }

    /** The components by name; what water destroys is not there any more beside water, but what that left of it is. */
    private static Map<String, Double> afterWater(Map<String, Double> grams, List<RunMaterial> materials) {
        Map<String, Double> now = new LinkedHashMap<>();
        boolean wet = grams.getOrDefault(IngredientAccount.WATER, 0.0) > 0;
        grams.forEach((name, mass) -> {
            boolean gone = wet
                    && materials.stream()
                            .filter(m -> SubstanceName.same(m.written(), name))
                            .anyMatch(m -> m.isDestroyedByWater());
            now.put(gone ? "what water left of " + name : name, mass);
        });
        return now;
    }

    /** The components in parts of a hundred, the largest first; what is left is counted. */
    private static String parts(Map<String, Double> grams, ReadableNumbers numbers) {
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        StringJoiner text = new StringJoiner(", ", "about ", "");
        grams.entrySet().stream()
                .limit(named(grams))
                .forEach(e ->
                        text.add(e.getKey() + " " + numbers.significant(100 * e.getValue() / total, 2) + "\u00A0%"));
        return grams.size() > named(grams) ? text + ", " + (grams.size() - NAMED) + " more" : text.toString();
    }

    /** How many components are named: one more than usual takes no more room than to count it. */
    private static int named(Map<String, Double> grams) {
        return grams.size() == NAMED + 1 ? grams.size() : NAMED;
    }

    /** True where nothing tells what at least half of a layer is. */
    private static boolean isUnknown(Map<String, Double> grams) {
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        return grams.getOrDefault(LayerFlow.UNSTATED, 0.0) >= total / 2;
    }

    /** Of a layer whose make-up is not known: what went into the run, and all that this can be. A blank line would read as no hazard. */
    private static String byWhatWentIn(
            RunReview run, String label, List<HazardNote> ofPortion, ReadableNumbers numbers) {
        Set<String> names = new LinkedHashSet<>();
        Set<String> dissolved = new LinkedHashSet<>();
        Map<String, String> written = new LinkedHashMap<>();
        List<Present> met = run.tally().evidence().meetings().in(label);
        boolean cake = run.tally()
                        .layer(label)
                        .flatMap(LayerTally::phase)
                        .filter(p -> p == Layer.Phase.SOLID)
                        .isPresent()
                && met.stream().anyMatch(Present::isDryingAgent);
        for (Present present : met) {
            names.add(present.listedName());
            written.putIfAbsent(present.listedName(), present.name());
            if (cake && present.isDissolvedOnCake()) {
                dissolved.add(present.listedName());
            }
        }
        names.removeAll(dissolved);
        if (names.isEmpty()) {
            run.tally().run().charges().stream().map(Charge::material).forEach(names::add);
            run.tally().run().steps().stream()
                    .map(s -> s.added().material())
                    .filter(material -> !material.isBlank())
                    .forEach(names::add);
        }
        Map<String, Double> mostPercent = new LinkedHashMap<>();
        names.forEach(name -> mostPercent.put(name, 100.0));
        dissolved.forEach(name -> mostPercent.put(name, MixtureStatements.MOST_DISSOLVED_ON_CAKE_PERCENT));
        List<String> named = mostPercent.keySet().stream()
                .filter(name -> !cake || isHazardous(run, name, mostPercent.get(name)))
                .map(name -> written.getOrDefault(name, name))
                .toList();
        return (cake ? "By what a cake can hold" : "Make-up not known: label by what went in")
                + (named.isEmpty() ? ". " : " (" + String.join(", ", named) + "). ")
                + LabelHazards.line(
                        MixtureStatements.ofLargestShares(mostPercent, run.hazards(), ofPortion),
                        LabelHazards.notJudged(run, mostPercent),
                        numbers);
    }

    /** Whether it puts a statement on the label by itself: a cake is told by these, so that every statement has its material. */
    private static boolean isHazardous(RunReview run, String name, double mostPercent) {
        return !MixtureStatements.ofLargestShares(Map.of(name, mostPercent), run.hazards(), List.of())
                .isEmpty();
    }

    /** Hazard words of a container by what it holds now. */
    public static List<String> words(ContainerReview container) {
        return MixtureStatements.of(
                container.tally().now().grams(),
                container.hazards().stream().filter(HazardNote::ofMaterial).toList(),
                container.hazards().stream().filter(n -> !n.ofMaterial()).toList());
    }

    /** A label for each container. */
    public static List<LabelText> ofContainers(Review review, ReadableNumbers numbers) {
        List<LabelText> labels = new ArrayList<>();
        for (ContainerReview container : review.containers()) {
            labels.add(of(container, review.book().limits().text(Limit.GROUP), numbers));
        }
        return labels;
    }

    private static LabelText of(ContainerReview container, String group, ReadableNumbers numbers) {
        Container entry = container.tally().container();
        ContainerState now = container.tally().now();
        StringJoiner contents = new StringJoiner(", ", entry.wasteStream() + ": ", "");
        now.composition(java.util.OptionalDouble.empty())
                .forEach(p -> contents.add(p.substance() + " " + numbers.fixed(p.massPercent(), 1) + "\u00A0%"));
        String place = (entry.location() + " " + entry.contact()).strip();
        return new LabelText(
                entry.id(),
                now.totalGrams() > 0 ? contents.toString() : entry.wasteStream() + "; contents: " + TO_FILL,
                LabelHazards.line(words(container), List.of(), numbers),
                LabelHazards.deferring(true),
                "Opened: " + entry.opened().map(LocalDate::toString).orElse(TO_FILL) + "    Local code: " + TO_FILL,
                (group.isBlank() ? "Producer: " + TO_FILL : "Producer: " + group)
                        + (place.isEmpty() ? "    Place: " + TO_FILL : "    " + place));
    }
}
