package workuptally.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the review is timed against does the same work: the same sheets, formulas and names. */
@Tag("slow")
class AnnotationsTest {
    @Test
    void theLibraryAloneBringsTheDemoWeekToTheStateOfItsReview(@TempDir Path folder) throws Exception {
        String book = "input-templates/demo-week.xlsx";
        String reviewed = "output-samples/demo-week-review.xlsx";
        String annotations = folder.resolve("week.annotations").toString();
        String plain = folder.resolve("plain.xlsx").toString();
        Annotations.main(new String[] {book, reviewed, annotations});
        PlainPoi.main(new String[] {book, annotations, plain});
        try (XSSFWorkbook made = open(plain);
                XSSFWorkbook ours = open(reviewed)) {
            assertEquals(ours.getNumberOfSheets(), made.getNumberOfSheets());
            assertEquals(names(ours), names(made));
            assertEquals(
                    ours.getSheet("Yields").getRow(8).getLastCellNum(),
                    made.getSheet("Yields").getRow(8).getLastCellNum());
        }
    }

    private static Set<String> names(XSSFWorkbook workbook) {
        return workbook.getAllNames().stream().map(Name::getNameName).collect(Collectors.toCollection(TreeSet::new));
    }

    private static XSSFWorkbook open(String file) throws Exception {
        return new XSSFWorkbook(OPCPackage.open(new File(file), PackageAccess.READ));
    }
}
