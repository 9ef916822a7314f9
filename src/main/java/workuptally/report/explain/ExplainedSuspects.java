package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.model.Place;
import workuptally.tally.balance.ReconciledBalance;
import workuptally.tally.suspects.RunSuspects;
import workuptally.tally.suspects.Suspect;

/** Why a cell is worth another look: what it would mend, and by how much. */
final class ExplainedSuspects {
    private static final int MOST_READINGS = 12;

    private final Numbers numbers;

    ExplainedSuspects(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunSuspects suspects) {
        List<Explanation> all = new ArrayList<>();
        suspects.list().forEach(s -> all.add(suspect(s)));
        if (!suspects.off().isEmpty() && suspects.list().isEmpty()) {
            all.add(new Draft(FigureKind.SUSPECTS, "Entries that disagree")
                    .note("Off: " + String.join(", ", suspects.off()) + ".")
                    .result("no usual slip of one cell explains all of it"));
        }
        if (!suspects.reconciled().values().isEmpty()) {
            all.add(reconciled(suspects.reconciled()));
        }
        return all;
    }

    private Explanation reconciled(ReconciledBalance balance) {
        Draft draft = new Draft(FigureKind.SUSPECTS, "Reconciled balance")
                .equation(
                        "least sum of (adjustment/u)², so that mass and each skeleton are conserved but for what can be lost")
                .headings("Reading", "Measured (its unit)", "Adjusted (same)", "u (same)", "Adjustment/its u (1)");
        balance.values().stream()
                .limit(MOST_READINGS)
                .forEach(v -> draft.row(
                        v.reading().name() + " (" + v.reading().unit() + ")",
                        numbers.plain(v.reading().value()),
                        numbers.plain(v.adjusted()),
                        numbers.plain(v.standardUncertainty()),
                        numbers.decimals(v.standardisedAdjustment(), 2)));
        return draft.note("The largest adjustment first, the first " + MOST_READINGS
                        + " readings; shown beside, never instead of, what was measured.")
                .result("chi-square " + numbers.decimals(balance.chiSquare(), 1) + " over " + balance.degreesOfFreedom()
                        + " balances");
    }

    private Explanation suspect(Suspect suspect) {
        Draft draft = new Draft(FigureKind.SUSPECTS, "Look at " + suspect.what())
                .note(Stream.concat(Stream.of(suspect.place()), suspect.together().stream())
                                .map(Place::inWords)
                                .collect(Collectors.joining(", "))
                        + (suspect.typed().isEmpty() ? ": blank." : ": read '" + suspect.typed() + "'."))
                .note((suspect.chiSquareBefore().isEmpty() ? "Waits for it: " : "Would be mended: ")
                        + String.join(", ", suspect.explains()) + ".");
        if (suspect.chiSquareBefore().isPresent() && suspect.chiSquareAfter().isPresent()) {
            draft.equation("chi-square = sum of ((residual - what is allowed) / u) squared, over "
                            + suspect.degreesOfFreedom() + " balances")
                    .equation("chi-square = "
                            + numbers.decimals(suspect.chiSquareBefore().getAsDouble(), 1) + " as typed, "
                            + numbers.decimals(suspect.chiSquareAfter().getAsDouble(), 1)
                            + " with the entry suggested");
        }
        draft.note("A suggestion where to look; nothing is changed until a person corrects it.");
        return draft.result(
                suspect.suggested().isEmpty()
                        ? suspect.slip().word()
                        : "'" + suspect.suggested() + "' (" + suspect.slip().word() + ")");
    }
}
