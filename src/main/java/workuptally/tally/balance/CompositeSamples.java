package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Assay;
import workuptally.model.SubstanceName;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/**
 * The composite samples of a run.
 *
 * @param list those that count, in order of the Assays table; some may share layers
 * @param counted what they hold for a sum or a balance: each once, those that share layers together
 * @param refused rows that do not count, with the reason
 */
public record CompositeSamples(List<CompositeSample> list, List<CompositeSample> counted, List<Refused> refused) {
    /** Of a run without any. */
    public static final CompositeSamples NONE = new CompositeSamples(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public CompositeSamples {
        list = List.copyOf(list);
        counted = List.copyOf(counted);
        refused = List.copyOf(refused);
    }

    /** True where what a layer holds of a substance is counted with that of others. */
    public boolean cover(String label, String substance) {
        return of(label, substance).isPresent();
    }

    /** The composite sample that bounds a layer most for a substance; of equal ones the first. */
    public Optional<CompositeSample> of(String label, String substance) {
        return list.stream()
                .filter(s -> s.covers(label, substance))
                .min(Comparator.comparingDouble(CompositeSample::atMostGrams));
    }

    /** The layers, with the bound that composite samples give; one with an assay of its own keeps that, and the lower of both bounds. */
    public List<LayerTally> applied(List<LayerTally> layers) {
        if (list.isEmpty()) {
            return layers;
        }
        List<LayerTally> bounded = new ArrayList<>();
        for (LayerTally layer : layers) {
            LayerTally with = layer;
            for (String substance : substances(layer.label())) {
                with = with.withContents(contents(with, substance, layers));
            }
            bounded.add(with);
        }
        return bounded;
    }

    /** Substances of which samples tell in a layer, each once, in the order of the samples. */
    private List<String> substances(String label) {
        Map<String, String> names = new LinkedHashMap<>();
        list.stream()
                .filter(s -> s.labels().contains(label))
                .forEach(s -> names.putIfAbsent(SubstanceName.key(s.substance()), s.substance()));
        return List.copyOf(names.values());
    }

    /** Assays of a substance, of single layers and of several together. */
    private List<CompositeSample> assays(String substance, List<LayerTally> layers) {
        List<CompositeSample> assays = new ArrayList<>(ofSingleLayers(substance, layers));
        list.stream().filter(s -> s.isOf(substance)).forEach(assays::add);
        return assays;
    }

    /** Layers with an assay of their own for a substance, each as a sample of one. */
    static List<CompositeSample> ofSingleLayers(String substance, List<LayerTally> layers) {
        return layers.stream()
                .flatMap(l -> own(l, substance).map(c -> CompositeSample.ofOne(l.label(), c)).stream())
                .toList();
    }

    /** What a layer holds by an assay of its own, disputed or not. */
    static Optional<Content> own(LayerTally layer, String substance) {
        return layer.contents().stream()
                .filter(c -> c.isOf(substance)
                        && c.massGrams().isPresent()
                        && (c.rests() == Content.Rests.OWN_READING
                                || c.rests() == Content.Rests.READINGS_APART
                                || c.rests() == Content.Rests.DISPUTED_READINGS))
                .findFirst();
    }

    /**
     * What some layers of a sample hold together that have no assay of their own: all of it, or what the others leave.
     *
     * @param parts labels of those layers
     */
    public Content ofParts(CompositeSample sample, List<String> parts, List<LayerTally> layers) {
        return parts.size() == sample.labels().size()
                ? sample.together()
                : sample.ofPart(
                        sample.leftAtMostGrams(parts, assays(sample.substance(), layers)),
                        sample.together().evidence());
    }

    private List<Content> contents(LayerTally layer, String substance, List<LayerTally> layers) {
        List<CompositeSample> assays = assays(substance, layers);
        List<CompositeSample> samples =
                list.stream().filter(s -> s.covers(layer.label(), substance)).toList();
        List<CompositeSample> disputed = samples.stream()
                .filter(s -> s.together().rests() == Content.Rests.DISPUTED_READINGS)
                .toList();
        Comparator<CompositeSample> byBound =
                Comparator.comparingDouble(s -> s.leftAtMostGrams(List.of(layer.label()), assays));
        CompositeSample decides = disputed.stream()
                .max(byBound)
                .orElseGet(() -> samples.stream().min(byBound).orElseThrow());
        double most = decides.leftAtMostGrams(List.of(layer.label()), assays);
        String words = decides.together().evidence();
        List<Content> contents = new ArrayList<>();
        boolean known = false;
        for (Content content : layer.contents()) {
            if (!content.isOf(substance)) {
                contents.add(content);
                continue;
            }
            known = true;
            boolean hasOwn = own(layer, substance).isPresent();
            double before = content.kind() == Content.Kind.UNKNOWN
                    ? Double.POSITIVE_INFINITY
                    : content.upperBoundGrams().orElse(Double.POSITIVE_INFINITY);
            contents.add(hasOwn ? beside(content, decides, most) : decides.ofPart(Math.min(before, most), words));
        }
        if (!known) {
            contents.add(decides.ofPart(most, words));
        }
        return contents;
    }

    /** A content by its own assay beside a composite sample. */
    private static Content beside(Content own, CompositeSample sample, double most) {
        boolean disputed = sample.together().rests() == Content.Rests.DISPUTED_READINGS;
        double bound = own.upperBoundGrams().orElse(Double.POSITIVE_INFINITY);
        return new Content(
                own.substance(),
                own.kind(),
                own.massGrams(),
                own.amountMillimoles(),
                OptionalDouble.of(disputed ? bound : Math.min(bound, most)),
                own.percentOf(),
                disputed ? own.evidence() + ", against " + sample.together().evidence() : own.evidence(),
                disputed ? Content.Rests.DISPUTED_READINGS : own.rests());
    }

    /**
     * A row that does not count.
     *
     * @param assay the row
     * @param because the reason, as a clause: {@code A2 has no volume}
     */
    public record Refused(Assay assay, String because) {}
}
