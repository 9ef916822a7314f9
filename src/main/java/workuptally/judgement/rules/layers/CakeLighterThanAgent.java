package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.bench.DriedLayer;
import workuptally.tally.layers.LayerTally;

/** A filtered cake that weighs less than the drying agent on it: below nine tenths of the agent, beyond 2u of the weighing (common practice). */
public final class CakeLighterThanAgent implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public CakeLighterThanAgent(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CAKE_LIGHTER_THAN_AGENT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (DriedLayer dried : tally.evidence().dried()) {
            Optional<Layer> cake = tally.run().layer(dried.cake());
            Optional<MeasuredValue> mass = tally.layer(dried.cake()).flatMap(LayerTally::massGrams);
            double least = substances.value(Threshold.CAKE_LEAST) * dried.agentGrams();
            if (cake.isPresent()
                    && mass.filter(m -> m.value() + substances.value(Threshold.READINGS_AGREE) * m.standardUncertainty()
                                    < least)
                            .isPresent()) {
                findings.add(
                        FindingCode.CAKE_LIGHTER_THAN_AGENT,
                        Severity.CHECK,
                        cake.get()
                                .row()
                                .at(cake.get().weighing().netGrams().entered().isPresent() ? "Net" : "Gross"),
                        Phrase.of(
                                "cake {} weighs {}, but step {} put {} of {} into it",
                                dried.cake(),
                                Figure.digits(mass.get().value(), 3, "g"),
                                dried.step().number(),
                                Figure.digits(dried.agentGrams(), 3, "g"),
                                dried.agent()),
                        Phrase.of("at least the agent, with the water and solution it took up"),
                        "conservation of mass; a tenth left in the flask, common practice",
                        Phrase.of(
                                "Look at the weighing of the cake and at the amount of agent; weigh agent left in the flask or on a second filter too."));
            }
        }
        return findings.list();
    }
}
