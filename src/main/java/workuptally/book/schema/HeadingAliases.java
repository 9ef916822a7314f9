package workuptally.book.schema;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import workuptally.book.words.BookWords;

/**
 * A lab's own names for sheets and headings, and its own words for the choices.
 *
 * @param sheets sheet of the form by own name, loosely spelled
 * @param headings heading of the form (with unit, where given) by sheet of the form and own heading, loosely spelled
 * @param words word of a choice of the form by own word, loosely spelled
 */
public record HeadingAliases(
        Map<String, String> sheets, Map<String, Map<String, String>> headings, Map<String, String> words) {
    public static final HeadingAliases NONE = new HeadingAliases(Map.of(), Map.of(), Map.of());

    public HeadingAliases {
        sheets = Map.copyOf(sheets);
        headings = new HashMap<>(headings);
        headings.replaceAll((sheet, own) -> Map.copyOf(own));
        headings = Map.copyOf(headings);
        words = Map.copyOf(words);
    }

    /** The table that a sheet or file name means, if any. */
    public Optional<Table> table(String name) {
        String wanted = BookWords.loose(sheets.getOrDefault(BookWords.loose(name), name));
        return Schema.TABLES.stream()
                .filter(table -> BookWords.loose(table.name()).equals(wanted))
                .findFirst();
    }

    /** Whether the laboratory has headings of its own in a table. */
    public boolean renames(Table table) {
        return headings.containsKey(table.name());
    }

    /** The word of the form for a word of the book, or that word itself. */
    public String word(String typed) {
        return words.isEmpty() ? typed : words.getOrDefault(BookWords.loose(typed), typed);
    }

    /** The heading of the form for a heading of the book, or that heading itself. */
    public String heading(Table table, String typed) {
        return headings.getOrDefault(table.name(), Map.of()).getOrDefault(BookWords.loose(typed), typed);
    }
}
