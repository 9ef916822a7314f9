package workuptally.report.explain;

import java.util.List;
import java.util.Locale;

/** Kinds of figures that are explained, in the order in which they follow from each other. */
public enum FigureKind {
    /** Charges as amounts of substance. */
    AMOUNTS("amounts", "charges"),
    /** Limiting reagent and theory. */
    THEORY("theory", "limiting"),
    /** Lots and crude over theory. */
    LOTS("lots", "crude"),
    /** Yields with conversion and aliquots. */
    YIELDS("yields", "conversion", "aliquots"),
    /** Masses, densities and contents of layers. */
    LAYERS("layers", "contents"),
    /** Independent ways to the same content. */
    ROUTES("routes"),
    /** Gains of further extractions. */
    GAINS("gains", "extractions", "re-extractions", "reextractions"),
    /** Closure of each skeleton. */
    CLOSURES("closures", "unaccounted"),
    /** Total mass. */
    MASS("mass", "balance"),
    /** Solvents. */
    SOLVENTS("solvents"),
    /** Fill of the funnel at every shake. */
    CONTACTS("contacts", "funnel", "fill", "loads"),
    /** Gas and neutralisation. */
    GAS("gas", "neutralisation", "capacity"),
    /** Mass metrics. */
    METRICS("metrics", "pmi", "efficiency", "e-factor"),
    /** Entries to look at again. */
    SUSPECTS("suspects", "entries");

    private final List<String> words;

    FigureKind(String... words) {
        this.words = List.of(words);
    }

    /** The word that names the kind. */
    public String word() {
        return words.get(0);
    }

    /** True where a word means this kind, in the singular or plural and without regard to case: {@code yield} means yields. */
    boolean isMeantBy(String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        return !wanted.isEmpty() && words.stream().anyMatch(w -> w.equals(wanted) || w.equals(wanted + "s"));
    }
}
