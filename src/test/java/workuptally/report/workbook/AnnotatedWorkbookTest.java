package workuptally.report.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.ExampleReview;
import workuptally.report.view.wording.Wording;

@Tag("slow")
class AnnotatedWorkbookTest {
    private static final String STYLES = "xl/styles.xml";

    @TempDir
    Path folder;

    private Path input;
    private Path output;

    @BeforeEach
    void namesFiles() {
        input = folder.resolve("week.xlsx");
        output = folder.resolve("week-review.xlsx");
    }

    private UserBook annotate(UserBook book, Finding... findings) throws IOException {
        book.writeTo(input);
        AnnotatedWorkbook.write(input, output, ExampleReview.of(3, findings), Wording.POINT);
        return UserBook.read(output);
    }

    private XSSFWorkbook reopened() throws IOException {
        try (InputStream in = Files.newInputStream(output)) {
            return new XSSFWorkbook(in);
        }
    }

    private static Finding at(Severity severity, String sheet, int row, int column) {
        return ExampleReview.finding(severity, "R-001", sheet, row, column);
    }

    private static String withoutStyles(String sheet) {
        return sheet.replaceAll(" s=\"[0-9]+\"", "");
    }

    /** The copy opens on its summary, so that the user's open sheet is closed in it. */
    private static String closed(String sheet) {
        return sheet.replaceAll("tabSelected=\"(true|1)\"", "tabSelected=\"0\"");
    }

    @Test
    void inputStaysAsItWas() throws IOException {
        UserBook.plain().writeTo(input);
        byte[] before = Files.readAllBytes(input);
        AnnotatedWorkbook.write(input, output, ExampleReview.of(1, at(Severity.STOP, "Runs", 2, 3)), Wording.POINT);
        assertArrayEquals(before, Files.readAllBytes(input));
    }

    @Test
    void inputIsNeverTheOutput() throws IOException {
        UserBook.plain().writeTo(input);
        assertThrows(
                IOException.class, () -> AnnotatedWorkbook.write(input, input, ExampleReview.of(1), Wording.POINT));
    }

    /** The standard gives each named style a number of its format, {@code xfId} from 0 (ISO/IEC 29500-1, 18.8.7). */
    @Test
    void everyNamedCellStyleIsKeptAndTheLastToo() throws IOException {
        UserBook book = UserBook.plain();
        String styles = book.text(STYLES)
                .replaceAll("<cellStyleXfs.*</cellStyleXfs>", "")
                .replaceAll("<cellStyles.*</cellStyles>", "");
        int at = styles.indexOf("<cellXfs");
        int behind = styles.indexOf("</cellXfs>") + "</cellXfs>".length();
        String named = "<cellStyles count=\"3\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/>"
                + "<cellStyle name=\"Weighed\" xfId=\"1\"/><cellStyle name=\"Struck\" xfId=\"2\"/></cellStyles>";
        String formats = "<cellStyleXfs count=\"3\"><xf numFmtId=\"0\" fontId=\"0\"/><xf numFmtId=\"2\" fontId=\"0\"/>"
                + "<xf numFmtId=\"4\" fontId=\"0\"/></cellStyleXfs>";
        book.parts()
                .put(
                        STYLES,
                        (styles.substring(0, at)
                                        + formats
                                        + styles.substring(at, behind)
                                        + named
                                        + styles.substring(behind))
                                .getBytes(StandardCharsets.UTF_8));
        String written = annotate(book, at(Severity.STOP, "Runs", 2, 3)).text(STYLES);
        for (String name : List.of("Normal", "Weighed", "Struck")) {
            assertTrue(written.contains("name=\"" + name + "\""), written);
        }
        String kept = written.substring(written.indexOf("<cellStyleXfs"), written.indexOf("</cellStyleXfs>"));
        assertEquals(3, kept.split("<xf ").length - 1, kept);
        assertTrue(kept.contains("numFmtId=\"4\""), kept);
    }

