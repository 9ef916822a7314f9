package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Assay;
import workuptally.model.Assay.Unit;
import workuptally.model.Run;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.ContentsAccount;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.CompositeSamples.Refused;
import workuptally.tally.layers.ContentShares;
import workuptally.tally.layers.LayerTally;

/** Rows of the Assays table that name several layers: which of them count, and what they tell. */
public final class CompositeAccount {
    private final Run run;
    private final ContentsAccount contents;
    private final ContentShares shares;
    private final Pooling pooling;
    private final Substances substances;
    private final Readings readings;

    public CompositeAccount(
            Run run,
            ContentsAccount contents,
            ContentShares shares,
            Pooling pooling,
            Substances substances,
            Readings readings) {
        this.substances = substances;
        this.readings = readings;
        this.run = run;
        this.contents = contents;
        this.shares = shares;
        this.pooling = pooling;
    }

    /** True where a run has such a row. */
    public static boolean isNeeded(Run run) {
        return run.assays().stream().anyMatch(Assay::isComposite);
    }

    /** All of a run, in order of the table; rows about the same layers and substance are pooled. */
    public CompositeSamples of(List<LayerTally> layers) {
        Map<String, List<LayerTally>> pooled = new LinkedHashMap<>();
        List<Refused> refused = new ArrayList<>();
        for (Assay assay : run.assays()) {
            if (assay.isComposite()) {
                List<LayerTally> parts = parts(assay, layers);
                Optional<String> because = whyNot(assay, parts);
                because.ifPresent(why -> refused.add(new Refused(assay, why)));
                if (because.isEmpty()) {
                    pooled.putIfAbsent(assay.sample(), parts);
                }
            }
        }
        List<CompositeSample> list = new ArrayList<>();
        pooled.forEach((sample, parts) -> list.addAll(of(sample, parts)));
        List<CompositeSample> judged = judged(list, layers);
        List<String> order = layers.stream().map(LayerTally::label).toList();
        List<CompositeSample> counted = OverlappingSamples.of(judged).stream()
                .map(group -> group.together(order, readings))
                .map(s -> new CompositeSample(
                        s.labels(), shares.of(List.of(s.together())).get(0)))
                .toList();
        return new CompositeSamples(judged, counted, refused);
    }

    private static List<LayerTally> parts(Assay assay, List<LayerTally> layers) {
        return assay.samples().stream()
                .flatMap(label -> layers.stream().filter(l -> l.label().equals(label)))
                .toList();
    }

    private Optional<String> whyNot(Assay assay, List<LayerTally> parts) {
        List<String> labels = assay.samples();
        Optional<String> unknown = labels.stream()
                .filter(label -> parts.stream().noneMatch(l -> l.label().equals(label)))
                .findFirst();
        if (unknown.isPresent()) {
            return Optional.of(unknown.get() + " is no layer of the run");
        }
        Optional<String> ofOne =
                parts.stream().map(pooling::whyNot).flatMap(Optional::stream).findFirst();
        if (ofOne.isPresent()) {
            return ofOne;
        }
        for (int i = 0; i < labels.size(); i++) {
            for (int j = i + 1; j < labels.size(); j++) {
                Optional<String> together = pooling.whyNotTogether(labels.get(i), labels.get(j));
                if (together.isPresent()) {
                    return together;
                }
            }
        }
        boolean byMass = assay.unit()
                .filter(u -> u == Unit.MASS_PERCENT || u == Unit.MOLE_RATIO_TO_PRODUCT || u == Unit.AREA_PERCENT)
                .isPresent();
        return byMass
                ? Optional.of("aliquots in proportion to volumes give no "
                        + assay.unit().get().word())
                : Optional.empty();
    }

    private List<CompositeSample> of(String sample, List<LayerTally> parts) {
        Optional<MeasuredValue> volume = CompositeSample.volumeMillilitres(parts);
        List<String> labels = parts.stream().map(LayerTally::label).toList();
        return shares.of(contents.of(sample, Optional.empty(), volume, Optional.empty())).stream()
                .map(content ->
                        new CompositeSample(labels, content.saying(content.evidence() + " in " + sample + " together")))
                .toList();
    }

    /** The samples, with those disputed that other assays gainsay, and those that share a layer with such a one. */
    private List<CompositeSample> judged(List<CompositeSample> samples, List<LayerTally> layers) {
        double agreeWithin = substances.value(Threshold.READINGS_AGREE);
        List<CompositeSample> gainsaid = samples.stream()
                .filter(s -> s.isGainsaidBy(others(s, samples, layers), agreeWithin))
                .toList();
        return samples.stream()
                .map(s -> gainsaid.stream().anyMatch(s::overlaps) ? s.disputed() : s)
                .toList();
    }

    private static List<CompositeSample> others(
            CompositeSample sample, List<CompositeSample> samples, List<LayerTally> layers) {
        List<CompositeSample> others = new ArrayList<>(CompositeSamples.ofSingleLayers(sample.substance(), layers));
        others.addAll(samples);
        return others;
    }
}
