package workuptally.judgement.rules.quench;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import workuptally.judgement.rules.BookRule;
import workuptally.judgement.rules.FindingList;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/**
 * Finished runs with an oxidant or hydride whose workup is not in the book, as in a list of yields: whether it was quenched cannot be seen,
 * which is said once for all of them.
 */
public final class QuenchNotEntered implements BookRule {
    private static final int MOST_NAMED = 3;

    private final ReactiveCharges charges;

    public QuenchNotEntered(Substances substances) {
        this.charges = new ReactiveCharges(substances);
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.QUENCH_NOT_ENTERED);
    }

    @Override
    public List<Finding> judge(Book book, List<RunTally> tallies) {
        FindingList findings = new FindingList("");
        Set<String> runs = new LinkedHashSet<>();
        Set<String> materials = new LinkedHashSet<>();
        Place first = null;
        for (RunTally tally : tallies) {
            List<Charge> reactive = ReactiveCharges.isListedOnly(tally.run()) ? charges.of(tally.run()) : List.of();
            if (!reactive.isEmpty()) {
                first = first == null ? reactive.get(0).row().at("Material") : first;
                runs.add(tally.run().id());
                reactive.forEach(charge -> materials.add(charge.material()));
            }
        }
        if (first != null) {
            findings.add(
                    FindingCode.QUENCH_NOT_ENTERED,
                    Severity.HOLD,
                    first,
                    Phrase.of(
                            "no workup is entered of {} isolated {} with {}: {}",
                            runs.size(),
                            runs.size() == 1 ? "run" : "runs",
                            named(materials),
                            named(runs)),
                    Phrase.of("a negative quench test (peroxide strip, starch iodide, no more gas) before evaporation"),
                    FindingList.PRACTICE,
                    Phrase.of(
                            "Of what is still kept of these runs, test what is left before it is closed or evaporated;"
                                    + " enter the workup of a run to see its own."));
        }
        return findings.list();
    }

    private static String named(Set<String> names) {
        List<String> first = names.stream().limit(MOST_NAMED).toList();
        return String.join(", ", first)
                + (names.size() > MOST_NAMED ? " and " + (names.size() - MOST_NAMED) + " more" : "");
    }
}
