package workuptally.report.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import workuptally.judgement.Review;
import workuptally.report.view.sheets.ReviewTables;
import workuptally.report.view.wording.Wording;

/**
 * Writes the user's workbook again with a mark and a comment at each finding, and with result sheets behind the user's sheets.
 *
 * <p>The user's sheets stay as they were, character by character, except for the style numbers of marked cells, marked cells and rows
 * that did not exist, the reference to a sheet's first comments, and that the copy opens on its summary. Every other part that needs no change is copied as stored. The
 * same input gives the same bytes. A book in the strict variant of the format comes out in the transitional one.
 */
public final class AnnotatedWorkbook {
    private AnnotatedWorkbook() {}

    /**
     * Writes the annotated workbook.
     *
     * @param input the user's workbook, only read
     * @param output file to write; an existing one is replaced
     * @param review the finished review of that workbook
     * @param wording how sentences are put
     * @throws UnannotatableBookException if a part of the workbook is damaged
     * @throws IOException if the workbook cannot be read, or the output cannot be written
     */
    public static void write(Path input, Path output, Review review, Wording wording) throws IOException {
        if (Files.exists(output) && Files.isSameFile(input, output)) {
            throw new IOException("the annotated workbook would replace the book it is made from");
        }
        try (BookPackage book =
                BookPackage.open(input, output.resolveSibling(output.getFileName() + ".transitional"))) {
            new CarryOver(book, review.findings(), MarkedFindings.of(review), ReviewTables.of(review, wording), wording)
                    .write(output);
        } catch (RuntimeException e) {
            // The spreadsheet library reports a damaged part by runtime exceptions of many kinds.
            if (isOurs(e)) {
                throw e;
            }
            throw new UnannotatableBookException(
                    input.getFileName()
                            + " cannot be annotated, since a part of it is damaged: open it in a spreadsheet"
                            + " program, repair and save it, or leave the copy out with --reports"
                            + " pdf,safety,labels,json,csv.",
                    e);
        }
    }

    /** True for an exception that this program itself raised: a fault to report, not one of the workbook. */
    private static boolean isOurs(RuntimeException e) {
        StackTraceElement[] trace = e.getStackTrace();
        return trace.length > 0 && trace[0].getClassName().startsWith("workuptally.");
    }
}
