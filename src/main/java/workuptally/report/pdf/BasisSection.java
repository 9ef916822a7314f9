package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import workuptally.judgement.BasisRow;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.hazards.HazardNote;
import workuptally.model.Correction;
import workuptally.model.Finding;
import workuptally.model.InputFile;

/** What the figures rest on: findings about the book, input files, corrections, limits, reference values, equations. */
final class BasisSection {
    private static final int BRIEF_CHARACTERS = 72;
    private static final int LEAST_FOR_TWO = 8;

    private final Look look;
    private final Review review;
    private final ContainerRows containers;

    BasisSection(Look look, Review review, ContainerRows containers) {
        this.look = look;
        this.review = review;
        this.containers = containers;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Gap(8));
        blocks.add(new Heading(look, Heading.Level.SECTION, "Basis", Optional.of("basis")));
        blocks.add(new Paragraph(
                look,
                "Every figure follows from the entries of the input files below with the settings in force below. Estimates are"
                        + " named as such and never become data. Uncertainties: first-order propagation over the entered numbers"
                        + " (JCGM 100:2008), expanded with k = "
                        + look.figures().plain(review.period().coverageFactor()) + "."));
        blocks.add(new Paragraph(look, SafetyWording.LIMITS_OF_INFERENCE));
        otherFindings(blocks);
        files(blocks);
        corrections(blocks);
        Map<String, List<BasisRow>> kinds = new LinkedHashMap<>();
        review.basis().stream()
                .filter(row -> !row.kind().equals("input"))
                .forEach(row -> kinds.computeIfAbsent(row.kind(), k -> new ArrayList<>())
                        .add(row));
        kinds.forEach((kind, rows) -> rows(blocks, kind, rows));
        hazardSources(blocks);
        return blocks;
    }

    private void hazardSources(List<Block> blocks) {
        StringJoiner sources = new StringJoiner("; ", "", ".");
        review.runs().stream()
                .flatMap(r -> r.hazards().stream())
                .map(HazardNote::source)
                .filter(s -> !s.isBlank())
                .flatMap(s -> Arrays.stream(s.split("; ")))
                .distinct()
                .forEach(sources::add);
        if (sources.length() > 1) {
            blocks.add(look.subheading("Sources of the hazard notes"));
            blocks.add(new Paragraph(look, sources.toString()));
        }
    }

    /** Findings that stand with no run would otherwise be shown nowhere but, if urgent, on page one. */
    private void otherFindings(List<Block> blocks) {
        Set<String> ids = review.runs().stream().map(RunReview::id).collect(Collectors.toSet());
        List<Finding> others = review.findings().stream()
                .filter(f -> !ids.contains(f.run()))
                .filter(f -> containers.owner(f).isEmpty())
                .toList();
        if (!others.isEmpty()) {
            blocks.add(look.subheading("Findings that concern no single run"));
            blocks.add(new FindingTable(look).of(others));
        }
    }

    private void files(List<Block> blocks) {
        blocks.add(look.subheading("Input files"));
        List<List<TableCell>> rows = new ArrayList<>();
        for (InputFile file : review.book().files()) {
            rows.add(List.of(TableCell.bold(file.name()), TableCell.of(file.sha256())));
        }
        blocks.add(new TaggedTable(look, List.of(TableColumn.text("File"), TableColumn.text("SHA-256")), rows));
    }

    private void corrections(List<Block> blocks) {
        if (review.book().corrections().isEmpty()) {
            return;
        }
        blocks.add(look.subheading("Corrections of the record"));
        List<List<TableCell>> rows = new ArrayList<>();
        for (Correction correction : review.book().corrections()) {
            rows.add(List.of(
                    TableCell.of(correction.when()),
                    TableCell.of(correction.who()),
                    TableCell.bold(correction.record()),
                    TableCell.of(correction.oldValue()),
                    TableCell.of(correction.newValue()),
                    TableCell.of(correction.reason())));
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

    private void rows(List<Block> blocks, String kind, List<BasisRow> basis) {
        blocks.add(look.subheading(
                switch (kind) {
                    case "limit" -> "Limits in force";
                    case "reference" -> "Reference values";
                    case "equation" -> "Equations";
                    default -> kind;
                }));
        List<BasisRow> brief = basis.stream().filter(BasisSection::isBrief).toList();
        List<BasisRow> wordy = basis.stream().filter(row -> !isBrief(row)).toList();
        int sides = kind.equals("limit") && brief.size() >= LEAST_FOR_TWO ? 2 : 1;
        Origins origins = new Origins(basis);
        if (sides == 1) {
            blocks.add(table(basis, 1, origins));
            return;
        }
        blocks.add(table(brief, sides, origins));
        if (!wordy.isEmpty()) {
            blocks.add(table(wordy, 1, origins));
        }
    }

    /** True where two rows fit beside each other. */
    private static boolean isBrief(BasisRow row) {
        return row.name().length() + value(row).length() + row.origin().length() < BRIEF_CHARACTERS;
    }

    private static String value(BasisRow row) {
        return row.unit().isBlank() || row.unit().equals("1") ? row.value() : row.value() + " " + row.unit();
    }

    /** Rows down the left side first; a row of the table holds one from each side. */
    private TaggedTable table(List<BasisRow> basis, int sides, Origins origins) {
        int height = (basis.size() + sides - 1) / sides;
        List<TableColumn> columns = new ArrayList<>();
        for (int side = 0; side < sides; side++) {
            columns.addAll(List.of(TableColumn.text("Name"), TableColumn.text("Value"), TableColumn.text("Origin")));
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (int at = 0; at < height; at++) {
            List<TableCell> cells = new ArrayList<>();
            for (int side = 0; side < sides; side++) {
                int index = at + side * height;
                boolean there = index < basis.size();
                cells.add(TableCell.bold(there ? basis.get(index).name() : ""));
                cells.add(TableCell.of(there ? value(basis.get(index)) : ""));
                cells.add(TableCell.of(there ? origins.words(basis.get(index)) : ""));
            }
            rows.add(cells);
        }
        return new TaggedTable(look, columns, rows);
    }

    /** Long origins that several rows share: in full with a number where they come first, then by the number alone. */
    private static final class Origins {
        private static final int LONG = 60;

        private final Set<String> shared = new HashSet<>();
        private final Map<String, Integer> told = new HashMap<>();

        Origins(List<BasisRow> rows) {
            Set<String> seen = new HashSet<>();
            for (BasisRow row : rows) {
                if (row.origin().length() > LONG && !seen.add(row.origin())) {
                    shared.add(row.origin());
                }
            }
        }

        String words(BasisRow row) {
            if (!shared.contains(row.origin())) {
                return row.origin();
            }
            Integer number = told.get(row.origin());
            if (number != null) {
                return "[" + number + "]";
            }
            told.put(row.origin(), told.size() + 1);
            return "[" + told.size() + "] " + row.origin();
        }
    }
}
