package workuptally.judgement.layers;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Finding;
import workuptally.model.LeftOutRow;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.layers.Meeting;

/**
 * R7: no open stop on the run, no open hold on a quench or an emulsion that the layer went through, no row of the run left out, no unread entry
 * about the layer, and
 * nothing in it that must not have met; until it is settled the layer may be the evidence. A named person's dated row in Corrections settles
 * what was seen at the bench.
 */
final class NoOpenStop implements LayerCondition {

    @Override
    public Condition judge(LayerEvidence evidence) {
        List<Finding> open = evidence.findings().stream()
                .filter(f -> !evidence.settled().settles(f))
                .filter(f -> f.severity() == Severity.STOP
                        || (f.severity() == Severity.HOLD && SettledByHand.isOfTheBench(f) && wentThrough(evidence, f)))
                .toList();
        Optional<Meeting> met = evidence
                .run()
                .evidence()
                .meetings()
                .carriedBy(evidence.layer().label())
                .stream()
                .filter(Meeting::holdsItsPortions)
                .findFirst();
        if (met.isPresent()) {
            return new Condition(
                    Criterion.NO_OPEN_STOP,
                    State.NOT_MET,
                    Phrase.of(
                            "{} in step {}: {}",
                            String.join(" met ", met.get().with()),
                            met.get().place(),
                            met.get().consequence()));
        }
        if (open.isEmpty()) {
            List<String> unread =
                    UnreadEntries.of(evidence.run().run(), evidence.layer().label(), evidence.findings());
            List<LeftOutRow> leftOut = evidence.run().run().leftOut();
            if (!leftOut.isEmpty()) {
                return new Condition(
                        Criterion.NO_OPEN_STOP,
                        State.NOT_MET,
                        Phrase.of(
                                "row left out: {}",
                                leftOut.stream().map(LeftOutRow::inWords).collect(Collectors.joining(", "))));
            }
            List<Limit> limits = evidence.book().limits().unread();
            if (unread.isEmpty() && !limits.isEmpty()) {
                return new Condition(
                        Criterion.NO_OPEN_STOP,
                        State.NOT_MET,
                        Phrase.of(
                                "not read: {} in Limits",
                                limits.stream().map(Limit::title).collect(Collectors.joining(", "))));
            }
            return unread.isEmpty()
                    ? new Condition(Criterion.NO_OPEN_STOP, State.MET, Phrase.of("no stop on record"))
                    : new Condition(
                            Criterion.NO_OPEN_STOP,
                            State.NOT_MET,
                            Phrase.of("not read: {}", String.join(", ", unread)));
        }
        List<String> about = open.stream().map(NoOpenStop::inWords).distinct().toList();
        return new Condition(
                Criterion.NO_OPEN_STOP, State.NOT_MET, Phrase.of("still open: {}", String.join(", ", about)));
    }

    /** The stable word of a finding as a reader would say it, without the number of a catalogue behind it. */
    private static String inWords(Finding finding) {
        return finding.code().inWords();
    }

    /** True unless the finding is about a step of which the layer is no outcome: given before it, or beside it. */
    private static boolean wentThrough(LayerEvidence evidence, Finding finding) {
        List<Step> steps = evidence.run().run().orderedSteps();
        Optional<Step> where = steps.stream()
                .filter(s -> s.number().equals(finding.subject().step()))
                .findFirst();
        if (where.isEmpty()) {
            List<String> layers = finding.subject().layers();
            return layers.isEmpty() || layers.contains(evidence.layer().label());
        }
        Set<String> outcomes = new LinkedHashSet<>(where.get().gives());
        if (outcomes.isEmpty()) {
            outcomes.addAll(where.get().from());
        }
        boolean isAfter = false;
        for (Step step : steps) {
            boolean later = isAfter;
            isAfter = isAfter || step == where.get();
            if (later && step.from().stream().anyMatch(outcomes::contains)) {
                outcomes.addAll(step.gives());
            }
        }
        return outcomes.contains(evidence.layer().label());
    }
}
