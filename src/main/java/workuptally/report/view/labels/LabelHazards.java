package workuptally.report.view.labels;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import workuptally.judgement.RunReview;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.hazards.MixtureStatements;
import workuptally.model.Layer;
import workuptally.model.Step;
import workuptally.model.SubstanceName;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.Present;

/** The line of hazards of a label. It is never blank: where no statement holds, it says whether one was looked for. */
final class LabelHazards {
    private static final double NAMED_FROM_PERCENT = 1;
    private static final String MORE = "More: safety data sheets.";
    private static final String OWN = "Own compounds: by the group.";

    private LabelHazards() {}

    /**
     * The line.
     *
     * @param phrases statements that hold, in words
     * @param notJudged parts of which no table holds anything
     */
    static String line(List<String> phrases, List<String> notJudged, ReadableNumbers numbers) {
        List<String> sentences = new ArrayList<>();
        if (phrases.isEmpty()) {
            sentences.add("No hazard statement of the tables reaches its limit here; that is no sign of safety.");
        } else {
            sentences.add(numbers.inWords(String.join(" ", phrases)));
        }
        if (!notJudged.isEmpty()) {
            sentences.add("Not judged: " + numbers.inWords(String.join(", ", notJudged)) + ".");
        }
        return String.join(" ", sentences);
    }

    /** Who knows more. */
    static String deferring(boolean own) {
        return own ? OWN + " " + MORE : MORE;
    }

    /** The parts from 1 % on that are neither water nor compounds of the group and of which the tables hold no statement. */
    static List<String> notJudged(RunReview run, Map<String, Double> grams) {
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        List<String> names = new ArrayList<>();
        grams.forEach((name, mass) -> {
            boolean ours = name.equals(LayerFlow.UNSTATED)
                    || name.equals(IngredientAccount.REACTANTS)
                    || SubstanceName.same(name, IngredientAccount.WATER);
            if (100 * mass >= NAMED_FROM_PERCENT * total && !ours && !isOwn(run, name) && !isHeld(run, name)) {
                names.add(name);
            }
        });
        return names;
    }

    /**
     * What was charged and may make up what the record leaves unnamed, as written, by the names of the tables. A distillate is left out, since what does
     * not boil over is not in it.
     */
    static Map<String, String> mayBe(RunReview run, String label, Map<String, Double> grams) {
        boolean wet = grams.getOrDefault(IngredientAccount.WATER, 0.0) > 0;
        boolean distilled = run.tally()
                .layer(label)
                .flatMap(LayerTally::phase)
                .filter(p -> p == Layer.Phase.DISTILLATE)
                .isPresent();
        Map<String, String> names = new LinkedHashMap<>();
        run.tally().evidence().meetings().in(label).stream()
                .filter(p -> !distilled && p.share() == Present.Share.MAIN && !p.solvent() && !p.isListedSolvent())
                .filter(p -> !(wet && p.isDestroyedByWater()))
                .filter(p -> run.tally().run().charges().stream()
                        .anyMatch(c -> c.material().equals(p.name())))
                .filter(p -> grams.keySet().stream().noneMatch(p::isNamed))
                .forEach(p -> names.putIfAbsent(p.listedName(), p.name()));
        return names;
    }

    /**
     * Salts that were charged and go with the first water, though no make-up follows them since the reaction changes them: an excess of a
     * hydrochloride, or what became of it. Their largest share is all that was charged.
     *
     * @param grams make-up of the portion
     * @return mass % at most by the material; none below the share from which a part is named
     */
    static Map<RunMaterial, Double> saltsOfFirstWater(RunReview run, String label, Map<String, Double> grams) {
        Map<RunMaterial, Double> salts = new LinkedHashMap<>();
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        if (!isFirstWater(run, label) || total <= 0) {
            return salts;
        }
        for (ChargeAmount amount : run.tally().amounts()) {
            double percent = amount.massGrams()
                    .map(mass -> Math.min(100, 100 * mass.value() / total))
                    .orElse(0.0);
            run.materials().stream()
                    .filter(m -> percent >= NAMED_FROM_PERCENT && !amount.isSolvent())
                    .filter(m -> m.written().equals(amount.charge().material()) && m.salt())
                    .filter(m -> grams.keySet().stream().noneMatch(m::means))
                    .findFirst()
                    .ifPresent(m -> salts.merge(m, percent, Math::max));
        }
        return salts;
    }

    /**
     * Oxidants and hydrides that no test has shown gone and no make-up of the portion names. How much is left, nobody measured: at most all
     * of it.
     */
    static List<Present> notShownGone(RunReview run, String label, Map<String, Double> grams) {
        return run.tally().evidence().meetings().in(label).stream()
                .filter(present -> present.share() == Present.Share.MAIN && !present.persists())
                .filter(present -> run.materials().stream()
                        .anyMatch(m -> m.tested() && m.written().equals(present.name())))
                .filter(present -> grams.keySet().stream().noneMatch(present::isNamed))
                .toList();
    }

    /** Most of a material in a portion, mass %: all that was charged of it; 100 where that is not known. */
    private static double mostPercent(RunReview run, Present present, double totalGrams) {
        return run.tally().amounts().stream()
                .filter(a -> a.charge().material().equals(present.name()))
                .flatMap(a -> a.massGrams().stream())
                .mapToDouble(mass -> totalGrams > 0 ? Math.min(100, 100 * mass.value() / totalGrams) : 100)
                .findFirst()
                .orElse(100);
    }

    /** True for the water of the first contact, and for what is left of it where it was extracted again. */
    private static boolean isFirstWater(RunReview run, String label) {
        Set<String> water = new HashSet<>();
        for (Step step : run.tally().run().orderedSteps()) {
            if (water.isEmpty() || step.from().stream().anyMatch(water::contains)) {
                water.addAll(step.given().aqueous());
            }
        }
        return water.contains(label);
    }

    /** True for the first water layer of a run with an organomagnesium reagent: water or acid makes a magnesium halide of it. */
    static boolean holdsMagnesiumSalts(RunReview run, String label) {
        return isFirstWater(run, label) && run.materials().stream().anyMatch(RunMaterial::isOrganomagnesium);
    }

    /** What is said of the portion as a whole, and of the salts that may be in it. */
    static List<HazardNote> ofPortion(RunReview run, String label, Map<String, Double> grams) {
        List<HazardNote> notes = new ArrayList<>();
        run.hazards().stream().filter(n -> n.isOfPortion(label)).forEach(notes::add);
        Map<String, Double> percents = new LinkedHashMap<>();
        saltsOfFirstWater(run, label, grams).forEach((salt, percent) -> percents.put(salt.mainName(), percent));
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        notShownGone(run, label, grams)
                .forEach(present -> percents.merge(present.listedName(), mostPercent(run, present, total), Math::max));
        MixtureStatements.upTo(percents, run.hazards()).ifPresent(notes::add);
        return notes;
    }

    /** True where a compound of the group belongs to the run. */
    static boolean hasOwn(RunReview run) {
        return !run.tally().run().products().isEmpty()
                || run.materials().stream().anyMatch(RunMaterial::own);
    }

    private static boolean isOwn(RunReview run, String name) {
        return run.tally().run().product(name).isPresent()
                || run.materials().stream().anyMatch(m -> m.own() && SubstanceName.same(m.written(), name));
    }

    private static boolean isHeld(RunReview run, String name) {
        return run.hazards().stream().anyMatch(n -> n.ofMaterial() && SubstanceName.same(n.subject(), name))
                || run.materials().stream().anyMatch(m -> m.isHeld(name));
    }
}
