package workuptally.book.lists;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.book.headings.OwnHeadingUnit;
import workuptally.book.words.Quantity;
import workuptally.book.words.WordRow;

/**
 * Understands headings of lists in English, German and French by the words of {@code heading-words.csv}. A heading is understood only where
 * each of its words is; one whose words have several meanings has several senses.
 */
final class HeadingWords {
    private static final int MOST_WORDS_OF_A_PHRASE = 4;

    /** Words that say nothing of their own. */
    private static final Set<String> FILLERS = Set.of(
            "of", "the", "used", "charged", "actual", "a", "an", "der", "des", "die", "das", "dem", "vom", "von", "im",
            "de", "du", "la", "le", "les", "l", "en", "utilise");

    /** Quantities that only a word of their own names, no unit. */
    private static final Set<String> ONLY_BY_WORD = Set.of("tare", "gross", "titre");

    /** Subjects that say more of what a product is. */
    private static final Set<String> STAGES = Set.of("crude", "purified");

    private final Map<String, Set<Meaning>> meanings = new HashMap<>();
    private final NamedInHeading named =
            new NamedInHeading(text -> combined(tokens(text), 0, new HeadingSense("", 1, "", Optional.empty())));

    private record Meaning(String subject, String quantity) {}

    /** The words that come with the program. */
    HeadingWords() {
        for (WordRow row : WordRow.all("heading-words.csv")) {
            String[] meaning = row.cell("meaning").split("\\.", 2);
            for (String language : List.of("english", "german", "french")) {
                for (String word : row.words(language)) {
                    meanings.computeIfAbsent(
                                    String.join(" ", tokens(word)).toLowerCase(Locale.ROOT), w -> new LinkedHashSet<>())
                            .add(new Meaning(meaning[0], meaning[1]));
                }
            }
        }
    }

    /** What a heading can mean; nothing where one of its words is not known or they contradict each other. */
    List<HeadingSense> senses(String heading) {
        Optional<OwnHeadingUnit> unit = OwnHeadingUnit.of(heading);
        String words = unit.map(OwnHeadingUnit::rest).orElse(heading);
        Set<HeadingSense> senses = new LinkedHashSet<>();
        for (HeadingSense sense :
                combined(tokens(words), 0, new HeadingSense("", 1, "", unit.map(OwnHeadingUnit::unit)))) {
            if (!sense.subject().isEmpty() || !sense.quantity().isEmpty() || unit.isPresent()) {
                senses.addAll(byUnit(sense));
            }
        }
        String doubtful = OwnHeadingUnit.MOLAR_MASS_OR_MILLIGRAM;
        if (unit.isEmpty() && heading.endsWith(doubtful)) {
            String milligrams = heading.substring(0, heading.length() - doubtful.length()) + "mg";
            if (OwnHeadingUnit.of(milligrams).isPresent()) {
                senses.addAll(senses(milligrams));
            }
        }
        if (senses.isEmpty() && unit.isPresent()) {
            named.senses(words, unit.get().unit()).forEach(sense -> senses.addAll(byUnit(sense)));
        }
        return List.copyOf(senses);
    }

    /** All readings of the words from one on; the longest phrase that is known is read as one. */
    private List<HeadingSense> combined(List<String> tokens, int from, HeadingSense sofar) {
        if (from == tokens.size()) {
            return List.of(sofar);
        }
        boolean letter = tokens.get(from).matches("[A-D]")
                && !(sofar.subject().isEmpty() && sofar.quantity().isEmpty());
        if (letter) {
            int which = tokens.get(from).charAt(0) - 'A' + 1;
            return combined(tokens, from + 1, sofar.withSubject(sofar.subject(), which));
        }
        for (int length = Math.min(MOST_WORDS_OF_A_PHRASE, tokens.size() - from); length > 0; length--) {
            Set<Meaning> known = meanings(String.join(" ", tokens.subList(from, from + length)));
            if (!known.isEmpty()) {
                List<HeadingSense> all = new ArrayList<>();
                for (Meaning meaning : known) {
                    Optional<HeadingSense> both = with(sofar, meaning);
                    if (both.isPresent()) {
                        all.addAll(combined(tokens, from + length, both.get()));
                    }
                }
                return all;
            }
        }
        String token = tokens.get(from);
        if (FILLERS.contains(token.toLowerCase(Locale.ROOT))) {
            return combined(tokens, from + 1, sofar);
        }
        if (token.matches("[1-9]\\d?")) {
            return combined(tokens, from + 1, sofar.withSubject(sofar.subject(), Integer.parseInt(token)));
        }
        return compound(tokens, from, sofar);
    }

