package workuptally.report.json;

import workuptally.judgement.PeriodMetrics;
import workuptally.tally.Metrics;

/** Mass metrics of a run and of the book. */
final class MetricsJson {
    private MetricsJson() {}

    static void write(JsonFields json, Metrics metrics) {
        json.measured("pmi", metrics.pmi());
        json.measured("pmiWorkupOnly", metrics.pmiWorkupOnly());
        json.number("eFactorWithWater", metrics.eFactorWithWater());
        json.number("eFactorWithoutWater", metrics.eFactorWithoutWater());
        json.number("atomEconomyPercent", metrics.atomEconomyPercent());
        json.measured("reactionMassEfficiencyPercent", metrics.reactionMassEfficiencyPercent());
        json.measured("solventIntensity", metrics.solventIntensity());
        json.measured("waterIntensity", metrics.waterIntensity());
        json.number("inGrams", metrics.inGrams().value());
        json.number("productGrams", metrics.productGrams().value());
        json.number("solventGrams", metrics.solventGrams().value());
        json.number("waterGrams", metrics.waterGrams().value());
        json.number("reusedGrams", metrics.reusedGrams());
    }

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
