package workuptally.judgement.rules.containers;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import workuptally.tally.layers.LayerGraph;

/**
 * A transfer into a waste container of what the book says is to be used again, where the solvent account goes by the status, and of what a
 * step has worked up further or is gone by its status: one of both is not so.
 */
public final class TransferOfWhatIsElsewhere implements ProposalRule {
    private static final Set<Layer.Status> GONE =
            Set.of(Layer.Status.USED_UP, Layer.Status.CONSUMED, Layer.Status.RELEASED, Layer.Status.LOST);

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.TRANSFER_OF_REUSED, FindingCode.TRANSFER_OF_GONE);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        Map<String, Run> runs = new LinkedHashMap<>();
        book.runs().forEach(r -> runs.put(r.id(), r));
        Map<String, LayerGraph> graphs = new HashMap<>();
        for (Transfer transfer : book.transfers()) {
            Run run = runs.get(transfer.run());
            if (run == null) {
                continue;
            }
            gone(run, graphs.computeIfAbsent(run.id(), id -> LayerGraph.of(run)), transfer, findings);
            List<String> reused = transfer.layers().stream()
                    .filter(label -> isToReuse(run, label))
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

    private static void gone(Run run, LayerGraph graph, Transfer transfer, FindingList findings) {
        for (String label : transfer.layers()) {
            Optional<String> where = graph.consumedBy(label)
                    .or(() -> run.layer(label)
                            .flatMap(l -> l.custody().status())
                            .filter(s -> GONE.contains(s) && transfer.status() == Transfer.Status.PROPOSED)
                            .map(s -> "its status, " + s.word()));
            where.ifPresent(by -> findings.add(
                    FindingCode.TRANSFER_OF_GONE,
                    Severity.HOLD,
                    transfer.row().at("Layer"),
                    Phrase.of(
                            "{} puts {} of {} into {}, but that is gone by {}",
                            transfer.id(),
                            label,
                            transfer.run(),
                            transfer.container(),
                            by),
                    Phrase.of("a portion that is still there"),
                    "conservation of mass",
                    Phrase.of("Correct the label of the transfer, the status of the layer or the steps.")));
        }
    }

    private static boolean isToReuse(Run run, String label) {
        return run.layer(label)
                .flatMap(l -> l.custody().status())
                .filter(s -> s == Layer.Status.TO_REUSE)
                .isPresent();
    }
}
