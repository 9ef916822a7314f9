package workuptally.book.cells;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.BookWords;
import workuptally.book.words.Quantity;
import workuptally.book.words.Unit;

/**
 * What may stand before the number of a column: {@code pH 7}, {@code d = 1.84}, {@code m = 0.9 g}.
 *
 * @param names names of the quantity, loosely spelled
 */
public record NumberSymbols(Set<String> names) {
    /** For a number whose column is not known: none. */
    static final NumberSymbols ANY = new NumberSymbols(Set.of());

    private static final Map<Quantity, Set<String>> BY_QUANTITY = Map.of(
            Quantity.MASS, Set.of("m", "mass", "wt", "weight", "masse", "gewicht", "auswaage", "einwaage", "waage"),
            Quantity.VOLUME, Set.of("v", "vol", "volume", "volumen", "σ", "sum", "total", "summe", "gesamt"),
            Quantity.AMOUNT, Set.of("n"),
            Quantity.TEMPERATURE, Set.of("t", "temp", "temperature", "temperatur"),
            Quantity.MOLAR_MASS, Set.of("m", "mw", "mm", "mr", "fw", "molarmass", "molmasse", "molweight", "mol.wt"),
            Quantity.CONCENTRATION, Set.of("c", "conc", "titre", "titer", "konz"));

    private static final Set<String> OF_ASSAY = Set.of("purity", "assay", "content", "gehalt", "reinheit", "w");
    private static final Set<String> OF_YIELD =
            Set.of("yield", "yld", "ausbeute", "ausb", "rendement", "rdt", "theory", "theorie", "th");

    private static final Map<String, Set<String>> BY_HEADING = Map.ofEntries(
            Map.entry("pH", Set.of("ph", "phwert", "phvalue")),
            Map.entry("pH after", Set.of("ph", "phwert", "phvalue")),
            Map.entry("pKa", Set.of("pka", "pks")),
            Map.entry("Log P", Set.of("logp", "clogp", "xlogp", "logkow", "logpow", "kow")),
            Map.entry("Density", Set.of("d", "ρ", "rho", "density", "dichte", "densité")),
            Map.entry("Boiling point", Set.of("bp", "sdp", "kp", "siedepunkt", "bpt", "tb")),
            Map.entry("Partition ratio", Set.of("d", "k", "p", "kd")),
            Map.entry("Planned yield", OF_YIELD),
            Map.entry("Stated yield", OF_YIELD),
            Map.entry("Yield", OF_YIELD),
            // of a limit: 2 % of theory
            Map.entry("Value", Set.of("theory", "theorie", "théorie")),
            Map.entry("Assay", OF_ASSAY),
            Map.entry("Standard purity", OF_ASSAY),
            Map.entry("Conversion", Set.of("x", "conv", "conversion", "umsatz")),
            Map.entry("Gross", Set.of("gross", "brutto", "brut")),
            Map.entry("Gross then", Set.of("gross", "brutto", "brut")),
            Map.entry("Tare", Set.of("tare", "tara", "empty", "leer", "vide")),
            Map.entry("Clean dry tare", Set.of("tare", "tara", "empty", "leer", "vide")),
            Map.entry("Substance nuclei", Set.of("n")));

    /** The names of a column: its quantity's, its own and its heading. */
    public static NumberSymbols of(SchemaColumn column) {
        Set<String> all = new java.util.HashSet<>(BY_HEADING.getOrDefault(column.heading(), Set.of()));
        column.unit()
                .map(Unit::quantity)
                .map(q -> BY_QUANTITY.getOrDefault(q, Set.of()))
                .ifPresent(all::addAll);
        all.add(BookWords.loose(column.heading()));
        if (column.isUncertainty()) {
            all.add("+/");
            all.add("u");
        }
        return new NumberSymbols(Set.copyOf(all));
    }

    /** True where the column itself is named by a word, as loosely spelled as they come. */
    boolean name(String typed) {
        return names.contains(BookWords.loose(typed).toLowerCase(Locale.ROOT));
    }
}
