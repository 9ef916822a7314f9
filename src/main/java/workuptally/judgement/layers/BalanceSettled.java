package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Figure;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.Closure.Verdict;
import workuptally.tally.balance.Purification;
import workuptally.tally.layers.GraphFault;
import workuptally.tally.layers.LayerTally;

/**
 * R6: what the run's balances lack is not in this layer. Met by a layer's own assay or true non-detect of a product that the balance counts,
 * or where what is unaccounted for is small at its upper 95 % bound. No decision rests on the word "closes": coarser readings close more.
 *
 * <p>Own evidence does not suffice while a rag was not assayed, a portion that a step gave or a step that gave a portion was not recorded,
 * where a balance is over, a purification gave more than went into it, or where more is missing, at its lower 95 % bound, than all places
 * together can hold and the run limit: then a portion was not recorded or something that was measured is wrong, or it is in a portion or by-product that an assay must show first. A
 * conversion that was entered accounts for what never formed. Where the balance cannot be decided, for want of an assay or because it is too coarse, its best estimate counts instead:
 * knowing less never lets a layer pass. The small rest must leave room for U, by which a balance may read too
 * high unnoticed, so that an assay that is taken away never lets its layer pass.
 */
final class BalanceSettled implements LayerCondition {

    @Override
    public Condition judge(LayerEvidence evidence) {
        Optional<Purification> gaining = gaining(evidence);
        if (gaining.isPresent()) {
            return new Condition(
                    Criterion.BALANCE,
                    State.NOT_MET,
                    Phrase.of(
                            "{} of {} came of {}, which held {} at most: one of the readings is wrong",
                            Figure.digits(
                                    gaining.get().assayedGrams().orElseThrow().value(), 4, "g"),
                            gaining.get().product(),
                            String.join(", ", gaining.get().sources()),
                            Figure.digits(gaining.get().inGrams().value(), 4, "g")));
        }
        if (!evidence.layer().endsWorkup()) {
            return ofLiquor(evidence);
        }
        List<String> open = unsettledPortions(evidence);
        if (!open.isEmpty()) {
            return new Condition(
                    Criterion.BALANCE,
                    State.NOT_MET,
                    Phrase.of("{} not assayed or not recorded", String.join(", ", open)));
        }
        List<Closure> closures = evidence.run().closures();
        if (closures.isEmpty()) {
            return new Condition(Criterion.BALANCE, State.MISSING, Phrase.of("no closure could be computed"));
        }
        for (Closure closure : closures) {
            if (closure.verdict() == Verdict.OVER) {
                return new Condition(Criterion.BALANCE, State.NOT_MET, words(closure));
            }
        }
        return ofClosures(evidence, closures);
    }

    private static Condition ofLiquor(LayerEvidence evidence) {
        return lacking(evidence)
                .map(purification -> new Condition(
                        Criterion.BALANCE,
                        State.NOT_MET,
                        Phrase.of(
                                "the purification of {} lacks at least {}: look for a portion without a row, then for a wrong reading",
                                String.join(", ", purification.sources()),
                                Figure.decimals(purification.missingAtLeastPercent(), 0, "%"))))
                .orElseGet(() -> new Condition(
                        Criterion.BALANCE,
                        State.NOT_ASKED,
                        Phrase.of("a liquor belongs to the purification's balance")));
    }

    private static Condition ofClosures(LayerEvidence evidence, List<Closure> closures) {
        double limit = evidence.book().limits().value(Limit.RUN_LIMIT);
        List<Phrase> elsewhere = new ArrayList<>();
        for (Closure closure : closures) {
            double places = closure.candidatesAtMostPercent() + limit;
            if (closure.unaccountedAtLeastPercent() > places) {
                return new Condition(Criterion.BALANCE, State.NOT_MET, tooMuchMissing(closure));
            }
            if (!isResolved(evidence, closure) && closure.seemsToLackPercent() > places) {
                return new Condition(
                        Criterion.BALANCE,
                        State.NOT_MET,
                        Phrase.of(
                                "{}: it may well lack {}, more than every place named can hold{}",
                                words(closure),
                                Figure.decimals(closure.seemsToLackPercent(), 1, "%"),
                                first(closure)));
            }
            if (!hasOwnAssay(evidence, closure)) {
                if (!isSmall(closure, limit) && !isAskedForByItsName(evidence, closure)) {
                    return new Condition(
                            Criterion.BALANCE,
                            State.NOT_MET,
                            Phrase.of(
                                    "{}, and this layer has no assay of its own{}",
                                    words(closure),
                                    forWhat(evidence, closure)));
                }
            } else if (closure.verdict() != Verdict.CLOSES) {
                elsewhere.add(words(closure));
            }
        }
        if (!elsewhere.isEmpty()) {
            return new Condition(
                    Criterion.BALANCE,
                    State.MET,
                    Phrase.of("{}, but this layer has its own assay", Phrase.join("; ", elsewhere)));
        }
        return new Condition(Criterion.BALANCE, State.MET, words(closures.get(0)));
    }

    /**
     * A purification in which assays found more than there was: of a liquor its own, of a layer that of a lot that stands in its balance,
     * since what was purified may have been read wrong.
     */
    private static Optional<Purification> gaining(LayerEvidence evidence) {
        List<String> ends = evidence.run().lots().stream()
                .filter(LotTally::endsWorkup)
                .map(l -> l.lot().label())
                .toList();
        if (ends.size() == evidence.run().lots().size()) {
            return Optional.empty();
        }
        double factor = evidence.book().limits().value(Limit.COVERAGE_FACTOR);
        boolean ofWorkup = evidence.layer().endsWorkup();
        return evidence.run().purifications().stream()
                .filter(p -> p.gainsByAssay(factor))
                .filter(p -> ofWorkup
                        ? p.sources().stream().anyMatch(ends::contains)
                        : p.holds(evidence.layer().label()))
                .findFirst();
    }

