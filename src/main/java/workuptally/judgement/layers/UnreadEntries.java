package workuptally.judgement.layers;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import workuptally.model.Finding;
import workuptally.model.RowPlace;
import workuptally.model.Run;

/** Entries about a layer that nobody could read: what was meant may be the reason to keep it. */
final class UnreadEntries {
    /** Codes of cells that hold something and were not used. */
    private static final Set<String> UNREAD = Set.of(
            "number-unreadable",
            "number-ambiguous",
            "unit-wrong",
            "unit-unknown",
            "unit-missing",
            "unit-contradiction",
            "choice-unknown",
            "value-impossible",
            "limit-as-amount",
            "portions-in-number",
            "not-detected-outside-assays",
            "parts-unreadable",
            "date-in-number",
            "shown-otherwise",
            "formula-error",
            "formula-not-calculated",
            "percent-as-fraction",
            "percent-cell-too-large",
            "kelvin-as-celsius",
            "merged-cells");

    private UnreadEntries() {}

    /** Codes of unread entries in the row of a layer, of its assays and of the steps that gave it, or in a step without a known operation. */
    static List<String> of(Run run, String layer, List<Finding> findings) {
        List<RowPlace> rows = Stream.of(
                        run.layers().stream()
                                .filter(l -> l.label().equals(layer))
                                .map(l -> l.row()),
                        run.assays().stream()
                                .filter(a -> a.sample().equals(layer))
                                .map(a -> a.row()),
                        run.steps().stream()
                                .filter(s -> s.operation().isEmpty()
                                        || s.givesOrganic().contains(layer)
                                        || s.givesAqueous().contains(layer)
                                        || s.givesOther().contains(layer))
                                .map(s -> s.row()))
                .flatMap(r -> r)
                .toList();
        return findings.stream()
                .filter(f -> UNREAD.contains(f.code()))
                .filter(f -> rows.stream()
                        .anyMatch(row -> row.row() == f.place().row()
                                && row.table().sheet().equals(f.place().sheet())))
                .map(f -> f.code() + " at " + f.place().inWords())
                .distinct()
                .toList();
    }
}
