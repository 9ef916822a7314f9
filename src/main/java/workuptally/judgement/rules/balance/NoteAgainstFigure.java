package workuptally.judgement.rules.balance;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
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
import workuptally.model.Step;
import workuptally.model.Subject;
import workuptally.tally.RunTally;
import workuptally.tally.layers.LayerTally;

/**
 * Notes that speak against the figure beside them: what stands there is not what was measured, or not all. Those of an assay or a layer hold
 * it; those of a step or a run hold layers only where these may have been taken for each other.
 */
public final class NoteAgainstFigure implements RunRule {
    private static final Map<Said, Severity> OF_ASSAY = severities(
            Map.of(Said.DOUBTED, Severity.HOLD, Said.NOT_UNIFORM, Severity.HOLD, Said.MIXED_UP, Severity.HOLD),
            Said.DILUTED);

    private static final Map<Said, Severity> OF_LAYER =
            Map.of(Said.SPILLED, Severity.HOLD, Said.DISCARDED, Severity.HOLD, Said.MIXED_UP, Severity.HOLD);

    private static final Map<Said, Severity> OF_LOT =
            severities(Map.of(), Said.NOT_DRY, Said.SPILLED, Said.DISCARDED, Said.MIXED_UP, Said.NOT_ALONE);

    private static final Map<Said, Severity> OF_WORK =
            severities(Map.of(Said.MIXED_UP, Severity.HOLD), Said.SPILLED, Said.DISCARDED);

    /** Steps after which what kept the layer back is thrown away as a matter of course. */
    private static final Set<Step.Operation> LEAVES_A_CAKE = Set.of(Step.Operation.DRY, Step.Operation.FILTER);

    /** Portions of which a sample shows no more than a part where they are not one liquid. */
    private static final Set<Layer.Phase> ONE_LIQUID =
            Set.of(Layer.Phase.ORGANIC, Layer.Phase.AQUEOUS, Layer.Phase.MOTHER_LIQUOR);

    private static Map<Said, Severity> severities(Map<Said, Severity> holds, Said... checks) {
        Map<Said, Severity> all = new LinkedHashMap<>(holds);
        List.of(checks).forEach(said -> all.put(said, Severity.CHECK));
        return Collections.unmodifiableMap(all);
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.NOTE_AGAINST_FIGURE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        Run run = tally.run();
        FindingList findings = new FindingList(run.id());
        run.assays().forEach(assay -> ofAssay(findings, run, assay));
        tally.layers().forEach(layer -> ofLayer(findings, run, layer));
        for (Lot lot : run.lots()) {
            add(
                    findings,
                    lot.notes(),
                    OF_LOT,
                    Subject.ofRun(run.id()).withLot(lot.label()),
                    lot.row().at("Notes"),
                    Phrase.of("lot {}", lot.label()));
        }
        run.orderedSteps().forEach(step -> ofStep(findings, run, step));
        add(
                findings,
                run.head().notes(),
                OF_WORK,
                Subject.ofRun(run.id()).withLayers(named(run)),
                run.head().row().at("Notes"),
                Phrase.of("the run"));
        return findings.list();
    }

    private static void ofAssay(FindingList findings, Run run, Assay assay) {
        boolean ofLayer =
                assay.samples().stream().anyMatch(label -> run.layer(label).isPresent());
        if (assay.result().entered().isPresent()) {
            add(
                    findings,
                    assay.notes(),
                    OF_ASSAY,
                    ofLayer
                            ? Subject.ofRun(run.id()).withLayers(assay.samples())
                            : Subject.ofRun(run.id()).withLot(assay.sample()),
                    assay.row().at("Notes"),
                    Phrase.of("the assay of {}", assay.sample()));
        }
    }

    /** What is told of a layer that is lost is told; what a later step took whole was shaken again and needs be no single liquid. */
    private static void ofLayer(FindingList findings, Run run, LayerTally tally) {
        Optional<Layer> layer = tally.entry().filter(l -> !tally.isLost());
        if (layer.isEmpty()) {
            return;
        }
        Map<Said, Severity> against = new LinkedHashMap<>(OF_LAYER);
        if (tally.terminal() && tally.phase().map(ONE_LIQUID::contains).orElse(true)) {
            against.put(Said.NOT_UNIFORM, Severity.HOLD);
        }
        add(
                findings,
                layer.get().notes(),
                against,
                Subject.ofRun(run.id()).withLayers(List.of(tally.label())),
                layer.get().row().at("Notes"),
                Phrase.of("layer {}", tally.label()));
    }

    private static void ofStep(FindingList findings, Run run, Step step) {
        Map<Said, Severity> against = new LinkedHashMap<>(OF_WORK);
        if (step.operation().filter(LEAVES_A_CAKE::contains).isPresent()) {
            against.remove(Said.DISCARDED);
        }
        add(
                findings,
                step.notes(),
                against,
                Subject.ofRun(run.id())
                        .withLayers(step.gives().stream()
                                .filter(label -> run.layer(label).isPresent())
                                .toList()),
                step.row().at("Notes"),
                Phrase.of("step {}", step.number()));
    }

    /** The layers that the note of a run names; all of them where it names none. */
    private static List<String> named(Run run) {
        List<String> labels = run.layers().stream().map(Layer::label).toList();
        List<String> named = labels.stream()
                .filter(label -> Pattern.compile("(?<![\\p{L}\\d])" + Pattern.quote(label) + "(?![\\p{L}\\d])")
                        .matcher(run.head().notes().text())
                        .find())
                .toList();
        return named.isEmpty() ? labels : named;
    }

    /** One finding of a note, as grave as the gravest of what it says. */
    private static void add(
            FindingList findings, Notes notes, Map<Said, Severity> against, Subject subject, Place place, Phrase of) {
        notes.says().stream()
                .flatMap(said -> Optional.ofNullable(against.get(said)).stream())
                .min(Severity::compareTo)
                .ifPresent(
                        severity -> findings.add(
                                FindingCode.NOTE_AGAINST_FIGURE,
                                severity,
                                subject,
                                place,
                                Phrase.of("the note of {} says '{}'; its figure counts as it stands", of, notes.text()),
                                Phrase.of("a figure that holds for the whole as it stands"),
                                FindingList.PRACTICE,
                                Phrase.of(
                                        "Enter the figure that holds, or take the note back; a row in Corrections settles it.")));
    }
}
