package workuptally.reference.tables;

import java.util.Map;

/** The sources that rows of the tables name; every row names sources that are listed. */
public final class Bibliography {
    private Bibliography() {}

    /**
     * Reads the sources and looks up those of every row.
     *
     * @throws IllegalReferenceException if a source is malformed, or a row of another table names one that is not listed
     */
    public static NamedTable<Source> of(Map<KnownTable, TableFile> files) throws IllegalReferenceException {
        NamedTable<Source> sources =
                NamedTable.keyed(files.get(KnownTable.SOURCES).each(Source::of), Source::key);
        for (Map.Entry<KnownTable, TableFile> entry : files.entrySet()) {
            if (entry.getKey() != KnownTable.SOURCES) {
                for (ReferenceCells row : entry.getValue().rows()) {
                    check(row, sources);
                }
            }
        }
        return sources;
    }

    private static void check(ReferenceCells row, NamedTable<Source> sources) throws IllegalReferenceException {
        for (String key : row.sources("source")) {
            if (sources.find(key).isEmpty()) {
                throw row.wrong("source", key, "a key of sources.csv");
            }
        }
    }
}
