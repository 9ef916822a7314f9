package workuptally.judgement.period;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import workuptally.judgement.BasisRow;
import workuptally.judgement.period.BookShare.LimitShare;
import workuptally.judgement.period.PeriodReview.LimitInForce;

/** The limits, reference values and equations of many books, each once, with the books in which a limit has a value. */
final class SettingsRegister {
    private final Map<LimitShare, List<String>> limits = new LinkedHashMap<>();
    private final Set<BasisRow> basis = new LinkedHashSet<>();

    void add(BookShare book) {
        book.limits()
                .forEach(limit ->
                        limits.computeIfAbsent(limit, l -> new ArrayList<>()).add(book.book()));
        basis.addAll(book.basis());
    }

    /** Limits in order of their table, of several values the one of more books first. */
    List<LimitInForce> limits() {
        return limits.entrySet().stream()
                .map(e -> new LimitInForce(e.getKey(), e.getValue()))
                .sorted(Comparator.comparing((LimitInForce l) -> l.limit().limit())
                        .thenComparing(l -> -l.books().size()))
                .toList();
    }

    /** Reference values by name, then equations. */
    List<BasisRow> basis() {
        return basis.stream()
                .sorted(Comparator.comparing(BasisRow::kind)
                        .reversed()
                        .thenComparing(row -> row.kind() == BasisRow.Kind.REFERENCE ? row.name() : ""))
                .toList();
    }
}
