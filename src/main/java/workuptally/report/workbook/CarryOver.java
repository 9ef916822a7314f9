package workuptally.report.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.ooxml.POIXMLDocumentPart;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.xssf.model.Comments;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFVMLDrawing;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import workuptally.model.Finding;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Wording;

/**
 * The way of a workbook from input to annotated copy: the package without its cells goes through the spreadsheet library, which adds
 * styles, comments and result sheets; what it saved is copied out, with the user's own parts put back in.
 */
final class CarryOver {
    private final BookPackage book;
    private final Map<String, SheetMarks> marks = new HashMap<>();
    private final List<Finding> findings;
    private final List<TableView> tables;
    private final EnteredNumbers entries = new EnteredNumbers();

    private final Wording wording;

    /** Style numbers to write, by part of a sheet. */
    private final Map<String, CellStyles> stamps = new HashMap<>();

    /** Relationship to the comments' drawing for sheets that get their first comments, by part. */
    private final Map<String, String> firstComments = new HashMap<>();

    /** Parts of the user's that the library changed on purpose. */
    private final Set<String> changed = new HashSet<>();

    CarryOver(BookPackage book, List<Finding> findings, List<Finding> marked, List<TableView> tables, Wording wording) {
        this.wording = wording;
        this.book = book;
        this.findings = findings;
        this.tables = tables;
        Map<String, SheetMarks> bySheet = SheetMarks.bySheet(marked);
        book.sheetNames().forEach((part, name) -> {
            SheetMarks found = bySheet.get(SheetMarks.key(name));
            if (found != null && book.isWorksheet(part)) {
                marks.put(part, found);
            }
        });
    }

    /**
     * What the library saved. While it is copied out, nothing else of the way there is needed any more.
     *
     * @param bytes the package, with neither the cells of the user's sheets nor the rows of the result sheets
     * @param results the result sheets
     * @param resultParts the result sheets by part
     */
    private record Saved(byte[] bytes, ResultSheetWriting results, Map<String, ResultSheet> resultParts) {}

    void write(Path output) throws IOException {
        Saved saved = save();
        marks.clear();
        copyOut(saved, output);
    }

