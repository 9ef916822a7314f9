package workuptally.demo;

import java.util.NoSuchElementException;
import tools.jackson.databind.JsonNode;

/** Looks up a figure of the key in the JSON of a run. */
final class DemoFigures {
    private DemoFigures() {}

    static String text(JsonNode run, KeyFigure figure) {
        return switch (figure.figure()) {
            case "limitingMaterial" ->
                run.at("/limiting/0").required("material").asString();
            case "verdict" -> closure(run, figure).required("verdict").asString();
            default -> throw new NoSuchElementException(figure.figure());
        };
    }

    static double number(JsonNode run, KeyFigure figure) {
        return switch (figure.figure()) {
            case "theoryGrams" -> number(entry(run, "theory", "product", figure.subject()), "massGrams");
            case "limitingMillimoles" -> number(run.at("/limiting/0"), "amountMillimoles");
            case "crudeOverTheoryPercent" ->
                number(entry(run, "lots", "lot", figure.subject()), "crudeOverTheoryPercent");
            case "yieldPercent" -> number(yieldOf(run, figure, "workup"), "percent");
            case "yieldExpandedUncertaintyPercent" ->
                number(yieldOf(run, figure, "workup"), "expandedUncertaintyPercent");
            case "purifiedYieldPercent" -> number(yieldOf(run, figure, "purified"), "percent");
            case "aliquotCorrectedPercent" -> number(yieldOf(run, figure, "workup"), "aliquotCorrectedPercent");
            case "conversionAdjustedPercent" -> number(yieldOf(run, figure, "workup"), "conversionAdjustedPercent");
            case "closurePercent" -> number(closure(run, figure), "percent");
            case "closureExpandedUncertaintyPercent" -> number(closure(run, figure), "expandedUncertaintyPercent");
            case "unaccountedGrams" -> number(closure(run, figure), "unaccountedGrams");
            case "layerGrams" -> number(content(run, figure), "massGrams");
            case "layerPercentOfTheory" -> percentOf(content(run, figure));
            case "upperBoundGrams" -> number(content(run, figure), "upperBoundGrams");
            case "massInGrams" -> number(run.required("massBalance"), "inGrams");
            case "massOutGrams" -> number(run.required("massBalance"), "outGrams");
            case "massGapGrams" -> number(run.required("massBalance"), "gapGrams");
            case "organicSolventGrams" -> number(run.required("massBalance"), "organicSolventGrams");
            case "gapPercentOfOrganic" -> number(run.required("massBalance"), "gapPercentOfOrganicSolvent");
            default -> throw new NoSuchElementException(figure.figure());
        };
    }

    private static double number(JsonNode object, String name) {
        return object.required(name).doubleValue();
    }

    /** A substance that is no product is a percentage of what was charged of it. */
    private static double percentOf(JsonNode content) {
        return content.has("percentOfTheory")
                ? number(content, "percentOfTheory")
                : number(content, "percentOfCharged");
    }

    private static JsonNode closure(JsonNode run, KeyFigure figure) {
        return entry(run, "closures", "skeleton", figure.subject());
    }

    private static JsonNode content(JsonNode run, KeyFigure figure) {
        String[] parts = figure.subject().split("/", 2);
        return entry(entry(run, "layers", "layer", parts[0]), "contents", "substance", parts[1]);
    }

    private static JsonNode yieldOf(JsonNode run, KeyFigure figure, String stage) {
        return run.required("yields")
                .valueStream()
                .filter(y -> y.required("stage").asString().equals(stage))
                .filter(y -> y.required("product").asString().equals(figure.subject()))
                .findFirst()
                .orElseThrow();
    }

    private static JsonNode entry(JsonNode object, String array, String key, String value) {
        return object.required(array)
                .valueStream()
                .filter(entry -> entry.required(key).asString().equals(value))
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException(array + " has no " + key + " " + value));
    }
}
