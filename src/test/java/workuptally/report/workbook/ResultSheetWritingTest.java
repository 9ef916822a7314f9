package workuptally.report.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.PaneInformation;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTTwoCellAnchor;
import workuptally.model.Severity;
import workuptally.report.ExampleReview;
import workuptally.report.view.sheets.ReviewTables;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Wording;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ResultSheetWritingTest {
    private XSSFWorkbook workbook;
    private List<TableView> tables;

    @BeforeAll
    void writesOneBook(@TempDir Path folder) throws IOException {
        Path input = UserBook.plain().writeTo(folder.resolve("week.xlsx"));
        Path output = folder.resolve("week-review.xlsx");
        var review = ExampleReview.of(
                50,
                ExampleReview.finding(Severity.STOP, "R-001", "Runs", 2, 3),
                ExampleReview.finding(Severity.NOTE, "R-002", "LAYERS", 5, 2));
        AnnotatedWorkbook.write(input, output, review, Wording.POINT);
        workbook = new XSSFWorkbook(Files.newInputStream(output));
        tables = ReviewTables.of(review, Wording.POINT);
    }

    @AfterAll
    void closesIt() throws IOException {
        workbook.close();
    }

    private XSSFCell cell(String sheet, String heading, int row) {
        XSSFTable table = workbook.getSheet(sheet).getTables().get(0);
        int column = table.findColumnIndex(heading);
        assertTrue(column >= 0, heading);
        return workbook.getSheet(sheet)
                .getRow(table.getStartRowIndex() + 1 + row)
                .getCell(column);
    }

    @Test
    void everyTableIsASpreadsheetTableWithAllItsRows() {
        for (TableView view : tables) {
            XSSFTable table = workbook.getSheet(view.title()).getTables().get(0);
            assertEquals(view.columns().size(), table.getColumnCount(), view.title());
            // A spreadsheet table has a row at least, which stays blank where there is nothing to show.
            assertEquals(
                    Math.max(1, view.rows().size()), table.getEndRowIndex() - table.getStartRowIndex(), view.title());
            assertNotNull(table.getCTTable().getAutoFilter(), view.title());
            for (int i = 0; i < table.getColumnCount(); i++) {
                String heading = view.columns().get(i).heading();
                assertEquals(heading, table.getColumns().get(i).getName());
                assertEquals(
                        heading,
                        workbook.getSheet(view.title())
                                .getRow(table.getStartRowIndex())
                                .getCell(i)
                                .getStringCellValue());
            }
        }
    }

    @Test
    void userSheetsStayInFrontAndTheSummaryAloneIsOpen() {
        assertEquals("Runs", workbook.getSheetName(0));
        assertEquals("Layers", workbook.getSheetName(1));
        assertEquals("Summary", workbook.getSheetName(2));
        assertEquals(2, workbook.getActiveSheetIndex());
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            assertEquals(i == 2, workbook.getSheetAt(i).isSelected(), workbook.getSheetName(i));
        }
    }

    @Test
    void numberKeepsItsValueAndShowsTheDecimalsOfItsUncertainty() {
        XSSFCell yield = cell("Yields", "Yield (%)", 0);
        assertEquals(80.02, yield.getNumericCellValue(), 1e-9);
        assertEquals("0.00", yield.getCellStyle().getDataFormatString());
    }

    @Test
    void textThatLooksLikeAFormulaIsText() {
        XSSFCell reaction = cell("Summary", "Reaction", 0);
        assertEquals(CellType.STRING, reaction.getCellType());
        assertEquals("=esterification 1", reaction.getStringCellValue());
        assertTrue(reaction.getCellStyle().getQuotePrefixed());
    }

    @Test
    void findingIsLinkedToItsCellWhateverTheCaseOfTheSheetName() {
        assertEquals("'Runs'!D2", cell("Findings", "Place", 0).getHyperlink().getLocation());
        assertEquals("'Layers'!C5", cell("Findings", "Place", 1).getHyperlink().getLocation());
    }

    @Test
    void summaryIsLinkedToTheFirstFindingOfTheRun() {
        XSSFTable findings = workbook.getSheet("Findings").getTables().get(0);
        String second = "'Findings'!A" + (findings.getStartRowIndex() + 3);
        assertEquals(second, cell("Summary", "Findings", 1).getHyperlink().getLocation());
    }

    @Test
    void severityIsAWordAndAFill() {
        XSSFCell severity = cell("Findings", "Severity", 0);
        assertEquals("stop", severity.getStringCellValue());
        assertNotNull(severity.getCellStyle().getFillForegroundColorColor());
    }

    @Test
    void printsAcrossThePageWithRepeatedHeadings() {
        for (TableView view : tables) {
            XSSFSheet sheet = workbook.getSheet(view.title());
            assertTrue(sheet.getPrintSetup().getLandscape(), view.title());
            assertTrue(sheet.getFitToPage(), view.title());
            assertEquals(1, sheet.getPrintSetup().getFitWidth(), view.title());
            assertEquals(0, sheet.getPrintSetup().getFitHeight(), view.title());
            assertEquals("&P of &N", sheet.getFooter().getRight(), view.title());
            int heading = sheet.getTables().get(0).getStartRowIndex();
            assertEquals(heading, sheet.getRepeatingRows().getFirstRow(), view.title());
            if (heading < 9) {
                assertEquals(heading + 1, sheet.getPaneInformation().getHorizontalSplitTopRow(), view.title());
            }
        }
    }

    @Test
    void chartsStandOnTheirSheets() {
        for (String sheet : List.of("Summary", "Yields", "Solvent totals", "Waste totals")) {
            assertEquals(
                    1,
                    workbook.getSheet(sheet).getDrawingPatriarch().getCharts().size(),
                    sheet);
        }
        String title = workbook.getSheet("Yields")
                .getDrawingPatriarch()
                .getCharts()
                .get(0)
                .getTitleText()
                .getString();
        assertTrue(title.endsWith("first 40 lines"), title);
    }

    /** A screen reader reads the name of a frame, then its description. */
    @Test
    void chartsHaveSpeakingNamesAndTextsThatStandForThem() {
        Set<String> names = new HashSet<>();
        for (Sheet sheet : workbook) {
            XSSFDrawing drawing = ((XSSFSheet) sheet).getDrawingPatriarch();
            for (CTTwoCellAnchor anchor : drawing == null
                    ? List.<CTTwoCellAnchor>of()
                    : drawing.getCTDrawing().getTwoCellAnchorList()) {
                if (anchor.isSetGraphicFrame()) {
                    CTNonVisualDrawingProps frame =
                            anchor.getGraphicFrame().getNvGraphicFramePr().getCNvPr();
                    assertTrue(frame.getName().startsWith("Chart: "), frame.getName());
                    assertTrue(names.add(frame.getName()), frame.getName());
                    assertTrue(frame.getDescr().contains("figures stand in"), frame.getDescr());
                }
            }
        }
        assertTrue(names.size() >= 4, names.toString());
    }

    /** Of a screen of about 30 rows at least 20 are left to scroll. */
    @Test
    void rowsHeldInViewLeaveRoomToScroll() {
        for (Sheet sheet : workbook) {
            PaneInformation pane = sheet.getPaneInformation();
            assertTrue(pane == null || pane.getHorizontalSplitPosition() < 10, sheet.getSheetName());
        }
    }

    @Test
    void tableWithoutRowsSaysNone(@TempDir Path folder) throws IOException {
        Path input = UserBook.plain().writeTo(folder.resolve("empty.xlsx"));
        Path output = folder.resolve("empty-review.xlsx");
        AnnotatedWorkbook.write(input, output, ExampleReview.of(0), Wording.POINT);
        try (XSSFWorkbook empty = new XSSFWorkbook(Files.newInputStream(output))) {
            XSSFSheet findings = empty.getSheet("Findings");
            int heading = findings.getTables().get(0).getStartRowIndex();
            assertEquals("none", findings.getRow(heading + 1).getCell(0).getStringCellValue());
        }
    }
}
