package workuptally.judgement.layers;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.judgement.containers.ProposalFit.Clash;
import workuptally.judgement.containers.ProposalFit.StreamFit;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Figure;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Transfer;
import workuptally.tally.containers.ContainerTally.Age;

/** R10, asked for a proposed transfer: right stream, nothing that must not meet, room, within its days, contents known. */
final class ContainerFits implements LayerCondition {
    private static final List<State> WORST_FIRST = List.of(State.NOT_MET, State.MISSING, State.MET);

    @Override
    public Condition judge(LayerEvidence evidence) {
        if (!Proposals.isProposed(evidence)) {
            return new Condition(Criterion.CONTAINER_FITS, State.NOT_ASKED, Phrase.of("no transfer proposed"));
        }
        // a layer may be proposed for several containers: the one that fits least decides
        return evidence.containers().stream()
                .flatMap(container -> container.proposals().stream()
                        .filter(p -> isOf(p.addition().transfer(), evidence))
                        .map(fit -> judge(evidence, container, fit)))
                .min(Comparator.comparing(condition -> WORST_FIRST.indexOf(condition.state())))
                .orElseGet(() -> new Condition(
                        Criterion.CONTAINER_FITS, State.MISSING, Phrase.of("a container of the Containers table")));
    }

    private static boolean isOf(Transfer transfer, LayerEvidence evidence) {
        return transfer.run().equals(evidence.run().run().id())
                && transfer.layers().contains(evidence.layer().label());
    }

    private static Condition judge(LayerEvidence evidence, ContainerReview container, ProposalFit fit) {
        String id = container.id();
        if (fit.streamFit() == StreamFit.OTHER || fit.streamFit() == StreamFit.ASK_FIRST) {
            return notMet(Phrase.of("{} is for another stream than {}", id, fit.streamName()));
        }
        List<Clash> clashes = fit.clashes().stream().filter(Clash::isHazardous).toList();
        if (!clashes.isEmpty()) {
            return notMet(Phrase.of(
                    "{} would meet {} in {}",
                    clashes.get(0).incoming(),
                    clashes.get(0).present(),
                    id));
        }
        Optional<Age> age = container.tally().age();
        if (fit.isOver()) {
            return notMet(Phrase.of(
                    "{} would be {} full",
                    id,
                    Figure.decimals(fit.after().fillPercent().orElse(0), 1, "%")));
        }
        if (age.filter(Age::overdue).isPresent()) {
            return notMet(Phrase.of("{} is open for {} days", id, age.get().daysOpen()));
        }
        if (fit.streamFit() == StreamFit.UNKNOWN) {
            return missing(
                    fit.waitsForPhase()
                            ? Phrase.of("phase of the layer, on which its stream rests")
                            : Phrase.of("stream of {} or of the layer", id));
        }
        boolean daysLimited =
                evidence.book().limits().optional(Limit.CONTAINER_DAYS).isPresent();
        if (daysLimited && age.isEmpty()) {
            return missing(Phrase.of("day on which {} was opened, or As of in Limits", id));
        }
        if (fit.after().fillPercent().isEmpty()) {
            return missing(Phrase.of("capacity of {}", id));
        }
        return new Condition(
                Criterion.CONTAINER_FITS,
                State.MET,
                Phrase.of(
                        "{}, then {} full",
                        id,
                        Figure.decimals(fit.after().fillPercent().getAsDouble(), 1, "%")));
    }

    private static Condition notMet(Phrase evidence) {
        return new Condition(Criterion.CONTAINER_FITS, State.NOT_MET, evidence);
    }

    private static Condition missing(Phrase evidence) {
        return new Condition(Criterion.CONTAINER_FITS, State.MISSING, evidence);
    }
}
