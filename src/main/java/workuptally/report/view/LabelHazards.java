package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import workuptally.judgement.RunReview;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.Materials;

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
            boolean ours = name.equals(LayerFlow.UNSTATED) || name.equals(Materials.REACTANTS);
            if (100 * mass >= NAMED_FROM_PERCENT * total && !ours && !isOwn(run, name) && !isHeld(run, name)) {
                names.add(name);
            }
        });
        return names;
    }

    /** True where a compound of the group belongs to the run. */
    static boolean hasOwn(RunReview run) {
        return !run.tally().run().products().isEmpty()
                || run.materials().stream().anyMatch(RunMaterial::own);
    }

    private static boolean isOwn(RunReview run, String name) {
        return run.tally().run().product(name).isPresent()
                || run.materials().stream().anyMatch(m -> m.own() && m.written().equalsIgnoreCase(name));
    }

    private static boolean isHeld(RunReview run, String name) {
        return run.hazards().stream()
                        .anyMatch(n -> n.ofMaterial() && n.subject().equalsIgnoreCase(name))
                || run.materials().stream().anyMatch(m -> m.isHeld(name));
    }
}
