package workuptally.book.schema;

import java.util.List;
import java.util.Map;

/**
 * Everyday words for columns and tables of the form, each too common to be a near miss anywhere: asked about only where the column or table
 * that they can mean is lacking, and a column only where it holds what that one takes. English and German, the commonest French (common
 * practice).
 */
final class NearWords {
    /** By the heading of the form; a single letter where benches write one. */
    private static final Map<String, List<String>> COLUMNS = Map.ofEntries(
            Map.entry(
                    "actual amount",
                    List.of(
                            "weighed",
                            "weighed in",
                            "weighed out",
                            "weighed amount",
                            "weight",
                            "mass",
                            "amount",
                            "amount used",
                            "amount charged",
                            "amount taken",
                            "amount weighed",
                            "used",
                            "taken",
                            "charged",
                            "quantity",
                            "actual",
                            "actual mass",
                            "actual weight",
                            "actual volume",
                            "einwaage",
                            "menge",
                            "masse",
                            "eingewogen",
                            "gewicht",
                            "quantité",
                            "pesée")),
            Map.entry(
                    "identity by",
                    List.of(
                            "characterisation",
                            "characterization",
                            "characterised by",
                            "analytics",
                            "analysis",
                            "identity",
                            "identified by",
                            "nmr",
                            "spectra",
                            "charakterisierung",
                            "analytik",
                            "identität",
                            "caractérisation",
                            "analyse")),
            Map.entry("actual unit", List.of("unit", "units", "einheit", "unité")),
            Map.entry(
                    "result",
                    List.of(
                            "conc",
                            "concentration",
                            "value",
                            "found",
                            "content",
                            "measured",
                            "reading",
                            "assay",
                            "hplc",
                            "gc",
                            "konzentration",
                            "gehalt",
                            "wert",
                            "ergebnis",
                            "résultat",
                            "teneur")),
            Map.entry("substance", List.of("analyte", "compound", "component", "substanz", "product")),
            Map.entry(
                    "gross",
                    List.of(
                            "full",
                            "full weight",
                            "weight full",
                            "loaded",
                            "with product",
                            "flask full",
                            "voll",
                            "plein")),
            Map.entry(
                    "tare",
                    List.of(
                            "empty",
                            "empty weight",
                            "weight empty",
                            "empty flask",
                            "flask empty",
                            "flask",
                            "leer",
                            "vide")),
            Map.entry(
                    "net",
                    List.of(
                            "weight",
                            "wt",
                            "mass",
                            "amount",
                            "product mass",
                            "isolated mass",
                            "gewicht",
                            "masse",
                            "auswaage")),
            Map.entry("assay", List.of("hplc", "qnmr", "gc", "nmr", "wt")),
            Map.entry(
                    "volume",
                    List.of(
                            "v",
                            "volume per portion",
                            "vol per portion",
                            "portion volume",
                            "portion size",
                            "total volume",
                            "volume total",
                            "amount",
                            "menge",
                            "ml")),
            Map.entry("portions", List.of("number of portions", "no of portions", "times", "anzahl", "count")),
            Map.entry("ph", List.of("ph wert", "ph value", "ph reading", "ph measured")),
            Map.entry(
                    "gives organic",
                    List.of("organic", "organic layer", "organic phase", "org", "org phase", "organisch")),
            Map.entry(
                    "gives aqueous", List.of("aqueous", "aqueous layer", "aqueous phase", "aq", "aq phase", "wässrig")),
            Map.entry("gives other", List.of("gives", "into", "outcome", "output", "ergibt")),
            Map.entry("from", List.of("source", "taken from", "input", "aus", "von")));

    /** By the name of the table. */
    private static final Map<String, List<String>> TABLES = Map.of(
            "assays",
                    List.of(
                            "hplc",
                            "gc",
                            "hplc results",
                            "hplc data",
                            "gc results",
                            "analysis",
                            "analyses",
                            "analytics",
                            "analytical",
                            "analytical results",
                            "results"),
            "workup", List.of("steps", "operations", "extraction", "extractions", "washes", "procedure", "schritte"),
            "layers", List.of("fractions", "extracts", "portions", "fraktionen"),
            "isolated", List.of("lots", "crops", "isolated products", "isolation", "weighings"),
            "charges", List.of("materials", "starting materials", "inputs", "stoichiometry", "weighed in", "stoffe"),
            "products", List.of("targets", "product data"));

    /** Words beside the name of a table that leave it one. */
    private static final List<String> BESIDE = List.of(
            "steps",
            "list",
            "table",
            "data",
            "sheet",
            "weights",
            "weighings",
            "results",
            "entries",
            "log",
            "record",
            "week",
            "day",
            "kw",
            "all",
            "our");

    private NearWords() {}

    /** True where a heading, in small letters without its unit, can mean that of the form. */
    static boolean canMean(String typed, String heading) {
        return COLUMNS.getOrDefault(heading, List.of()).contains(typed);
    }

    /** True where the name of a sheet, in small letters, can mean a table: by a word for it, or by its own name among words that say little. */
    static boolean canMeanTable(String typed, String table) {
        if (TABLES.getOrDefault(table, List.of()).contains(typed)) {
            return true;
        }
        List<String> words = List.of(typed.split(" "));
        String one = table.endsWith("s") ? table.substring(0, table.length() - 1) : table;
        return words.stream().anyMatch(word -> word.equals(table) || word.equals(one))
                && words.stream()
                        .allMatch(word -> word.equals(table)
                                || word.equals(one)
                                || BESIDE.contains(word)
                                || word.chars().allMatch(Character::isDigit));
    }
}
