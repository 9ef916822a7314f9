package workuptally.judgement.rules.containers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Transfer;

/** A transfer into a waste container of what the book says is to be used again: one of both is not so, and the solvent account goes by the status. */
public final class TransferOfWhatIsReused implements ProposalRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.TRANSFER_OF_REUSED);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        Map<String, Run> runs = new LinkedHashMap<>();
        book.runs().forEach(r -> runs.put(r.id(), r));
        for (Transfer transfer : book.transfers()) {
            List<String> reused = transfer.layers().stream()
                    .filter(label -> runs.containsKey(transfer.run()) && isToReuse(runs.get(transfer.run()), label))
                    .toList();
            if (!reused.isEmpty()) {
                findings.add(
                        FindingCode.TRANSFER_OF_REUSED,
                        Severity.CHECK,
                        transfer.row().at("Layer"),
                        Phrase.of(
                                "{} of {} stands as to reuse, and {} puts it into {}; the solvent account counts it as to be used again",
                                String.join(", ", reused),
                                transfer.run(),
                                transfer.id(),
                                transfer.container()),
                        Phrase.of("solvent that is used again, or waste"),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Correct Status in Layers or the transfer; where a part of it went, give each part a layer of its own."));
            }
        }
        return findings.list();
    }

    private static boolean isToReuse(Run run, String label) {
        return run.layer(label)
                .flatMap(l -> l.custody().status())
                .filter(s -> s == Layer.Status.TO_REUSE)
                .isPresent();
    }
}
