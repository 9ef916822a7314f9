package workuptally.judgement.containers;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.containers.ProposalFit.Clash;
import workuptally.judgement.hazards.HazardNote;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.containers.ContainerTally;
import workuptally.tally.suspects.RunSuspects;

/**
 * A container with what is proposed for it.
 *
 * @param tally its ledger
 * @param standing what stands together in it though it never should
 * @param otherStream name of the stream that its stated contents suggest, where that is another than its label's
 * @param made transfers made since its weighing, in order of the table
 * @param proposals the proposals, in order of the table
 * @param afterProposals contents with every proposal that neither belongs to another stream nor meets what it must not
 * @param facts limits of regulations that may bear on it
 * @param hazards notes by what it holds: one for each component, then one about the whole
 * @param suspects what its entries say against each other, and the cells that may be behind it
 */
public record ContainerReview(
        ContainerTally tally,
        List<Clash> standing,
        Optional<String> otherStream,
        List<MadeTransfer> made,
        List<ProposalFit> proposals,
        ContainerState afterProposals,
        List<RegulatoryFact> facts,
        List<HazardNote> hazards,
        RunSuspects suspects) {
    /** Copies the list. */
    public ContainerReview {
        standing = List.copyOf(standing);
        made = List.copyOf(made);
        proposals = List.copyOf(proposals);
        facts = List.copyOf(facts);
        hazards = List.copyOf(hazards);
    }

    /** Id of the container. */
    public String id() {
        return tally.container().id();
    }
}
