package workuptally.judgement.rules.layers;

import java.util.Arrays;
import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
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
        for (GraphFault fault : tally.evidence().gaps().graphFaults()) {
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

    private static Phrase seen(GraphFault fault) {
        String label = fault.label();
        String by = fault.by();
        return switch (fault.kind()) {
            case UNKNOWN_SOURCE -> Phrase.of("{} takes {}, which nothing gives", by, label);
            case TAKEN_BEFORE_GIVEN -> Phrase.of("{} takes {} before any step gives it", by, label);
            case TAKEN_AFTER_CONSUMED -> Phrase.of("{} takes {}, which an earlier step has used up", by, label);
            case GIVEN_TWICE -> Phrase.of("{} gives {}, which an earlier step has given already", by, label);
            case NEVER_GIVEN -> Phrase.of("layer {} stands in Layers, but no step gives it", label);
            case SAID_CONSUMED -> Phrase.of("layer {} is said to be consumed, but no step or lot takes it", label);
            case SAID_KEPT -> Phrase.of("layer {} is said to be still there, but {} consumed it", label, fault.by());
            case CYCLE -> Phrase.of("a portion is made from itself: {}", label);
        };
    }

    private static Phrase expected(GraphFault.Kind kind) {
        return switch (kind) {
            case UNKNOWN_SOURCE -> Phrase.of("a label that an earlier step gives, or RM");
            case TAKEN_BEFORE_GIVEN -> Phrase.of("a label given by an earlier step");
            case TAKEN_AFTER_CONSUMED -> Phrase.of("each portion consumed once");
            case GIVEN_TWICE -> Phrase.of("each label given once; a rinse may add to it");
            case NEVER_GIVEN -> Phrase.of("a step that gives the layer");
            case SAID_CONSUMED -> Phrase.of("a step or lot made from the layer");
            case SAID_KEPT -> Phrase.of("a status that agrees with the steps; otherwise its contents count twice");
            case CYCLE -> Phrase.of("steps that lead from the charges to the layers");
        };
    }

    private static Phrase action(GraphFault.Kind kind) {
        return switch (kind) {
            case UNKNOWN_SOURCE, TAKEN_BEFORE_GIVEN ->
                Phrase.of("Correct the label or the order of the steps, and run again.");
            case TAKEN_AFTER_CONSUMED -> Phrase.of("Give the portions labels of their own, and run again.");
            case GIVEN_TWICE -> Phrase.of("Give the second portion a label of its own, or combine the two in a step.");
            case NEVER_GIVEN ->
                Phrase.of("Add the label to the step that gave the layer; until then it counts as kept.");
            case SAID_CONSUMED ->
                Phrase.of(
                        "Add the step that used the layer, or correct its status; where another run took it, name run and layer there under From or Supplier lot. Until then it counts as kept.");
            case SAID_KEPT ->
                Phrase.of("Look whether the vessel still holds the layer, then correct the status or the step.");
            case CYCLE ->
                Phrase.of("Give what a step makes a label of its own, R2 instead of RM once more, and run again.");
        };
    }
}
