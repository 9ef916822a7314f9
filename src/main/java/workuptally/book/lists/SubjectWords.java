package workuptally.book.lists;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import workuptally.book.headings.OwnListHeader;

/**
 * Different words of one list for one kind of material, {@code Reactant 1 Name} and {@code Reagent 1 Name}: where both give a name to the
 * same number they are two materials, and what else is said with the second word is not said of the first.
 */
final class SubjectWords {
    private static final int MOST_WORDS = 3;

    private final HeadingWords words;
    private final Map<String, Map<String, Uses>> bySubject = new LinkedHashMap<>();

    /** How a list uses one word. */
    private static final class Uses {
        private final Set<Integer> named = new HashSet<>();
        private int largest;
        private boolean numbered = true;
    }

    SubjectWords(OwnListHeader header, HeadingWords words) {
        this.words = words;
        for (OwnListHeader.Heading heading : header.headings()) {
            for (HeadingSense sense : words.senses(heading.text())) {
                word(heading, sense).ifPresent(word -> meet(heading, sense, word));
            }
        }
    }

    private void meet(OwnListHeader.Heading heading, HeadingSense sense, String word) {
        Uses uses = bySubject
                .computeIfAbsent(sense.subject(), s -> new LinkedHashMap<>())
                .computeIfAbsent(word, w -> new Uses());
        uses.largest = Math.max(uses.largest, sense.number());
        uses.numbered &= Pattern.compile(Pattern.quote(word) + "[ _#.-]*(?:\\d|[A-D](?!\\p{L}))")
                .matcher(heading.text())
                .find();
        if (sense.quantity().isEmpty() || sense.quantity().equals("name")) {
            uses.named.add(sense.number());
        }
    }

    /** The word of a heading that names its material. */
    private Optional<String> word(OwnListHeader.Heading heading, HeadingSense sense) {
        if (!OwnListReading.MATERIALS.contains(sense.subject())
                || !sense.called().isEmpty()) {
            return Optional.empty();
        }
        List<String> all = List.of(heading.text().split("[^\\p{L}]+"));
        for (int from = 0; from < all.size(); from++) {
            for (int length = Math.min(MOST_WORDS, all.size() - from); length > 0; length--) {
                String phrase = String.join(" ", all.subList(from, from + length));
                boolean names = words.senses(phrase).stream()
                        .anyMatch(s -> s.subject().equals(sense.subject())
                                && s.quantity().isEmpty());
                if (names) {
                    return Optional.of(phrase);
                }
            }
        }
        return Optional.empty();
    }

    /** The sense with a number of its own where another word has taken that number; as it was where none has, or it bears no number. */
    HeadingSense apart(OwnListHeader.Heading heading, HeadingSense sense) {
        Optional<String> word = word(heading, sense);
        if (word.isEmpty() || !isSecond(sense.subject(), word.get())) {
            return sense;
        }
        int others = 0;
        for (Map.Entry<String, Uses> use : bySubject.get(sense.subject()).entrySet()) {
            if (use.getKey().equals(word.get())) {
                return use.getValue().numbered ? sense.withSubject(sense.subject(), others + sense.number()) : sense;
            }
            others += use.getValue().largest;
        }
        return sense;
    }

    /** True where the heading is said with a word that names another material than the first word does, and no number tells which. */
    boolean isContested(OwnListHeader.Heading heading, HeadingSense sense) {
        return word(heading, sense)
                .filter(word -> isSecond(sense.subject(), word)
                        && !bySubject.get(sense.subject()).get(word).numbered)
                .isPresent();
    }

    private boolean isSecond(String subject, String word) {
        Map<String, Uses> all = bySubject.getOrDefault(subject, Map.of());
        for (Map.Entry<String, Uses> other : all.entrySet()) {
            if (other.getKey().equals(word)) {
                return false;
            }
            if (other.getValue().named.stream().anyMatch(all.get(word).named::contains)) {
                return true;
            }
        }
        return false;
    }
}
