package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Limit;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/** Wanted product that layers still hold above the layer limit, the largest mass first, with the gain of a further extraction. */
final class RecoverableProduct {
    private static final int SHOWN = 3;

    private final Look look;
    private final Review review;
    private final RunPlaces places;

    RecoverableProduct(Look look, Review review, RunPlaces places) {
        this.look = look;
        this.review = review;
        this.places = places;
    }

    List<Block> blocks() {
        List<Entry> entries = entries();
        if (entries.isEmpty()) {
            return List.of();
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (Entry entry : entries.subList(0, Math.min(SHOWN, entries.size()))) {
            RunWords words = new RunWords(look, entry.run(), review.period().coverageFactor());
            rows.add(List.of(
                    places.link(entry.run().id()),
                    TableCell.bold(entry.layer().label()),
                    TableCell.of(words.content(entry.content())),
                    TableCell.of(nextStep(entry, words))));
        }
        List<Block> blocks = new ArrayList<>();
        String more = entries.size() > SHOWN ? ": the " + SHOWN + " largest of " + entries.size() : "";
        blocks.add(look.heading("Product still in layers" + more));
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Run"),
                        TableColumn.word("Layer"),
                        TableColumn.text("Holds, above "
                                + look.figures().plain(review.book().limits().value(Limit.LAYER_LIMIT))
                                + "\u00A0% of theory (layer limit)"),
                        TableColumn.text("Gain of one more extraction")),
                rows));
        return blocks;
    }

    private static String nextStep(Entry entry, RunWords words) {
        if (entry.run().has(Severity.STOP)) {
            return "settle the stop of this run first";
        }
        return entry.run()
                .tally()
                .evidence()
                .bestGain(entry.layer().label())
                .map(words::gain)
                .orElse("gain not computed");
    }

    private List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        double limit = review.book().limits().value(Limit.LAYER_LIMIT);
        for (RunReview run : review.runs()) {
            for (LayerTally layer : run.tally().layers()) {
                for (Content content : layer.contents()) {
                    boolean wanted = run.tally()
                            .run()
                            .product(content.substance())
                            .map(Product::wanted)
                            .orElse(false);
                    if (layer.terminal()
                            && !layer.aliquot()
                            && wanted
                            && content.massGrams().isPresent()
                            && content.percentOf().orElse(0) > limit) {
                        entries.add(new Entry(run, layer, content));
                    }
                }
            }
        }
        entries.sort(Comparator.comparingDouble(Entry::grams).reversed());
        return entries;
    }

    private record Entry(RunReview run, LayerTally layer, Content content) {
        double grams() {
            return content.massGrams().map(m -> m.value()).orElse(0.0);
        }
    }
}
