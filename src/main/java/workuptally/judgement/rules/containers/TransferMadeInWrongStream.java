package workuptally.judgement.rules.containers;

import java.util.List;
import java.util.Map;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.MadeTransfer;
import workuptally.judgement.containers.ProposalFit.StreamFit;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;

/** A transfer that has been made though its make-up suggests another stream than the container's: the label no longer tells what is in it. */
public final class TransferMadeInWrongStream implements ProposalRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.TRANSFER_IN_WRONG_STREAM);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            for (MadeTransfer made : container.made()) {
                if (made.streamFit() == StreamFit.OTHER || made.streamFit() == StreamFit.ASK_FIRST) {
                    findings.add(
                            FindingCode.TRANSFER_IN_WRONG_STREAM,
                            made.streamFit() == StreamFit.OTHER ? Severity.HOLD : Severity.CHECK,
                            made.addition().transfer().row().at("Container"),
                            Phrase.of(
                                    "{}: {} was put into {}; its make-up suggests '{}', the container is for '{}'",
                                    made.addition().transfer().id(),
                                    made.addition().source(),
                                    container.id(),
                                    made.streamName(),
                                    container.tally().container().wasteStream()),
                            Phrase.of("a container of the same stream; local rules and the safety data sheets win"),
                            FindingList.PRACTICE,
                            Phrase.of(
                                    "Tell the person responsible for waste, and have the label say what is in the container."));
                }
            }
        }
        return findings.list();
    }
}
