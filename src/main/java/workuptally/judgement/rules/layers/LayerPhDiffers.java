package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.Optional;
import workuptally.chemistry.AcidBase;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/**
 * The pH of an aqueous layer in Layers against the one after the step that gave it. Two units are more than a paper misreads; on the two
 * sides of neutral, four apart, they name different waste streams and different gases, and the record contradicts itself (common practice).
 */
public final class LayerPhDiffers implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public LayerPhDiffers(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LAYER_PH_DIFFERS);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        double alike = substances.value(Threshold.PH_READ_ALIKE);
        for (Layer layer : tally.run().layers()) {
            Optional<Entered> recorded = layer.pH().entered();
            Optional<Step> giver = giver(tally, layer.label());
            Optional<Entered> after = giver.flatMap(s -> s.pHAfter().entered());
            if (recorded.isPresent() && after.isPresent()) {
                double one = recorded.get().value();
                double other = after.get().value();
                double apart = Math.abs(one - other);
                boolean sides = (one - AcidBase.NEUTRAL_PH) * (other - AcidBase.NEUTRAL_PH) < 0;
                if (apart > alike) {
                    findings.add(
                            FindingCode.LAYER_PH_DIFFERS,
                            sides && apart >= substances.value(Threshold.PH_CONTRADICTS)
                                    ? Severity.STOP
                                    : Severity.CHECK,
                            layer.row().at("pH"),
                            Phrase.of(
                                    "layer {} pH {} in Layers, {} after step {} in Workup",
                                    layer.label(),
                                    Figure.decimals(one, 1, ""),
                                    Figure.decimals(other, 1, ""),
                                    giver.get().number()),
                            Phrase.of("the same pH within {}", Figure.brief(alike, "")),
                            FindingList.PRACTICE,
                            Phrase.of("Measure the layer's pH again and correct the wrong entry."));
                }
            }
        }
        return findings.list();
    }

    /** The last step that gave the layer, where it gave no other aqueous one. */
    private static Optional<Step> giver(RunTally tally, String label) {
        return tally.run().orderedSteps().stream()
                .filter(step -> step.gives().contains(label))
                .reduce((earlier, later) -> later)
                .filter(step -> step.given().aqueous().equals(List.of(label)));
    }
}
