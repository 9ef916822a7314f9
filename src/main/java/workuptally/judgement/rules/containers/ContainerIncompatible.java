package workuptally.judgement.rules.containers;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit.Clash;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;

/** A container in which, by its stated contents and the transfers made, stands together what never should. */
public final class ContainerIncompatible implements ProposalRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CONTAINER_INCOMPATIBLE);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            List<Clash> met = container.standing();
            if (!met.isEmpty()) {
                findings.add(
                        FindingCode.CONTAINER_INCOMPATIBLE,
                        Severity.STOP,
                        container.tally().container().row().at("Contents then"),
                        Phrase.of(
                                "{} holds {}",
                                container.id(),
                                met.stream()
                                        .map(c ->
                                                Phrase.of("{} with {}: {}", c.incoming(), c.present(), c.consequence()))
                                        .collect(Phrase.joining("; "))),
                        met.stream()
                                .map(c -> Phrase.of("{} and {} apart", c.incoming(), c.present()))
                                .distinct()
                                .collect(Phrase.joining("; ")),
                        met.stream()
                                .flatMap(c -> c.row().sources().stream())
                                .distinct()
                                .collect(Collectors.joining("; ")),
                        Phrase.of(
                                "Add nothing, leave it where it stands and tell the person responsible for waste at once; if the book is wrong, correct it."));
            }
        }
        return findings.list();
    }
}
