package workuptally.judgement.rules.layers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.bench.DriedLayer;
import workuptally.tally.layers.LayerTally;

/** A drying cake that weighs less than the agent on it, by more than what stays in the flask: one of the two masses is wrong. */
public final class CakeLighterThanAgent implements RunRule {
    /** What of an agent stays in flask and funnel, as a fraction (common practice). */
    private static final double LEFT_BEHIND = 0.1;

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CAKE_LIGHTER_THAN_AGENT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Map<String, Map<String, Double>> agents = new LinkedHashMap<>();
        for (DriedLayer dried : tally.evidence().dried()) {
            if (!dried.cake().isEmpty()) {
                agents.computeIfAbsent(dried.cake(), k -> new LinkedHashMap<>())
                        .put(dried.step().number(), dried.agentGrams());
            }
        }
        agents.forEach((cake, bySteps) -> {
            double agent =
                    bySteps.values().stream().mapToDouble(Double::doubleValue).sum();
            Optional<LayerTally> layer = tally.layer(cake).filter(l -> l.entry().isPresent());
            Optional<MeasuredValue> mass = layer.flatMap(LayerTally::massGrams);
            if (mass.filter(m -> m.value() + 2 * m.standardUncertainty() < (1 - LEFT_BEHIND) * agent)
                    .isPresent()) {
                findings.add(
                        FindingCode.CAKE_LIGHTER_THAN_AGENT,
                        Severity.CHECK,
                        layer.get().entry().get().row().at("Net"),
                        Phrase.of(
                                "cake {} weighs {}, less than the agent on it, {}",
                                cake,
                                Figure.digits(mass.get().value(), 3, "g"),
                                Figure.digits(agent, 3, "g")),
                        Phrase.of("the agent and what it took up"),
                        "conservation of mass; a tenth may stay in flask and funnel (common practice)",
                        Phrase.of(
                                "Look at the mass of the agent, at gross and tare of the cake, and for a decimal point."));
            }
        });
        return findings.list();
    }
}
