package workuptally.judgement.rules.balance;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Notes;
import workuptally.model.Notes.Said;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.tally.RunTally;

/** Notes of an assay, a layer or a lot that speak against the figure beside them: what stands there is not what was measured, or not all. */
public final class NoteAgainstFigure implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.NOTE_AGAINST_FIGURE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        Run run = tally.run();
        FindingList findings = new FindingList(run.id());
        for (Assay assay : run.assays()) {
            boolean ofLayer =
                    assay.samples().stream().anyMatch(label -> run.layer(label).isPresent());
            Subject subject = ofLayer
                    ? Subject.ofRun(run.id()).withLayers(assay.samples())
                    : Subject.ofRun(run.id()).withLot(assay.sample());
            Phrase of = Phrase.of("the assay of {}", assay.sample());
            Place place = assay.row().at("Notes");
            if (assay.result().entered().isPresent()) {
                add(findings, assay.notes(), Said.DOUBTED, Severity.HOLD, subject, place, of);
                add(findings, assay.notes(), Said.DILUTED, Severity.CHECK, subject, place, of);
            }
        }
        for (Layer layer : run.layers()) {
            boolean lost =
                    layer.custody().status().filter(s -> s == Layer.Status.LOST).isPresent();
            if (!lost) {
                add(
                        findings,
                        layer.notes(),
                        Said.SPILLED,
                        Severity.HOLD,
                        Subject.ofRun(run.id()).withLayers(List.of(layer.label())),
                        layer.row().at("Notes"),
                        Phrase.of("layer {}", layer.label()));
            }
        }
        for (Lot lot : run.lots()) {
            Subject subject = Subject.ofRun(run.id()).withLot(lot.label());
            Phrase of = Phrase.of("lot {}", lot.label());
            add(
                    findings,
                    lot.notes(),
                    Said.NOT_DRY,
                    Severity.CHECK,
                    subject,
                    lot.row().at("Notes"),
                    of);
            add(
                    findings,
                    lot.notes(),
                    Said.SPILLED,
                    Severity.CHECK,
                    subject,
                    lot.row().at("Notes"),
                    of);
        }
        return findings.list();
    }

    private static void add(
            FindingList findings, Notes notes, Said said, Severity severity, Subject subject, Place place, Phrase of) {
        if (notes.say(said)) {
            findings.add(
                    FindingCode.NOTE_AGAINST_FIGURE,
                    severity,
                    subject,
                    place,
                    Phrase.of("the note of {} says '{}'; its figure counts as it stands", of, notes.text()),
                    Phrase.of("a figure that holds for the whole as it stands"),
                    FindingList.PRACTICE,
                    Phrase.of("Enter the figure that holds, or take the note back; a row in Corrections settles it."));
        }
    }
}
