package workuptally.report.workbook;

import org.apache.poi.xssf.usermodel.XSSFChart;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;

/** What a reader of the screen hears of a chart: a name that speaks and a text that stands for it. */
final class ChartFrame {
    private ChartFrame() {}

    /**
     * Names a chart.
     *
     * @param title what it shows, its title
     * @param description where its figures stand
     */
    static void name(XSSFChart chart, String title, String description) {
        CTNonVisualDrawingProps properties = chart.getGraphicFrame()
                .getCTGraphicalObjectFrame()
                .getNvGraphicFramePr()
                .getCNvPr();
        properties.setName("Chart: " + title);
        properties.setDescr(description);
    }
}
