package workuptally.report.workbook;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.PresetPattern;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFColorRgbBinary;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPatternFillProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBarSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTErrBars;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumData;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumRef;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumVal;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrBarType;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrDir;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrValType;
import org.openxmlformats.schemas.drawingml.x2006.main.CTLineProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextBody;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextParagraph;
import workuptally.report.view.sheets.ClosuresSection;
import workuptally.report.view.sheets.SeriesSection;
import workuptally.report.view.sheets.SolventTotalsSection;
import workuptally.report.view.sheets.SummarySection;
import workuptally.report.view.sheets.WasteTotalsSection;
import workuptally.report.view.sheets.YieldsSection;
import workuptally.report.view.tables.Cell;

/**
 * Native charts below the tables: planned against found yield, product by place, solvents, waste. Colours are those of Okabe and Ito
 * with a pattern of their own, so that a chart printed in grey can be read.
 */
final class ResultCharts {
    /** More bars cannot be read. */
    private static final int MOST_BARS = 40;

    static final int TITLE_HUNDREDTHS_OF_POINT = 1200;
    private static final int WHISKER_EMU = 12700;
    static final int COLUMNS_WIDE = 7;
    static final int ROWS_HIGH = 22;
    static final int ROWS_BELOW_TABLE = 2;

    private final XSSFWorkbook workbook;
    private final List<ResultSheet> sheets;

    private ResultCharts(XSSFWorkbook workbook, List<ResultSheet> sheets) {
        this.workbook = workbook;
        this.sheets = sheets;
    }

    /** Draws the charts of the tables that have rows. */
    static void draw(XSSFWorkbook workbook, List<ResultSheet> sheets) {
        ResultCharts charts = new ResultCharts(workbook, sheets);
        charts.draw(
                YieldsSection.TITLE,
                YieldsSection.TITLE,
                "Planned and found yield (% of theory), with U",
                "yield (%)",
                BarGrouping.CLUSTERED,
                List.of(
                        new Bars("Planned", "Planned", 0x56B4E9, PresetPattern.DARK_UPWARD_DIAGONAL, ""),
                        new Bars("Found", "Yield", 0x0072B2, PresetPattern.PERCENT_90, "U of yield")));
        charts.draw(
                ClosuresSection.TITLE,
                SummarySection.TITLE,
                "Product by place (% of the units charged)",
                "share (%)",
                BarGrouping.STACKED,
                List.of(
                        new Bars("isolated", "Isolated", 0x0072B2, PresetPattern.PERCENT_90, ""),
                        new Bars("in layers", "In layers", 0xE69F00, PresetPattern.DARK_UPWARD_DIAGONAL, ""),
                        new Bars("unaccounted", "Unaccounted", 0xCCCCCC, PresetPattern.DOTTED_GRID, "")));
        charts.draw(
                SolventTotalsSection.TITLE,
                SolventTotalsSection.TITLE,
                "Solvents put in (L)",
                "volume (L)",
                BarGrouping.CLUSTERED,
                List.of(new Bars("In", "In by volume", 0x009E73, PresetPattern.PERCENT_75, "")));
        charts.draw(
                WasteTotalsSection.TITLE,
                WasteTotalsSection.TITLE,
                "Waste by stream (kg)",
                "mass (kg)",
                BarGrouping.CLUSTERED,
                List.of(new Bars("Mass", "Mass", 0xD55E00, PresetPattern.DARK_HORIZONTAL, "")));
        SeriesCharts.draw(workbook, sheets);
    }

    /** True where the sheet of that title gets a chart. */
    static boolean has(String title, Map<String, ResultSheet> sheets) {
        String data = title.equals(SummarySection.TITLE) ? ClosuresSection.TITLE : title;
        return List.of(
                                YieldsSection.TITLE,
                                SummarySection.TITLE,
                                SolventTotalsSection.TITLE,
                                WasteTotalsSection.TITLE,
                                SeriesSection.TITLE)
                        .contains(title)
                && sheets.containsKey(data)
                && sheets.get(data).survey().rows() > 0;
    }

    /** First row, from 0, of the chart on a sheet. */
    static int firstRow(ResultSheet sheet) {
        return sheet.lastRow() + ROWS_BELOW_TABLE;
    }

