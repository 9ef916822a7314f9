package workuptally.report.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.model.Severity;
import workuptally.report.ExampleReview;
import workuptally.report.view.wording.Wording;

/** Opens the annotated workbook with a program that shares no code with the library that wrote it. */
@Tag("slow")
class LibreOfficeTest {
    @TempDir
    Path folder;

    @Test
    void annotatedWorkbookOpensAndKeepsItsSheets() throws IOException, InterruptedException {
        Path input = UserBook.plain().writeTo(folder.resolve("week.xlsx"));
        Path output = folder.resolve("week-review.xlsx");
        AnnotatedWorkbook.write(
                input,
                output,
                ExampleReview.of(
                        3,
                        ExampleReview.finding(Severity.STOP, "R-001", "Runs", 2, 3),
                        ExampleReview.finding(Severity.HOLD, "R-002", "Layers", 3, 1)),
                Wording.POINT);
        Path saved = LibreOffice.resave(output, folder.resolve("resaved"), LibreOffice.Recalculation.NEVER);
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(saved))) {
            assertEquals(25, workbook.getNumberOfSheets());
            assertEquals(1.1, workbook.getSheet("Runs").getRow(1).getCell(3).getNumericCellValue(), 1e-12);
            assertEquals(
                    "a < b & c", workbook.getSheet("Runs").getRow(1).getCell(1).getStringCellValue());
            String comment = workbook.getSheet("Layers")
                    .getCellComment(new org.apache.poi.ss.util.CellAddress("B3"))
                    .getString()
                    .getString();
            assertTrue(comment.contains("hold · tare-missing"), comment);
            assertEquals(
                    1,
                    workbook.getSheet("Yields")
                            .getDrawingPatriarch()
                            .getCharts()
                            .size());
        }
    }
}
