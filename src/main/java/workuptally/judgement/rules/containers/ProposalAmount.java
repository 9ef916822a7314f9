package workuptally.judgement.rules.containers;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.tally.containers.ContainerAddition;

/** A transfer of more than its layers weigh. */
public final class ProposalAmount implements ProposalRule {
    static final String CODE = "transfer-exceeds-layer";

    private static final double RELATIVE_TOLERANCE = 0.02;
    private static final double LEAST_TOLERANCE_GRAMS = 0.5;

    @Override
    public List<String> codes() {
        return List.of(CODE);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            Stream.concat(container.tally().done().stream(), container.tally().proposed().stream())
                    .filter(ProposalAmount::isTooMuch)
                    .forEach(a -> findings.add(
                            CODE,
                            Severity.CHECK,
                            a.transfer().row().at("Amount"),
                            FindingList.say(
                                    "%s takes %.4g g of %s, which weigh %.4g g",
                                    a.transfer().id(), a.totalGrams(), a.source(), a.sourceGrams()),
                            "no more than the layers weigh",
                            FindingList.PRACTICE,
                            "Correct the amount, or the labels of the layers."));
        }
        return findings.list();
    }

    private static boolean isTooMuch(ContainerAddition addition) {
        double tolerance = Math.max(RELATIVE_TOLERANCE * addition.sourceGrams(), LEAST_TOLERANCE_GRAMS);
        return addition.sourceGrams() > 0 && addition.totalGrams() > addition.sourceGrams() + tolerance;
    }
}