    /** Two words written as one, {@code Produktmasse}. */
    private List<HeadingSense> compound(List<String> tokens, int from, HeadingSense sofar) {
        String token = tokens.get(from);
        for (int i = token.length() - 1; i > 1; i--) {
            String left = token.substring(0, i);
            String right = token.substring(i);
            boolean both = !meanings(left).isEmpty()
                    && right.length() > 2
                    && !meanings(right).isEmpty();
            if (both) {
                List<String> parted = new ArrayList<>(tokens.subList(0, from));
                parted.addAll(List.of(left, right));
                parted.addAll(tokens.subList(from + 1, tokens.size()));
                return combined(parted, from, sofar);
            }
        }
        return List.of();
    }

    private Set<Meaning> meanings(String phrase) {
        if (phrase.equals("M")) {
            return Set.of(new Meaning("", "molar mass"), new Meaning("", "molarity"));
        }
        if (phrase.equals(OwnHeadingUnit.MOLAR_MASS_OR_MILLIGRAM)) {
            return Set.of(new Meaning("", "molar mass"));
        }
        Set<Meaning> known = meanings.getOrDefault(phrase.toLowerCase(Locale.ROOT), Set.of());
        // the German joint of compounds: Versuchs-Nr.
        return known.isEmpty() && phrase.length() > 3 && phrase.endsWith("s")
                ? meanings.getOrDefault(phrase.substring(0, phrase.length() - 1), Set.of())
                : known;
    }

    private static Optional<HeadingSense> with(HeadingSense sofar, Meaning meaning) {
        Optional<String> subject = joined(sofar.subject(), meaning.subject());
        boolean sameQuantity = sofar.quantity().isEmpty()
                || meaning.quantity().isEmpty()
                || sofar.quantity().equals(meaning.quantity());
        if (subject.isEmpty() || !sameQuantity) {
            return Optional.empty();
        }
        String quantity = sofar.quantity().isEmpty() ? meaning.quantity() : sofar.quantity();
        return Optional.of(new HeadingSense(subject.get(), sofar.number(), quantity, sofar.unit()));
    }

    private static Optional<String> joined(String one, String other) {
        if (one.isEmpty() || one.equals(other)) {
            return Optional.of(other);
        }
        if (other.isEmpty()) {
            return Optional.of(one);
        }
        if (one.equals("product") && STAGES.contains(other)) {
            return Optional.of(other);
        }
        return other.equals("product") && STAGES.contains(one) ? Optional.of(one) : Optional.empty();
    }

    /** What is left of a sense beside the unit of the heading. */
    private static List<HeadingSense> byUnit(HeadingSense sense) {
        if (sense.unit().isEmpty()
                || sense.quantity().equals("computed here")
                || sense.quantity().equals("no table")) {
            return List.of(sense);
        }
        Quantity unit = sense.unit().get().quantity();
        if (sense.quantity().equals("yield") && unit == Quantity.MASS) {
            return List.of(sense.withQuantity("mass"));
        }
        List<String> possible = quantities(unit);
        if (sense.quantity().isEmpty() || sense.quantity().equals("name")) {
            return possible.stream()
                    .filter(quantity -> !ONLY_BY_WORD.contains(quantity))
                    .map(sense::withQuantity)
                    .toList();
        }
        boolean loading = sense.quantity().equals("equivalents") && unit == Quantity.PERCENT;
        return possible.contains(sense.quantity()) && !loading ? List.of(sense) : List.of();
    }

    private static List<String> quantities(Quantity unit) {
        return switch (unit) {
            case MASS -> List.of("mass", "tare", "gross");
            case VOLUME -> List.of("volume");
            case AMOUNT -> List.of("amount");
            case EQUIVALENTS -> List.of("equivalents");
            case MOLAR_MASS -> List.of("molar mass");
            case CONCENTRATION -> List.of("molarity", "titre");
            case MASS_PER_VOLUME -> List.of("density");
            case PERCENT -> List.of("yield", "assay", "conversion");
            case TEMPERATURE, PRESSURE, TIME -> List.of("no table");
            case PURE -> List.of();
        };
    }

    /** Words of a text: without accents, in lower case but for a lone M and the letters that number reagents, parted at marks and before digits. */
    private static List<String> tokens(String text) {
        String plain = Normalizer.normalize(
                        text.replace("ß", "ss")
                                .replace("ρ", "rho")
                                .replace("°", "o")
                                .replace("#", " no "),
                        Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "");
        return Arrays.stream(plain.split("[^\\p{L}\\p{N}]+|(?<=\\p{L})(?=\\p{N})"))
                .filter(token -> !token.isEmpty())
                .map(token -> token.matches("[A-DM]|" + OwnHeadingUnit.MOLAR_MASS_OR_MILLIGRAM)
                        ? token
                        : token.toLowerCase(Locale.ROOT))
                .toList();
    }
}
