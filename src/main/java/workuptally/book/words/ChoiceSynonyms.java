package workuptally.book.words;

import java.io.InputStream;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.model.Assay;
import workuptally.model.Charge;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Transfer;
import workuptally.reference.words.WordGuess;

/**
 * Other words of the bench for the choices of the form, such as rotavap for concentrate or starting material for substrate: those of
 * {@code choice-words.csv}.
 */
final class ChoiceSynonyms {
    /** The choices by their names in the file. */
    private static final Map<String, Class<? extends Enum<?>>> CHOICES = Map.ofEntries(
            Map.entry("operation", Step.Operation.class),
            Map.entry("quench test", Step.QuenchTest.class),
            Map.entry("lower layer", Step.Lower.class),
            Map.entry("checked by", Step.CheckedBy.class),
            Map.entry("emulsion", Step.Emulsion.class),
            Map.entry("phase", Layer.Phase.class),
            Map.entry("position", Layer.Position.class),
            Map.entry("layer status", Layer.Status.class),
            Map.entry("stage", Lot.Stage.class),
            Map.entry("role", Charge.Role.class),
            Map.entry("run status", Run.Status.class),
            Map.entry("kind", Run.Kind.class),
            Map.entry("character", Product.Character.class),
            Map.entry("transfer status", Transfer.Status.class),
            Map.entry("method", Assay.Method.class),
            Map.entry("assay unit", Assay.Unit.class));

    private final Map<Class<?>, Map<String, Enum<?>>> byWord = new HashMap<>();
    private final UnaryOperator<String> spelling;

    /**
     * The words that come with the program.
     *
     * @param spelling brings words to the form in which they are compared
     */
    ChoiceSynonyms(UnaryOperator<String> spelling) {
        this(spelling, WordRow.all("choice-words.csv"));
    }

    /**
     * The words of a file.
     *
     * @param spelling brings words to the form in which they are compared
     * @param file table of choice, value and words; closed afterwards
     * @throws IllegalArgumentException if it names a choice or a value that is none, or gives a word two meanings in one choice
     */
    ChoiceSynonyms(UnaryOperator<String> spelling, InputStream file) {
        this(spelling, WordRow.all(file));
    }

    private ChoiceSynonyms(UnaryOperator<String> spelling, List<WordRow> rows) {
        this.spelling = spelling;
        for (WordRow row : rows) {
            add(value(row.cell("choice"), row.cell("value")), row.words("words"));
        }
    }

    /** The choice of a name in the files of words. */
    static Class<? extends Enum<?>> choice(String name) {
        if (!CHOICES.containsKey(name)) {
            throw new IllegalArgumentException("no choice is named " + name);
        }
        return CHOICES.get(name);
    }

    private static Enum<?> value(String choice, String value) {
        return Stream.of(choice(choice).getEnumConstants())
                .filter(constant -> constant.name().equals(value.toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(choice + " has no value " + value));
    }

    private void add(Enum<?> value, List<String> words) {
        Map<String, Enum<?>> ofChoice = byWord.computeIfAbsent(value.getDeclaringClass(), c -> new HashMap<>());
        for (String word : words) {
            Enum<?> other = ofChoice.put(spelling.apply(word), value);
            if (other != null && other != value) {
                throw new IllegalArgumentException(word + " means both " + other + " and " + value);
            }
        }
    }

    /** The values of which a word is a slip of the pen. */
    <E extends Enum<E>> Set<E> slips(Class<E> choice, String spelled) {
        return byWord.getOrDefault(choice, Map.of()).entrySet().stream()
                .filter(word -> WordGuess.isSlipOf(spelled, word.getKey()))
                .map(word -> choice.cast(word.getValue()))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(choice)));
    }

    /** The value that another word means. */
    <E extends Enum<E>> Optional<E> find(Class<E> choice, String text) {
        return Optional.ofNullable(byWord.getOrDefault(choice, Map.of()).get(spelling.apply(text)))
                .map(choice::cast);
    }
}
