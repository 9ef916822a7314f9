package workuptally.book.schema;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import workuptally.book.words.BookWords;
import workuptally.reference.words.WordGuess;

/** Names of sheets and headings that are nearly those of the form: asked about, never read. */
public final class NearMiss {
    /** What a copy of a sheet or file is called: {@code Layers (2)}, {@code Layers - Copy}, {@code Layers old}. */
    private static final Pattern COPY = Pattern.compile(
            "(?i)[\\s_-]*(?:\\(\\d+\\)|\\d+|copy|kopie|copie|old|alt|new|neu|final)(?:\\s*\\(\\d+\\))?$");

    private static final int SHORTEST_ABBREVIATION = 3;

    /** Words that say no more than that something was measured (common practice). */
    private static final Set<String> PLAIN_WORDS =
            Set.of("mass", "weight", "wt", "value", "reading", "measured", "actual", "name", "number", "no", "nr");

    /** Words of the trade for headings of the form (common practice). */
    private static final Map<String, List<String>> OTHER_WORDS = Map.ofEntries(
            Map.entry("assay", List.of("purity", "content", "reinheit", "gehalt", "pureté")),
            Map.entry("molarity", List.of("concentration", "conc", "konzentration")),
            Map.entry("molar mass", List.of("mw", "fw", "molecular weight", "mol weight", "molmasse")),
            Map.entry("volume", List.of("volumen")),
            Map.entry("temperature", List.of("temperatur", "température")),
            Map.entry("gross", List.of("brutto", "brut")),
            Map.entry("tare", List.of("tara")),
            Map.entry("net", List.of("netto", "nett", "net wt", "auswaage", "poids net")),
            Map.entry("density", List.of("dichte", "densité")),
            Map.entry("formula", List.of("formel", "formule")),
            Map.entry("material", List.of("reagent", "compound", "chemical", "stoff")),
            Map.entry("layer", List.of("fraction", "schicht")),
            Map.entry("chemist", List.of("operator", "bearbeiter")),
            Map.entry("ph after", List.of("ph")));

    /** Words of the trade for tables of the form, German and French (common practice). */
    private static final Map<String, List<String>> OTHER_TABLES = Map.of(
            "runs", List.of("versuche", "versuch", "ansätze", "ansatz", "läufe", "experiments", "experiment", "essais"),
            "products", List.of("produkte", "produkt", "produits"),
            "charges", List.of("einwaagen", "einwaage", "edukte", "chargen", "chemikalien", "reagents", "réactifs"),
            "isolated",
                    List.of(
                            "isoliert",
                            "isolierte",
                            "auswaagen",
                            "auswaage",
                            "ausbeuten",
                            "isolé",
                            "isolés",
                            "weights"),
            "layers", List.of("schichten", "phasen", "phases", "couches"),
            "workup", List.of("aufarbeitung", "aufarbeitungen", "work-up", "traitement"),
            "assays", List.of("gehalte", "gehalt", "analysen", "analytik", "dosages"),
            "containers", List.of("behälter", "kanister", "bidons"),
            "limits", List.of("grenzwerte", "grenzen", "limites"));

    private NearMiss() {}

    /** The table that a name of a sheet may be meant for. */
    public static Optional<Table> table(String name) {
        String bare = COPY.matcher(BookWords.tidy(name)).replaceFirst("");
        String loose = BookWords.loose(bare);
        return Schema.TABLES.stream()
                .filter(table -> {
                    String own = BookWords.loose(table.name());
                    return own.equals(loose)
                            || OTHER_TABLES.getOrDefault(own, List.of()).stream()
                                    .map(BookWords::loose)
                                    .anyMatch(loose::equals)
                            || (own + "s").equals(loose)
                            || own.equals(loose + "s")
                            || WordGuess.isSlipOf(loose, own);
                })
                .findFirst();
    }

    /**
     * The column that a heading may be meant for.
     *
     * @param columns those that the table of the book has no heading for
     */
    public static Optional<SchemaColumn> column(String heading, List<SchemaColumn> columns) {
        String typed = words(BookWords.tidy(heading).replaceAll("[(\\[].*", " "));
        return typed.isEmpty()
                ? Optional.empty()
                : columns.stream()
                        .filter(column -> isNear(typed, words(column.heading())))
                        .findFirst();
    }

    /**
     * The column that an everyday word over what is not read can mean, {@code Weighed}.
     *
     * @param columns those that the table of the book has no heading for and that could take what stands below
     */
    public static Optional<SchemaColumn> everyday(String heading, List<SchemaColumn> columns) {
        String typed = words(BookWords.tidy(heading).replaceAll("[(\\[].*", " "));
        return columns.stream()
                .filter(column -> NearWords.canMean(typed, words(column.heading())))
                .findFirst();
    }

    /**
     * The table that an everyday name of a sheet can mean, {@code HPLC}.
     *
     * @param lacking tables that the book does not have
     */
    public static Optional<Table> everydayTable(String name, List<Table> lacking) {
        String typed = words(BookWords.tidy(name));
        return lacking.stream()
                .filter(table -> NearWords.canMeanTable(typed, table.name().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    private static boolean isNear(String typed, String own) {
        return typed.equals(own)
                || OTHER_WORDS.getOrDefault(own, List.of()).contains(typed)
                || WordGuess.isSlipOf(BookWords.loose(typed), BookWords.loose(own))
                || isAbbreviation(typed.split(" "), own.split(" "))
                || withoutPlainWords(typed).equals(own);
    }

    private static boolean isAbbreviation(String[] typed, String[] own) {
        if (typed.length != own.length) {
            return false;
        }
        for (int i = 0; i < own.length; i++) {
            boolean begins = typed[i].length() >= SHORTEST_ABBREVIATION && own[i].startsWith(typed[i]);
            if (!begins && !own[i].equals(typed[i])) {
                return false;
            }
        }
        return true;
    }

    private static String withoutPlainWords(String typed) {
        return String.join(
                " ",
                Arrays.stream(typed.split(" "))
                        .filter(word -> !PLAIN_WORDS.contains(word))
                        .toList());
    }

    /** Words in small letters with one space between, without marks and units behind a comma. */
    private static String words(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replaceAll("%.*|,.*|/.*", " ")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }
}
