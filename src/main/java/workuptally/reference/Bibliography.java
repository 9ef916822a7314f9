package workuptally.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sources that rows of the tables name; every row names sources that are listed. */
final class Bibliography {
    private final Map<String, Source> sources = new LinkedHashMap<>();

    private Bibliography(TableFile file) throws IllegalReferenceException {
        for (Source source : file.each(Source::of)) {
            sources.put(source.key(), source);
        }
    }

    /**
     * Reads the sources and looks up those of every row.
     *
     * @throws IllegalReferenceException if a source is malformed, or a row of another table names one that is not listed
     */
    static Bibliography of(Map<Table, TableFile> files) throws IllegalReferenceException {
        Bibliography bibliography = new Bibliography(files.get(Table.SOURCES));
        for (Map.Entry<Table, TableFile> entry : files.entrySet()) {
            if (entry.getKey() != Table.SOURCES) {
                for (Cells row : entry.getValue().rows()) {
                    bibliography.check(row);
                }
            }
        }
        return bibliography;
    }

    private void check(Cells row) throws IllegalReferenceException {
        for (String key : row.sources("source")) {
            if (!sources.containsKey(key)) {
                throw row.wrong("source", key, "a key of sources.csv");
            }
        }
    }

    /** The entry with a key. */
    Optional<Source> source(String key) {
        return Optional.ofNullable(sources.get(key));
    }

    /** All entries, in order of the table. */
    List<Source> sources() {
        return List.copyOf(sources.values());
    }
}
