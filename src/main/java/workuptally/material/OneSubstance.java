package workuptally.material;

import java.util.List;
import java.util.Optional;
import workuptally.chemistry.Formula;

/** The one substance that a name means, where its formula, its support or a second name beside it settles which. */
final class OneSubstance {
    private final SubstanceIndex index;
    private final NameWordSearch words;

    OneSubstance(SubstanceIndex index, NameWordSearch words) {
        this.index = index;
        this.words = words;
    }

    /**
     * The substance of a name; empty where none or more than one is left.
     *
     * @param answer what the tables have under the name
     * @param given formula typed beside it
     */
    Optional<Substance> of(Qualifiers q, SubstanceIndex.Answer answer, Optional<Formula> given) {
        return answer.only()
                .or(() -> ofGiven(answer, given))
                .or(() -> onSupport(q))
                .or(() -> synonyms(q));
    }

    /** A catalyst whose support is written in other words than the tables use, {@code Pd on carbon}. */
    private Optional<Substance> onSupport(Qualifiers q) {
        Optional<Form> support = q.form().filter(f -> f.kind() == Form.Kind.SUPPORTED);
        return support.flatMap(form -> words.spellingsOf(form.of()).stream()
                .flatMap(spelling -> index.find(q.rest() + spelling).only().stream())
                .findFirst());
    }

    /** A name with a second one behind it in brackets, {@code tetrahydrofuran (THF)}: what both can mean. */
    private Optional<Substance> synonyms(Qualifiers q) {
        int open = q.rest().lastIndexOf('(');
        if (open <= 0 || !q.rest().endsWith(")")) {
            return Optional.empty();
        }
        List<Substance> outside =
                index.find(q.rest().substring(0, open).strip()).substances();
        List<Substance> inside = index.find(
                        q.rest().substring(open + 1, q.rest().length() - 1).strip())
                .substances();
        List<Substance> both = outside.stream().filter(inside::contains).toList();
        return both.size() == 1 ? Optional.of(both.get(0)) : Optional.empty();
    }

    private static Optional<Substance> ofGiven(SubstanceIndex.Answer answer, Optional<Formula> given) {
        List<Substance> fitting = given.isEmpty()
                ? List.of()
                : answer.substances().stream()
                        .filter(s -> s.formula()
                                .flatMap(SubstanceIndex::formula)
                                .filter(f -> f.sameComposition(given.get()))
                                .isPresent())
                        .toList();
        return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
    }
}
