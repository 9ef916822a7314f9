package workuptally.judgement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Place;
import workuptally.model.RowPlace;
import workuptally.model.Run;
import workuptally.model.Subject;

/** Names what findings are about by the rows they stand in, where their rules have not said so themselves. */
final class SubjectsOfBook {
    private final Map<String, Run> runs = new HashMap<>();
    private final Map<Row, Subject> ofNoRun = new HashMap<>();

    SubjectsOfBook(Book book) {
        book.runs().forEach(run -> runs.putIfAbsent(run.id(), run));
        book.containers().forEach(c -> put(ofNoRun, c.row(), Subject.NONE.withContainer(c.id())));
        book.transfers().forEach(t -> put(ofNoRun, t.row(), Subject.NONE.withTransfer(t.id(), t.container())));
    }

    /** The same findings in the same order, each with what it is about. */
    List<Finding> named(List<Finding> findings) {
        Map<String, Map<Row, Subject>> rows = new HashMap<>();
        List<Finding> named = new ArrayList<>(findings.size());
        for (Finding finding : findings) {
            named.add(
                    finding.subject().isNamed()
                            ? finding
                            : named(finding, rows.computeIfAbsent(finding.run(), this::rowsOf)));
        }
        return named;
    }

    private static Finding named(Finding finding, Map<Row, Subject> rows) {
        Subject subject = rows.get(Row.of(finding.place()));
        return subject == null ? finding : finding.about(subject);
    }

    private Map<Row, Subject> rowsOf(String id) {
        Run run = runs.get(id);
        if (run == null) {
            return ofNoRun;
        }
        Subject whole = Subject.ofRun(id);
        Map<Row, Subject> rows = new HashMap<>();
        run.products().forEach(p -> put(rows, p.row(), whole.withSubstance(p.name())));
        run.charges().forEach(c -> put(rows, c.row(), whole.withSubstance(c.material())));
        run.steps().forEach(s -> put(rows, s.row(), whole.withStep(s.number())));
        run.layers().forEach(l -> put(rows, l.row(), whole.withLayers(List.of(l.label()))));
        run.assays().forEach(a -> put(rows, a.row(), ofSample(run, whole, a)));
        run.lots().forEach(l -> put(rows, l.row(), whole.withLot(l.label())));
        return rows;
    }

    /** A lot, or the layers of which the sample was taken: several make a composite one. */
    private static Subject ofSample(Run run, Subject whole, Assay assay) {
        boolean isLot = run.lots().stream().anyMatch(l -> l.label().equals(assay.sample()));
        return isLot
                ? whole.withLot(assay.sample())
                : whole.withLayers(assay.samples().stream()
                        .map(String::strip)
                        .filter(label -> !label.isEmpty())
                        .toList());
    }

    private static void put(Map<Row, Subject> rows, RowPlace row, Subject subject) {
        rows.putIfAbsent(Row.of(row.at("")), subject);
    }

    private record Row(String file, String sheet, int number) {
        static Row of(Place place) {
            return new Row(place.file(), place.sheet(), place.row());
        }

        /** Written out, since it is a key; see the contributor guide. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Row row && number == row.number && sheet.equals(row.sheet) && file.equals(row.file);
        }

        @Override
        public int hashCode() {
            return 31 * number + sheet.hashCode();
        }
    }
}
