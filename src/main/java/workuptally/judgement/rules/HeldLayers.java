package workuptally.judgement.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.judgement.layers.UnassayedLayers;
import workuptally.model.Field.Qualifier;
import workuptally.model.Finding;
import workuptally.model.Layer;
import workuptally.model.Limits;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.reference.Reactivity;
import workuptally.tally.RunTally;
import workuptally.tally.balance.Experience;
import workuptally.tally.bench.Reextraction;

/** Holds on kept layers, from their decisions: one finding for a layer that holds product, one for all that wait for the same thing. */
public final class HeldLayers {
    /** Code of a layer that holds product above a limit. */
    public static final String HOLDS_PRODUCT = "layer-holds-product";
    /** Code of layers that wait for something to be settled. */
    public static final String WAITS = "layer-waits";

    private HeldLayers() {}

    /** Codes of the findings. */
    static List<String> codes() {
        return List.of(HOLDS_PRODUCT, WAITS, NotAssayed.CODE);
    }

    /** The findings of a run. */
    public static List<Finding> of(
            RunTally tally,
            List<LayerDecision> decisions,
            Limits limits,
            Reactivity reactivity,
            Experience experience) {
        FindingList findings = new FindingList(tally.run().id());
        Optional<UnassayedLayers> unassayed = UnassayedLayers.of(tally, decisions, limits, reactivity);
        unassayed.ifPresent(u -> new NotAssayed(tally, decisions, limits, experience).add(u, findings));
        Map<String, List<LayerDecision>> waiting = new LinkedHashMap<>();
        for (LayerDecision decision : decisions) {
            boolean told =
                    unassayed.filter(u -> u.labels().contains(decision.layer())).isPresent();
            if (decision.outcome() == Outcome.EVIDENCE_COMPLETE || told) {
                continue;
            }
            Optional<Condition> limit = notMet(decision, "R4").or(() -> notMet(decision, "R5"));
            if (limit.isPresent()) {
                findings.add(
                        HOLDS_PRODUCT,
                        Severity.HOLD,
                        place(tally, decision.layer()),
                        "layer " + decision.layer() + ": " + evidence(decision),
                        "within the layer limit, and all kept layers together within the run limit",
                        "limits in force; guard-banded one-sided 95 % bound",
                        notMet(decision, "R1").isPresent()
                                ? "Keep it; settle first which phase it is."
                                : action(tally, decision.layer()));
            } else {
                waiting.computeIfAbsent(decision.reason(), k -> new ArrayList<>())
                        .add(decision);
            }
        }
        waiting.forEach((reason, layers) -> findings.add(
                WAITS,
                Severity.HOLD,
                place(tally, layers.get(0).layer()),
                (layers.size() == 1 ? "layer " : "layers ")
                        + layers.stream().map(LayerDecision::layer).collect(Collectors.joining(", "))
                        + ": " + reason,
                "every condition on the evidence met",
                "conditions R1 to R8, R11, R12",
                "Keep " + (layers.size() == 1 ? "it" : "them") + " until this is settled; "
                        + (layers.size() == 1 ? "it" : "they") + " may be the evidence."));
        return findings.list();
    }

    private static String evidence(LayerDecision decision) {
        return decision.conditions().stream()
                .filter(c -> c.state() == State.NOT_MET && (c.id().equals("R4") || c.id().equals("R5")))
                .map(Condition::evidence)
                .collect(Collectors.joining("; "));
    }

    private static Optional<Condition> notMet(LayerDecision decision, String id) {
        return decision.conditions().stream()
                .filter(c -> c.id().equals(id) && c.state() == State.NOT_MET)
                .findFirst();
    }

    /** An assay, or only the limit of the one there is: not detected says nothing without it. */
    private static String measure(RunTally tally, String layer) {
        boolean notDetected = tally.run().assays().stream()
                .filter(a -> a.sample().equalsIgnoreCase(layer))
                .flatMap(a -> a.result().entered().stream())
                .anyMatch(r -> r.qualifier() == Qualifier.NOT_DETECTED);
        return notDetected
                ? "enter the detection limit of its assay: '<0.10' as Result, or in Limits."
                : "assay " + layer + ".";
    }

    private static String action(RunTally tally, String layer) {
        Optional<Reextraction> gain = tally.evidence().bestGain(layer);
        boolean assayed = tally.layer(layer).stream()
                .flatMap(l -> l.contents().stream())
                .anyMatch(c -> c.massGrams().isPresent() || c.isOwnEvidence());
        if (gain.isEmpty()) {
            return assayed ? "Keep it; recover the product, or say why not." : "Keep it; " + measure(tally, layer);
        }
        Reextraction r = gain.get();
        if (!r.acidGases().isEmpty()) {
            return FindingList.say(
                    "Keep it; %.2f g could be recovered at pH %.1f, but acid must not meet what this run used (%s): settle with the"
                            + " person responsible that none is left before any acid goes in.",
                    r.gainGrams(), r.pH().getAsDouble(), r.acidCaution());
        }
        String gas = r.carbonDioxideMillimoles() == 0
                ? ""
                : FindingList.say(
                        " (slowly, in the open vessel: up to %.0f mmol of carbon dioxide)",
                        r.carbonDioxideMillimoles());
        String first = r.pH().isEmpty()
                ? ""
                : FindingList.say(
                        "bring it to pH %.1f with %.0f mmol of %s%s, then ",
                        r.pH().getAsDouble(),
                        Math.abs(r.acidMillimoles()),
                        r.acidMillimoles() > 0 ? "acid" : "base",
                        gas);
        return FindingList.say(
                "Keep it; to recover: %sone more extraction with %.0f mL %s brings about %.2f g, %.1f %% of theory (D = %.3g from %s).",
                first,
                r.volumeMillilitres(),
                r.solvent(),
                r.gainGrams(),
                r.gainPercentOfTheory(),
                r.distributionRatio(),
                r.origin());
    }

    static Place place(RunTally tally, String layer) {
        return tally.layer(layer)
                .flatMap(l -> l.entry())
                .map(Layer::row)
                .map(r -> r.at("Layer"))
                .orElse(tally.run().row().at("Run"));
    }
}
