package workuptally.judgement.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.UnassayedLayers;
import workuptally.judgement.layers.UnassayedLayers.Sample;
import workuptally.model.Figure;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.tally.RunTally;
import workuptally.tally.balance.Experience;

/** Layers that nobody assayed, on one line, with the assays that would settle them. */
final class NotAssayed {
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
                FindingCode.LAYERS_NOT_ASSAYED,
                Severity.HOLD,
                Subject.ofRun(tally.run().id()).withLayers(layers.labels()),
                HeldLayers.place(tally, layers.labels().get(0)),
                Phrase.of("{} not assayed: {}", listed(layers.labels()), atMost(layers)),
                Phrase.of(
                        "at most {} of theory in each, and {} in all kept layers together",
                        Figure.brief(limits.value(Limit.LAYER_LIMIT), "%"),
                        Figure.brief(limits.value(Limit.RUN_LIMIT), "%")),
                "limits in force; guard-banded one-sided 95 % bound",
                Phrase.of("Keep them; {}.", action(layers)));
    }

    private Phrase atMost(UnassayedLayers layers) {
        Optional<LayerDecision.AtMost> most = decisions.stream()
                .filter(d -> layers.labels().contains(d.layer()))
                .map(LayerDecision::atMost)
                .flatMap(Optional::stream)
                .reduce((a, b) -> b.percentOfTheory() > a.percentOfTheory() ? b : a);
        Phrase now = most.map(m -> Phrase.of(
                        "up to {} {}, {} of theory, can be in them",
                        Figure.bound(m.grams(), "g"),
                        m.product(),
                        Figure.bound(m.percentOfTheory(), "%")))
                .orElse(Phrase.of("nothing bounds what they hold"));
        List<Phrase> earlier = earlier(layers);
        return earlier.isEmpty() ? now : Phrase.of("{}; {}", now, Phrase.join("; ", earlier));
    }

    /** What earlier batches held in them, shown whether or not it counts. */
    private List<Phrase> earlier(UnassayedLayers layers) {
        List<Phrase> told = new ArrayList<>();
        for (String label : layers.labels()) {
            for (Product product : tally.run().products()) {
                if (product.wanted()) {
                    experience
                            .bound(tally.run(), label, product.name())
                            .ifPresent(bound -> told.add(Phrase.of("{}, {}", label, inWords(bound))));
                }
            }
        }
        return told;
    }

    private static Phrase inWords(Experience.Bound bound) {
        return Phrase.of(
                "{} earlier batches: at most {} of theory (95 % of batches, 95 % confidence{}){}",
                bound.batches(),
                Figure.bound(bound.percentOfTheory(), "%"),
                bound.normalityDoubted() ? "; they do not look normally distributed" : "",
                bound.counts() ? "" : ", which does not count here");
    }

    private static Phrase action(UnassayedLayers layers) {
        List<Sample> samples = layers.samples();
        if (samples.isEmpty()) {
            return Phrase.of("assay them one by one");
        }
        Phrase settles = Phrase.of(
                "{} {}{}",
                samples.size() == 1 ? "settles" : "settle",
                layers.settled() ? "" : "what is in ",
                layers.labels().size() == 2 ? "both" : "all " + layers.labels().size());
        if (samples.size() == 1 && samples.get(0).layers().size() > 1) {
            return Phrase.of("{}, {} if it is below {}", composite(samples.get(0)), settles, below(samples.get(0)));
        }
        return Phrase.of(
                samples.size() == 1 ? "{} {}" : "{}: {}",
                samples.stream().map(NotAssayed::asked).collect(Phrase.joining("; ")),
                settles);
    }

    private static Phrase asked(Sample sample) {
        return sample.layers().size() == 1
                ? Phrase.of("an assay of {} below {}", sample.layers().get(0), below(sample))
                : Phrase.of("{}, if it is below {}", composite(sample), below(sample));
    }

    private static Phrase composite(Sample sample) {
        return Phrase.of("one composite sample of {}, 1 % of each diluted into methanol", listed(sample.layers()));
    }

    private static Phrase below(Sample sample) {
        return sample.below().stream()
                .map(b -> Phrase.of(
                        sample.below().size() > 1 ? "{} {}" : "{}{}",
                        Figure.digits(floor(b.milligramsPerMillilitre()), 2, "mg/mL"),
                        sample.below().size() > 1 ? b.product() : ""))
                .collect(Phrase.joining(" and "));
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
