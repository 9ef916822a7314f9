package workuptally.report.json;

import java.util.List;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.tally.Content;
import workuptally.tally.LayerTally;
import workuptally.tally.Reextraction;
import workuptally.tally.Route;

/** One layer with what it holds and what the evidence about it amounts to. */
final class LayerJson {
    private final JsonFields json;
    private final RunReview review;

    LayerJson(JsonFields json, RunReview review) {
        this.json = json;
        this.review = review;
    }

    void write(LayerTally layer) {
        json.text("layer", layer.label());
        json.text("phase", layer.phase().map(Layer.Phase::word));
        json.measured("massGrams", layer.massGrams());
        json.measured("volumeMillilitres", layer.volumeMillilitres());
        json.measured("densityGramsPerMillilitre", layer.densityGramsPerMillilitre());
        json.flag("terminal", layer.terminal());
        json.flag("aliquot", layer.aliquot());
        json.flag("endsWorkup", layer.endsWorkup());
        layer.entry().flatMap(Layer::status).ifPresent(status -> json.text("status", status.word()));
        json.array("contents", layer.contents(), this::content);
        review.decision(layer.label()).ifPresent(this::decision);
        json.array("routes", routes(layer), this::route);
        json.array("reextraction", reextractions(layer), this::reextraction);
    }

    private void content(Content content) {
        json.text("substance", content.substance());
        json.measured("massGrams", content.massGrams());
        json.measured("amountMillimoles", content.amountMillimoles());
        boolean wanted = review.tally()
                .run()
                .product(content.substance())
                .filter(Product::wanted)
                .isPresent();
        json.number(wanted ? "percentOfTheory" : "percentOfCharged", content.percentOf());
        json.text("kind", content.kind().word());
        json.number("upperBoundGrams", content.upperBoundGrams());
        json.text("evidence", content.evidence());
    }

    private void decision(LayerDecision decision) {
        json.text("outcome", decision.outcome().word());
        json.text("reason", decision.reason());
        json.texts("missing", decision.missing());
        json.array("conditions", decision.conditions(), condition -> {
            json.text("id", condition.id());
            json.text("title", condition.title());
            json.text("state", condition.state().word());
            json.text("evidence", condition.evidence());
        });
    }

    private List<Route> routes(LayerTally layer) {
        return review.tally().evidence().routes().stream()
                .filter(r -> r.layer().equals(layer.label()))
                .toList();
    }

    private List<Reextraction> reextractions(LayerTally layer) {
        return review.tally().evidence().reextractions().stream()
                .filter(r -> r.layer().equals(layer.label()))
                .toList();
    }

    private void route(Route route) {
        json.text("substance", route.substance());
        json.text("route", route.route());
        json.number("massGrams", route.massGrams());
        json.number("lowGrams", route.lowGrams());
        json.number("highGrams", route.highGrams());
        json.text("equation", route.equation());
    }

    private void reextraction(Reextraction gain) {
        json.text("substance", gain.substance());
        json.text("solvent", gain.solvent());
        json.count("portions", gain.portions());
        json.number("volumeMillilitres", gain.volumeMillilitres());
        json.number("distributionRatio", gain.distributionRatio());
        json.text("origin", gain.origin());
        json.number("gainGrams", gain.gainGrams());
        json.number("gainPercentOfTheory", gain.gainPercentOfTheory());
        if (!Double.isNaN(gain.pH())) {
            json.number("pH", gain.pH());
        }
        json.number("acidMillimoles", gain.acidMillimoles());
        json.number("solventGrams", gain.solventGrams());
    }
}
