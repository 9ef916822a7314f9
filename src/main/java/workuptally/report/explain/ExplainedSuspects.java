package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.model.Place;
import workuptally.tally.suspects.RunSuspects;
import workuptally.tally.suspects.Suspect;

/** Why a cell is worth another look: what it would mend, and by how much. */
final class ExplainedSuspects {
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
        return all;
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
