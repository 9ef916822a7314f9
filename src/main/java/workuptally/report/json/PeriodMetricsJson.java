package workuptally.report.json;

import workuptally.judgement.totals.PeriodMetrics;

/** Mass metrics of the book. */
final class PeriodMetricsJson {
    private PeriodMetricsJson() {}

    static void write(JsonFields json, PeriodMetrics metrics) {
        json.texts("runs", metrics.runs());
        json.number("pmi", metrics.pmi());
        json.number("meanOfPmis", metrics.meanOfPmis());
        json.number("eFactorWithWater", metrics.eFactorWithWater());
        json.number("solventIntensity", metrics.solventIntensity());
        json.number("waterIntensity", metrics.waterIntensity());
        json.number("inGrams", metrics.inGrams());
        json.number("productGrams", metrics.productGrams());
    }
}
