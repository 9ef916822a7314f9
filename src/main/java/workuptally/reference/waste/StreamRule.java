package workuptally.reference.waste;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * When a layer suggests a waste stream: every condition that is set has to hold. Local rules and the waste officer decide.
 *
 * @param key key of the row
 * @param priority the lowest number of the rules that hold wins
 * @param when what has to hold of a layer
 * @param stream key of the stream
 * @param reason words for a reader, with {@code {material}}, {@code {class}}, {@code {pH}}, {@code {organic}}, {@code {acid}}, {@code {halogenated}}, {@code {unread}}
 *     and {@code {origin}} to be filled in
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record StreamRule(
        String key, int priority, When when, String stream, String reason, List<String> sources, Basis basis)
        implements Cited {
    /** Copies the list. */
    public StreamRule {
        sources = List.copyOf(sources);
    }

    static StreamRule of(ReferenceCells row) throws IllegalReferenceException {
        return new StreamRule(
                row.text("key"),
                (int) row.number("priority", 1, 999),
                When.of(row),
                row.text("stream"),
                row.text("reason"),
                row.sources("source"),
                row.basis("basis"));
    }

    /** True where every condition holds for a layer. */
    public boolean fits(LayerFacts layer) {
        return when.fits(layer);
    }

    /** The reason with the figures of a layer put in. */
    public String because(LayerFacts layer) {
        Optional<Map.Entry<String, String>> held = when.held(layer);
        return reason.replace("{material}", held.map(Map.Entry::getValue).orElse("what was charged"))
                .replace("{class}", held.map(Map.Entry::getKey).orElse("a class"))
                .replace("{pH}", layer.pHAsTyped())
                .replace("{acid}", percent(layer.acidMassPercent()))
                .replace("{organic}", percent(layer.organicMassPercent()))
                .replace("{halogenated}", percent(layer.halogenatedMassPercent()))
                .replace("{unread}", String.join("', '", layer.unread()))
                .replace("{origin}", layer.originWords());
    }

    private static String percent(double value) {
        return Math.round(value) + " %";
    }

    @Override
    public String table() {
        return "stream-rules";
    }

    /**
     * What has to hold of a layer; all of it.
     *
     * @param phases words of phases; empty for all
     * @param holds material classes of which one is in it; empty for any make-up
     * @param aboveHalogenLimit true where halogenated solvent has to be above the limit of the book
     * @param organicAboveMassPercent organic solvent above this, mass %
     * @param acidAboveMassPercent organic acid that serves as a solvent above this, mass %
     * @param pH what it asks of the pH
     * @param makeUp how much has to be known of it
     * @param origin where a solid has to come from
     */
    public record When(
            List<String> phases,
            List<String> holds,
            boolean aboveHalogenLimit,
            OptionalDouble organicAboveMassPercent,
            OptionalDouble acidAboveMassPercent,
            AskedPh pH,
            Optional<LayerFacts.MakeUp> makeUp,
            Optional<LayerFacts.Origin> origin) {
        /** Copies the lists. */
        public When {
            phases = List.copyOf(phases);
            holds = List.copyOf(holds);
        }

        private static When of(ReferenceCells row) throws IllegalReferenceException {
            return new When(
                    row.list("phases"),
                    row.list("holds"),
                    row.oneOf("halogenated", "above limit").isPresent(),
                    row.optionalNumber("organic above (mass %)", 0, 100),
                    row.optionalNumber("acid above (mass %)", 0, 100),
                    AskedPh.of(row),
                    row.oneOf("make-up", "known", "unlisted", "unknown", "unread", "contradicted")
                            .map(word -> LayerFacts.MakeUp.valueOf(word.toUpperCase(Locale.ROOT))),
                    row.oneOf("origin", "drying cake", "sorbent", "other")
                            .map(word -> LayerFacts.Origin.valueOf(
                                    word.toUpperCase(Locale.ROOT).replace(' ', '_'))));
        }

        private boolean fits(LayerFacts layer) {
            return (phases.isEmpty() || phases.contains(layer.phase()))
                    && (holds.isEmpty() || held(layer).isPresent())
                    && (!aboveHalogenLimit || layer.aboveHalogenLimit())
                    && (organicAboveMassPercent.isEmpty()
                            || layer.organicMassPercent() > organicAboveMassPercent.getAsDouble())
                    && (acidAboveMassPercent.isEmpty() || layer.acidMassPercent() > acidAboveMassPercent.getAsDouble())
                    && pH.fits(layer.pH())
                    && (makeUp.isEmpty() || makeUp.get() == layer.makeUp())
                    && (origin.isEmpty() || origin.equals(layer.origin()));
        }

        private Optional<Map.Entry<String, String>> held(LayerFacts layer) {
            return layer.holds().entrySet().stream()
                    .filter(entry -> holds.contains(entry.getKey()))
                    .findFirst();
        }
    }

    /**
     * What a rule asks of the pH.
     *
     * @param known whether it has to be known, or must not be; empty where it does not matter
     * @param below it has to lie below this
     * @param above it has to lie above this
     */
    public record AskedPh(Optional<Boolean> known, OptionalDouble below, OptionalDouble above) {
        private static AskedPh of(ReferenceCells row) throws IllegalReferenceException {
            return new AskedPh(
                    row.oneOf("pH", "known", "unknown").map("known"::equals),
                    row.optionalNumber("pH below", -2, 16),
                    row.optionalNumber("pH above", -2, 16));
        }

        private boolean fits(OptionalDouble pH) {
            return (known.isEmpty() || known.get() == pH.isPresent())
                    && (below.isEmpty() || pH.isPresent() && pH.getAsDouble() < below.getAsDouble())
                    && (above.isEmpty() || pH.isPresent() && pH.getAsDouble() > above.getAsDouble());
        }
    }
}
