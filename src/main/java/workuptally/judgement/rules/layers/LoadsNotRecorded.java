package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.RunTally;

/** A step of several funnel loads that gives neither one combined layer nor one for each load. */
public final class LoadsNotRecorded implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LOADS_NOT_RECORDED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        if (tally.run().status() == Run.Status.PLANNED) {
            return findings.list();
        }
        for (Step step : tally.run().orderedSteps()) {
            long loads = Math.round(
                    step.funnel().loads().entered().map(Entered::value).orElse(1.0));
            judge(findings, step, loads, step.given().aqueous(), "Gives aqueous");
            judge(findings, step, loads, step.given().organic(), "Gives organic");
        }
        return findings.list();
    }

    private static void judge(FindingList findings, Step step, long loads, List<String> labels, String column) {
        boolean fits = labels.size() <= 1 || labels.size() == loads;
        if (loads > 1 && !fits) {
            findings.add(
                    FindingCode.LOADS_NOT_RECORDED,
                    Severity.CHECK,
                    step.row().at(column),
                    Phrase.of(
                            "step {} went in {} loads and gives {} layers ({})",
                            step.number(),
                            loads,
                            labels.size(),
                            String.join(", ", labels)),
                    Phrase.of("one combined layer, or {} layers", loads),
                    FindingList.PRACTICE,
                    Phrase.of("Add the layer of the missing load, or correct Loads."));
        }
    }
}
