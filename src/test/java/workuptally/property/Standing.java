package workuptally.property;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;
import workuptally.tally.balance.Closure;

/**
 * Where a run stands: what may only get worse when its readings do.
 *
 * @param complete layers whose evidence is complete
 * @param kept layers for which there is a decision
 * @param closes partners whose balance closes
 * @param balances partners with a balance
 * @param fits transfers that fit their container, by id without the run's name
 * @param reasons why each layer stands as it does
 * @param holds codes of the stops and holds of the run, each with what it says
 */
record Standing(
        Set<String> complete,
        Set<String> kept,
        Set<String> closes,
        Set<String> balances,
        Set<String> fits,
        Map<String, String> reasons,
        Map<String, Set<String>> holds) {
    /**
     * Codes of a run that contradicts itself by its balance or its densities: each reading in it is a party, so that any may settle it by
     * going. Only that no transfer fits better is asked of such a run.
     */
    private static final Set<String> CONTRADICTIONS = Set.of("closure-over", "layers-swapped");

    static Map<String, Standing> of(Review review) {
        Map<String, Set<String>> fits = new LinkedHashMap<>();
        for (ContainerReview container : review.containers()) {
            for (ProposalFit proposal : container.proposals()) {
                String id = proposal.addition().transfer().id();
                if (fits(container, proposal)) {
                    fits.computeIfAbsent(proposal.addition().transfer().run(), k -> new LinkedHashSet<>())
                            .add(id.replaceFirst("~.*", ""));
                }
            }
        }
        Map<String, Standing> standings = new LinkedHashMap<>();
        for (RunReview run : review.runs()) {
            standings.put(run.id(), of(run, fits.getOrDefault(run.id(), Set.of())));
        }
        return standings;
    }

    private static boolean fits(ContainerReview container, ProposalFit proposal) {
        return proposal.fits()
                && !proposal.isOver()
                && proposal.streamFit() != ProposalFit.StreamFit.UNKNOWN
                && proposal.after().fillPercent().isPresent()
                && container.tally().age().filter(a -> a.overdue()).isEmpty();
    }

    private static Standing of(RunReview run, Set<String> fits) {
        Set<String> complete = new LinkedHashSet<>();
        Set<String> kept = new LinkedHashSet<>();
        Map<String, String> reasons = new LinkedHashMap<>();
        for (LayerDecision decision : run.decisions()) {
            kept.add(decision.layer());
            reasons.put(decision.layer(), Wording.POINT.of(decision.reason()));
            if (decision.outcome() == Outcome.EVIDENCE_COMPLETE) {
                complete.add(decision.layer());
            }
        }
        Set<String> closes = new LinkedHashSet<>();
        Set<String> balances = new LinkedHashSet<>();
        for (Closure closure : run.tally().closures()) {
            balances.add(closure.skeleton());
            if (closure.verdict() == Closure.Verdict.CLOSES) {
                closes.add(closure.skeleton());
            }
        }
        Map<String, Set<String>> holds = new LinkedHashMap<>();
        for (Finding finding : run.findings()) {
            if (finding.severity() == Severity.STOP || finding.severity() == Severity.HOLD) {
                holds.computeIfAbsent(finding.code().word(), k -> new LinkedHashSet<>())
                        .add(Wording.POINT.of(finding.seen()).replaceAll("~\\d+", ""));
            }
        }
        return new Standing(complete, kept, closes, balances, fits, reasons, holds);
    }

    /** True where its readings contradict each other, which is reported. */
    private boolean contradictsItself() {
        return CONTRADICTIONS.stream().anyMatch(holds::containsKey);
    }

    /** In what this run stands better than another one of the same steps, in words. */
    List<String> betterThan(Standing other, boolean coarser) {
        List<String> better = new ArrayList<>();
        fits.stream().filter(t -> !other.fits.contains(t)).forEach(t -> better.add("fits: " + t));
        if (other.contradictsItself()) {
            return better;
        }
        complete.stream()
                .filter(l -> !other.complete.contains(l))
                .forEach(l -> better.add("complete: " + l + " (" + reasons.get(l) + ") was "
                        + other.reasons.getOrDefault(l, "not judged")));
        closes.stream().filter(c -> !coarser && !other.closes.contains(c)).forEach(c -> better.add("closes: " + c));
        Set<String> said = new LinkedHashSet<>();
        other.holds.values().forEach(said::addAll);
        boolean saysMore = holds.values().stream().anyMatch(h -> !said.containsAll(h));
        for (String code : other.holds.keySet()) {
            if (!holds.containsKey(code) && !saysMore) {
                better.add("gone: " + code);
            }
        }
        return better;
    }
}
