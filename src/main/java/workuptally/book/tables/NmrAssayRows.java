package workuptally.book.tables;

import workuptally.model.NmrAssay;

/** Reads the NMR assays table. */
public final class NmrAssayRows {
    private NmrAssayRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        rows.forEach(row -> runs.of(row)
                .ifPresent(run -> row.key("Sample")
                        .ifPresent(sample -> row.key("Substance")
                                .ifPresent(substance -> run.nmrAssays.add(
                                        assay(row, run.spelling(sample), run.substance(substance)))))));
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
