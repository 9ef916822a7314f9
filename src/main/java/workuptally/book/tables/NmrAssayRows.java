package workuptally.book.tables;

import java.util.Optional;
import workuptally.model.LeftOutRow;
import workuptally.model.NmrAssay;

/** Reads the NMR assays table. */
public final class NmrAssayRows {
    private NmrAssayRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        RowsOfRuns.read(rows, runs, LeftOutRow.Of.ASSAY, "Sample", (row, run) -> {
            Optional<String> sample = row.key("Sample");
            Optional<String> substance = sample.flatMap(s -> row.key("Substance"));
            substance.ifPresent(
                    s -> run.nmrAssays.add(assay(row, run.spelling(sample.orElseThrow()), run.substance(s))));
            return substance.isPresent();
        });
    }

    private static NmrAssay assay(TableRow row, String sample, String substance) {
        return new NmrAssay(
                sample,
                substance,
                row.text("Standard"),
                row.number("Standard molar mass"),
                row.number("Standard purity"),
                row.number("Standard mass"),
                row.number("Sample mass"),
                row.number("Standard integral"),
                row.count("Standard nuclei"),
                row.number("Substance integral"),
                row.count("Substance nuclei"),
                row.number("Relative standard uncertainty"),
                row.place());
    }
}
