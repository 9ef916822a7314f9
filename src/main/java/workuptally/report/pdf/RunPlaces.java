package workuptally.report.pdf;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.judgement.RunReview;
import workuptally.report.pdf.layout.TableCell;

/** Names of the places where the blocks of the runs begin; run ids are free text, so a place goes by number. */
final class RunPlaces {
    private final Map<String, String> byRun = new HashMap<>();

    RunPlaces(List<RunReview> runs) {
        int number = 0;
        for (RunReview run : runs) {
            number++;
            byRun.putIfAbsent(run.id(), "run-" + number);
        }
    }

    /** The place of a run's block; empty for a run that has none. */
    Optional<String> of(String run) {
        return Optional.ofNullable(byRun.get(run));
    }

    /** A cell with the id of a run that leads to its block, where it has one. */
    TableCell link(String run) {
        return of(run).map(place -> TableCell.link(run, place)).orElseGet(() -> TableCell.bold(run));
    }
}
