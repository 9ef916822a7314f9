package workuptally.judgement.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.UnassayedLayers;
import workuptally.judgement.layers.UnassayedLayers.Sample;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.tally.RunTally;
import workuptally.tally.balance.Experience;

/** Layers that nobody assayed, on one line, with the assays that would settle them. */
final class NotAssayed {
    /** Code of the finding. */
    static final String CODE = "layers-not-assayed";

    private final RunTally tally;
    private final List<LayerDecision> decisions;
    private final Limits limits;
    private final Experience experience;

    NotAssayed(RunTally tally, List<LayerDecision> decisions, Limits limits, Experience experience) {
        this.tally = tally;
        this.decisions = decisions;
        this.limits = limits;
        this.experience = experience;
    }

    void add(UnassayedLayers layers, FindingList findings) {
        findings.add(
                CODE,
                workuptally.model.Severity.HOLD,
                HeldLayers.place(tally, layers.labels().get(0)),
                listed(layers.labels()) + " not assayed: " + atMost(layers),
                String.format(
                        Locale.ROOT,
                        "at most %s %% of theory in each, and %s %% in all kept layers together",
                        FindingList.plain(limits.value(Limit.LAYER_LIMIT)),
                        FindingList.plain(limits.value(Limit.RUN_LIMIT))),
                "limits in force; guard-banded one-sided 95 % bound",
                "Keep them; " + action(layers));
    }

    private String atMost(UnassayedLayers layers) {
        Optional<LayerDecision.AtMost> most = decisions.stream()
                .filter(d -> layers.labels().contains(d.layer()))
                .map(LayerDecision::atMost)
                .flatMap(Optional::stream)
                .reduce((a, b) -> b.percentOfTheory() > a.percentOfTheory() ? b : a);
        String now = most.map(m -> "up to " + FindingList.atMost(m.grams(), 2) + " g " + m.product() + ", "
                        + FindingList.atMost(m.percentOfTheory(), 1) + " % of theory, can be in them")
                .orElse("nothing bounds what they hold");
        return now + earlier(layers);
    }

    /** What earlier batches held in them, shown whether or not it counts. */
    private String earlier(UnassayedLayers layers) {
        List<String> told = new ArrayList<>();
        for (String label : layers.labels()) {
            for (Product product : tally.run().products()) {
                if (product.wanted()) {
                    experience
                            .bound(tally.run(), label, product.name())
                            .ifPresent(b -> told.add(label + ", " + b.inWords()));
                }
            }
        }
        return told.isEmpty() ? "" : "; " + String.join("; ", told);
    }

    private static String action(UnassayedLayers layers) {
        if (layers.samples().isEmpty()) {
            return "assay them one by one.";
        }
        List<String> parts = new ArrayList<>();
        for (Sample sample : layers.samples()) {
            String below = sample.below().stream()
                    .map(b -> FindingList.say("%.2g mg/mL", floor(b.milligramsPerMillilitre()))
                            + (sample.below().size() > 1 ? " " + b.product() : ""))
                    .collect(Collectors.joining(" and "));
            parts.add(
                    sample.layers().size() == 1
                            ? "an assay of " + sample.layers().get(0) + " below " + below
                            : "one composite sample of " + listed(sample.layers())
                                    + ", 1 % of each diluted into methanol, if it is below " + below);
        }
        boolean one = layers.samples().size() == 1;
        String settles = (one ? " settles " : " settle ")
                + (layers.settled() ? "" : "what is in ")
                + (layers.labels().size() == 2
                        ? "both"
                        : "all " + layers.labels().size());
        if (one) {
            return parts.get(0).replace(", if it is below", "," + settles + " if it is below") + ".";
        }
        return String.join("; ", parts) + ":" + settles + ".";
    }

    /** Rounded down to two digits: what lies below the figure printed lies below the figure meant. */
    private static double floor(double result) {
        return new java.math.BigDecimal(result)
                .round(new java.math.MathContext(2, java.math.RoundingMode.DOWN))
                .doubleValue();
    }

    /** {@code A1 to A4} where the numbers follow each other, else the labels with commas. */
    static String listed(List<String> labels) {
        boolean range = labels.size() > 2;
        for (int i = 1; i < labels.size(); i++) {
            range = range && follows(labels.get(i - 1), labels.get(i));
        }
        return range ? labels.get(0) + " to " + labels.get(labels.size() - 1) : String.join(", ", labels);
    }

    private static boolean follows(String one, String next) {
        String letters = one.replaceFirst("\\d{1,6}$", "");
        String digits = one.substring(letters.length());
        return !digits.isEmpty() && next.equals(letters + (Integer.parseInt(digits) + 1));
    }
}
