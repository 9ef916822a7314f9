package workuptally.report.view.firstpage;

import java.util.List;
import java.util.stream.Collectors;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.MostInLayers;
import workuptally.model.Finding;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.report.view.wording.RunNames;

/**
 * Findings of one code in one run.
 *
 * @param run run
 * @param findings findings
 * @param subjects what they are about
 */
record UrgentItem(RunReview run, List<Finding> findings, List<String> subjects) {
    /** With a stop the whole of the product is at stake, else the most that the layers may hold, g. */
    double grams() {
        return run.has(Severity.STOP) ? theory() : most();
    }

    private double theory() {
        return run.tally().theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(p -> p.product().wanted())
                .mapToDouble(p -> p.massGrams().value())
                .max()
                .orElse(0);
    }

    private double most() {
        List<String> layers = run.decisions().stream()
                .map(LayerDecision::layer)
                .filter(subjects::contains)
                .toList();
        List<String> wanted = run.tally().run().products().stream()
                .filter(Product::wanted)
                .map(Product::name)
                .toList();
        return MostInLayers.of(run.tally(), layers, wanted).atStakeGrams();
    }

    /** Whether anything was measured in the layers it is about. */
    boolean isAssayed() {
        return run.tally().layers().stream()
                .filter(layer -> subjects.contains(layer.label()))
                .flatMap(layer -> layer.contents().stream())
                .anyMatch(content -> content.massGrams().isPresent() || content.isOwnEvidence());
    }

    /** The runs of items. */
    static List<String> runs(List<UrgentItem> items) {
        return items.stream().map(i -> i.run().id()).toList();
    }

    /** What several items are about, with their runs; the subjects once where all have the same. */
    static String each(List<UrgentItem> items) {
        List<List<String>> subjects =
                items.stream().map(UrgentItem::subjects).distinct().toList();
        if (subjects.size() == 1) {
            String runs = RunNames.listed(runs(items));
            return subjects.get(0).isEmpty() ? runs : String.join(", ", subjects.get(0)) + " of " + runs;
        }
        return items.stream().map(UrgentItem::inWords).collect(Collectors.joining("; "));
    }

    private String inWords() {
        return subjects.isEmpty() ? run.id() : run.id() + "\u00A0" + String.join(",\u00A0", subjects);
    }
}
