package workuptally.book.lists;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import workuptally.book.files.FileBytes;
import workuptally.book.files.JsonTree;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.headings.HeadingText;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.schema.Schema;
import workuptally.book.schema.Table;
import workuptally.book.words.BookWords;
import workuptally.model.InputFile;

/**
 * Reads the JSON file that maps a lab's own names and words to those of the form:
 *
 * <pre>{"sheets": {"Schichten": "Layers"}, "headings": {"Layers": {"Brutto (mg)": "Gross (mg)"}}, "words": {"unten": "lower"}}</pre>
 *
 * <p>Its part {@code lists} says how lists of the laboratory's own feed the tables, see {@link OwnListParts}.
 *
 * @param aliases what the file says of names and words
 * @param lists what it says of lists with one row a run
 * @param file the file as an input
 */
public record HeadingsFile(HeadingAliases aliases, List<OwnListLayout> lists, InputFile file) {
    private static final long MOST_BYTES = 1_000_000;

    /**
     * Reads a file.
     *
     * @throws UnreadableBookException if it is no such file, or names a table or heading that the form lacks
     * @throws IOException if it cannot be accessed
     */
    public static HeadingsFile read(Path path) throws UnreadableBookException, IOException {
        FileBytes bytes = FileBytes.read(path, MOST_BYTES);
        Map<String, String> sheets = new HashMap<>();
        Map<String, Map<String, String>> headings = new HashMap<>();
        Map<String, String> words = new HashMap<>();
        List<OwnListLayout> lists = new ArrayList<>();
        try (JsonParser json = new JsonFactory().createParser(ObjectReadContext.empty(), bytes.bytes())) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                throw wrongForm(bytes);
            }
            while (json.nextToken() == JsonToken.PROPERTY_NAME) {
                String part = json.currentName();
                json.nextToken();
                switch (part) {
                    case "sheets" -> sheets.putAll(texts(json, bytes));
                    case "headings" -> eachObject(json, bytes, headings);
                    case "words" -> words.putAll(texts(json, bytes));
                    case "lists" -> lists.addAll(new OwnListParts(bytes.name()).read(JsonTree.of(json)));
                    default -> throw wrongForm(bytes);
                }
            }
            if (json.nextToken() != null) {
                throw new UnreadableBookException("The headings file " + bytes.name()
                        + " goes on after its object, in line "
                        + json.currentTokenLocation().getLineNr() + ": correct it and run again.");
            }
        } catch (JacksonException damaged) {
            throw new UnreadableBookException(
                    "The headings file " + bytes.name() + " is not valid JSON near line "
                            + damaged.getLocation().getLineNr() + ": correct it and run again.",
                    damaged);
        }
        checkTargets(bytes, sheets, headings);
        checkWords(bytes, words);
        return new HeadingsFile(new HeadingAliases(sheets, headings, words), lists, bytes.asInputFile());
    }

    private static void eachObject(JsonParser json, FileBytes file, Map<String, Map<String, String>> headings)
            throws UnreadableBookException {
        if (json.currentToken() != JsonToken.START_OBJECT) {
            throw wrongForm(file);
        }
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            String table = json.currentName();
            json.nextToken();
            String name =
                    HeadingAliases.NONE.table(table).map(Table::name).orElseThrow(() -> unknown(file, "table", table));
            headings.put(name, texts(json, file));
        }
    }

    private static Map<String, String> texts(JsonParser json, FileBytes file) throws UnreadableBookException {
        if (json.currentToken() != JsonToken.START_OBJECT) {
            throw wrongForm(file);
        }
        Map<String, String> texts = new HashMap<>();
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            String own = json.currentName();
            if (json.nextToken() != JsonToken.VALUE_STRING) {
                throw wrongForm(file);
            }
            texts.put(BookWords.loose(own), json.getString());
        }
        return texts;
    }

    private static void checkTargets(
            FileBytes file, Map<String, String> sheets, Map<String, Map<String, String>> headings)
            throws UnreadableBookException {
        for (String target : sheets.values()) {
            if (HeadingAliases.NONE.table(target).isEmpty()) {
                throw unknown(file, "table", target);
            }
        }
        for (Table table : Schema.TABLES) {
            for (String target : headings.getOrDefault(table.name(), Map.of()).values()) {
                boolean known = table.columns().stream()
                        .map(column -> BookWords.loose(column.heading()))
                        .anyMatch(name -> name.equals(BookWords.loose(target))
                                || name.equals(HeadingText.of(target).name()));
                if (!known) {
                    throw unknown(file, "heading of " + table.name(), target);
                }
            }
        }
    }

    private static void checkWords(FileBytes file, Map<String, String> words) throws UnreadableBookException {
        Set<String> choices = Schema.TABLES.stream()
                .flatMap(table -> table.columns().stream())
                .flatMap(column -> column.choices().stream())
                .map(BookWords::loose)
                .collect(Collectors.toSet());
        for (String target : words.values()) {
            if (!choices.contains(BookWords.loose(target))) {
                throw unknown(file, "word of a choice", target);
            }
        }
    }

    private static UnreadableBookException unknown(FileBytes file, String what, String name) {
        return unknown(file.name(), what, name);
    }

    /** What is said of a name that the form lacks. */
    static UnreadableBookException unknown(String file, String what, String name) {
        return new UnreadableBookException("The headings file " + file + " names '" + name + "', which is no " + what
                + ": correct it and run again.");
    }

    private static UnreadableBookException wrongForm(FileBytes file) {
        return new UnreadableBookException("The headings file " + file.name()
                + " must hold one object with \"sheets\", \"headings\" and \"words\", each own name mapped to one of the form,"
                + " or \"lists\": correct it and run again.");
    }
}
