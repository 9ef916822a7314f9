package workuptally.judgement;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.hazards.MixtureStatements;
import workuptally.tally.RunTally;
import workuptally.tally.layers.Present;

/** What the label of a drying cake takes for granted, which nobody has measured. */
final class DissolvedOnCake {
    private DissolvedOnCake() {}

    /** The assumption; empty where no run has a drying cake. */
    static Optional<BasisRow> row(List<RunTally> runs) {
        boolean dried = runs.stream()
                .flatMap(run -> run.evidence().meetings().contents().values().stream())
                .anyMatch(held -> held.stream().anyMatch(Present::isDryingAgent));
        return dried
                ? Optional.of(new BasisRow(
                        BasisRow.Kind.ASSUMPTION,
                        "Dissolved matter on a drying cake",
                        String.valueOf(MixtureStatements.MOST_DISSOLVED_ON_CAKE_PERCENT),
                        "mass % at most",
                        "common practice: a cake holds about its own mass of solution, of which rarely more than 15 % is dissolved; used for"
                                + " the hazard words of its label"))
                : Optional.empty();
    }
}
