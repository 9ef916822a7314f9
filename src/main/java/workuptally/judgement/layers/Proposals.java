package workuptally.judgement.layers;

import workuptally.model.Transfer;

/** Whether a transfer of the layer is proposed. */
final class Proposals {
    private Proposals() {}

    static boolean isProposed(LayerEvidence evidence) {
        return evidence.transfers().stream()
                .filter(t -> t.status() == Transfer.Status.PROPOSED)
                .anyMatch(t -> t.layers().contains(evidence.layer().label()));
    }
}
