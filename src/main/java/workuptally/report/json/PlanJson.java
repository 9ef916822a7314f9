package workuptally.report.json;

import java.util.Map;
import workuptally.model.Step;
import workuptally.tally.bench.ExtractionSplit;
import workuptally.tally.bench.Plan;
import workuptally.tally.layers.LayerIdentity;

/** What to expect of a planned run. */
final class PlanJson {
    private final JsonFields json;

    PlanJson(JsonFields json) {
        this.json = json;
    }

    void write(Plan plan) {
        json.array("weighings", plan.weighings(), this::weighing);
        json.array("products", plan.products(), this::product);
        json.array("steps", plan.steps(), this::step);
        json.array("layers", plan.layers(), this::layer);
        json.array("waste", plan.waste(), this::waste);
    }

    private void weighing(Plan.Weighing weighing) {
        json.text("material", weighing.material());
        json.text("role", weighing.role());
        json.number("amountMillimoles", weighing.amountMillimoles());
        json.number("massGrams", weighing.massGrams());
        json.number("toleranceGrams", weighing.toleranceGrams());
        json.number("volumeMillilitres", weighing.volumeMillilitres());
        json.number("toleranceMillilitres", weighing.toleranceMillilitres());
    }

    private void product(Plan.ExpectedProduct product) {
        json.text("product", product.product());
        json.number("theoryGrams", product.theoryGrams());
        json.number("theoryMillimoles", product.theoryMillimoles());
        json.number("expectedGrams", product.expectedGrams());
    }

    private void step(Plan.PlannedStep planned) {
        json.text("step", planned.step().number());
        json.text("operation", planned.step().operation().map(Step.Operation::word));
        json.text("material", planned.step().added().material());
        planned.densities().ifPresent(d -> {
            json.text("lowerLayerExpected", d.lower().map(p -> p.word()));
            json.object("organicDensity", () -> density(d.organic()));
            json.object("aqueousDensity", () -> density(d.aqueous()));
        });
        planned.drying()
                .ifPresent(need -> json.object("dryingAgent", () -> {
                    json.text("agent", need.agent());
                    json.number("waterGrams", need.waterGrams());
                    json.text("assumption", need.assumption());
                    json.number("leastGrams", need.leastGrams());
                    json.number("mostGrams", need.mostGrams());
                }));
        json.array("extractionSplits", planned.splits(), this::split);
    }

    private void split(ExtractionSplit split) {
        json.text("product", split.product());
        json.number("distributionRatio", split.ratio());
        json.number("knownWithinFactor", split.factor());
        json.text("origin", split.origin());
        json.number("totalMillilitres", split.totalMillilitres());
        json.number("extractedMillilitres", split.extractedMillilitres());
        json.number("portions", split.plannedPortions());
        json.number("leftPercent", split.leftAsPlannedPercent());
        json.number("leftPercentLow", split.leastLeftAsPlannedPercent());
        json.number("leftPercentHigh", split.mostLeftAsPlannedPercent());
        json.number("leftAtOncePercent", split.leftAtOncePercent());
        json.number("bestPortions", split.bestPortions());
        json.number("leftAtBestPercent", split.leftAtBestPercent());
    }

    private void density(LayerIdentity.Expected expected) {
        json.number("lowGramsPerMillilitre", expected.lowGramsPerMillilitre());
        json.number("highGramsPerMillilitre", expected.highGramsPerMillilitre());
    }

    private void layer(Plan.ExpectedLayer layer) {
        json.text("layer", layer.label());
        json.text("step", layer.step().number());
        json.text("phase", layer.phase().map(p -> p.word()));
        json.flag("terminal", layer.terminal());
        json.number("volumeMillilitres", layer.volumeMillilitres());
        json.number("massGrams", layer.massGrams());
        json.array("composition", layer.grams().entrySet(), this::part);
        json.texts("mayHold", layer.mayHold());
        json.text("streamName", layer.streamName());
        json.text("because", layer.why());
    }

    private void part(Map.Entry<String, Double> part) {
        json.text("substance", part.getKey());
        json.number("massGrams", part.getValue());
    }

    private void waste(Plan.ExpectedWaste waste) {
        json.text("streamName", waste.streamName());
        json.number("massGrams", waste.massGrams());
        json.number("volumeMillilitres", waste.volumeMillilitres());
    }
}
