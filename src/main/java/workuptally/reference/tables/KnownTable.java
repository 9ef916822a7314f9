package workuptally.reference.tables;

import java.util.List;
import java.util.Optional;

/** The reference tables: one file each, with the columns that make a row's key. */
public enum KnownTable {
    SOURCES("sources", "key"),
    ATOMIC_WEIGHTS("atomic-weights", "symbol"),
    SOLVENTS("solvents", "key"),
    LIQUIDS("liquids", "key"),
    NAME_WORDS("name-words", "word"),
    NAME_CLASSES("name-classes", "word", "match", "before"),
    AQUEOUS_DENSITIES("aqueous-densities", "solute", "mass (%)", "kind"),
    SOLUTES("solutes", "name"),
    WASHES("washes", "key"),
    DRYING_AGENTS("drying-agents", "key"),
    OXIDANTS("oxidants", "key"),
    HAZARDS("hazards", "key"),
    CONCENTRATION_LIMITS("concentration-limits", "hazard", "h-statement"),
    FLASH_POINTS("flash-points", "hazard", "mass (%)"),
    H_STATEMENTS("h-statements", "code"),
    MATERIALS("materials", "key"),
    REACTIVITY_GROUPS("reactivity-groups", "key"),
    REACTIVITY_PAIRS("reactivity-pairs", "class a", "class b", "third class"),
    REACTIVITY_STRENGTHS("reactivity-strengths", "class"),
    GLASSWARE("glassware", "key"),
    BENCH_RULES("bench-rules", "key"),
    METALS("metals", "element"),
    CLASS_BEHAVIOURS("class-behaviours", "class"),
    SALT_FORMS("salt-forms", "word"),
    FORM_DIFFERENCES("form-differences", "name"),
    WASTE_STREAMS("waste-streams", "key"),
    STREAM_RULES("stream-rules", "key"),
    STREAM_WORDS("stream-words", "key"),
    REGULATORY_LIMITS("regulatory-limits", "key"),
    PARTITION("partition", "compound", "organic phase", "log P");

    private final String title;
    private final List<String> keyColumns;

    KnownTable(String title, String... keyColumns) {
        this.title = title;
        this.keyColumns = List.of(keyColumns);
    }

    /** Its name, for example {@code solvents}. */
    public String title() {
        return title;
    }

    /** Its name as a file, for example {@code solvents.csv}. */
    public String fileName() {
        return title + ".csv";
    }

    List<String> keyColumns() {
        return keyColumns;
    }

    static Optional<KnownTable> ofFile(String fileName) {
        for (KnownTable table : values()) {
            if (table.fileName().equals(fileName)) {
                return Optional.of(table);
            }
        }
        return Optional.empty();
    }
}