    @Test
    void sheetWithoutFindingsStaysByteForByte() throws IOException {
        UserBook book = UserBook.plain();
        UserBook written = annotate(book, at(Severity.STOP, "Runs", 2, 3));
        assertArrayEquals(book.parts().get(UserBook.LAYERS), written.parts().get(UserBook.LAYERS));
    }

    @Test
    void openSheetIsClosedAndElseStaysCharacterByCharacter() throws IOException {
        UserBook book = UserBook.plain();
        assertNotEquals(closed(book.text(UserBook.RUNS)), book.text(UserBook.RUNS));
        UserBook written = annotate(book, at(Severity.STOP, "Layers", 5, 2));
        assertEquals(closed(book.text(UserBook.RUNS)), written.text(UserBook.RUNS));
    }

    @Test
    void markedSheetChangesOnlyInTheStyleOfTheMarkedCell() throws IOException {
        UserBook book = UserBook.plain();
        UserBook written = annotate(book, at(Severity.STOP, "Runs", 2, 3));
        assertEquals(withoutStyles(closed(book.text(UserBook.RUNS))), withoutStyles(written.text(UserBook.RUNS)));
        assertNotEquals(book.text(UserBook.RUNS), written.text(UserBook.RUNS));
    }

    @Test
    void partsNobodyTouchesStayByteForByte() throws IOException {
        UserBook book = UserBook.plain();
        UserBook written = annotate(book, at(Severity.STOP, "Runs", 2, 3));
        for (String part : List.of("xl/sharedStrings.xml", "docProps/core.xml", "docProps/app.xml")) {
            assertArrayEquals(book.parts().get(part), written.parts().get(part), part);
        }
        assertTrue(written.parts().keySet().containsAll(book.parts().keySet()));
    }

    @Test
    void markKeepsNumberFormatAndAddsFillAndBorder() throws IOException {
        annotate(UserBook.plain(), at(Severity.STOP, "Runs", 2, 3));
        try (XSSFWorkbook workbook = reopened()) {
            XSSFCell cell = workbook.getSheet("Runs").getRow(1).getCell(3);
            assertEquals("0.00%", cell.getCellStyle().getDataFormatString());
            assertEquals(BorderStyle.THICK, cell.getCellStyle().getBorderLeft());
            assertTrue(cell.getCellStyle().getFont().getBold());
            assertEquals(1.1, cell.getNumericCellValue(), 1e-12);
        }
    }

    @Test
    void severitiesDifferInBorderSoThatGreyIsEnough() throws IOException {
        annotate(
                UserBook.plain(),
                at(Severity.STOP, "Runs", 2, 0),
                at(Severity.HOLD, "Runs", 3, 0),
                at(Severity.CHECK, "Runs", 4, 0),
                at(Severity.NOTE, "Runs", 5, 0));
        try (XSSFWorkbook workbook = reopened()) {
            List<BorderStyle> borders = new ArrayList<>();
            for (int row = 1; row < 5; row++) {
                borders.add(workbook.getSheet("Runs")
                        .getRow(row)
                        .getCell(0)
                        .getCellStyle()
                        .getBorderLeft());
            }
            assertEquals(
                    List.of(BorderStyle.THICK, BorderStyle.DOUBLE, BorderStyle.MEDIUM, BorderStyle.DOTTED), borders);
        }
    }

    @Test
    void originalStylesKeepTheirNumbers() throws IOException {
        annotate(UserBook.plain(), at(Severity.STOP, "Runs", 2, 3), at(Severity.NOTE, "Layers", 9, 1));
        try (XSSFWorkbook before = new XSSFWorkbook(Files.newInputStream(input));
                XSSFWorkbook after = reopened()) {
            assertTrue(after.getNumCellStyles() > before.getNumCellStyles());
            for (int i = 0; i < before.getNumCellStyles(); i++) {
                assertEquals(
                        before.getCellStyleAt(i).getCoreXf().toString(),
                        after.getCellStyleAt(i).getCoreXf().toString());
            }
        }
    }

