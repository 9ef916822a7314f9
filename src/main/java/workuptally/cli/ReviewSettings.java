package workuptally.cli;

import java.util.Set;
import workuptally.book.files.ReadingOptions;
import workuptally.report.pdf.layout.PdfOptions;

/**
 * How the files of a review are written.
 *
 * @param reading how the book was read
 * @param paper paper of the PDF
 * @param decimalMark decimal mark of what a person reads: PDF and terminal
 * @param reports which files are written
 */
record ReviewSettings(
        ReadingOptions reading, PdfOptions.Paper paper, PdfOptions.DecimalMark decimalMark, Set<ReportKind> reports) {}
