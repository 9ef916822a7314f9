package workuptally.judgement.rules.quench;

import java.util.List;
import java.util.Set;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.tally.RunTally;

/** A planned step that adds a liquid and does not say how much: funnel, capacity and gas of the plan cannot be judged, which is no all-clear. */
public final class StepAmountMissing implements RunRule {

    private static final Set<Operation> ADDING = Set.of(
            Operation.QUENCH,
            Operation.DILUTE,
            Operation.EXTRACT,
            Operation.WASH,
            Operation.BACK_EXTRACT,
            Operation.ACIDIFY,
            Operation.BASIFY);

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.STEP_AMOUNT_MISSING);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        if (tally.run().status() != Run.Status.PLANNED) {
            return findings.list();
        }
        for (Step step : tally.run().orderedSteps()) {
            boolean adds = step.operation().filter(ADDING::contains).isPresent()
                    && !step.added().material().isBlank();
            if (adds
                    && !isAmount(step.added().volumeMillilitres())
                    && !isAmount(step.added().massGrams())) {
                findings.add(
                        FindingCode.STEP_AMOUNT_MISSING,
                        Severity.HOLD,
                        step.row().at("Volume"),
                        Phrase.of(
                                "step {} adds {} and does not say how much",
                                step.number(),
                                step.added().material()),
                        Phrase.of("a volume or a mass above 0"),
                        "the plan",
                        Phrase.of(
                                "Enter the volume; funnel fill, capacity and gas of this step and those after it are not judged without"
                                        + " it."));
            }
        }
        return findings.list();
    }

    private static boolean isAmount(Field field) {
        return field.entered().filter(e -> e.value() > 0).isPresent();
    }
}
