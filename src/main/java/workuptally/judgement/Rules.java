package workuptally.judgement;

import java.util.List;

/** Every rule, in the order in which findings of one severity are listed. Adding a rule touches the rule, its test, its page and this list. */
final class Rules {
    private Rules() {}

    /** Rules about one run. */
    static List<RunRule> ofRun() {
        return List.of();
    }

    /** Rules about the whole book. */
    static List<BookRule> ofBook() {
        return List.of();
    }
}
