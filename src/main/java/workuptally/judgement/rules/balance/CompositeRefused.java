package workuptally.judgement.rules.balance;

import java.util.ArrayList;
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
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.CompositeSample;
import workuptally.tally.balance.CompositeSamples.Refused;

/** A composite sample that does not count, and one that assays of its single layers gainsay. */
public final class CompositeRefused implements RunRule {
    private final Substances substances;

    /** With the reference data in force. */
    public CompositeRefused(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.COMPOSITE_REFUSED, FindingCode.COMPOSITE_DISAGREES);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Refused refused : tally.evidence().composites().refused()) {
            findings.add(
                    FindingCode.COMPOSITE_REFUSED,
                    Severity.CHECK,
                    refused.assay().row().at("Sample"),
                    Phrase.of(
                            "composite sample {} does not count: {}",
                            refused.assay().sample(),
                            refused.because()),
                    Phrase.of(
                            "clear layers of measured volume that end the workup and may stand together, each in one such sample"),
                    FindingList.PRACTICE,
                    Phrase.of(
                            "Assay the layers one by one, or those together that may be, in proportion to their volumes."));
        }
        List<CompositeSample> told = new ArrayList<>();
        for (CompositeSample sample : tally.evidence().composites().list()) {
            if (sample.together().rests() == Content.Rests.DISPUTED_READINGS) {
                if (told.stream().noneMatch(sample::overlaps)) {
                    gainsaid(findings, tally, sample);
                }
                told.add(sample);
            }
        }
        return findings.list();
    }

    private void gainsaid(FindingList findings, RunTally tally, CompositeSample sample) {
        tally.run().assays().stream()
                .filter(a -> a.sample().equals(sample.name()) && a.isOf(sample.substance()))
                .reduce((earlier, later) -> later)
                .ifPresent(assay -> findings.add(
                        FindingCode.COMPOSITE_DISAGREES,
                        Severity.HOLD,
                        assay.row().at("Result"),
                        Phrase.of(
                                "{} together, {}: {}; it does not fit the other readings of these layers",
                                sample.name(),
                                sample.substance(),
                                sample.together().evidence()),
                        Phrase.of(
                                "what the layers hold together and what was found in them within {}u of each other",
                                Figure.brief(substances.value(Threshold.READINGS_AGREE), "")),
                        FindingList.PRACTICE,
                        Phrase.of("Find out which is right: mix a new sample in proportion to the volumes, or"
                                + " assay the layers one by one.")));
    }
}
