package workuptally.model;

import java.util.ArrayList;
import java.util.List;

/**
 * One workbook, or one folder of CSV files with the same tables.
 *
 * @param name name for outputs: file name without ending, or the folder's name
 * @param files the files read, in name order
 * @param runs the runs in order of the Runs table
 * @param containers waste containers
 * @param transfers proposed or done transfers
 * @param vesselTares register of clean dry tares
 * @param history earlier results of series
 * @param corrections corrections of the record
 * @param earlier what layers held in earlier reviews, where some were given
 * @param limits thresholds and settings in force
 * @param leftAlone columns and sheets of the user's own, which were not read
 * @param findings what could not be understood or does not fit the form of the book, in order of place
 */
public record Book(
        String name,
        List<InputFile> files,
        List<Run> runs,
        List<Container> containers,
        List<Transfer> transfers,
        List<VesselTare> vesselTares,
        List<HistoryPoint> history,
        List<Correction> corrections,
        List<EarlierContent> earlier,
        Limits limits,
        List<String> leftAlone,
        List<Finding> findings) {
    /** Copies the lists. */
    public Book {
        files = List.copyOf(files);
        runs = List.copyOf(runs);
        containers = List.copyOf(containers);
        transfers = List.copyOf(transfers);
        vesselTares = List.copyOf(vesselTares);
        history = List.copyOf(history);
        corrections = List.copyOf(corrections);
        earlier = List.copyOf(earlier);
        leftAlone = List.copyOf(leftAlone);
        findings = List.copyOf(findings);
    }

    /** A book of which everything was read. */
    public Book(
            String name,
            List<InputFile> files,
            List<Run> runs,
            List<Container> containers,
            List<Transfer> transfers,
            List<VesselTare> vesselTares,
            List<HistoryPoint> history,
            List<Correction> corrections,
            Limits limits,
            List<Finding> findings) {
        this(
                name,
                files,
                runs,
                containers,
                transfers,
                vesselTares,
                history,
                corrections,
                List.of(),
                limits,
                List.of(),
                findings);
    }

    /** The same book with other settings. */
    public Book withLimits(Limits other) {
        return new Book(
                name,
                files,
                runs,
                containers,
                transfers,
                vesselTares,
                history,
                corrections,
                earlier,
                other,
                leftAlone,
                findings);
    }

    /**
     * The same book beside earlier reviews.
     *
     * @param contents what their layers held
     * @param more findings about their files
     */
    public Book withEarlier(List<EarlierContent> contents, List<Finding> more) {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(more);
        return new Book(
                name,
                files,
                runs,
                containers,
                transfers,
                vesselTares,
                history,
                corrections,
                contents,
                limits,
                leftAlone,
                all);
    }
}
