package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.layers.UnassayedRags;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.balance.Closure;
import workuptally.tally.layers.LayerTally;

/** A rag or middle layer without an assay for the product, and a lasting emulsion of which no rag layer was recorded. */
public final class RagNotAssayed implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.RAG_NOT_ASSAYED, FindingCode.EMULSION_NOT_RECORDED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (LayerTally layer : UnassayedRags.of(tally)) {
            findings.add(
                    FindingCode.RAG_NOT_ASSAYED,
                    Severity.HOLD,
                    layer.entry().orElseThrow().row().at("Phase"),
                    Phrase.of(
                            "rag layer {}{} has no assay for the product{}{}",
                            layer.label(),
                            volume(layer),
                            bound(layer),
                            gap(tally)),
                    Phrase.of("an assay, or the emulsion broken and both parts recorded"),
                    FindingList.PRACTICE,
                    Phrase.of(
                            "Keep it. Add brine or filter through a pad to break it, or take a homogeneous aliquot and assay that."));
        }
        emulsion(findings, tally);
        return findings.list();
    }

    private static Phrase volume(LayerTally layer) {
        return layer.volumeMillilitres()
                .map(v -> Phrase.of(" ({})", Figure.digits(v.value(), 3, "mL")))
                .orElse(Phrase.NONE);
    }

    private static Phrase bound(LayerTally layer) {
        Optional<Content> bounded = layer.contents().stream()
                .filter(c -> c.upperBoundGrams().isPresent())
                .findFirst();
        return bounded.map(c -> Phrase.of(
                        "; it may hold up to {} of {} (one-sided 95 %; {})",
                        Figure.bound(c.upperBoundGrams().getAsDouble(), "g"), c.substance(), c.evidence()))
                .orElse(Phrase.of("; nothing bounds what it may hold"));
    }

    private static Phrase gap(RunTally tally) {
        return tally.closures().stream()
                .filter(c -> c.verdict() != Closure.Verdict.CLOSES && c.unaccountedPercent() > 0)
                .findFirst()
                .map(c -> Phrase.of(
                        "; {} ({}) of the run is not accounted for",
                        Figure.decimals(c.unaccountedGrams(), 2, "g"),
                        Figure.decimals(c.unaccountedPercent(), 1, "%")))
                .orElse(Phrase.NONE);
    }

    private static void emulsion(FindingList findings, RunTally tally) {
        boolean ragRecorded = tally.layers().stream().anyMatch(UnassayedRags::isRag);
        if (ragRecorded || tally.run().status() == Run.Status.PLANNED) {
            return;
        }
        for (Step step : tally.run().orderedSteps()) {
            if (step.funnel()
                    .emulsion()
                    .filter(e -> e == Step.Emulsion.PERSISTENT)
                    .isPresent()) {
                findings.add(
                        FindingCode.EMULSION_NOT_RECORDED,
                        Severity.HOLD,
                        step.row().at("Emulsion"),
                        Phrase.of("step {} left a lasting emulsion, but the run records no rag layer", step.number()),
                        Phrase.of("a row for the rag, or a note with which layer it was drained"),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Record where the emulsion went, or settle it by a row in Corrections (run, step and this code under"
                                        + " Record, 'settled' under New, and why); the layers of that step stay meanwhile."));
            }
        }
    }
}