    private void draw(
            String dataTitle, String onTitle, String heading, String axis, BarGrouping grouping, List<Bars> bars) {
        ResultSheet data = sheet(dataTitle);
        ResultSheet on = sheet(onTitle);
        int count = Math.min(MOST_BARS, data.survey().rows());
        if (count == 0) {
            return;
        }
        XSSFSheet sheet = workbook.getSheet(on.sheetName());
        if (!new SheetLayout(on).hasRoomBelow(on, ROWS_HIGH)) {
            sheet.setRowBreak(firstRow(on) - 1);
        }
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        XSSFClientAnchor anchor =
                new XSSFClientAnchor(0, 0, 0, 0, 0, firstRow(on), COLUMNS_WIDE, firstRow(on) + ROWS_HIGH);
        XSSFChart chart = drawing.createChart(anchor);
        String shortened = data.survey().rows() > count ? ", first " + count + " lines" : "";
        title(chart, heading + shortened);
        ChartFrame.name(
                chart,
                heading,
                "Bars: " + heading + shortened + ", by "
                        + data.view().columns().get(0).heading().toLowerCase(Locale.ROOT)
                        + "; the figures stand in the columns "
                        + bars.stream().map(Bars::column).collect(Collectors.joining(", ")) + " of the table on sheet "
                        + data.sheetName() + ".");
        if (bars.size() > 1) {
            chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        }
        XDDFCategoryAxis categories = chart.createCategoryAxis(AxisPosition.BOTTOM);
        XDDFValueAxis values = values(chart, axis);
        if (bars.stream().allMatch(series -> isPositive(data, series.column(), count))) {
            values.setMinimum(0);
        }
        XDDFBarChartData drawn = (XDDFBarChartData) chart.createData(ChartTypes.BAR, categories, values);
        drawn.setBarDirection(BarDirection.COL);
        drawn.setBarGrouping(grouping);
        drawn.setGapWidth(60);
        if (grouping == BarGrouping.STACKED) {
            drawn.setOverlap((byte) 100);
        }
        XDDFDataSource<String> labels = labels(data, count);
        for (Bars series : bars) {
            XDDFChartData.Series added = drawn.addSeries(labels, numbers(data, series.column(), count));
            added.setTitle(series.name(), null);
            added.setShapeProperties(look(series));
        }
        chart.plot(drawn);
        for (int i = 0; i < bars.size(); i++) {
            if (!bars.get(i).uncertaintyColumn().isEmpty()) {
                whiskers(
                        chart.getCTChart().getPlotArea().getBarChartArray(0).getSerArray(i),
                        data,
                        bars.get(i).uncertaintyColumn(),
                        count);
            }
        }
    }

    private static void title(XSSFChart chart, String words) {
        chart.setTitleText(words);
        CTTextBody title = chart.getCTChart().getTitle().getTx().getRich();
        inEnglish(title);
        title.getPArray(0).getRArray(0).getRPr().setSz(TITLE_HUNDREDTHS_OF_POINT);
        chart.setTitleOverlay(false);
    }