    /** The purification of a liquor that lacks more than is usually lost and than what nobody assayed can hold. */
    private static Optional<Purification> lacking(LayerEvidence evidence) {
        Set<String> told = evidence.findings().stream()
                .filter(f -> f.code() == FindingCode.PURIFICATION_OPEN)
                .map(f -> f.subject().lot())
                .collect(Collectors.toSet());
        return told.isEmpty()
                ? Optional.empty()
                : evidence.run().purifications().stream()
                        .filter(p -> p.holds(evidence.layer().label()))
                        .filter(p -> p.withoutPlaceAtLeastPercent() > 0)
                        .filter(p -> p.sources().stream().anyMatch(told::contains))
                        .findFirst();
    }

    /** True where the part that a balance lacks, at its upper 95 % bound and with room for U, is within a limit in %. */
    static boolean isSmall(Closure closure, double limitPercent) {
        return closure.unaccountedAtMostPercent() + closure.expandedUncertaintyPercent() <= limitPercent;
    }

    /** True where the verdict rests on evidence that is there and on a U within the resolution that closing needs. */
    private static boolean isResolved(LayerEvidence evidence, Closure closure) {
        return closure.verdict() != Verdict.CANNOT_DECIDE
                && closure.expandedUncertaintyPercent()
                        <= evidence.book().limits().value(Limit.CLOSURE_RESOLUTION);
    }

    private static Phrase tooMuchMissing(Closure closure) {
        Phrase lacks = Phrase.of(
                "balance on {} lacks at least {}",
                closure.skeleton(),
                Figure.decimals(closure.unaccountedAtLeastPercent(), 1, "%"));
        return Phrase.of(
                "{}{}",
                lacks,
                first(closure).equals(Phrase.NONE)
                        ? Phrase.of(
                                ", more than every place named can hold: look for a portion without a row, then for a wrong reading")
                        : first(closure));
    }

    /** What to assay first, so that the balance can tell. */
    private static Phrase first(Closure closure) {
        String unassayed = closure.candidates().stream()
                .filter(Closure.Candidate::withoutAssay)
                .map(Closure.Candidate::settledBy)
                .distinct()
                .collect(Collectors.joining("; "));
        return unassayed.isEmpty() ? Phrase.NONE : Phrase.of("; first {}", unassayed);
    }

    /** True where the layer was assayed for a wanted product, so that R8 asks for each other one that this balance counts. */
    private static boolean isAskedForByItsName(LayerEvidence evidence, Closure closure) {
        List<Content> wanted = evidence.wanted();
        return wanted.stream().anyMatch(Content::isOwnEvidence)
                && wanted.stream()
                        .anyMatch(c -> c.kind() == Content.Kind.UNKNOWN
                                && c.isBoundedByConservation()
                                && closure.counts(c.substance()));
    }

    /** An assay or true non-detect of a wanted product that this balance counts. */
    private static boolean hasOwnAssay(LayerEvidence evidence, Closure closure) {
        return evidence.wanted().stream()
                .filter(c -> c.isOwnEvidence()
                        || c.rests() == Content.Rests.EXPERIENCE
                        || c.rests() == Content.Rests.PREDICTION
                        || c.rests() == Content.Rests.PARENT && c.massGrams().isPresent())
                .anyMatch(c -> closure.counts(c.substance()));
    }

    private static Phrase forWhat(LayerEvidence evidence, Closure closure) {
        boolean several =
                evidence.run().run().products().stream().filter(Product::wanted).count() > 1;
        return several ? Phrase.of(" for {}", closure.unaccountedAs()) : Phrase.NONE;
    }

    private static List<String> unsettledPortions(LayerEvidence evidence) {
        List<String> labels = new ArrayList<>();
        for (LayerTally layer : evidence.run().layers()) {
            if (!layer.terminal() || !layer.endsWorkup()) {
                continue;
            }
            boolean rag = layer.phase().filter(p -> p == Layer.Phase.RAG).isPresent();
            boolean measured =
                    LayerEvidence.wanted(layer, evidence.run()).stream().anyMatch(Content::isOwnEvidence);
            if (rag && !measured) {
                labels.add("rag " + layer.label());
            } else if (!measured && lacksItsPhase(layer, evidence.run())) {
                labels.add(layer.label() + " (phase not recorded)");
            }
        }
        labels.addAll(evidence.run().evidence().gaps().missingLayers());
        labels.addAll(fromNowhere(evidence.run()));
        return labels;
    }

    /** A row without a phase beside others with one may be a rag, whatever the step says that gave it. */
    private static boolean lacksItsPhase(LayerTally layer, RunTally run) {
        return layer.entry().filter(entry -> entry.phase().isEmpty()).isPresent()
                && run.run().layers().stream().anyMatch(other -> other.phase().isPresent());
    }

    /** What a step takes and nothing gives: what came of the step before it, or by its side, is not known. */
    private static List<String> fromNowhere(RunTally run) {
        return run.evidence().gaps().graphFaults().stream()
                .filter(f -> f.kind() == GraphFault.Kind.UNKNOWN_SOURCE)
                .map(GraphFault::label)
                .filter(label ->
                        run.run().steps().stream().anyMatch(s -> s.from().contains(label)))
                .distinct()
                .map(label -> "the step that gives " + label)
                .toList();
    }

    private static Phrase words(Closure closure) {
        return Phrase.of(
                "closure on {} {} {}",
                closure.skeleton(),
                Figure.pair(closure.percent().value(), closure.expandedUncertaintyPercent(), 1, "%"),
                closure.verdict().word());
    }
}
