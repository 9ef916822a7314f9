package workuptally.judgement.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.layers.Criterion;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.judgement.layers.UnassayedLayers;
import workuptally.judgement.layers.UnassayedRags;
import workuptally.model.Field.Qualifier;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Limits;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Experience;
import workuptally.tally.bench.Reextraction;
import workuptally.tally.layers.LayerTally;

/** Holds on kept layers, from their decisions: one finding for a layer that holds product, one for all that wait for the same thing. */
public final class HeldLayers {

    private HeldLayers() {}

    /** Codes of the findings. */
    static List<FindingCode> codes() {
        return List.of(
                FindingCode.LAYER_HOLDS_PRODUCT,
                FindingCode.LAYER_WAITS,
                FindingCode.LAYERS_NOT_ASSAYED,
                FindingCode.LAYER_LEFT_EARLY);
    }

    /** The findings of a run. */
    public static List<Finding> of(
            RunTally tally, List<LayerDecision> all, Limits limits, Substances substances, Experience experience) {
        FindingList findings = new FindingList(tally.run().id());
        LeftEarly.add(tally, all, findings);
        List<LayerDecision> decisions =
                all.stream().filter(d -> !d.isGoneEarly()).toList();
        Optional<UnassayedLayers> unassayed = UnassayedLayers.of(tally, decisions, limits, substances);
        unassayed.ifPresent(u -> new NotAssayed(tally, decisions, limits, experience).add(u, findings));
        Set<String> rags =
                UnassayedRags.of(tally).stream().map(LayerTally::label).collect(Collectors.toSet());
        Map<Phrase, List<LayerDecision>> waiting = new LinkedHashMap<>();
        for (LayerDecision decision : decisions) {
            boolean told =
                    unassayed.filter(u -> u.labels().contains(decision.layer())).isPresent();
            if (decision.outcome() == Outcome.EVIDENCE_COMPLETE || told || isToldAsRag(decision, rags)) {
                continue;
            }
            Optional<Condition> limit =
                    notMet(decision, Criterion.LAYER_LIMIT).or(() -> notMet(decision, Criterion.RUN_LIMIT));
            if (limit.isPresent()) {
                findings.add(
                        FindingCode.LAYER_HOLDS_PRODUCT,
                        Severity.HOLD,
                        Subject.ofRun(tally.run().id()).withLayers(List.of(decision.layer())),
                        place(tally, decision.layer()),
                        Phrase.of("layer {}: {}", decision.layer(), evidence(decision)),
                        Phrase.of("within the layer limit, and all kept layers together within the run limit"),
                        "limits in force; guard-banded one-sided 95 % bound",
                        notMet(decision, Criterion.IDENTITY).isPresent()
                                ? Phrase.of("Keep it; settle first which phase it is.")
                                : action(tally, decision.layer()));
            } else {
                waiting.computeIfAbsent(decision.reason(), k -> new ArrayList<>())
                        .add(decision);
            }
        }
        waiting.forEach((reason, layers) -> findings.add(
                FindingCode.LAYER_WAITS,
                Severity.HOLD,
                Subject.ofRun(tally.run().id())
                        .withLayers(layers.stream().map(LayerDecision::layer).toList()),
                place(tally, layers.get(0).layer()),
                Phrase.of(
                        "{}{}: {}",
                        layers.size() == 1 ? Phrase.of("layer ") : Phrase.of("layers "),
                        layers.stream().map(LayerDecision::layer).collect(Collectors.joining(", ")),
                        reason),
                Phrase.of("every condition on the evidence met"),
                "conditions R1 to R8, R11, R12",
                Phrase.of(
                        "Keep {} until this is settled; {} may be the evidence.",
                        layers.size() == 1 ? Phrase.of("it") : Phrase.of("them"),
                        layers.size() == 1 ? Phrase.of("it") : Phrase.of("they"))));
        return findings.list();
    }

