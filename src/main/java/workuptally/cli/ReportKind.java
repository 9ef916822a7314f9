package workuptally.cli;

import java.util.List;

/** Kinds of files that a review writes, in the order in which a reader wants them. */
enum ReportKind {
    /** The annotated workbook. */
    WORKBOOK,
    /** The report for the supervisor. */
    PDF,
    /** Every result and finding for other programs. */
    JSON,
    /** The ledgers of solvents and waste. */
    CSV;

    /** Names of the files of this kind. */
    List<String> fileNames(String book, String workbookEnding) {
        return switch (this) {
            case WORKBOOK -> List.of(book + "-review" + workbookEnding);
            case PDF -> List.of(book + "-review.pdf");
            case JSON -> List.of(jsonName(book));
            case CSV -> List.of(book + "-solvents.csv", book + "-waste.csv");
        };
    }

    /** Name of the JSON file, under which the PDF carries it too. */
    static String jsonName(String book) {
        return book + "-review.json";
    }
}
