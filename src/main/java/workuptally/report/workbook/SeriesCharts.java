package workuptally.report.workbook;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import workuptally.report.view.sheets.SeriesSection;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.TableView;

/** A native control chart for each series: its points in order, with mean and limits. Lines differ in dash as well as in colour. */
final class SeriesCharts {
    /** More are not looked at; the table has them all. */
    private static final int MOST_CHARTS = 6;

    private static final int ROWS_BETWEEN = 1;
    private static final double MARGIN_PERCENT = 5;
    private static final short MARKER_SIZE = 6;

    private final XSSFWorkbook workbook;
    private final ResultSheet data;
    private final List<TableView.Row> rows;

    private SeriesCharts(XSSFWorkbook workbook, ResultSheet data) {
        this.workbook = workbook;
        this.data = data;
        this.rows = data.survey().firstRows();
    }

    /** Draws the charts where there is a table of series. */
    static void draw(XSSFWorkbook workbook, List<ResultSheet> sheets) {
        sheets.stream()
                .filter(sheet -> sheet.view().title().equals(SeriesSection.TITLE))
                .forEach(sheet -> new SeriesCharts(workbook, sheet).draw());
    }

    private void draw() {
        XSSFSheet sheet = workbook.getSheet(data.sheetName());
        if (!new SheetLayout(data).hasRoomBelow(data, ResultCharts.ROWS_HIGH)) {
            sheet.setRowBreak(ResultCharts.firstRow(data) - 1);
        }
        int first = 0;
        for (int chart = 0; chart < MOST_CHARTS && first < rows.size(); chart++) {
            int last = lastOf(first);
            draw(sheet, first, last, ResultCharts.firstRow(data) + chart * (ResultCharts.ROWS_HIGH + ROWS_BETWEEN));
            first = last + 1;
        }
    }

    private int lastOf(int first) {
        int last = first;
        while (last + 1 < rows.size() && name(last + 1).equals(name(first))) {
            last++;
        }
        return last;
    }

    private String name(int row) {
        return rows.get(row).cells().get(0).shown();
    }

    private void draw(XSSFSheet sheet, int first, int last, int atRow) {
        XSSFChart chart = sheet.createDrawingPatriarch()
                .createChart(new XSSFClientAnchor(
                        0, 0, 0, 0, 0, atRow, ResultCharts.COLUMNS_WIDE, atRow + ResultCharts.ROWS_HIGH));
        chart.setTitleText("Series " + name(first) + ": yields in order, with mean and limits (%)");
        ChartFrame.name(
                chart,
                "Series " + name(first),
                "Lines: yields of series " + name(first) + " in order, " + (last - first + 1)
                        + " points, with mean and limits, %; the figures stand in the table on sheet "
                        + data.sheetName()
                        + ".");
        ResultCharts.inEnglish(chart.getCTChart().getTitle().getTx().getRich());
        chart.getCTChart()
                .getTitle()
                .getTx()
                .getRich()
                .getPArray(0)
                .getRArray(0)
                .getRPr()
                .setSz(ResultCharts.TITLE_HUNDREDTHS_OF_POINT);
        chart.setTitleOverlay(false);
        chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        XDDFCategoryAxis points = chart.createCategoryAxis(AxisPosition.BOTTOM);
        XDDFValueAxis values = chart.createValueAxis(AxisPosition.LEFT);
        values.setTitle("yield (%)");
        ResultCharts.inEnglish(chart.getCTChart()
                .getPlotArea()
                .getValAxArray(0)
                .getTitle()
                .getTx()
                .getRich());
        values.setNumberFormat("General");
        values.setMinimum(Math.floor((lowest(first, last) - MARGIN_PERCENT) / 10) * 10);
        values.getOrAddMajorGridProperties()
                .setLineProperties(
                        new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(PresetColor.LIGHT_GRAY))));
        XDDFLineChartData lines = (XDDFLineChartData) chart.createData(ChartTypes.LINE, points, values);
        XDDFDataSource<String> labels = labels(first, last);
        add(lines, labels, SeriesSection.YIELD, PresetLineDash.SOLID, 0x0072B2, first, last)
                .setMarkerStyle(MarkerStyle.CIRCLE);
        add(lines, labels, SeriesSection.CENTRE, PresetLineDash.SOLID, 0x000000, first, last)
                .setMarkerStyle(MarkerStyle.NONE);
        add(lines, labels, SeriesSection.LOWER, PresetLineDash.DASH, 0xD55E00, first, last)
                .setMarkerStyle(MarkerStyle.NONE);
        add(lines, labels, SeriesSection.UPPER, PresetLineDash.DASH, 0xD55E00, first, last)
                .setMarkerStyle(MarkerStyle.NONE);
        chart.plot(lines);
    }

    private XDDFLineChartData.Series add(
            XDDFLineChartData lines,
            XDDFDataSource<String> labels,
            String column,
            PresetLineDash dash,
            int colour,
            int first,
            int last) {
        XDDFLineChartData.Series series =
                (XDDFLineChartData.Series) lines.addSeries(labels, numbers(column, first, last));
        series.setTitle(column, null);
        series.setSmooth(false);
        series.setMarkerSize(MARKER_SIZE);
        XDDFLineProperties line = new XDDFLineProperties(new XDDFSolidFillProperties(ResultCharts.rgb(colour)));
        line.setPresetDash(new XDDFPresetLineDash(dash));
        line.setWidth(1.5);
        series.setLineProperties(line);
        return series;
    }

    private double lowest(int first, int last) {
        return IntStream.rangeClosed(first, last)
                .boxed()
                .flatMap(row -> IntStream.of(data.column(SeriesSection.YIELD), data.column(SeriesSection.LOWER))
                        .mapToObj(column -> rows.get(row).cells().get(column)))
                .filter(Cell.Number.class::isInstance)
                .mapToDouble(cell -> ((Cell.Number) cell).value())
                .min()
                .orElse(0);
    }

    private XDDFDataSource<String> labels(int first, int last) {
        int column = data.column(SeriesSection.POINT);
        String[] texts = IntStream.rangeClosed(first, last)
                .mapToObj(row -> rows.get(row).cells().get(column).shown())
                .toArray(String[]::new);
        return XDDFDataSourcesFactory.fromArray(texts, range(column, first, last), column);
    }

    private XDDFNumericalDataSource<Double> numbers(String name, int first, int last) {
        int column = data.column(name);
        Double[] values = IntStream.rangeClosed(first, last)
                .mapToObj(row -> rows.get(row).cells().get(column))
                .map(cell -> cell instanceof Cell.Number number ? Double.valueOf(number.value()) : null)
                .toArray(Double[]::new);
        return XDDFDataSourcesFactory.fromArray(values, range(column, first, last), column);
    }

    private String range(int column, int first, int last) {
        return new CellRangeAddress(data.firstRow() + first, data.firstRow() + last, column, column)
                .formatAsString(data.sheetName(), true);
    }
}
