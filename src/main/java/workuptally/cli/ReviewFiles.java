package workuptally.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.template.Template;
import workuptally.judgement.Review;
import workuptally.report.csv.CsvLedgers;
import workuptally.report.json.JsonReport;
import workuptally.report.pdf.LabelReport;
import workuptally.report.pdf.PdfReport;
import workuptally.report.pdf.SafetyReport;
import workuptally.report.pdf.layout.PdfAttachment;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.wording.Wording;
import workuptally.report.workbook.AnnotatedWorkbook;

/** Writes the files of one review into a folder: annotated workbook, documents, JSON, ledgers. */
final class ReviewFiles {
    private final Path target;
    private final TakenFiles taken;
    private final ReviewSettings settings;

    /**
     * Files for a folder.
     *
     * @param target folder to write to
     * @param taken files that must not be replaced; grows by the files written
     */
    ReviewFiles(Path target, TakenFiles taken, ReviewSettings settings) {
        this.target = target;
        this.taken = taken;
        this.settings = settings;
    }

    /**
     * Writes the files of a review that the settings ask for.
     *
     * @param book the book that was reviewed; only read
     * @return the files, and what was kept aside
     * @throws UnreadableBookException if the book changed since it was read
     * @throws IOException if they cannot be written; then none was
     */
    Placed write(Path book, Review review) throws UnreadableBookException, IOException {
        String name = review.book().name();
        String ending = ending(book);
        List<ReportKind> kinds = settings.reports().stream().sorted().toList();
        taken.requireFree(
                target,
                kinds.stream()
                        .flatMap(kind -> kind.fileNames(name, ending).stream())
                        .toList());
        try (StagedFiles files = new StagedFiles(target, name + "-review")) {
            SideBySide writing = new SideBySide();
            for (ReportKind kind : kinds) {
                List<Path> staged =
                        kind.fileNames(name, ending).stream().map(files::add).toList();
                writing.add(() -> {
                    write(kind, staged, book, files, review);
                    for (Path file : staged) {
                        files.finished(file);
                    }
                });
            }
            try {
                writing.run();
            } catch (IOException e) {
                throw files.unwritten(e);
            }
            new BookReader(settings.reading()).requireUnchanged(book, review.book());
            Placed placed = files.place(review.book().files());
            taken.addWritten(placed.files());
            return placed;
        }
    }

    private void write(ReportKind kind, List<Path> staged, Path book, StagedFiles files, Review review)
            throws UnreadableBookException, IOException {
        switch (kind) {
            case WORKBOOK -> workbook(book, files, staged.get(0), review);
            case PDF -> pdf(review, files, staged.get(0));
            case SAFETY -> write(staged.get(0), out -> SafetyReport.write(review, plain(), out));
            case LABELS -> write(staged.get(0), out -> LabelReport.write(review, plain(), out));
            case JSON -> json(review, staged.get(0));
            case CSV -> CsvLedgers.write(staged, review);
        }
    }

    /** A folder of CSV files, or one such file, is first made a workbook with the same rows. */
    private void workbook(Path book, StagedFiles files, Path output, Review review)
            throws UnreadableBookException, IOException {
        Path input = book;
        if (Files.isDirectory(book) || BookEnding.CSV.isOf(book)) {
            input = files.scratch("book" + BookEnding.XLSX.text());
            new Template().writeWorkbookFrom(book, settings.reading(), input);
        }
        AnnotatedWorkbook.write(
                input, output, review, new Wording(settings.decimalMark().mark()));
    }

    /** The attached JSON stands on the disk meanwhile: that of ten thousand runs is hundreds of megabytes. */
    private void pdf(Review review, StagedFiles files, Path file) throws IOException {
        Path json = files.scratch("attached.json");
        json(review, json);
        PdfAttachment attachment =
                PdfAttachment.ofFile(ReportKind.jsonName(review.book().name()), json);
        PdfOptions options = new PdfOptions(settings.paper(), settings.decimalMark(), Optional.of(attachment));
        write(file, out -> PdfReport.write(review, options, out));
    }

    private PdfOptions plain() {
        return new PdfOptions(settings.paper(), settings.decimalMark(), Optional.empty());
    }

    private static void write(Path file, Content content) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            content.write(out);
        }
    }

    /** Writes a document. */
    private interface Content {
        void write(OutputStream out) throws IOException;
    }

    private static void json(Review review, Path file) throws IOException {
        write(file, out -> JsonReport.write(review, out));
    }

    /** A workbook with macros keeps its ending, without which a spreadsheet program refuses it. */
    private static String ending(Path book) {
        boolean macros = BookEnding.XLSM.isOf(book) && !Files.isDirectory(book);
        return (macros ? BookEnding.XLSM : BookEnding.XLSX).text();
    }
}
