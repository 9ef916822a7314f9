package workuptally.report.view.firstpage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.layers.MostInLayers;
import workuptally.model.Product;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.RunNames;
import workuptally.report.view.wording.Words;

/**
 * The layers with one outcome that are still kept, and the most that they may hold of wanted product.
 *
 * @param outcome outcome
 * @param layers number of layers
 * @param labels the layers of each run, {@code R26-041 A1, A2}, {@code 042 A1}, in order of the book
 * @param alike the same in one, {@code A1 of R26-041 to 043}, where all runs have the same layers; else empty
 * @param mostGrams what they may hold at most, as far as anything bounds it, g; what a run lacks can be in one of them only
 * @param unbounded number of the layers that nothing bounds
 */
public record LayerBoard(
        Outcome outcome, int layers, List<String> labels, String alike, double mostGrams, int unbounded) {
    /** Copies the list. */
    public LayerBoard {
        labels = List.copyOf(labels);
    }

    /** A line for each outcome that a layer has, from complete to keep. */
    public static List<LayerBoard> of(Review review) {
        List<LayerBoard> board = new ArrayList<>();
        List<Outcome> outcomes = new ArrayList<>(List.of(Outcome.values()));
        Collections.reverse(outcomes);
        for (Outcome outcome : outcomes) {
            Map<String, List<String>> labels = new LinkedHashMap<>();
            double grams = 0;
            int count = 0;
            int unbounded = 0;
            for (RunReview run : review.runs()) {
                List<String> ofRun = run.decisions().stream()
                        .filter(d -> d.outcome() == outcome && !d.isGone())
                        .map(LayerDecision::layer)
                        .toList();
                if (!ofRun.isEmpty()) {
                    MostInLayers most = MostInLayers.of(run.tally(), ofRun, wanted(run));
                    labels.put(run.id(), ofRun);
                    grams += most.grams();
                    count += ofRun.size();
                    unbounded += most.unbounded();
                }
            }
            if (count > 0) {
                board.add(new LayerBoard(outcome, count, inWords(labels), alike(labels), grams, unbounded));
            }
        }
        return board;
    }

    /** The layers of each run that have left the bench and are kept no more, as {@link #labels}. */
    public static List<String> gone(Review review) {
        Map<String, List<String>> labels = new LinkedHashMap<>();
        for (RunReview run : review.runs()) {
            List<String> ofRun = run.decisions().stream()
                    .filter(LayerDecision::isGone)
                    .map(LayerDecision::layer)
                    .toList();
            if (!ofRun.isEmpty()) {
                labels.put(run.id(), ofRun);
            }
        }
        return inWords(labels);
    }

    /** The layers of each run. */
    private static List<String> inWords(Map<String, List<String>> labels) {
        List<String> runs = List.copyOf(labels.keySet());
        List<String> words = new ArrayList<>();
        for (String name : RunNames.each(runs)) {
            words.add(name + "\u00A0" + String.join(",\u00A0", labels.get(runs.get(words.size()))));
        }
        return words;
    }

    /** The layers once, with the runs that all have the same ones; empty where they differ, and for one run. */
    private static String alike(Map<String, List<String>> labels) {
        List<String> runs = List.copyOf(labels.keySet());
        return runs.size() > 1 && labels.values().stream().distinct().count() == 1
                ? String.join(",\u00A0", labels.get(runs.get(0))) + " of " + RunNames.listed(runs)
                : "";
    }

    private static List<String> wanted(RunReview run) {
        return run.tally().run().products().stream()
                .filter(Product::wanted)
                .map(Product::name)
                .toList();
    }

    /** What they may hold at most, g, in words where nothing bounds some or all of them. */
    public String most(ReadableNumbers numbers) {
        if (unbounded == 0) {
            return numbers.most(mostGrams);
        }
        return unbounded == layers ? "not known" : numbers.most(mostGrams) + "; " + unbounded + " not known";
    }

    /**
     * The labels in one line, those of the first runs in full.
     *
     * @param most characters that the line may have
     */
    public String shortly(int most) {
        return alike.isEmpty() || alike.length() > most
                ? Words.listed(labels, "; ", most, more -> "layers of " + Words.count(more, "more run"))
                : alike;
    }
}
