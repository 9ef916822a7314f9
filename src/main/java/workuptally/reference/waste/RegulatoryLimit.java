package workuptally.reference.waste;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.ReferenceCells;
import workuptally.reference.tables.TableFile;

/**
 * Limit of a regulation, shown as a fact beside a figure; the local rule always wins.
 *
 * @param key key of the row
 * @param name full name
 * @param meaning what it limits
 * @param bearsOn {@code every}, {@code aqueous}, {@code other}, {@code holding}, or keys of streams
 * @param substances names or symbols of elements that bring it in
 * @param value the limit, in {@code unit}
 * @param unit unit of the value
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record RegulatoryLimit(
        String key,
        String name,
        String meaning,
        List<String> bearsOn,
        List<String> substances,
        OptionalDouble value,
        Optional<String> unit,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    private static final String EVERY = "every";
    private static final String AQUEOUS = "aqueous";
    private static final String OTHER = "other";
    private static final String CELSIUS = "°C";

    /** Copies the lists. */
    public RegulatoryLimit {
        bearsOn = List.copyOf(bearsOn);
        substances = List.copyOf(substances);
        sources = List.copyOf(sources);
    }

    /**
     * Reads them all.
     *
     * @throws IllegalReferenceException if a value is malformed or out of range
     */
    public static List<RegulatoryLimit> all(Map<KnownTable, TableFile> files) throws IllegalReferenceException {
        return files.get(KnownTable.REGULATORY_LIMITS).each(RegulatoryLimit::of);
    }

    /** True where it bears on every container, or on those of a stream; one without a stream counts as not aqueous. */
    public boolean isAbout(Optional<WasteStream> stream) {
        boolean aqueous = stream.filter(WasteStream::isAqueous).isPresent();
        return bearsOn.contains(EVERY)
                || bearsOn.contains(aqueous ? AQUEOUS : OTHER)
                || stream.filter(s -> bearsOn.contains(s.key())).isPresent();
    }

    /** The flash point that it limits, °C, where it limits one. */
    public OptionalDouble flashPointCelsius() {
        return unit.filter(CELSIUS::equals).isPresent() ? value : OptionalDouble.empty();
    }

    private static RegulatoryLimit of(ReferenceCells row) throws IllegalReferenceException {
        return new RegulatoryLimit(
                row.text("key"),
                row.text("name"),
                row.text("meaning"),
                row.list("bears on"),
                row.list("substances"),
                row.optionalNumber("value", 0, 1e6),
                row.optionalText("unit"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "regulatory-limits";
    }
}
