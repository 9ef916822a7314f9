package workuptally.report.view.firstpage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.model.Severity;
import workuptally.report.view.wording.RunNames;

/**
 * Ranked actions on so many lines. A stop, and what concerns no run, keeps its line; holds that find no room share one that names their
 * runs. Where there are more stops than lines, the last of them share a line that names each with its run.
 */
final class FewActions {
    /** Names of runs on hold: the one line that may take a second. */
    private static final int MOST_OF_HOLDS = 150;

    private final List<String> order;

    /**
     * For a book.
     *
     * @param order ids of its runs
     */
    FewActions(List<String> order) {
        this.order = order;
    }

    /**
     * The lines.
     *
     * @param most how many, at least 3
     */
    List<UrgentAction> of(List<RankedAction> ranked, int most) {
        if (ranked.size() <= most) {
            return ranked.stream().map(RankedAction::action).toList();
        }
        List<RankedAction> stops =
                ranked.stream().filter(FewActions::keepsItsLine).toList();
        List<RankedAction> others =
                ranked.stream().filter(r -> !keepsItsLine(r)).toList();
        int lines = others.isEmpty() ? most : most - 1;
        int whole = stops.size() <= lines ? stops.size() : lines - 1;
        int holds = Math.max(0, most - 1 - stops.size());
        List<RankedAction> shown = ranked.stream()
                .filter(r -> keepsItsLine(r) ? stops.indexOf(r) < whole : others.indexOf(r) < holds)
                .toList();
        List<UrgentAction> few =
                new ArrayList<>(shown.stream().map(RankedAction::action).toList());
        if (whole < stops.size()) {
            few.add(stopsTogether(stops.subList(whole, stops.size())));
        }
        if (holds < others.size()) {
            few.add(holdsTogether(others.subList(holds, others.size())));
        }
        return few;
    }

    private static boolean keepsItsLine(RankedAction ranked) {
        return ranked.action().severity() == Severity.STOP
                || ranked.action().runs().isEmpty();
    }

    private UrgentAction stopsTogether(List<RankedAction> rest) {
        String text = rest.stream()
                .map(r -> (r.action().runs().isEmpty()
                                ? r.action().where()
                                : RunNames.listed(r.action().runs())) + ": " + r.shortly())
                .collect(Collectors.joining("; ", "Settle these too: ", ""));
        return together(rest, text);
    }

    private UrgentAction holdsTogether(List<RankedAction> rest) {
        String worth = rest.stream()
                .map(RankedAction::worthIt)
                .filter(won -> !won.isEmpty())
                .findFirst()
                .orElse("");
        String runs = RunNames.listed(runs(rest), MOST_OF_HOLDS - worth.length());
        return together(
                rest,
                worth.isEmpty()
                        ? "Keep the layers; settle what is open: " + runs
                        : "Keep the layers of " + runs + "; " + worth);
    }

    /** The runs in order of the book. */
    private List<String> runs(List<RankedAction> rest) {
        Set<String> runs =
                rest.stream().flatMap(r -> r.action().runs().stream()).collect(Collectors.toSet());
        return order.stream().filter(runs::contains).toList();
    }

    /** What is at stake in a run stands in several of the lines that are left out: the most of them counts. */
    private UrgentAction together(List<RankedAction> rest, String text) {
        Map<String, Double> byRun = new LinkedHashMap<>();
        rest.forEach(r -> r.gramsByRun().forEach((run, grams) -> byRun.merge(run, grams, Math::max)));
        double grams = byRun.values().stream().mapToDouble(Double::doubleValue).sum();
        List<String> runs = runs(rest);
        return new UrgentAction(
                rest.get(0).action().severity(),
                runs.size() == 1 ? runs.get(0) : runs.isEmpty() ? "the book" : runs.size() + " runs",
                runs,
                text,
                grams > 0 ? OptionalDouble.of(grams) : OptionalDouble.empty());
    }
}
