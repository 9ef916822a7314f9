package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.model.Finding;
import workuptally.model.Place;
import workuptally.model.RowPlace;

/** The rows of the book that tell of each container: its own, and those of the transfers into it. */
final class RowsAboutContainers {
    private final Review review;
    private final Map<Row, String> containers = new HashMap<>();

    RowsAboutContainers(Review review) {
        this.review = review;
        for (ContainerReview container : review.containers()) {
            add(container.tally().container().row(), container.id());
            container.tally().done().forEach(a -> add(a.transfer().row(), container.id()));
            container.tally().proposed().forEach(a -> add(a.transfer().row(), container.id()));
        }
    }

    private void add(RowPlace row, String container) {
        containers.putIfAbsent(Row.of(row.at("Container")), container);
    }

    /** The container with whose block a finding is shown; empty for one about something else. */
    Optional<String> owner(Finding finding) {
        return finding.run().isEmpty()
                ? Optional.ofNullable(containers.get(Row.of(finding.place())))
                : Optional.empty();
    }

    /** The findings to show with each container that has any. */
    Map<String, List<Finding>> findings() {
        Map<String, List<Finding>> findings = new LinkedHashMap<>();
        for (Finding finding : review.findings()) {
            owner(finding)
                    .ifPresent(id ->
                            findings.computeIfAbsent(id, c -> new ArrayList<>()).add(finding));
        }
        return findings;
    }

    private record Row(String file, String sheet, int row) {
        static Row of(Place place) {
            return new Row(place.file(), place.sheet(), place.row());
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Row that && row == that.row && sheet.equals(that.sheet) && file.equals(that.file);
        }

        /** Of the number alone; see the contributor guide on records as keys. */
        @Override
        public int hashCode() {
            return row;
        }
    }
}
