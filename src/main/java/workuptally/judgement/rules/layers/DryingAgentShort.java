package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.bench.DriedLayer;

/** Less drying agent than 1.5 times the water to bind asks for (common practice). Capacity is not performance. */
public final class DryingAgentShort implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public DryingAgentShort(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.DRYING_AGENT_SHORT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (DriedLayer dried : tally.evidence().dried()) {
            if (dried.capacityRatio() < substances.value(Threshold.AGENT_SHORT)) {
                findings.add(
                        FindingCode.DRYING_AGENT_SHORT,
                        Severity.CHECK,
                        dried.step().row().at("Mass"),
                        Phrase.of(
                                "{} of {} can bind about {} of water; the layer holds about {} ({}): ratio {}",
                                Figure.digits(dried.agentGrams(), 3, "g"),
                                dried.agent(),
                                Figure.digits(dried.agentGrams() * dried.capacityGramsPerGram(), 2, "g"),
                                Figure.digits(dried.waterGrams(), 2, "g"),
                                dried.assumption(),
                                Figure.decimals(dried.capacityRatio(), 2, "")),
                        Phrase.of("{} at least", Figure.brief(substances.value(Threshold.AGENT_SHORT), "")),
                        "practical uptake of the reference table; ratio common practice",
                        Phrase.of(
                                "Expect water in the crude: determine it (Karl Fischer), or dry again with fresh agent."));
            }
        }
        return findings.list();
    }
}
