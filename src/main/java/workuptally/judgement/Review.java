package workuptally.judgement;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.measurements.WeekTest;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Run;
import workuptally.tally.series.SeriesTally;

/**
 * The whole review of one book: what every report is made from.
 *
 * @param book the entries
 * @param runs runs in order of the book
 * @param period totals over the book
 * @param findings all findings, the most urgent first, then in order of the book
 * @param basis limits, reference values and equations in force
 * @param toolVersion version of the tool
 * @param containers waste containers with what is proposed for them
 * @param series repeated preparations
 * @param registryNumbers registry numbers (CAS) of what the accounts name, by the name as they write it, where the tables know it
 * @param nextTests the few tests that tell most about all runs together, in the order in which to make them
 */
public record Review(
        Book book,
        List<RunReview> runs,
        PeriodTotals period,
        List<Finding> findings,
        List<BasisRow> basis,
        String toolVersion,
        List<ContainerReview> containers,
        List<SeriesTally> series,
        Map<String, String> registryNumbers,
        List<WeekTest> nextTests) {
    /** Copies the lists. */
    public Review {
        runs = List.copyOf(runs);
        findings = List.copyOf(findings);
        basis = List.copyOf(basis);
        containers = List.copyOf(containers);
        series = List.copyOf(series);
        nextTests = List.copyOf(nextTests);
        registryNumbers = Collections.unmodifiableMap(new LinkedHashMap<>(registryNumbers));
    }

    /** Whether any run that was made tells a step or a layer: where none does, nobody can say what became of product or solvent. */
    public boolean recordsWorkup() {
        return runs.stream()
                .map(RunReview::tally)
                .anyMatch(t -> t.run().status() != Run.Status.PLANNED
                        && (t.run().recordsWorkup() || !t.layers().isEmpty()));
    }

    /** A review without containers and series. */
    public Review(
            Book book,
            List<RunReview> runs,
            PeriodTotals period,
            List<Finding> findings,
            List<BasisRow> basis,
            String toolVersion) {
        this(book, runs, period, findings, basis, toolVersion, List.of(), List.of(), Map.of(), List.of());
    }
}
