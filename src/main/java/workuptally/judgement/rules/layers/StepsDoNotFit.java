package workuptally.judgement.rules.layers;

import java.util.Arrays;
import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.layers.GraphFault;

/** Steps, lots and status words that contradict each other. A layer said to be kept but consumed, and a portion made from itself, stop. */
public final class StepsDoNotFit implements RunRule {
    private static final String SOURCE = "the steps of the run";

    @Override
    public List<FindingCode> codes() {
        return Arrays.stream(GraphFault.Kind.values()).map(StepsDoNotFit::code).toList();
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (GraphFault fault : tally.evidence().graphFaults()) {
            boolean stops = fault.kind() == GraphFault.Kind.SAID_KEPT || fault.kind() == GraphFault.Kind.CYCLE;
            findings.add(
                    code(fault.kind()),
                    stops ? Severity.STOP : Severity.CHECK,
                    fault.place(),
                    seen(fault),
                    expected(fault.kind()),
                    SOURCE,
                    action(fault.kind()));
        }
        return findings.list();
    }

    private static FindingCode code(GraphFault.Kind kind) {
        return switch (kind) {
            case UNKNOWN_SOURCE -> FindingCode.LAYER_UNKNOWN_SOURCE;
            case TAKEN_BEFORE_GIVEN -> FindingCode.LAYER_TAKEN_BEFORE_GIVEN;
            case TAKEN_AFTER_CONSUMED -> FindingCode.LAYER_TAKEN_AFTER_CONSUMED;
            case GIVEN_TWICE -> FindingCode.LAYER_GIVEN_TWICE;
            case NEVER_GIVEN -> FindingCode.LAYER_NEVER_GIVEN;
            case SAID_CONSUMED -> FindingCode.LAYER_SAID_CONSUMED;
            case SAID_KEPT -> FindingCode.LAYER_SAID_KEPT;
            case CYCLE -> FindingCode.LAYER_CYCLE;
        };
    }

    private static String seen(GraphFault fault) {
        String label = fault.label();
        String by = fault.by().startsWith("lot ") ? fault.by() : "step " + fault.by();
        return switch (fault.kind()) {
            case UNKNOWN_SOURCE -> by + " takes " + label + ", which nothing gives";
            case TAKEN_BEFORE_GIVEN -> by + " takes " + label + " before any step gives it";
            case TAKEN_AFTER_CONSUMED -> by + " takes " + label + ", which an earlier step has used up";
            case GIVEN_TWICE -> by + " gives " + label + ", which an earlier step has given already";
            case NEVER_GIVEN -> "layer " + label + " stands in Layers, but no step gives it";
            case SAID_CONSUMED -> "layer " + label + " is said to be consumed, but no step or lot takes it";
            case SAID_KEPT -> "layer " + label + " is said to be still there, but " + fault.by() + " consumed it";
            case CYCLE -> "a portion is made from itself: " + label;
        };
    }

    private static String expected(GraphFault.Kind kind) {
        return switch (kind) {
            case UNKNOWN_SOURCE -> "a label that an earlier step gives, or RM";
            case TAKEN_BEFORE_GIVEN -> "a label given by an earlier step";
            case TAKEN_AFTER_CONSUMED -> "each portion consumed once";
            case GIVEN_TWICE -> "each label given once; a rinse may add to it";
            case NEVER_GIVEN -> "a step that gives the layer";
            case SAID_CONSUMED -> "a step or lot made from the layer";
            case SAID_KEPT -> "a status that agrees with the steps; otherwise its contents count twice";
            case CYCLE -> "steps that lead from the charges to the layers";
        };
    }

    private static String action(GraphFault.Kind kind) {
        return switch (kind) {
            case UNKNOWN_SOURCE, TAKEN_BEFORE_GIVEN -> "Correct the label or the order of the steps, and run again.";
            case TAKEN_AFTER_CONSUMED -> "Give the portions labels of their own, and run again.";
            case GIVEN_TWICE -> "Give the second portion a label of its own, or combine the two in a step.";
            case NEVER_GIVEN -> "Add the label to the step that gave the layer; until then it counts as kept.";
            case SAID_CONSUMED ->
                "Add the step that used the layer, or correct its status; until then it counts as kept.";
            case SAID_KEPT -> "Look whether the vessel still holds the layer, then correct the status or the step.";
            case CYCLE -> "Give what a step makes a label of its own, R2 instead of RM once more, and run again.";
        };
    }
}
