package workuptally.judgement.rules.containers;

import java.util.List;
import java.util.Map;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;

/** A proposal whose make-up suggests another stream than the container's. */
public final class ProposalInWrongStream implements ProposalRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PROPOSAL_WRONG_STREAM, FindingCode.PROPOSAL_STREAM_UNKNOWN);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            for (ProposalFit fit : container.proposals()) {
                judge(findings, container, fit);
            }
        }
        return findings.list();
    }

    private static void judge(FindingList findings, ContainerReview container, ProposalFit fit) {
        String label = container.tally().container().wasteStream();
        switch (fit.streamFit()) {
            case SAME -> {
                // Nothing to say.
            }
            case OTHER ->
                add(
                        findings,
                        FindingCode.PROPOSAL_WRONG_STREAM,
                        Severity.STOP,
                        fit,
                        Phrase.of("its make-up suggests '{}'; the container is for '{}'", fit.streamName(), label),
                        Phrase.of(
                                "Do not make this transfer; ask the person responsible for waste which container takes it."));
            case ASK_FIRST ->
                add(
                        findings,
                        FindingCode.PROPOSAL_WRONG_STREAM,
                        Severity.HOLD,
                        fit,
                        Phrase.of("its make-up suggests '{}'; the container is for '{}'", fit.streamName(), label),
                        Phrase.of("Keep it and ask the person responsible for waste."));
            case DEARER ->
                add(
                        findings,
                        FindingCode.PROPOSAL_WRONG_STREAM,
                        Severity.CHECK,
                        fit,
                        Phrase.of(
                                "its make-up suggests '{}'; it would fill the dearer stream '{}'",
                                fit.streamName(),
                                label),
                        Phrase.of("Look whether a container of its own stream is there."));
            case UNKNOWN -> {
                if (container.otherStream().isPresent()) {
                    return; // what the container holds against its label is told of the container
                }
                add(
                        findings,
                        FindingCode.PROPOSAL_STREAM_UNKNOWN,
                        Severity.CHECK,
                        fit,
                        fit.waitsForPhase()
                                ? Phrase.of(
                                        "its stream '{}' rests on which phase it is, and nothing shows that",
                                        fit.streamName())
                                : Phrase.of(
                                        "its stream is '{}', the container's is '{}'; whether that takes it cannot be told",
                                        fit.streamName(),
                                        label),
                        fit.waitsForPhase()
                                ? Phrase.of(
                                        "Show the phase: weigh both layers and read their volumes, or put a drop of water to it and enter that under Checked by of the step.")
                                : Phrase.of(
                                        "Write a stream name of the list on the container, since a word on it was not understood or tells none; enter mass, pH and composition of what is to be transferred where they are missing."));
            }
        }
    }

    private static void add(
            FindingList findings, FindingCode code, Severity severity, ProposalFit fit, Phrase seen, Phrase action) {
        findings.add(
                code,
                severity,
                fit.addition().transfer().row().at("Container"),
                Phrase.of("{}; {}", ProposalWords.title(fit), seen),
                Phrase.of("a container of the same stream; local rules and the safety data sheets win"),
                FindingList.PRACTICE,
                action);
    }
}
