package workuptally.report.view;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.Place;
import workuptally.model.RowPlace;
import workuptally.model.Run;

/** What stands in the row of the book that a finding points to: a layer, lot, step, charge, product or transfer by its short name. */
final class Subjects {
    private final Map<Row, String> names = new HashMap<>();

    private Subjects() {}

    /** The rows of one run. */
    static Subjects of(Run run) {
        Subjects subjects = new Subjects();
        run.products().forEach(p -> subjects.add(p.row(), p.name()));
        run.charges().forEach(c -> subjects.add(c.row(), c.material()));
        run.steps().forEach(s -> subjects.add(s.row(), "step\u00A0" + s.number()));
        run.layers().forEach(l -> subjects.add(l.row(), l.label()));
        run.assays().forEach(a -> subjects.add(a.row(), a.sample()));
        run.lots().forEach(l -> subjects.add(l.row(), l.label()));
        return subjects;
    }

    /** The transfers of a book. */
    static Subjects ofTransfers(Review review) {
        Subjects subjects = new Subjects();
        review.book().transfers().forEach(t -> subjects.add(t.row(), t.id()));
        return subjects;
    }

    private void add(RowPlace row, String name) {
        names.putIfAbsent(Row.of(row.at("")), name);
    }

    /** The name of what a finding is about; empty where its place is no row of these tables. */
    Optional<String> of(Finding finding) {
        return Optional.ofNullable(names.get(Row.of(finding.place())));
    }

    /** The names of what findings are about, each once, in their order. */
    List<String> of(List<Finding> findings) {
        return findings.stream()
                .map(this::of)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    private record Row(String file, String sheet, int row) {
        static Row of(Place place) {
            return new Row(place.file(), place.sheet(), place.row());
        }
    }
}
