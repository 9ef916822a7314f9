package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.tally.amounts.Content;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.Closure.Verdict;
import workuptally.tally.layers.LayerTally;

/**
 * R6: the run's balances close, or their open part cannot be in this layer because the layer has its own assay or true non-detect of a
 * product that the open balance counts. A rag that
 * was not assayed, or a portion that a step gave and nobody recorded, leaves every layer of the run open.
 */
final class BalanceSettled implements LayerCondition {
    private static final String ID = "R6";
    private static final String TITLE = "balance closes, or the open part is not here";

    @Override
    public Condition judge(LayerEvidence evidence) {
        if (!evidence.layer().endsWorkup()) {
            return new Condition(ID, TITLE, State.NOT_ASKED, "a liquor belongs to the purification's balance");
        }
        List<String> open = unsettledPortions(evidence);
        if (!open.isEmpty()) {
            return new Condition(ID, TITLE, State.NOT_MET, String.join(", ", open) + " not assayed or not recorded");
        }
        List<Closure> closures = evidence.run().closures();
        if (closures.isEmpty()) {
            return new Condition(ID, TITLE, State.MISSING, "no closure could be computed");
        }
        for (Closure closure : closures) {
            if (closure.verdict() == Verdict.OVER) {
                return new Condition(ID, TITLE, State.NOT_MET, words(closure));
            }
        }
        List<String> elsewhere = new ArrayList<>();
        for (Closure closure : closures) {
            if (closure.verdict() != Verdict.CLOSES) {
                if (!hasOwnAssay(evidence, closure)) {
                    return new Condition(
                            ID,
                            TITLE,
                            State.NOT_MET,
                            words(closure) + ", and this layer has no assay of its own" + forWhat(evidence, closure));
                }
                elsewhere.add(words(closure));
            }
        }
        if (!elsewhere.isEmpty()) {
            return new Condition(
                    ID, TITLE, State.MET, String.join("; ", elsewhere) + ", but this layer has its own assay");
        }
        return new Condition(ID, TITLE, State.MET, words(closures.get(0)));
    }

    /** An assay or true non-detect of a wanted product that this balance counts. */
    private static boolean hasOwnAssay(LayerEvidence evidence, Closure closure) {
        return evidence.wanted().stream()
                .filter(c -> c.kind() == Content.Kind.MEASURED || c.kind() == Content.Kind.BOUND)
                .filter(c -> c.massGrams().isPresent())
                .anyMatch(c -> closure.counts(c.substance()));
    }

    private static String forWhat(LayerEvidence evidence, Closure closure) {
        boolean several =
                evidence.run().run().products().stream().filter(Product::wanted).count() > 1;
        return several ? " for " + closure.unaccountedAs() : "";
    }

    private static List<String> unsettledPortions(LayerEvidence evidence) {
        List<String> labels = new ArrayList<>();
        for (LayerTally layer : evidence.run().layers()) {
            if (!layer.terminal() || !layer.endsWorkup()) {
                continue;
            }
            boolean rag = layer.phase().filter(p -> p == Layer.Phase.RAG).isPresent();
            boolean measured = layer.contents().stream().anyMatch(c -> c.kind() == Content.Kind.MEASURED);
            if (rag && !measured) {
                labels.add("rag " + layer.label());
            }
        }
        labels.addAll(evidence.run().evidence().missingLayers());
        return labels;
    }

    private static String words(Closure closure) {
        return String.format(
                Locale.ROOT,
                "closure on %s %.1f ± %.1f %% %s",
                closure.skeleton(),
                closure.percent().value(),
                closure.expandedUncertaintyPercent(),
                closure.verdict().word());
    }
}