    @Test
    void commentNamesWhatWasReadAndWhatToDo() throws IOException {
        annotate(UserBook.plain(), at(Severity.HOLD, "Layers", 5, 2));
        try (XSSFWorkbook workbook = reopened()) {
            assertEquals(
                    "hold · tare-missing\nRead blank; expected a mass in g\nWeigh the empty vessel and enter its tare."
                            + "\nSee sheet Findings, row 6.",
                    workbook.getSheet("Layers")
                            .getCellComment(new CellAddress("C5"))
                            .getString()
                            .getString());
        }
    }

    /** There and back: the line that a comment names is about its cell, and links to it; the cell itself gets no link. */
    @Test
    void commentNamesTheLineOfTheFindingsSheetThatLinksToItsCell() throws IOException {
        annotate(
                UserBook.plain(),
                at(Severity.STOP, "Runs", 2, 3),
                at(Severity.CHECK, "Runs", 4, 0),
                at(Severity.HOLD, "Layers", 5, 2));
        try (XSSFWorkbook workbook = reopened()) {
            int seen = 0;
            for (String name : List.of("Runs", "Layers")) {
                XSSFSheet sheet = workbook.getSheet(name);
                assertEquals(List.of(), sheet.getHyperlinkList());
                for (var comment : sheet.getCellComments().entrySet()) {
                    Matcher line = Pattern.compile("See sheet Findings, row (\\d+)\\.")
                            .matcher(comment.getValue().getString().getString());
                    while (line.find()) {
                        int row = Integer.parseInt(line.group(1));
                        XSSFCell place =
                                workbook.getSheet("Findings").getRow(row - 1).getCell(3);
                        assertEquals(
                                "'" + name + "'!" + comment.getKey().formatAsString(),
                                place.getHyperlink().getAddress());
                        seen++;
                    }
                }
            }
            assertEquals(3, seen);
        }
    }

    @Test
    void existingCommentIsAddedTo() throws IOException {
        annotate(UserBook.plain(), at(Severity.CHECK, "Runs", 2, 1), at(Severity.CHECK, "Runs", 2, 0));
        try (XSSFWorkbook workbook = reopened()) {
            XSSFSheet runs = workbook.getSheet("Runs");
            String text = runs.getCellComment(new CellAddress("B2")).getString().getString();
            assertTrue(text.startsWith("the user's own words\n--- Workup Tally ---\ncheck · tare-missing"), text);
            assertEquals(
                    "A. N. Other", runs.getCellComment(new CellAddress("B2")).getAuthor());
            assertNotNull(runs.getCellComment(new CellAddress("A2")));
        }
    }

    @Test
    void threadedCommentIsLeftAlone() throws IOException {
        UserBook book = UserBook.plain()
                .with(
                        "xl/threadedComments/threadedComment1.xml",
                        "<ThreadedComments xmlns=\"http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments\">"
                                + "<threadedComment ref=\"B2\" dT=\"2026-03-02T10:00:00.00\" personId=\"{0}\" id=\"{1}\"><text>Why?</text>"
                                + "</threadedComment></ThreadedComments>",
                        StandardCharsets.UTF_8)
                .with(
                        "[Content_Types].xml",
                        types -> types.replace(
                                "</Types>",
                                "<Override PartName=\"/xl/threadedComments/threadedComment1.xml\" "
                                        + "ContentType=\"application/vnd.ms-excel.threadedcomments+xml\"/></Types>"))
                .with(
                        "xl/worksheets/_rels/sheet1.xml.rels",
                        rels -> rels.replace(
                                "</Relationships>",
                                "<Relationship Id=\"rId77\" Target=\"../threadedComments/threadedComment1.xml\" "
                                        + "Type=\"http://schemas.microsoft.com/office/2017/10/relationships/threadedComment\"/>"
                                        + "</Relationships>"));
        UserBook written = annotate(book, at(Severity.CHECK, "Runs", 2, 1));
        String thread = "xl/threadedComments/threadedComment1.xml";
        assertArrayEquals(book.parts().get(thread), written.parts().get(thread));
        try (XSSFWorkbook workbook = reopened()) {
            XSSFSheet runs = workbook.getSheet("Runs");
            assertEquals(
                    "the user's own words",
                    runs.getCellComment(new CellAddress("B2")).getString().getString());
            assertEquals(
                    BorderStyle.MEDIUM, runs.getRow(1).getCell(1).getCellStyle().getBorderLeft());
        }
    }

