package workuptally.report.json;

import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.report.view.wording.Wording;
import workuptally.tally.amounts.Content;
import workuptally.tally.balance.Route;
import workuptally.tally.bench.Reextraction;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerMakeUp;
import workuptally.tally.layers.LayerTally;

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
        layer.entry().flatMap(l -> l.custody().status()).ifPresent(status -> json.text("status", status.word()));
        json.array("contents", layer.contents(), this::content);
        review.tally().makeUp(layer.label()).ifPresent(m -> json.object("makeUp", () -> makeUp(m)));
        review.tally().identity(layer.label()).ifPresent(i -> json.object("identity", () -> identity(i)));
        review.decision(layer.label()).ifPresent(this::decision);
        json.array(
                "reextraction",
                review.tally().evidence().reextractions().stream()
                        .filter(r -> r.layer().equals(layer.label()))
                        .toList(),
                this::reextraction);
        json.array(
                "routes",
                review.tally().evidence().routes().stream()
                        .filter(r -> r.layer().equals(layer.label()))
                        .toList(),
                this::route);
    }

    void content(Content content) {
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
        json.text("restsOn", content.rests().word());
    }

    /** Whole make-up with full names; an estimate unless the book states it. */
    private void makeUp(LayerMakeUp makeUp) {
        json.flag("stated", makeUp.stated());
        json.flag("weighed", makeUp.weighed());
        json.number("volumeMillilitres", makeUp.millilitres());
        json.array("components", makeUp.grams().entrySet(), component -> {
            json.text("substance", component.getKey());
            json.number("massGrams", component.getValue());
        });
    }

    private void decision(LayerDecision decision) {
        json.text("outcome", decision.outcome().word());
        json.text("reason", Wording.POINT.of(decision.reason()));
        json.texts("missing", decision.missing().stream().map(Wording.POINT::of).toList());
        json.texts("notJudged", decision.notJudged());
        decision.atMost()
                .ifPresent(most -> json.object("atMost", () -> {
                    json.text("product", most.product());
                    json.number("massGrams", most.grams());
                    json.number("percentOfTheory", most.percentOfTheory());
                }));
        json.array("conditions", decision.conditions(), condition -> {
            json.text("id", condition.id());
            json.text("title", condition.criterion().title());
            json.text("state", condition.state().word());
            json.text("evidence", Wording.POINT.of(condition.evidence()));
        });
    }

    private void reextraction(Reextraction gain) {
        json.text("substance", gain.substance());
        json.text("solvent", gain.extractant().solvent());
        json.count("portions", gain.extractant().portions());
        json.number("volumeMillilitres", gain.extractant().volumeMillilitres());
        json.number("distributionRatio", gain.partition().distributionRatio());
        json.number("standardUncertaintyDistributionRatio", gain.partition().standardUncertainty());
        json.text("origin", gain.partition().origin());
        json.number("gainGrams", gain.gain().grams());
        json.number("gainPercentOfTheory", gain.gain().percentOfTheory());
        json.number("pH", gain.phSetting().pH());
        json.number("acidMillimoles", gain.phSetting().acidMillimoles());
        json.number("carbonDioxideMillimoles", gain.phSetting().carbonDioxideMillimoles());
        json.array("acidGases", gain.phSetting().acidGases(), gas -> {
            json.text("material", gas.material());
            json.text("consequence", gas.consequence());
        });
        json.number("solventGrams", gain.extractant().solventGrams());
    }

    private void route(Route route) {
        json.text("substance", route.substance());
        json.text("route", route.way().word());
        json.number("massGrams", route.massGrams());
        json.number("lowGrams", route.lowGrams());
        json.number("highGrams", route.highGrams());
        json.text("equation", Wording.POINT.of(route.equation()));
    }

    /** Which phase the density says it is; a label is never changed. */
    private void identity(LayerIdentity identity) {
        json.text("recorded", identity.recorded().word());
        json.measured("densityGramsPerMillilitre", identity.densityGramsPerMillilitre());
        json.object("expectedOrganic", () -> expected(identity.expectedOrganic()));
        json.object("expectedAqueous", () -> expected(identity.expectedAqueous()));
        json.text("verdict", EnumWord.of(identity.verdict()));
        json.text("position", EnumWord.of(identity.position()));
    }

    private void expected(LayerIdentity.Expected expected) {
        json.number("lowGramsPerMillilitre", expected.lowGramsPerMillilitre());
        json.number("highGramsPerMillilitre", expected.highGramsPerMillilitre());
    }
}
