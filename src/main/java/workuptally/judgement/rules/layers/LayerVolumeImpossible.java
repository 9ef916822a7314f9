package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.chemistry.Contraction;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.bench.ContactMixture;

/** More liquid out of a contact than went in, or much less; liquids contract when mixed and some stay on the glass. */
public final class LayerVolumeImpossible implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LAYER_VOLUME_IMPOSSIBLE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (ContactMixture contact : tally.evidence().contactMixtures()) {
            if (contact.outMillilitres().isPresent() && contact.inMillilitres() > 0) {
                double out = contact.outMillilitres().getAsDouble();
                double percent = Contraction.changePercent(contact.inMillilitres(), out);
                if (!Contraction.isPlausible(percent)) {
                    findings.add(
                            FindingCode.LAYER_VOLUME_IMPOSSIBLE,
                            Severity.CHECK,
                            contact.step().row().at("Volume"),
                            Phrase.of(
                                    "step {}: about {} went in, the layers measure {} ({})",
                                    contact.step().number(),
                                    Figure.decimals(contact.inMillilitres(), 0, "mL"),
                                    Figure.decimals(out, 0, "mL"),
                                    Figure.signed(percent, 0, "%")),
                            Phrase.of(
                                    "between {} less and {} more",
                                    Figure.decimals(Contraction.MOST_SHRINKAGE_PERCENT, 0, "%"),
                                    Figure.decimals(Contraction.MOST_GROWTH_PERCENT, 0, "%")),
                            FindingList.PRACTICE,
                            Phrase.of(
                                    "Read the volumes again, and look for a layer without a row or a portion not entered."));
                }
            }
        }
        return findings.list();
    }
}
