package workuptally.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.hazards.HazardNote;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Gap;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedPicture;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.pdf.pictures.ContainerBoard;
import workuptally.report.view.lines.ContainerLine;
import workuptally.report.view.lines.HazardClass;
import workuptally.report.view.lines.ProposalLine;

/** The account for safety staff: containers, proposals, streams, solvents, hazards, and a part for each container. */
public final class SafetyReport {
    private SafetyReport() {}

    /**
     * Writes the account.
     *
     * @param review what is reported
     * @param options paper, decimal mark
     * @param out where to; left open
     * @throws IOException if writing fails
     */
    public static void write(Review review, PdfOptions options, OutputStream out) throws IOException {
        String title = "Solvent, waste and hazards: " + review.book().name();
        PdfReport.write(review, options, title, flow -> fill(flow, review, title), out);
    }

    private static void fill(PageFlow flow, Review review, String title) {
        Look look = flow.look();
        PdfReport.section(flow, front(look, review, title));
        PdfReport.section(flow, hazards(look, review));
        ContainerPart parts = new ContainerPart(look, review);
        for (List<Block> container : parts.blocks()) {
            flow.openSection();
            flow.addWhole(container);
            flow.closeSection();
        }
        PdfReport.section(flow, parts.factsOfAll());
        PdfReport.section(flow, new WasteLedger(look, review).blocks());
    }

    private static List<Block> front(Look look, Review review, String title) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(look, Heading.Level.TITLE, title, Optional.of("top")));
        String rule = review.book().limits().text(Limit.LOCAL_RULE_WASTE);
        blocks.add(new Paragraph(
                look, SafetyWording.WASTE_DETERMINATION + (rule.isBlank() ? "" : " Local rule: " + rule)));
        List<ContainerLine> containers = ContainerLine.of(review, look.figures());
        if (!containers.isEmpty()) {
            blocks.add(look.heading("Containers"));
            blocks.add(new TaggedPicture(look, new ContainerBoard(look, containers)));
        }
        proposals(look, review, blocks);
        AccountTables tables = new AccountTables(look);
        blocks.addAll(tables.streams(review.period().waste()));
        blocks.addAll(tables.solvents(review.period().solvents()));
        return blocks;
    }

    private static void proposals(Look look, Review review, List<Block> blocks) {
        List<ProposalLine> lines = ProposalLine.of(review);
        if (lines.isEmpty()) {
            return;
        }
        StringJoiner counts = new StringJoiner(", ", "Proposed transfers: ", "");
        for (ProposalLine.Group group : ProposalLine.Group.values()) {
            long count = lines.stream().filter(l -> l.group() == group).count();
            if (count > 0) {
                counts.add(group.counted(count));
            }
        }
        blocks.add(look.heading(counts.toString()));
        Map<String, String> onLabel = review.findings().stream()
                .filter(f -> f.code() == FindingCode.PROPOSAL_LABEL)
                .collect(Collectors.toMap(
                        f -> f.subject().transfer(), f -> look.wording().of(f.action()), (first, next) -> first));
        List<List<TableCell>> rows = new ArrayList<>();
        for (ProposalLine line : lines) {
            rows.add(List.of(
                    TableCell.bold(line.group().word()),
                    TableCell.of(line.transfer()),
                    TableCell.of(line.source()),
                    TableCell.of(line.container()),
                    TableCell.of(look.figures().significant(line.grams(), 4)),
                    TableCell.of(
                            line.reasons().isEmpty()
                                    ? "nothing recorded stands against it. "
                                            + onLabel.getOrDefault(line.transfer(), "A person decides.")
                                    : String.join("; ", line.reasons()))));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Group"),
                        TableColumn.word("Transfer"),
                        TableColumn.text("Of"),
                        TableColumn.word("Into"),
                        TableColumn.number("Mass\n(g)"),
                        TableColumn.text("What stands against it")),
                rows));
    }

    private static List<Block> hazards(Look look, Review review) {
        Map<HazardNote, Set<String>> materials = new LinkedHashMap<>();
        Map<HazardNote, Set<String>> operations = new LinkedHashMap<>();
        for (RunReview run : review.runs()) {
            for (HazardNote note : run.hazards()) {
                (note.ofMaterial() ? materials : operations)
                        .computeIfAbsent(note, n -> new LinkedHashSet<>())
                        .add(run.id());
            }
        }
        List<Block> blocks = new ArrayList<>();
        if (materials.isEmpty() && operations.isEmpty()) {
            return blocks;
        }
        blocks.add(new Gap(8));
        blocks.add(new Heading(look, Heading.Level.SECTION, "Hazards of the materials in use", Optional.of("hazards")));
        blocks.add(Paragraph.lead(look, SafetyWording.DEFERS, look.body()));
        matrix(look, materials, blocks);
        HazardBlocks notes = new HazardBlocks(look);
        if (!operations.isEmpty()) {
            blocks.add(look.subheading("Operations that ask for care"));
            blocks.add(notes.columns(operations));
        }
        if (!materials.isEmpty()) {
            blocks.add(look.subheading("Statements by material"));
            blocks.add(notes.columns(List.copyOf(materials.keySet())));
        }
        return blocks;
    }

    private static void matrix(Look look, Map<HazardNote, Set<String>> materials, List<Block> blocks) {
        List<List<TableCell>> rows = new ArrayList<>();
        materials.forEach((note, runs) -> {
            List<TableCell> row = new ArrayList<>();
            row.add(TableCell.bold(look.figures().inWords(note.subject())));
            row.add(TableCell.of(Integer.toString(runs.size())));
            for (HazardClass group : HazardClass.values()) {
                row.add(TableCell.of(group.of(note) ? "■" : ""));
            }
            rows.add(row);
        });
        List<TableColumn> columns = new ArrayList<>();
        columns.add(TableColumn.text("Material"));
        columns.add(TableColumn.number("Runs"));
        for (HazardClass group : HazardClass.values()) {
            columns.add(TableColumn.word(group.heading()));
        }
        if (!rows.isEmpty()) {
            blocks.add(new TaggedTable(look, columns, rows));
        }
    }
}
