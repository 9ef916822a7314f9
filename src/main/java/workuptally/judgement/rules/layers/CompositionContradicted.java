package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.layers.LayerMakeUp;
import workuptally.tally.layers.SolventMismatch;

/** A distillate whose stated composition leaves out a halogenated solvent that went in, or holds more of a solvent than there was. */
public final class CompositionContradicted implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.COMPOSITION_CONTRADICTED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (LayerMakeUp makeUp : tally.evidence().makeUps()) {
            for (SolventMismatch mismatch : makeUp.mismatches()) {
                tally.run().layer(makeUp.layer()).ifPresent(layer -> add(layer, mismatch, findings));
            }
        }
        return findings.list();
    }

    private static void add(Layer layer, SolventMismatch mismatch, FindingList findings) {
        Figure taken = Figure.digits(mismatch.wentInGrams(), 3, "g");
        findings.add(
                FindingCode.COMPOSITION_CONTRADICTED,
                mismatch.isLeftOut() ? Severity.HOLD : Severity.CHECK,
                layer.row().at("Composition"),
                mismatch.isLeftOut()
                        ? Phrase.of(
                                "the composition of {} leaves out {}, of which about {} was in what was taken off",
                                layer.label(),
                                mismatch.solvent(),
                                taken)
                        : Phrase.of(
                                "the composition of {} makes {} of {}, about {} of it went into the run",
                                layer.label(),
                                Figure.digits(mismatch.statedGrams(), 3, "g"),
                                mismatch.solvent(),
                                taken),
                Phrase.of("no more of a solvent than went in, and every halogenated one that did"),
                "conservation of mass",
                Phrase.of(
                        "Correct the composition, leave it blank to have it estimated, or enter the solvent that was added."));
    }
}
