package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.BasisRow;
import workuptally.judgement.period.BookShare.CorrectionShare;
import workuptally.judgement.period.BookShare.LimitShare;
import workuptally.judgement.period.PeriodReview;
import workuptally.judgement.period.PeriodReview.BookLine;
import workuptally.judgement.period.PeriodReview.LimitInForce;
import workuptally.model.InputFile;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Gap;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.view.wording.ReadableNumbers;

/** What the figures of a period rest on: books and their hashes, corrections, limits, reference values, equations. */
final class PeriodBasis {
    private static final int BOOKS_NAMED = 3;

    private final Look look;
    private final PeriodReview review;

    PeriodBasis(Look look, PeriodReview review) {
        this.look = look;
        this.review = review;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Gap(8));
        blocks.add(new Heading(look, Heading.Level.SECTION, "Basis", Optional.of("basis")));
        blocks.add(new Paragraph(
                look,
                "Every figure follows from the entries of the books below with the settings in force in each of them. Estimates never become"
                        + " data. A run counts once; a run without a date counts in no period. What each run adds stands in the attached"
                        + " JSON and in the ledgers beside this document. No person is named; who entered or corrected what stands in"
                        + " the books."));
        files(blocks);
        corrections(blocks);
        limits(blocks);
        references(blocks);
        equations(blocks);
        return blocks;
    }

    private void files(List<Block> blocks) {
        blocks.add(look.subheading("Books and input files"));
        if (review.books().isEmpty()) {
            blocks.add(new Paragraph(look, "The folder holds no book."));
            return;
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (BookLine book : review.books()) {
            boolean first = true;
            for (InputFile file : book.files()) {
                String counted = book.runsCounted() + " of " + book.runs();
                boolean named = file.name().equals(book.book());
                rows.add(List.of(
                        first ? TableCell.bold(book.book()) : TableCell.of(""),
                        TableCell.of(first ? counted : ""),
                        TableCell.of(named ? "" : file.name()),
                        TableCell.of(file.sha256())));
                first = false;
            }
            if (first) {
                rows.add(List.of(
                        TableCell.bold(book.book()),
                        TableCell.of("–"),
                        TableCell.of(""),
                        TableCell.of(book.standing().word())));
            }
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Book"),
                        TableColumn.word("Runs counted"),
                        TableColumn.text("File"),
                        TableColumn.text("SHA-256")),
                rows));
    }

    private void corrections(List<Block> blocks) {
        if (review.corrections().isEmpty()) {
            return;
        }
        blocks.add(look.subheading("Corrections of the record"));
        List<List<TableCell>> rows = new ArrayList<>();
        for (CorrectionShare correction : review.corrections()) {
            rows.add(List.of(
                    TableCell.bold(correction.book()),
                    TableCell.of(correction.when()),
                    TableCell.of(correction.record()),
                    TableCell.of(correction.oldValue()),
                    TableCell.of(correction.newValue()),
                    TableCell.of(correction.reason())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Book"),
                        TableColumn.word("When"),
                        TableColumn.text("Record"),
                        TableColumn.text("Old value"),
                        TableColumn.text("New value"),
                        TableColumn.text("Reason")),
                rows));
    }

    /** Limits that a book sets, a row each; those with their usual value are counted. */
    private void limits(List<Block> blocks) {
        if (review.limits().isEmpty()) {
            return;
        }
        long all = review.limits().stream()
                .flatMap(l -> l.books().stream())
                .distinct()
                .count();
        List<List<TableCell>> rows = new ArrayList<>();
        long usual = 0;
        for (LimitInForce inForce : review.limits()) {
            LimitShare limit = inForce.limit();
            if (!limit.set()) {
                usual++;
                continue;
            }
            rows.add(List.of(
                    TableCell.bold(limit.limit().title()),
                    TableCell.of(value(limit)),
                    TableCell.of(where(inForce.books(), all))));
        }
        blocks.add(look.subheading("Limits in force"));
        if (!rows.isEmpty()) {
            blocks.add(new TaggedTable(
                    look,
                    List.of(TableColumn.text("Set in a book"), TableColumn.text("Value"), TableColumn.text("In")),
                    rows));
        }
        if (usual > 0) {
            blocks.add(new Paragraph(
                    look,
                    PeriodReport.count(usual, rows.isEmpty() ? "limit" : "further limit")
                            + (usual == 1 ? " has its usual value" : " have their usual values")
                            + " (common practice), as the attached JSON lists."));
        }
    }

    private String value(LimitShare limit) {
        if (limit.value().isEmpty()) {
            return limit.text();
        }
        String number = look.figures().compact(limit.value().getAsDouble());
        return ReadableNumbers.withUnit(number, limit.limit().unit());
    }

    private static String where(List<String> books, long all) {
        if (books.size() == all) {
            return all == 1 ? "the book" : "all " + all + " books";
        }
        int more = books.size() - BOOKS_NAMED;
        return more > 0
                ? String.join(", ", books.subList(0, BOOKS_NAMED)) + " and " + more + " more"
                : String.join(", ", books);
    }

    /** Counted, not listed: page after page of values is read by nobody, and each stands with its source in the attached JSON. */
    private void references(List<Block> blocks) {
        long used = review.basis().stream()
                .filter(row -> row.kind() == BasisRow.Kind.REFERENCE)
                .count();
        if (used > 0) {
            blocks.add(new Gap(4));
            blocks.add(new Paragraph(
                    look,
                    PeriodReport.count(used, "reference value")
                            + " used. Each value with its source, and what is remembered and to be checked, stands in the JSON that"
                            + " this document carries and on the Basis sheet of each review."));
        }
    }

    private void equations(List<Block> blocks) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (BasisRow row : review.basis()) {
            if (row.kind() == BasisRow.Kind.EQUATION) {
                rows.add(List.of(TableCell.bold(row.name()), TableCell.of(row.value())));
            }
        }
        if (!rows.isEmpty()) {
            blocks.add(look.subheading("Equations"));
            blocks.add(new TaggedTable(
                    look, List.of(TableColumn.text("Figure"), TableColumn.text("How it is computed")), rows));
        }
    }
}