    @Test
    void missingCellsAndRowsComeInInOrder() throws IOException {
        annotate(
                UserBook.plain(),
                at(Severity.STOP, "Runs", 2, 2),
                at(Severity.STOP, "Layers", 3, 1),
                at(Severity.STOP, "Layers", 5, 0),
                at(Severity.STOP, "Layers", 5, 4),
                at(Severity.STOP, "Layers", 9, 1));
        String layers = UserBook.read(output).text(UserBook.LAYERS);
        List<String> references = new ArrayList<>();
        java.util.regex.Matcher cells =
                java.util.regex.Pattern.compile("<c r=\"([A-Z0-9]+)\"").matcher(layers);
        while (cells.find()) {
            references.add(cells.group(1));
        }
        assertEquals(List.of("A1", "B3", "A5", "C5", "E5", "B9"), references);
        try (XSSFWorkbook workbook = reopened()) {
            assertEquals(
                    BorderStyle.THICK,
                    workbook.getSheet("Runs")
                            .getRow(1)
                            .getCell(2)
                            .getCellStyle()
                            .getBorderLeft());
        }
    }

    @Test
    void missingCellTakesTheStyleOfItsColumn() throws IOException {
        UserBook book = UserBook.plain()
                .with(
                        UserBook.LAYERS,
                        xml -> xml.replaceFirst(
                                "<sheetData>",
                                "<cols><col min=\"2\" max=\"3\" width=\"9\" style=\"1\"/></cols><sheetData>"));
        annotate(book, at(Severity.STOP, "Layers", 3, 1));
        try (XSSFWorkbook workbook = reopened()) {
            assertEquals(
                    "0.00%",
                    workbook.getSheet("Layers")
                            .getRow(2)
                            .getCell(1)
                            .getCellStyle()
                            .getDataFormatString());
        }
    }

    @Test
    void rowsAndCellsWithoutReferencesAreCounted() throws IOException {
        UserBook book = UserBook.plain()
                .with(
                        UserBook.LAYERS,
                        xml -> xml.replaceFirst(
                                "<sheetData>.*</sheetData>",
                                "<sheetData><row><c><v>1</v></c><c><v>2</v></c></row><row><c><v>3</v></c><c><v>4</v></c></row></sheetData>"));
        UserBook written = annotate(book, at(Severity.STOP, "Layers", 2, 1), at(Severity.STOP, "Layers", 2, 3));
        assertTrue(
                written.text(UserBook.LAYERS)
                        .matches("(?s).*<c><v>3</v></c><c s=\"\\d+\"><v>4</v></c><c r=\"D2\" s=\"\\d+\"/></row>.*"),
                written.text(UserBook.LAYERS));
    }

    @Test
    void prefixedElementsStayPrefixed() throws IOException {
        UserBook book = UserBook.plain()
                .with(
                        UserBook.LAYERS,
                        "<?xml version=\"1.0\"?><x:worksheet xmlns:x=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                                + "<x:sheetData><x:row r='2'><x:c r='B2'><x:v>7</x:v></x:c></x:row></x:sheetData></x:worksheet>",
                        StandardCharsets.UTF_8);
        UserBook written = annotate(book, at(Severity.STOP, "Layers", 2, 1), at(Severity.STOP, "Layers", 4, 0));
        String sheet = written.text(UserBook.LAYERS);
        assertTrue(sheet.contains("<x:row r=\"4\"><x:c r=\"A4\" s="), sheet);
        assertTrue(sheet.contains("<x:legacyDrawing"), sheet);
        try (XSSFWorkbook workbook = reopened()) {
            assertEquals(7, workbook.getSheet("Layers").getRow(1).getCell(1).getNumericCellValue(), 1e-12);
            assertNotNull(workbook.getSheet("Layers").getCellComment(new CellAddress("A4")));
        }
    }