    private Saved save() throws IOException {
        ByteArrayOutputStream stub = new ByteArrayOutputStream();
        Map<String, ScannedSheet> scanned = book.writeStub(stub, marks);
        book.sheetNames()
                .forEach((part, name) ->
                        Optional.ofNullable(scanned.get(part)).ifPresent(sheet -> entries.put(name, sheet.numbers())));
        // The library saves to memory: where a disk is full it would report on the terminal and not say why.
        ByteArrayOutputStream saved = new ByteArrayOutputStream();
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(stub.toByteArray()))) {
            BareStyles.complete(workbook);
            MarkPalette palette = new MarkPalette(workbook);
            annotate(workbook, scanned, palette);
            ResultSheetWriting results = new ResultSheetWriting(workbook, new ResultStyles(workbook, palette), entries);
            List<ResultSheet> sheets = results.add(tables);
            results.open(sheets.get(0));
            ResultCharts.draw(workbook, sheets);
            comment(workbook, new FindingLines(findings, sheets, wording));
            workbook.write(saved);
            return new Saved(saved.toByteArray(), results, results.byPart());
        }
    }

    private void annotate(XSSFWorkbook workbook, Map<String, ScannedSheet> scanned, MarkPalette palette) {
        changed.addAll(Set.of("[Content_Types].xml", "_rels/.rels"));
        changed.add(name(workbook.getPackagePart()));
        changed.add(relationships(name(workbook.getPackagePart())));
        changed.add(name(workbook.getStylesSource().getPackagePart()));
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            XSSFSheet sheet = workbook.getSheetAt(i);
            String part = name(sheet.getPackagePart());
            ScannedSheet found = scanned.get(part);
            if (marks.containsKey(part) || found != null && found.selected()) {
                stamps.put(part, restyled(found.styles(), palette));
            }
        }
    }

    private void comment(XSSFWorkbook workbook, FindingLines lines) throws IOException {
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            XSSFSheet sheet = workbook.getSheetAt(i);
            String part = name(sheet.getPackagePart());
            if (marks.containsKey(part)) {
                comment(sheet, part, lines);
            }
        }
    }

    private static CellStyles restyled(CellStyles now, MarkPalette palette) {
        Map<CellMark, Integer> numbers = new HashMap<>();
        // Styles are numbered in the order of the cells, so that the same book gives the same numbers.
        now.numbers().keySet().stream()
                .sorted(java.util.Comparator.comparingInt(CellMark::row).thenComparingInt(CellMark::column))
                .forEach(mark -> numbers.put(mark, (int)
                        palette.marked(now.numbers().get(mark), mark.severity()).getIndex()));
        return new CellStyles(numbers, now.missing());
    }

    private void comment(XSSFSheet sheet, String part, FindingLines lines) throws IOException {
        boolean hadComments = sheet.getCTWorksheet().isSetLegacyDrawing();
        FindingComments.write(sheet, marks.get(part), book.threadedComments(part), lines);
        if (!hadComments && sheet.getCTWorksheet().isSetLegacyDrawing()) {
            firstComments.put(part, sheet.getCTWorksheet().getLegacyDrawing().getId());
        }
        changed.add(relationships(part));
        for (POIXMLDocumentPart related : sheet.getRelations()) {
            if (related instanceof Comments || related instanceof XSSFVMLDrawing) {
                changed.add(name(related.getPackagePart()));
            }
        }
    }

    private void copyOut(Saved saved, Path output) throws IOException {
        try (ZipFile zip = ZipFile.builder().setByteArray(saved.bytes()).get();
                ZipArchiveOutputStream out = FixedZip.compressed(Files.newOutputStream(output))) {
            List<String> parts = FixedZip.inOrder(Collections.list(zip.getEntries()).stream()
                    .map(ZipArchiveEntry::getName)
                    .toList());
            Map<String, PackedParts.Text> texts = new LinkedHashMap<>();
            for (String part : parts) {
                if (stamps.containsKey(part)) {
                    texts.put(part, writer -> stamp(part, writer));
                } else if (saved.resultParts().containsKey(part)) {
                    ResultSheet sheet = saved.resultParts().get(part);
                    texts.put(
                            part,
                            writer -> saved.results().copy(sheet, zip.getInputStream(zip.getEntry(part)), writer));
                }
            }
            copyOut(zip, parts, texts, out);
        }
    }

    private void copyOut(
            ZipFile saved, List<String> parts, Map<String, PackedParts.Text> texts, ZipArchiveOutputStream out)
            throws IOException {
        try (PackedParts packed = new PackedParts(texts.entrySet().stream()
                .map(text -> new PackedParts.Part(text.getKey(), text.getValue()))
                .toList())) {
            for (String part : parts) {
                if (texts.containsKey(part)) {
                    packed.copyNext(out);
                } else if (book.has(part) && !changed.contains(part)) {
                    book.copyRaw(part, out);
                } else {
                    out.putArchiveEntry(FixedZip.entry(part));
                    try (InputStream in = saved.getInputStream(saved.getEntry(part))) {
                        Map<String, String> links = part.endsWith(".rels") ? book.externalTargets(part) : Map.of();
                        out.write(links.isEmpty() ? in.readAllBytes() : ExternalLinks.asWritten(in, links));
                    }
                    out.closeArchiveEntry();
                }
            }
        }
    }

    private void stamp(String part, Writer writer) throws IOException {
        SheetStamp.copy(book.read(part), writer, stamps.get(part), Optional.ofNullable(firstComments.get(part)));
    }

    private static String name(PackagePart part) {
        return part.getPartName().getName().substring(1);
    }

    private static String relationships(String part) {
        int slash = part.lastIndexOf('/') + 1;
        return part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
    }
}
