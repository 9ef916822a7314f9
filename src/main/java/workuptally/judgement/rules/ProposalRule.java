package workuptally.judgement.rules;

import java.util.List;
import java.util.Map;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;

/** A rule about containers and what is proposed for them, asked when the layers have been decided about. Its findings belong to no run. */
public interface ProposalRule {
    /** Codes of the findings it can raise; each has a section in {@code reference/findings.md}. */
    List<FindingCode> codes();

    /**
     * What containers and proposals show.
     *
     * @param book the entries
     * @param containers ledgers with their proposals
     * @param decisions decisions about kept layers, by run
     */
    List<Finding> judge(Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions);
}