    @Test
    void emptySheetDataIsFilled() throws IOException {
        UserBook book = UserBook.plain()
                .with(UserBook.LAYERS, xml -> xml.replaceFirst("<sheetData>.*</sheetData>", "<sheetData/>"));
        UserBook written = annotate(book, at(Severity.STOP, "Layers", 2, 1));
        assertTrue(written.text(UserBook.LAYERS)
                .matches("(?s).*<sheetData><row r=\"2\"><c r=\"B2\" s=\"\\d+\"/></row></sheetData>.*"));
    }

    @Test
    void wideCharactersBecomeNarrowOnesWithTheSameText() throws IOException {
        UserBook plain = UserBook.plain();
        UserBook book = plain.with(
                UserBook.LAYERS,
                "\uFEFF"
                        + plain.text(UserBook.LAYERS)
                                .replace("UTF-8", "UTF-16")
                                .replaceFirst("<v>12.5</v>", "<!-- Ω µ --><v>12.5</v>"),
                StandardCharsets.UTF_16LE);
        UserBook written = annotate(book, at(Severity.STOP, "Layers", 5, 2));
        assertTrue(written.text(UserBook.LAYERS).contains("<!-- Ω µ -->"));
        assertTrue(written.text(UserBook.LAYERS).contains("encoding=\"UTF-8\""));
        try (XSSFWorkbook workbook = reopened()) {
            assertEquals(12.5, workbook.getSheet("Layers").getRow(4).getCell(2).getNumericCellValue(), 1e-12);
        }
    }

    @Test
    void conditionalFormatOverAMarkLeavesTheBorderAndTheComment() throws IOException {
        UserBook written = annotate(UserBook.plain(), at(Severity.STOP, "Runs", 3, 3));
        assertTrue(written.text(UserBook.RUNS).contains("<conditionalFormatting sqref=\"D2:D4\">"));
        try (XSSFWorkbook workbook = reopened()) {
            XSSFSheet runs = workbook.getSheet("Runs");
            assertEquals(
                    BorderStyle.THICK, runs.getRow(2).getCell(3).getCellStyle().getBorderLeft());
            assertNotNull(runs.getCellComment(new CellAddress("D3")));
            assertEquals(1, runs.getSheetConditionalFormatting().getNumConditionalFormattings());
        }
    }

    @Test
    void firstCommentsLeaveNoEmptyDrawingBehind() throws IOException {
        UserBook book = UserBook.plain();
        UserBook written = annotate(book, at(Severity.STOP, "Layers", 5, 2));
        assertFalse(written.text(UserBook.LAYERS).contains("<drawing"));
        assertFalse(written.text("xl/worksheets/_rels/sheet2.xml.rels").contains("relationships/drawing\""));
    }

    @Test
    void resultSheetsStepAsideForTheUsersOwn() throws IOException {
        UserBook book =
                UserBook.plain().with("xl/workbook.xml", xml -> xml.replace("name=\"Layers\"", "name=\"summary\""));
        annotate(book, at(Severity.STOP, "Runs", 2, 3));
        try (XSSFWorkbook workbook = reopened()) {
            assertEquals("summary", workbook.getSheetName(1));
            assertNotNull(workbook.getSheet("Summary (review)"));
        }
    }

