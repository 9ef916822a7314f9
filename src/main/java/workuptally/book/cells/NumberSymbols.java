package workuptally.book.cells;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import workuptally.book.schema.Column;
import workuptally.book.words.Quantity;
import workuptally.book.words.Unit;
import workuptally.book.words.Words;

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
            Quantity.CONCENTRATION, Set.of("c", "conc", "titre", "titer", "konz"),
            Quantity.PERCENT, Set.of("purity", "assay", "content", "gehalt", "reinheit", "w", "x", "conv", "umsatz"));

    private static final Map<String, Set<String>> BY_HEADING = Map.of(
            "pH", Set.of("ph", "phwert", "phvalue"),
            "pH after", Set.of("ph", "phwert", "phvalue"),
            "pKa", Set.of("pka", "pks"),
            "Log P", Set.of("logp", "clogp", "xlogp", "logkow", "logpow", "kow"),
            "Density", Set.of("d", "ρ", "rho", "density", "dichte", "densité"),
            "Boiling point", Set.of("bp", "sdp", "kp", "siedepunkt", "bpt", "tb"),
            "Partition ratio", Set.of("d", "k", "p", "kd"),
            "Planned yield", Set.of("yield", "ausbeute"),
            "Yield", Set.of("yield", "ausbeute"),
            "Substance nuclei", Set.of("n"));

    /** The names of a column: its quantity's, its own and its heading. */
    public static NumberSymbols of(Column column) {
        Set<String> all = new java.util.HashSet<>(BY_HEADING.getOrDefault(column.heading(), Set.of()));
        column.unit()
                .map(Unit::quantity)
                .map(q -> BY_QUANTITY.getOrDefault(q, Set.of()))
                .ifPresent(all::addAll);
        all.add(Words.loose(column.heading()));
        if (column.isUncertainty()) {
            all.add("+/");
            all.add("u");
        }
        return new NumberSymbols(Set.copyOf(all));
    }

    boolean name(String typed) {
        return names.contains(Words.loose(typed).toLowerCase(Locale.ROOT));
    }
}
