package workuptally.judgement.rules.containers;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import workuptally.judgement.containers.ProposalFit;
import workuptally.judgement.layers.Criterion;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Figure;
import workuptally.model.Phrase;
import workuptally.model.Transfer;

/** How findings name a proposal, and the decisions about the layers it names. */
final class ProposalWords {
    private ProposalWords() {}

    /** {@code T9: 1123 g of R26-050 A2 into W-AQB-05}. */
    static Phrase title(ProposalFit fit) {
        Transfer transfer = fit.addition().transfer();
        return Phrase.of(
                "{}: {} of {} into {}",
                transfer.id(),
                Figure.digits(fit.addition().totalGrams(), 4, "g"),
                fit.addition().source(),
                transfer.container());
    }

    /** The decisions about the layers of a transfer; layers nobody decides about, as distillates, have none. */
    static List<LayerDecision> decisions(Transfer transfer, Map<String, List<LayerDecision>> decisions) {
        return decisions.getOrDefault(transfer.run(), List.of()).stream()
                .filter(d -> transfer.layers().contains(d.layer()))
                .toList();
    }

    /** True where no rule has anything against a proposal: its stream is the container's, nothing meets, and its layers are weighed and settled. */
    static boolean isUnopposed(ProposalFit fit, Map<String, List<LayerDecision>> decisions) {
        return fit.streamFit() == ProposalFit.StreamFit.SAME
                && fit.clashes().isEmpty()
                && !fit.isOver()
                && fit.addition().unweighed().isEmpty()
                && decisions(fit.addition().transfer(), decisions).stream()
                        .allMatch(d -> d.outcome() == LayerDecision.Outcome.EVIDENCE_COMPLETE);
    }

    /** Decisions in which that condition is not met. */
    static Stream<LayerDecision> notMet(List<LayerDecision> decisions, Criterion condition) {
        return decisions.stream().filter(d -> isNotMet(d, condition));
    }

    static boolean isNotMet(LayerDecision decision, Criterion condition) {
        return decision.conditions().stream()
                .anyMatch(c -> c.criterion() == condition && c.state() == LayerDecision.State.NOT_MET);
    }
}