    private static XDDFValueAxis values(XSSFChart chart, String title) {
        XDDFValueAxis values = chart.createValueAxis(AxisPosition.LEFT);
        values.setTitle(title);
        inEnglish(chart.getCTChart()
                .getPlotArea()
                .getValAxArray(0)
                .getTitle()
                .getTx()
                .getRich());
        values.setCrosses(AxisCrosses.AUTO_ZERO);
        values.setNumberFormat("General");
        values.getOrAddMajorGridProperties()
                .setLineProperties(
                        new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(PresetColor.LIGHT_GRAY))));
        return values;
    }

    /** The library writes the language of the machine, which is neither that of the text nor the same everywhere. */
    static void inEnglish(CTTextBody text) {
        for (CTTextParagraph paragraph : text.getPList()) {
            paragraph.getRList().forEach(run -> run.getRPr().setLang("en"));
            if (paragraph.isSetEndParaRPr() && paragraph.getEndParaRPr().isSetLang()) {
                paragraph.getEndParaRPr().setLang("en");
            }
        }
    }

    private ResultSheet sheet(String title) {
        return sheets.stream()
                .filter(s -> s.view().title().equals(title))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no table " + title));
    }

    private static XDDFDataSource<String> labels(ResultSheet data, int count) {
        String[] texts = IntStream.range(0, count)
                .mapToObj(i -> data.survey().firstRows().get(i).cells().get(0).shown())
                .toArray(String[]::new);
        return XDDFDataSourcesFactory.fromArray(texts, range(data, 0, count), 0);
    }

    private static XDDFNumericalDataSource<Double> numbers(ResultSheet data, String name, int count) {
        int column = data.column(name);
        Double[] values = IntStream.range(0, count)
                .mapToObj(i -> data.survey().firstRows().get(i).cells().get(column))
                .map(cell -> cell instanceof Cell.Number number ? Double.valueOf(number.value()) : null)
                .toArray(Double[]::new);
        return XDDFDataSourcesFactory.fromArray(values, range(data, column, count), column);
    }

    private static boolean isPositive(ResultSheet data, String name, int count) {
        int column = data.column(name);
        return data.survey().firstRows().subList(0, count).stream()
                .map(row -> row.cells().get(column))
                .noneMatch(cell -> cell instanceof Cell.Number number && number.value() < 0);
    }

    private static String range(ResultSheet data, int column, int count) {
        return new AreaReference(
                        new CellReference(data.sheetName(), data.firstRow(), column, true, true),
                        new CellReference(data.sheetName(), data.firstRow() + count - 1, column, true, true),
                        SpreadsheetVersion.EXCEL2007)
                .formatAsString();
    }

    private static XDDFShapeProperties look(Bars bars) {
        XDDFPatternFillProperties fill = new XDDFPatternFillProperties();
        fill.setPresetPattern(bars.pattern());
        // The library's own setters leave these two colours empty.
        fill.getXmlObject().addNewFgClr().addNewSrgbClr().setVal(bytes(bars.colour()));
        fill.getXmlObject().addNewBgClr().addNewSrgbClr().setVal(bytes(0xFFFFFF));
        XDDFShapeProperties look = new XDDFShapeProperties();
        look.setFillProperties(fill);
        look.setLineProperties(new XDDFLineProperties(new XDDFSolidFillProperties(rgb(0x000000))));
        return look;
    }

    static XDDFColor rgb(int rgb) {
        return new XDDFColorRgbBinary(bytes(rgb));
    }

    private static byte[] bytes(int rgb) {
        return new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
    }

    private static void whiskers(CTBarSer series, ResultSheet data, String name, int count) {
        CTErrBars bars = series.addNewErrBars();
        bars.addNewErrDir().setVal(STErrDir.Y);
        bars.addNewErrBarType().setVal(STErrBarType.BOTH);
        bars.addNewErrValType().setVal(STErrValType.CUST);
        bars.addNewNoEndCap().setVal(false);
        fill(bars.addNewPlus().addNewNumRef(), data, name, count);
        fill(bars.addNewMinus().addNewNumRef(), data, name, count);
        CTLineProperties line = bars.addNewSpPr().addNewLn();
        line.setW(WHISKER_EMU);
        line.addNewSolidFill().addNewSrgbClr().setVal(bytes(0x000000));
    }

    private static void fill(CTNumRef reference, ResultSheet data, String name, int count) {
        int column = data.column(name);
        reference.setF(range(data, column, count));
        CTNumData cache = reference.addNewNumCache();
        cache.setFormatCode("General");
        cache.addNewPtCount().setVal(count);
        for (int i = 0; i < count; i++) {
            if (data.survey().firstRows().get(i).cells().get(column) instanceof Cell.Number number) {
                CTNumVal point = cache.addNewPt();
                point.setIdx(i);
                point.setV(Double.toString(number.value()));
            }
        }
    }

    /**
     * Bars of one kind.
     *
     * @param name name in the legend
     * @param column column of the values
     * @param colour colour
     * @param pattern pattern
     * @param uncertaintyColumn column of U drawn as whiskers; empty for none
     */
    private record Bars(String name, String column, int colour, PresetPattern pattern, String uncertaintyColumn) {}
}