    /** Every list of the styles part is optional (ISO/IEC 29500-1, 18.8.39). */
    @ParameterizedTest
    @ValueSource(strings = {"", "<fonts><font/></fonts>", "<cellXfs><xf/></cellXfs>", "<fills/><borders/><cellXfs/>"})
    void bareStylesAreCompleted(String lists) throws IOException {
        UserBook book = UserBook.plain();
        book.parts()
                .put(
                        STYLES,
                        ("<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">" + lists
                                        + "</styleSheet>")
                                .getBytes(StandardCharsets.UTF_8));
        annotate(book, at(Severity.STOP, "Runs", 2, 3));
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(output))) {
            XSSFCellStyle marked =
                    workbook.getSheet("Runs").getRow(1).getCell(3).getCellStyle();
            assertEquals(BorderStyle.THICK, marked.getBorderLeft());
        }
    }

    /** The content type of an ending stands for all parts that have none of their own (ISO/IEC 29500-2, 10.1.2.4). */
    @Test
    void sheetWhoseTypeStandsOnceForItsEndingIsMarked() throws IOException {
        String sheet = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
        UserBook book = UserBook.plain()
                .with(
                        "[Content_Types].xml",
                        types -> types.replaceAll("<Default [^>]*Extension=\"xml\"[^>]*>", "")
                                .replaceAll("<Override [^>]*worksheet\\+xml[^>]*>", "")
                                .replaceFirst(
                                        "(<Types[^>]*>)",
                                        "$1<Default Extension=\"xml\" ContentType=\"" + sheet + "\"/>"));
        annotate(book, at(Severity.STOP, "Runs", 2, 3));
        try (XSSFWorkbook workbook = reopened()) {
            assertNotNull(workbook.getSheet("Runs").getCellComment(new CellAddress("D2")));
        }
    }

    @Test
    void linksOutOfTheBookStayAsTheyWereWritten() throws IOException {
        String target = "file:///C:\\Users\\me\\My lab.xlsx#Sheet 1!A1?x=1&amp;y=\u00fc";
        UserBook book = UserBook.plain();
        String list = "xl/worksheets/_rels/" + UserBook.RUNS.substring(UserBook.RUNS.lastIndexOf('/') + 1) + ".rels";
        String link =
                "<Relationship Id=\"h1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/hyperlink\""
                        + " Target=\"" + target + "\" TargetMode=\"External\"/>";
        book.parts()
                .put(
                        list,
                        book.text(list)
                                .replace("</Relationships>", link + "</Relationships>")
                                .getBytes(StandardCharsets.UTF_8));
        assertTrue(annotate(book, at(Severity.STOP, "Runs", 2, 3)).text(list).contains("Target=\"" + target + "\""));
    }

    @Test
    void reviewOfAReviewHasNamesOfItsOwn() throws IOException {
        annotate(UserBook.plain(), at(Severity.STOP, "Runs", 2, 3));
        Path again = folder.resolve("again.xlsx");
        AnnotatedWorkbook.write(output, again, ExampleReview.of(1, at(Severity.STOP, "Runs", 2, 3)), Wording.POINT);
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(again))) {
            assertNotNull(workbook.getSheet("Findings (review)"));
            assertNotNull(workbook.getTable("Tally_Findings"));
            assertNotNull(workbook.getTable("Tally_Findings_2"));
        }
    }

    /** ISO/IEC 29500-1 names the same elements by other namespaces than part 4. */
    @Test
    void strictVariantComesOutAsTheTransitionalOneDoes() throws IOException {
        UserBook transitional = UserBook.plain();
        UserBook strict = transitional;
        for (String part : transitional.parts().keySet()) {
            if (part.endsWith(".xml") || part.endsWith(".rels")) {
                strict = strict.with(
                        part,
                        text -> text.replace(
                                        "http://schemas.openxmlformats.org/officeDocument/2006/relationships/extended-properties",
                                        "http://purl.oclc.org/ooxml/officeDocument/relationships/extendedProperties")
                                .replace(
                                        "http://schemas.openxmlformats.org/officeDocument/2006/extended-properties",
                                        "http://purl.oclc.org/ooxml/officeDocument/extendedProperties")
                                .replaceAll(
                                        "http://schemas.openxmlformats.org/(officeDocument|spreadsheetml|drawingml)/2006/",
                                        "http://purl.oclc.org/ooxml/$1/"));
            }
        }
        assertTrue(strict.text(UserBook.RUNS).contains("purl.oclc.org"));
        Review review = ExampleReview.of(1, at(Severity.STOP, "Runs", 2, 3));
        AnnotatedWorkbook.write(transitional.writeTo(input), output, review, Wording.POINT);
        Map<String, byte[]> expected = UserBook.read(output).parts();
        Files.delete(output);
        AnnotatedWorkbook.write(strict.writeTo(input), output, review, Wording.POINT);
        Map<String, byte[]> written = UserBook.read(output).parts();
        assertEquals(expected.keySet(), written.keySet());
        expected.forEach((part, bytes) -> assertArrayEquals(bytes, written.get(part), part));
        try (Stream<Path> left = Files.list(output.getParent())) {
            assertTrue(left.noneMatch(file -> file.toString().endsWith(".transitional")));
        }
    }

    @Test
    void documentTypeDeclarationIsRefused() throws IOException {
        UserBook.plain()
                .with(
                        UserBook.LAYERS,
                        xml -> xml.replaceFirst("<worksheet", "<!DOCTYPE w [<!ENTITY a 'b'>]><worksheet"))
                .writeTo(input);
        assertThrows(
                IOException.class, () -> AnnotatedWorkbook.write(input, output, ExampleReview.of(1), Wording.POINT));
    }

    @Test
    void macrosStay() throws IOException {
        UserBook book = UserBook.plain()
                .with("xl/vbaProject.bin", "not a real project", StandardCharsets.UTF_8)
                .with(
                        "[Content_Types].xml",
                        types -> types.replace(
                                        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
                                        "application/vnd.ms-excel.sheet.macroEnabled.main+xml")
                                .replace(
                                        "</Types>",
                                        "<Override PartName=\"/xl/vbaProject.bin\" "
                                                + "ContentType=\"application/vnd.ms-office.vbaProject\"/></Types>"))
                .with(
                        "xl/_rels/workbook.xml.rels",
                        rels -> rels.replace(
                                "</Relationships>",
                                "<Relationship Id=\"rId99\" Target=\"vbaProject.bin\" "
                                        + "Type=\"http://schemas.microsoft.com/office/2006/relationships/vbaProject\"/></Relationships>"));
        UserBook written = annotate(book, at(Severity.STOP, "Runs", 2, 3));
        assertArrayEquals(book.parts().get("xl/vbaProject.bin"), written.parts().get("xl/vbaProject.bin"));
        try (XSSFWorkbook workbook = reopened()) {
            assertTrue(workbook.isMacroEnabled());
        }
    }

    @Test
    void commentsAreCappedWhileEveryCellIsMarked() throws IOException {
        List<Finding> findings = new ArrayList<>();
        for (int row = 1; row <= FindingComments.MOST; row++) {
            findings.add(at(Severity.NOTE, "Layers", row, 5));
        }
        findings.add(at(Severity.STOP, "Layers", 900, 5));
        annotate(UserBook.plain(), findings.toArray(Finding[]::new));
        try (XSSFWorkbook workbook = reopened()) {
            XSSFSheet layers = workbook.getSheet("Layers");
            assertEquals(FindingComments.MOST, layers.getCellComments().size());
            assertNotNull(layers.getCellComment(new CellAddress("F900")));
            assertNull(layers.getCellComment(new CellAddress(FindingComments.MOST - 1, 5)));
            assertEquals(
                    BorderStyle.DOTTED,
                    layers.getRow(FindingComments.MOST - 1)
                            .getCell(5)
                            .getCellStyle()
                            .getBorderLeft());
        }
    }

    @Test
    void findingsWithoutACellMarkNothing() throws IOException {
        UserBook book = UserBook.plain();
        UserBook written = annotate(book, at(Severity.STOP, "Runs", 0, 0), at(Severity.STOP, "No such sheet", 2, 0));
        assertEquals(closed(book.text(UserBook.RUNS)), written.text(UserBook.RUNS));
        assertArrayEquals(book.parts().get(UserBook.LAYERS), written.parts().get(UserBook.LAYERS));
    }

    @Test
    void sameInputGivesTheSameBytes() throws IOException {
        annotate(UserBook.plain(), at(Severity.STOP, "Runs", 2, 3), at(Severity.NOTE, "Layers", 7, 1));
        byte[] first = Files.readAllBytes(output);
        AnnotatedWorkbook.write(
                input,
                output,
                ExampleReview.of(3, at(Severity.STOP, "Runs", 2, 3), at(Severity.NOTE, "Layers", 7, 1)),
                Wording.POINT);
        Map<String, byte[]> parts = UserBook.read(output).parts();
        assertFalse(parts.isEmpty());
        assertArrayEquals(first, Files.readAllBytes(output));
    }
}
