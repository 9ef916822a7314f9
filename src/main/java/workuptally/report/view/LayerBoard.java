package workuptally.report.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Outcome;

/**
 * The kept layers with one outcome, and the most that they may hold of wanted product.
 *
 * @param outcome outcome
 * @param layers number of layers
 * @param labels the layers of each run, {@code R-2 A1, A2}, in order of the book
 * @param mostGrams sum of what each may hold at most, g
 */
public record LayerBoard(Outcome outcome, int layers, List<String> labels, double mostGrams) {
    /** Copies the list. */
    public LayerBoard {
        labels = List.copyOf(labels);
    }

    /** A line for each outcome that a layer has, from keep to complete. */
    public static List<LayerBoard> of(Review review) {
        List<LayerBoard> board = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            Map<String, List<String>> labels = new LinkedHashMap<>();
            double grams = 0;
            int count = 0;
            for (RunReview run : review.runs()) {
                for (LayerDecision decision : run.decisions()) {
                    if (decision.outcome() == outcome) {
                        labels.computeIfAbsent(run.id(), r -> new ArrayList<>()).add(decision.layer());
                        grams += decision.atMost()
                                .map(LayerDecision.AtMost::grams)
                                .orElse(0.0);
                        count++;
                    }
                }
            }
            if (count > 0) {
                List<String> words = labels.entrySet().stream()
                        .map(e -> e.getKey() + "\u00A0" + String.join(",\u00A0", e.getValue()))
                        .toList();
                board.add(new LayerBoard(outcome, count, words, grams));
            }
        }
        return board;
    }

    /**
     * The labels in one line, those of the first runs in full.
     *
     * @param most characters that the line may have
     */
    public String shortly(int most) {
        return Words.listed(labels, "; ", most, more -> "layers of " + Words.count(more, "more run"));
    }
}
