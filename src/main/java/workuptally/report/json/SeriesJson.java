package workuptally.report.json;

import workuptally.tally.series.SeriesTally;
import workuptally.tally.series.SeriesTally.Together;

/** The chart of a repeated preparation, its new results, and the class where there is one. */
final class SeriesJson {
    private SeriesJson() {}

    static void write(JsonFields json, SeriesTally series) {
        series.chart()
                .ifPresent(chart -> json.object("chart", () -> {
                    json.number("centrePercent", chart.centrePercent());
                    json.number("lowerLimitPercent", chart.lowerLimitPercent());
                    json.number("upperLimitPercent", chart.upperLimitPercent());
                    json.number("meanMovingRangePercent", chart.meanMovingRangePercent());
                    json.number("movingRangeLimitPercent", chart.movingRangeLimitPercent());
                }));
        json.array("results", series.results(), result -> {
            json.text("run", result.run());
            json.text("product", result.product());
            json.number("yieldPercent", result.yieldPercent());
            json.texts("signals", result.signals());
        });
        series.together().ifPresent(together -> json.object("class", () -> together(json, together)));
    }

    static void together(JsonFields json, Together together) {
        json.count("runs", together.runs());
        json.count("yields", together.yields());
        json.number("medianPercent", together.medianPercent());
        json.number("robustSpreadPercent", together.robustSpreadPercent());
        json.texts("outliers", together.outliers());
        json.texts("copies", together.copies());
        json.texts("leftOut", together.leftOut());
        json.number("solventGrams", together.solventGrams());
        json.number("keptGrams", together.keptGrams());
        json.array("materials", together.materials(), material -> {
            json.text("material", material.material());
            json.text("unit", material.unit());
            json.number("plannedAmount", material.planned());
            json.number("actualAmount", material.actual());
            json.number("actualPercentOfPlanned", material.actualPercentOfPlanned());
        });
    }
}
