package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Assay;
import workuptally.model.Assay.Unit;
import workuptally.model.Run;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Contents;
import workuptally.tally.balance.CompositeSamples.Refused;
import workuptally.tally.layers.ContentShares;
import workuptally.tally.layers.LayerTally;

/** Rows of the Assays table that name several layers: which of them count, and what they tell. */
public final class CompositeAccount {
    private final Run run;
    private final Contents contents;
    private final ContentShares shares;
    private final Pooling pooling;

    public CompositeAccount(Run run, Contents contents, ContentShares shares, Pooling pooling) {
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
        return withoutOverlaps(list, refused);
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
        List<CompositeSample> list = new ArrayList<>();
        for (Content content : shares.of(contents.of(sample, Optional.empty(), volume, Optional.empty()))) {
            CompositeSample alone = new CompositeSample(labels, said(content, sample, content.rests()));
            List<Content> own = parts.stream()
                    .flatMap(l -> CompositeSamples.own(l, content.substance()).stream())
                    .toList();
            list.add(
                    alone.isGainsaidBy(own)
                            ? new CompositeSample(labels, said(content, sample, Content.Rests.DISPUTED_READINGS))
                            : alone);
        }
        return list;
    }

    private static Content said(Content content, String sample, Content.Rests rests) {
        return new Content(
                content.substance(),
                content.kind(),
                content.massGrams(),
                content.amountMillimoles(),
                content.upperBoundGrams(),
                content.percentOf(),
                content.evidence() + " in " + sample + " together",
                rests);
    }

    /** Two samples of a substance that share a layer but are not the same would count it twice: the later one does not count. */
    private CompositeSamples withoutOverlaps(List<CompositeSample> all, List<Refused> refused) {
        List<CompositeSample> counted = new ArrayList<>();
        for (CompositeSample sample : all) {
            Optional<CompositeSample> before = counted.stream()
                    .filter(c -> sample.labels().stream().anyMatch(l -> c.covers(l, sample.substance())))
                    .findFirst();
            if (before.isEmpty()) {
                counted.add(sample);
                continue;
            }
            run.assays().stream()
                    .filter(a ->
                            a.sample().equals(sample.name()) && a.substance().equalsIgnoreCase(sample.substance()))
                    .forEach(a -> refused.add(new Refused(
                            a,
                            "it shares a layer with the sample " + before.get().name() + ", which counts")));
        }
        return new CompositeSamples(counted, refused);
    }
}
