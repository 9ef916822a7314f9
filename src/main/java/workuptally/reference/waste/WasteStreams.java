package workuptally.reference.waste;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.reference.tables.Cells;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.NamedTable;
import workuptally.reference.tables.TableFile;

/** Waste streams, the rules by which a layer suggests one, and the words by which a container tells its own; immutable. */
public final class WasteStreams {
    private final NamedTable<WasteStream> all;
    private final List<StreamRule> rules;
    private final List<StreamWords> words;

    private WasteStreams(List<WasteStream> all, List<StreamRule> rules, List<StreamWords> words) {
        this.all = NamedTable.spelledFreely(all).by(WasteStream::key).by(WasteStream::name);
        this.rules = rules.stream()
                .sorted(Comparator.comparingInt(StreamRule::priority))
                .toList();
        this.words = words;
    }

    /**
     * Reads them.
     *
     * @throws IllegalReferenceException if a value is malformed, a rule or word names a stream that is not listed, or no stream asks first
     */
    public static WasteStreams of(Map<KnownTable, TableFile> files) throws IllegalReferenceException {
        WasteStreams streams = new WasteStreams(
                files.get(KnownTable.WASTE_STREAMS).each(WasteStream::of),
                files.get(KnownTable.STREAM_RULES).each(StreamRule::of),
                files.get(KnownTable.STREAM_WORDS).each(StreamWords::of));
        for (KnownTable table : List.of(KnownTable.STREAM_RULES, KnownTable.STREAM_WORDS)) {
            for (Cells row : files.get(table).rows()) {
                if (streams.find(row.raw("stream")).isEmpty()) {
                    throw row.wrong("stream", row.raw("stream"), "a key of waste-streams.csv");
                }
            }
        }
        if (streams.all.stream().noneMatch(WasteStream::asksFirst)) {
            throw new IllegalReferenceException(
                    KnownTable.WASTE_STREAMS.fileName(), "no stream of the family 'ask first' is left");
        }
        return streams;
    }

    /** The stream with a key or name. */
    public Optional<WasteStream> find(String name) {
        return all.find(name);
    }

    /** The stream of a container by its label: a listed key or name, else by the words in it. */
    public Optional<WasteStream> ofLabel(String label) {
        return find(label)
                .or(() -> words.stream()
                        .filter(row -> row.standIn(label))
                        .findFirst()
                        .flatMap(row -> find(row.stream())));
    }

    /** The rule that decides the stream of a layer: of those that fit, the one with the lowest priority number. */
    public Optional<StreamRule> ruleFor(LayerFacts layer) {
        return rules.stream().filter(rule -> rule.fits(layer)).findFirst();
    }

    /** The stream for what fits no other: the first that asks first. */
    public WasteStream askFirst() {
        return all.stream().filter(WasteStream::asksFirst).findFirst().orElseThrow();
    }

    /** All streams. */
    public List<WasteStream> all() {
        return all;
    }

    /** All rules, the lowest priority number first. */
    public List<StreamRule> rules() {
        return rules;
    }

    /** All words of containers, in the order in which they are looked for. */
    public List<StreamWords> words() {
        return words;
    }
}
