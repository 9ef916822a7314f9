package workuptally.cli;

import java.util.List;
import workuptally.report.view.ledgers.Ledgers;

/** Kinds of files that a review writes, in the order in which a reader wants them. */
enum ReportKind {
    /** The annotated workbook. */
    WORKBOOK,
    /** The report for the supervisor and the chemist. */
    PDF,
    /** The account for safety staff. */
    SAFETY,
    /** Labels for kept layers and containers. */
    LABELS,
    /** Every result and finding for other programs. */
    JSON,
    /** The ledgers, one fact a row. */
    CSV;

    /** Names of the files of this kind. */
    List<String> fileNames(String book, String workbookEnding) {
        return switch (this) {
            case WORKBOOK -> List.of(book + "-review" + workbookEnding);
            case PDF -> List.of(book + "-review.pdf");
            case SAFETY -> List.of(book + "-safety.pdf");
            case LABELS -> List.of(book + "-labels.pdf");
            case JSON -> List.of(jsonName(book));
            case CSV ->
                Ledgers.NAMES.stream()
                        .map(ledger -> book + "-" + ledger + ".csv")
                        .toList();
        };
    }

    /** Name of the JSON file, under which the PDF carries it too. */
    static String jsonName(String book) {
        return book + "-review.json";
    }
}
