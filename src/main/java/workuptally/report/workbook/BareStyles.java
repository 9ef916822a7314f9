package workuptally.report.workbook;

import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.extensions.XSSFCellBorder;
import org.apache.poi.xssf.usermodel.extensions.XSSFCellFill;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTFill;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTXf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STPatternType;

/**
 * The lists that a book may leave out of its styles part (ISO/IEC 29500-1, 18.8.39: fonts, fills, borders and cell formats are optional), with
 * the entries that spreadsheet programs take in their place. The library looks cells' styles up in them without asking whether they are there.
 */
final class BareStyles {
    private BareStyles() {}

    /** Adds the first entry of each list that is empty. */
    static void complete(XSSFWorkbook workbook) {
        StylesTable styles = workbook.getStylesSource();
        if (styles.getFonts().isEmpty()) {
            new XSSFFont().registerTo(styles);
        }
        if (styles.getFills().isEmpty()) {
            styles.putFill(fill(STPatternType.NONE));
            styles.putFill(fill(STPatternType.GRAY_125));
        }
        if (styles.getBorders().isEmpty()) {
            styles.putBorder(new XSSFCellBorder());
        }
        if (styles.getCellStyleXfAt(0) == null) {
            styles.putCellStyleXf(CTXf.Factory.newInstance());
        }
        if (workbook.getNumCellStyles() == 0) {
            workbook.createCellStyle();
        }
    }

    private static XSSFCellFill fill(STPatternType.Enum pattern) {
        CTFill fill = CTFill.Factory.newInstance();
        fill.addNewPatternFill().setPatternType(pattern);
        return new XSSFCellFill(fill, null);
    }
}
