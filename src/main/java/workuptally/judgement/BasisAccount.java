package workuptally.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import workuptally.model.Book;
import workuptally.model.InputFile;
import workuptally.model.Limit;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** What every figure rests on: input files, limits in force, reference rows used, equations. */
final class BasisAccount {
    private final Book book;
    private final Substances substances;
    private final List<RunTally> runs;

    BasisAccount(Book book, Substances substances, List<RunTally> runs) {
        this.runs = runs;
        this.book = book;
        this.substances = substances;
    }

    List<BasisRow> list() {
        List<BasisRow> rows = new ArrayList<>();
        for (InputFile file : book.files()) {
            rows.add(new BasisRow(BasisRow.Kind.INPUT, file.name(), file.sha256(), "SHA-256", "read from the book"));
        }
        if (!book.leftAlone().isEmpty()) {
            rows.add(new BasisRow(
                    BasisRow.Kind.INPUT,
                    "left alone",
                    String.join("; ", book.leftAlone()),
                    "",
                    "columns and sheets of your own"));
        }
        for (Limit limit : Limit.values()) {
            String origin = book.limits().origin(limit);
            if (limit.isText()) {
                if (!book.limits().text(limit).isEmpty()) {
                    rows.add(BasisRow.of(limit, book.limits().text(limit), origin));
                }
                continue;
            }
            OptionalDouble value = book.limits().optional(limit);
            if (value.isPresent()) {
                rows.add(BasisRow.of(limit, number(value.getAsDouble()), origin));
            }
        }
        TakenAsPure.row(runs, book.limits()).ifPresent(rows::add);
        DissolvedOnCake.row(runs).ifPresent(rows::add);
        Map<List<String>, BasisRow> used = new LinkedHashMap<>();
        // What a laboratory has set itself comes first and is named so: it is what a reader would not expect.
        List<Cited> localFirst = substances.used().stream()
                .sorted(Comparator.comparing(row -> row.basis() != Basis.LOCAL))
                .toList();
        for (Cited row : localFirst) {
            BasisRow shown = ReferenceRow.of(row, substances.reference());
            used.putIfAbsent(
                    List.of(shown.kind().word(), shown.name(), shown.value(), shown.unit(), shown.origin()), shown);
        }
        rows.addAll(used.values());
        for (Equation equation : Equation.values()) {
            rows.add(new BasisRow(BasisRow.Kind.EQUATION, equation.title(), equation.text(), "", equation.source()));
        }
        return rows;
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.4g", value);
        return text.contains(".") && !text.contains("e")
                ? text.replaceAll("0+$", "").replaceAll("\\.$", "")
                : text;
    }
}
