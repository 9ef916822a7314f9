package workuptally.cli;

import java.nio.file.Path;
import java.util.List;

/**
 * Files that were placed.
 *
 * @param files what was written, in the order in which a reader wants it; the manifest is not among them
 * @param keptAside where files of those names stand now that the program had not written, or that were changed since
 */
record Placed(List<Path> files, List<Path> keptAside) {
    /** Copies the lists. */
    Placed {
        files = List.copyOf(files);
        keptAside = List.copyOf(keptAside);
    }

    /** What is to be said about each file that was kept aside. */
    List<String> keptAsideInWords() {
        return keptAside.stream()
                .map(
                        file -> Failure.printable(
                                "Kept aside as " + file
                                        + ": a file stood where a report was to go that this program had not written, or that was changed since."))
                .toList();
    }
}
