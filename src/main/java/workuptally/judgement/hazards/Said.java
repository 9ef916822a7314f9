package workuptally.judgement.hazards;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.reference.Reference;
import workuptally.reference.hazards.HStatement;

/** What is said of one portion or container as a whole, each thing once and in the order in which it was found. */
final class Said {
    private final Reference reference;
    private final Set<String> codes = new LinkedHashSet<>();
    private final Set<String> words = new LinkedHashSet<>();
    private final Set<String> sources = new LinkedHashSet<>();

    Said(Reference reference) {
        this.reference = reference;
    }

    Set<String> codes() {
        return codes;
    }

    Set<String> words() {
        return words;
    }

    Set<String> sources() {
        return sources;
    }

    /** The note about it; empty where nothing was said. */
    Optional<HazardNote> note(String subject) {
        if (codes.isEmpty() && words.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new HazardNote(
                subject,
                statements(reference, codes),
                String.join(" ", words),
                sources.isEmpty() ? "reference table of hazards, by share" : String.join("; ", sources)));
    }

    /** Codes with their wording behind them. */
    static List<String> statements(Reference reference, Iterable<String> codes) {
        Set<String> statements = new LinkedHashSet<>();
        // The same few sentences come back in every run of a large book.
        codes.forEach(code -> statements.add((code
                        + reference
                                .hStatements()
                                .find(code)
                                .map(HStatement::phrase)
                                .map(p -> " " + p)
                                .orElse(""))
                .intern()));
        return List.copyOf(statements);
    }
}
