package workuptally.judgement.rules.containers;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.judgement.layers.Criterion;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Transfer;

/** A proposal for a layer whose evidence does not support letting it go: it holds product, its run leaves open what it may be the evidence of, or something is missing. */
public final class ProposalHeldByLayer implements ProposalRule {

    private static final Criterion OPEN_STOP = Criterion.NO_OPEN_STOP;
    private static final List<Criterion> CONTENT = List.of(Criterion.LAYER_LIMIT, Criterion.RUN_LIMIT);

    @Override
    public List<FindingCode> codes() {
        return List.of(
                FindingCode.PROPOSAL_HOLDS_PRODUCT,
                FindingCode.PROPOSAL_IS_EVIDENCE,
                FindingCode.PROPOSAL_EVIDENCE_OPEN);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        Map<String, Set<String>> labels = new HashMap<>();
        book.runs()
                .forEach(r ->
                        labels.put(r.id(), r.layers().stream().map(Layer::label).collect(Collectors.toSet())));
        for (ContainerReview container : containers) {
            for (ProposalFit fit : container.proposals()) {
                List<LayerDecision> ofLayers =
                        ProposalWords.decisions(fit.addition().transfer(), decisions);
                product(findings, fit, ofLayers);
                evidence(findings, fit, ofLayers);
                open(findings, fit, ofLayers, withoutRow(fit, labels));
            }
        }
        return findings.list();
    }

    /** Labels of a transfer that have no row in Layers: nobody decides about them. */
    private static List<String> withoutRow(ProposalFit fit, Map<String, Set<String>> labels) {
        Transfer transfer = fit.addition().transfer();
        Set<String> ofRun = labels.getOrDefault(transfer.run(), Set.of());
        return transfer.layers().stream().filter(l -> !ofRun.contains(l)).toList();
    }

    private static void product(FindingList findings, ProposalFit fit, List<LayerDecision> decisions) {
        List<LayerDecision> holding = decisions.stream()
                .filter(d -> CONTENT.stream().anyMatch(c -> ProposalWords.isNotMet(d, c)))
                .toList();
        if (!holding.isEmpty()) {
            add(
                    findings,
                    FindingCode.PROPOSAL_HOLDS_PRODUCT,
                    fit,
                    evidence(holding, CONTENT),
                    Phrase.of("a layer whose product lies within the limits of layer and run"),
                    Phrase.of("Keep the layer; see the decision about it for what a re-extraction would give."));
        }
    }

    private static void evidence(FindingList findings, ProposalFit fit, List<LayerDecision> decisions) {
        List<LayerDecision> held = ProposalWords.notMet(decisions, OPEN_STOP).toList();
        if (!held.isEmpty()) {
            add(
                    findings,
                    FindingCode.PROPOSAL_IS_EVIDENCE,
                    fit,
                    Phrase.of(
                            "the layer may be the evidence of what its run leaves open; {}",
                            evidence(held, List.of(OPEN_STOP))),
                    Phrase.of("a run without an open stop or hold that the layer has to do with"),
                    Phrase.of("Keep the layer until that is settled."));
        }
    }

    private static void open(
            FindingList findings, ProposalFit fit, List<LayerDecision> decisions, List<String> withoutRow) {
        List<LayerDecision> open = decisions.stream()
                .filter(d -> d.outcome() != Outcome.EVIDENCE_COMPLETE)
                .filter(d -> !ProposalWords.isNotMet(d, OPEN_STOP))
                .filter(d -> CONTENT.stream().noneMatch(c -> ProposalWords.isNotMet(d, c)))
                .toList();
        if (!open.isEmpty() || !withoutRow.isEmpty()) {
            add(
                    findings,
                    FindingCode.PROPOSAL_EVIDENCE_OPEN,
                    fit,
                    Stream.concat(
                                    open.stream().map(d -> Phrase.of("{}: {}", d.layer(), d.reason())),
                                    withoutRow.stream()
                                            .map(label -> Phrase.of(
                                                    "{}: no row in Layers, so that nothing is decided about it",
                                                    label)))
                            .collect(Phrase.joining("; ")),
                    Phrase.of("a layer whose evidence is complete"),
                    Phrase.of("Keep the layer until what is missing is there."));
        }
    }

    private static Phrase evidence(List<LayerDecision> decisions, List<Criterion> conditions) {
        return decisions.stream()
                .flatMap(d -> d.conditions().stream()
                        .filter(c -> conditions.contains(c.criterion()) && c.state() == State.NOT_MET)
                        .map(Condition::evidence)
                        .map(e -> Phrase.of("{}: {}", d.layer(), e)))
                .collect(Phrase.joining("; "));
    }

    private static void add(
            FindingList findings, FindingCode code, ProposalFit fit, Phrase seen, Phrase expected, Phrase action) {
        findings.add(
                code,
                Severity.HOLD,
                fit.addition().transfer().row().at("Layer"),
                Phrase.of("{}; {}", ProposalWords.title(fit), seen),
                expected,
                FindingList.PRACTICE,
                action);
    }
}