    /** A rag that nobody assayed has a finding of its own, which says what it may hold; only another cause is told here. */
    private static boolean isToldAsRag(LayerDecision decision, Set<String> rags) {
        return rags.contains(decision.layer())
                && notMet(decision, Criterion.IDENTITY).isEmpty()
                && (notMet(decision, Criterion.LAYER_LIMIT).isPresent()
                        || notMet(decision, Criterion.RUN_LIMIT).isPresent()
                        || UnassayedLayers.waitsForContentAlone(decision));
    }

    private static Phrase evidence(LayerDecision decision) {
        return decision.conditions().stream()
                .filter(c -> c.state() == State.NOT_MET
                        && (c.criterion() == Criterion.LAYER_LIMIT || c.criterion() == Criterion.RUN_LIMIT))
                .map(Condition::evidence)
                .collect(Phrase.joining("; "));
    }

    private static Optional<Condition> notMet(LayerDecision decision, Criterion criterion) {
        return decision.conditions().stream()
                .filter(c -> c.criterion() == criterion && c.state() == State.NOT_MET)
                .findFirst();
    }

    /** An assay, or only the limit of the one there is: not detected says nothing without it. */
    private static Phrase measure(RunTally tally, String layer) {
        boolean notDetected = tally.run().assays().stream()
                .filter(a -> a.sample().equalsIgnoreCase(layer))
                .flatMap(a -> a.result().entered().stream())
                .anyMatch(r -> r.qualifier() == Qualifier.NOT_DETECTED);
        return notDetected
                ? Phrase.of("enter the detection limit of its assay: '<0.10' as Result, or in Limits.")
                : Phrase.of("assay {}.", layer);
    }

    private static Phrase action(RunTally tally, String layer) {
        Optional<Reextraction> gain = tally.evidence().bestGain(layer);
        boolean assayed = tally.layer(layer).stream()
                .flatMap(l -> l.contents().stream())
                .anyMatch(c -> c.massGrams().isPresent() || c.isOwnEvidence());
        if (gain.isEmpty()) {
            return assayed
                    ? Phrase.of("Keep it; recover the product, or say why not.")
                    : Phrase.of("Keep it; {}", measure(tally, layer));
        }
        Reextraction r = gain.get();
        if (!r.phSetting().acidGases().isEmpty()) {
            return Phrase.of(
                    "Keep it; {} could be recovered at pH {}, but acid must not meet what this run used ({}): settle with the"
                            + " person responsible that none is left before any acid goes in.",
                    Figure.decimals(r.gain().grams(), 2, "g"),
                    Figure.decimals(r.phSetting().pH().getAsDouble(), 1, ""),
                    r.phSetting().acidCaution());
        }
        Phrase gas = r.phSetting().carbonDioxideMillimoles() == 0
                ? Phrase.NONE
                : Phrase.of(
                        " (slowly, in the open vessel: up to {} of carbon dioxide)",
                        Figure.decimals(r.phSetting().carbonDioxideMillimoles(), 0, "mmol"));
        Phrase first = r.phSetting().pH().isEmpty()
                ? Phrase.NONE
                : Phrase.of(
                        "bring it to pH {} with {} of {}{}, then ",
                        Figure.decimals(r.phSetting().pH().getAsDouble(), 1, ""),
                        Figure.decimals(Math.abs(r.phSetting().acidMillimoles()), 0, "mmol"),
                        r.phSetting().acidMillimoles() > 0 ? "acid" : "base",
                        gas);
        return Phrase.of(
                "Keep it; to recover: {}one more extraction with {} {} brings about {}, {} of theory (D = {} from {}).",
                first,
                Figure.decimals(r.extractant().volumeMillilitres(), 0, "mL"),
                r.extractant().solvent(),
                Figure.decimals(r.gain().grams(), 2, "g"),
                Figure.decimals(r.gain().percentOfTheory(), 1, "%"),
                Figure.digits(r.partition().distributionRatio(), 3, ""),
                r.partition().origin());
    }

    static Place place(RunTally tally, String layer) {
        return tally.layer(layer)
                .flatMap(l -> l.entry())
                .map(Layer::row)
                .map(r -> r.at("Layer"))
                .orElse(tally.run().row().at("Run"));
    }
}
