package workuptally.judgement.rules.containers;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.judgement.containers.ProposalFit.Clash;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;

/** A proposal that brings together what must not meet: a stop; where only a missing quench test says so, a hold; a mere caution, a check. */
public final class ProposalIncompatible implements ProposalRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PROPOSAL_INCOMPATIBLE);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            for (ProposalFit fit : container.proposals()) {
                if (!fit.clashes().isEmpty()) {
                    findings.add(
                            FindingCode.PROPOSAL_INCOMPATIBLE,
                            severity(fit),
                            fit.addition().transfer().row().at("Container"),
                            Phrase.of(
                                    "{}; {}",
                                    ProposalWords.title(fit),
                                    fit.clashes().stream()
                                            .map(ProposalIncompatible::words)
                                            .collect(Phrase.joining("; "))),
                            fit.clashes().stream()
                                    .map(c -> Phrase.of("{} and {} apart", c.incoming(), c.present()))
                                    .distinct()
                                    .collect(Phrase.joining("; ")),
                            fit.clashes().stream()
                                    .flatMap(c -> c.row().sources().stream())
                                    .distinct()
                                    .collect(Collectors.joining("; ")),
                            Phrase.of(
                                    "{}; ask the person responsible for waste. The list of pairs is not complete: read the safety data"
                                            + " sheets.",
                                    todo(fit)));
                }
            }
        }
        return findings.list();
    }

    /** As the table of proposals says it: do not, keep back, ask. */
    private static Phrase todo(ProposalFit fit) {
        return switch (severity(fit)) {
            case STOP -> Phrase.of("Do not make this transfer");
            case HOLD -> Phrase.of("Keep it back until a test shows what is gone");
            default -> Phrase.of("Look at this pair before the transfer is made");
        };
    }

    private static Severity severity(ProposalFit fit) {
        List<Clash> hazardous =
                fit.clashes().stream().filter(Clash::isHazardous).toList();
        if (hazardous.isEmpty()) {
            return Severity.CHECK;
        }
        return hazardous.stream().anyMatch(Clash::shownPresent) ? Severity.STOP : Severity.HOLD;
    }

    private static Phrase words(Clash clash) {
        return Phrase.of(
                "{} meets {}{}: {}{}{}",
                clash.incoming(),
                clash.present(),
                clash.earlierTransfer().isEmpty()
                        ? Phrase.NONE
                        : Phrase.of(" of the earlier proposal {}", clash.earlierTransfer()),
                clash.row().consequence(),
                clash.gas().map(g -> Phrase.of(" ({})", g)).orElse(Phrase.NONE),
                clash.shownPresent() ? Phrase.NONE : Phrase.of(", unless a quench test shows that it is gone"));
    }
}
