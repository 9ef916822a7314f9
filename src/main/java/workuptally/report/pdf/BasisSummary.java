package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import workuptally.judgement.BasisRow;
import workuptally.judgement.Review;
import workuptally.judgement.SafetyWording;
import workuptally.model.Correction;
import workuptally.model.Finding;
import workuptally.model.InputFile;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Gap;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.view.lines.RunFindings;
import workuptally.report.view.wording.ReadableNumbers;

/** What the figures rest on, on a page: what concerns no single run, settings, equations, files. The workbook and the JSON have every row. */
final class BasisSummary {
    private static final int MOST_FILES = 1;
    private static final int MOST_CORRECTIONS = 12;
    private static final int MOST_FINDINGS = 8;

    private final Look look;
    private final Review review;

    BasisSummary(Look look, Review review) {
        this.look = look;
        this.review = review;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        otherFindings(blocks);
        corrections(blocks);
        blocks.add(new Gap(8));
        blocks.add(new Heading(look, Heading.Level.SECTION, "Methods, limits and sources", Optional.of("basis")));
        blocks.add(new Paragraph(
                look,
                "Every figure follows from the entries with the settings below; estimates are named and never become data."
                        + " Uncertainties are propagated to first order over the entered numbers (JCGM 100:2008) and"
                        + " expanded with k\u00A0=\u00A0"
                        + look.figures().plain(review.period().coverageFactor())
                        + ". In the tables of layers a share is of theory, of other substances of what was charged; at most is"
                        + " one-sided 95\u00A0%. " + SafetyWording.LIMITS_OF_INFERENCE));
        blocks.add(new Paragraph(look, settings() + assumptions() + " " + references()));
        equations(blocks);
        blocks.add(new Paragraph(look, files(), look.caption()));
        return blocks;
    }

    private String settings() {
        StringJoiner set = new StringJoiner("; ", "Set in the book: ", ". ");
        set.setEmptyValue("Nothing is set in the book. ");
        int defaults = 0;
        for (BasisRow row : rows(BasisRow.Kind.LIMIT)) {
            if (row.unit().isBlank()) {
                continue;
            }
            if (row.limit().filter(review.book().limits()::isSetByBook).isPresent()) {
                set.add(row.name() + " " + look.figures().inWords(value(row)));
            } else {
                defaults++;
            }
        }
        return set + (defaults == 0 ? "" : defaults + " further limits have their usual values (common practice).");
    }

    private String assumptions() {
        StringJoiner taken = new StringJoiner("; ", " Taken for granted: ", ".");
        taken.setEmptyValue("");
        rows(BasisRow.Kind.ASSUMPTION)
                .forEach(row -> taken.add(look.figures().inWords(row.name() + ", " + row.value())));
        return taken.toString();
    }

    private static String value(BasisRow row) {
        return ReadableNumbers.withUnit(row.value(), row.unit());
    }

    private List<BasisRow> rows(BasisRow.Kind kind) {
        return review.basis().stream().filter(r -> r.kind() == kind).toList();
    }

    private String references() {
        int used = rows(BasisRow.Kind.REFERENCE).size();
        return (used == 0
                        ? "No reference value was used"
                        : PeriodReport.count(used, "reference value") + (used == 1 ? " was used" : " were used"))
                + "; sources, and what is remembered and to be checked, stand on the Basis sheet and in the JSON attached.";
    }

    /** A sentence each: they are looked up, not read. */
    private void equations(List<Block> blocks) {
        StringJoiner text = new StringJoiner(". ", "", ".");
        text.setEmptyValue("");
        for (BasisRow row : rows(BasisRow.Kind.EQUATION)) {
            String name = row.name();
            text.add(Character.toUpperCase(name.charAt(0)) + name.substring(1) + ": "
                    + look.figures().inWords(row.value()));
        }
        if (text.length() > 0) {
            blocks.add(new Paragraph(
                    look, text.toString(), look.caption().in(look.palette().ink())));
        }
    }

    private String files() {
        List<InputFile> files = review.book().files();
        StringJoiner text = new StringJoiner("; ", "Input, with SHA-256: ", ".");
        files.stream().limit(MOST_FILES).forEach(f -> text.add(f.name() + " " + f.sha256()));
        if (files.size() > MOST_FILES) {
            text.add(PeriodReport.count(files.size() - MOST_FILES, "more file") + " on the Basis sheet");
        }
        return text.toString();
    }

    /** Findings that stand with no run; those about containers and transfers stand in the account for safety staff. */
    private void otherFindings(List<Block> blocks) {
        Set<String> ids = new HashSet<>();
        review.runs().forEach(r -> ids.add(r.id()));
        RowsAboutContainers containers = new RowsAboutContainers(review);
        List<Finding> others = review.findings().stream()
                .filter(f -> !ids.contains(f.run()) && containers.owner(f).isEmpty())
                .toList();
        List<RunFindings> lines = RunFindings.toSettle(others, look.wording());
        String notes = RunFindings.notes(others);
        if (others.isEmpty()) {
            return;
        }
        blocks.add(new Gap(8));
        blocks.add(new Heading(look, Heading.Level.SECTION, "What concerns no single run", Optional.of("book")));
        List<List<TableCell>> rows = new ArrayList<>();
        for (RunFindings line : lines.subList(0, Math.min(MOST_FINDINGS, lines.size()))) {
            rows.add(List.of(
                    TableCell.of(line.severity()),
                    TableCell.of(line.seen() + " (" + line.places() + ")"),
                    TableCell.bold(line.action())));
        }
        if (!rows.isEmpty()) {
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.word("State"),
                            TableColumn.text("What was seen"),
                            TableColumn.text("What to do")),
                    rows));
        }
        String more = lines.size() > MOST_FINDINGS
                ? (lines.size() - MOST_FINDINGS) + " more kinds of findings on the Findings sheet. "
                : "";
        if (!more.isEmpty() || !notes.isEmpty()) {
            blocks.add(new Paragraph(
                    look,
                    more + (notes.isEmpty() ? "" : "Notes: " + notes + "."),
                    look.caption().in(look.palette().ink())));
        }
    }

    private void corrections(List<Block> blocks) {
        List<Correction> corrections = review.book().corrections();
        if (corrections.isEmpty()) {
            return;
        }
        blocks.add(look.subheading("Corrections of the record"
                + (corrections.size() > MOST_CORRECTIONS
                        ? ", the last " + MOST_CORRECTIONS + " of " + corrections.size()
                        : "")));
        List<List<TableCell>> rows = new ArrayList<>();
        for (Correction correction :
                corrections.subList(Math.max(0, corrections.size() - MOST_CORRECTIONS), corrections.size())) {
            rows.add(List.of(
                    TableCell.of(correction.when()),
                    TableCell.of(correction.who()),
                    TableCell.bold(correction.record()),
                    TableCell.of(look.figures().inWords(correction.oldValue())),
                    TableCell.of(look.figures().inWords(correction.newValue())),
                    TableCell.of(look.figures().inWords(correction.reason()))));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("When"),
                        TableColumn.word("Who"),
                        TableColumn.text("Record"),
                        TableColumn.text("Old value"),
                        TableColumn.text("New value"),
                        TableColumn.text("Reason")),
                rows));
    }
}
