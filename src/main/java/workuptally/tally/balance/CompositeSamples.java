package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Assay;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/**
 * The composite samples of a run.
 *
 * @param list those that count, in order of the Assays table
 * @param refused rows that do not count, with the reason
 */
public record CompositeSamples(List<CompositeSample> list, List<Refused> refused) {
    /** Of a run without any. */
    public static final CompositeSamples NONE = new CompositeSamples(List.of(), List.of());

    /** Copies the lists. */
    public CompositeSamples {
        list = List.copyOf(list);
        refused = List.copyOf(refused);
    }

    /** True where what a layer holds of a substance is counted with that of others. */
    public boolean cover(String label, String substance) {
        return of(label, substance).isPresent();
    }

    /** The composite sample that a layer is in for a substance. */
    public Optional<CompositeSample> of(String label, String substance) {
        return list.stream().filter(s -> s.covers(label, substance)).findFirst();
    }

    /** The layers, with the bound that a composite sample gives; one with an assay of its own keeps that, and the lower of both bounds. */
    public List<LayerTally> applied(List<LayerTally> layers) {
        if (list.isEmpty()) {
            return layers;
        }
        List<LayerTally> bounded = new ArrayList<>();
        for (LayerTally layer : layers) {
            LayerTally with = layer;
            for (CompositeSample sample : list) {
                if (sample.labels().contains(layer.label())) {
                    with = with.withContents(contents(with, sample, others(layer, sample, layers)));
                }
            }
            bounded.add(with);
        }
        return bounded;
    }

    /** What the other layers of a sample hold by assays of their own. */
    private static List<Content> others(LayerTally layer, CompositeSample sample, List<LayerTally> layers) {
        return layers.stream()
                .filter(l -> !l.label().equals(layer.label()) && sample.labels().contains(l.label()))
                .flatMap(l -> own(l, sample.substance()).stream())
                .toList();
    }

    /** What a layer holds by an assay of its own, disputed or not. */
    static Optional<Content> own(LayerTally layer, String substance) {
        return layer.contents().stream()
                .filter(c -> c.substance().equalsIgnoreCase(substance)
                        && c.massGrams().isPresent()
                        && (c.rests() == Content.Rests.OWN_READING || c.rests() == Content.Rests.DISPUTED_READINGS))
                .findFirst();
    }

    private static List<Content> contents(LayerTally layer, CompositeSample sample, List<Content> others) {
        double most = sample.leftAtMostGrams(others);
        String words = sample.together().evidence();
        List<Content> contents = new ArrayList<>();
        boolean known = false;
        for (Content content : layer.contents()) {
            if (!content.substance().equalsIgnoreCase(sample.substance())) {
                contents.add(content);
                continue;
            }
            known = true;
            boolean hasOwn = own(layer, sample.substance()).isPresent();
            double before = content.kind() == Content.Kind.UNKNOWN
                    ? Double.POSITIVE_INFINITY
                    : content.upperBoundGrams().orElse(Double.POSITIVE_INFINITY);
            contents.add(hasOwn ? beside(content, sample, most) : sample.ofPart(Math.min(before, most), words));
        }
        if (!known) {
            contents.add(sample.ofPart(most, words));
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
