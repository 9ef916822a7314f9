package workuptally.report.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.RunReview;
import workuptally.judgement.hazards.HazardNote;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.report.view.wording.Wording;
import workuptally.tally.LayerShares;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.NotComputed;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.amounts.Theory;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.CompositeSample;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.StepReaction;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.Meeting;
import workuptally.tally.waste.Metrics;
import workuptally.tally.waste.WasteLine;

/** One run with its results. */
final class RunJson {
    private final JsonFields json;
    private final RunReview review;
    private final RunTally tally;

    RunJson(JsonFields json, RunReview review) {
        this.json = json;
        this.review = review;
        this.tally = review.tally();
    }

    void write() {
        head();
        json.array("amounts", tally.amounts(), this::amount);
        List<Theory.Limiting> limiting = new ArrayList<>();
        List<Theory.ProductTheory> products = new ArrayList<>();
        tally.theory().ifPresent(theory -> {
            limiting.addAll(theory.limiting());
            products.addAll(theory.products());
        });
        json.array("limiting", limiting, this::limiting);
        json.array("theory", products, this::theory);
        json.array("lots", tally.lots(), this::lot);
        json.array("yields", tally.yields(), this::yieldOf);
        json.array("closures", tally.closures(), this::closure);
        PurificationJson.write(
                json,
                tally.purifications().stream().filter(p -> !p.inIsAtMost()).toList());
        LayerJson layers = new LayerJson(json, review);
        json.array("layers", tally.layers(), layers::write);
        json.array("layerShares", shares(), this::shares);
        tally.massBalance().ifPresent(balance -> json.object("massBalance", () -> massBalance(balance)));
        json.array("contacts", tally.contacts(), this::contact);
        json.array("compositeSamples", tally.evidence().composites().list(), this::composite);
        json.array("meetings", tally.evidence().meetings().list(), this::meeting);
        json.texts("missingLayers", tally.evidence().gaps().missingLayers());
        json.array("reactions", tally.evidence().reactions(), this::reaction);
        SolventJson.array(json, tally.solvents());
        json.array("waste", tally.waste(), this::waste);
        tally.metrics().ifPresent(metrics -> json.object("metrics", () -> metrics(metrics)));
        tally.plan().ifPresent(plan -> json.object("plan", () -> new PlanJson(json).write(plan)));
        json.array("notComputed", tally.notComputed(), this::notComputed);
        json.array("hazards", review.hazards(), this::hazard);
        json.array("materials", review.materials(), this::material);
        new SuspectsJson(json).write(review.suspects());
        json.array("nextMeasurements", review.nextTests(), test -> NextTestJson.fields(json, test));
    }

    private void composite(CompositeSample sample) {
        json.texts("layers", sample.labels());
        json.object("together", () -> new LayerJson(json, review).content(sample.together()));
    }

    private void meeting(Meeting meeting) {
        json.text("step", meeting.place());
        json.texts("with", meeting.with());
        json.text("consequence", meeting.consequence());
        json.text("gas", meeting.gas());
        json.number("gasLitres", meeting.gasLitres());
        json.text("severity", meeting.severity());
        json.text("inWorkup", meeting.inWorkup());
        json.texts("where", meeting.where());
        json.texts("portions", meeting.portions());
    }

    private void head() {
        Run run = tally.run();
        json.text("run", run.id());
        json.text("status", EnumWord.of(run.status()));
        json.text("kind", EnumWord.of(run.kind()));
        json.text("date", run.head().date());
        json.text("chemist", run.head().chemist());
        json.text("reaction", run.head().reaction());
        json.text("series", run.head().series());
    }

    /** Wanted products that were found in a layer or lot. */
    private List<LayerShares> shares() {
        return tally.run().products().stream()
                .filter(Product::wanted)
                .map(p -> new LayerShares(tally, p))
                .filter(LayerShares::isFound)
                .toList();
    }

    private void shares(LayerShares shares) {
        json.text("product", shares.product().name());
        json.array("portions", shares.list(), share -> {
            json.text("label", share.label());
            json.number("foundPercent", share.foundPercent());
            json.number("passingPercent", share.passingPercent());
        });
    }

    private void amount(ChargeAmount amount) {
        json.text("material", amount.charge().material());
        json.text("role", amount.charge().role().map(EnumWord::of));
        json.flag("planned", amount.planned());
        json.measured("amountMillimoles", amount.amountMillimoles());
        json.number("labelAmountMillimoles", amount.labelAmountMillimoles());
        json.number("asTypedMillimoles", amount.asTypedMillimoles());
        json.measured("massGrams", amount.massGrams());
        json.measured("volumeMillilitres", amount.volumeMillilitres());
        json.number("molarMassGramsPerMole", amount.molarMassGramsPerMole());
        json.text("equation", amount.equation());
    }

    private void limiting(Theory.Limiting limiting) {
        json.text("material", limiting.material());
        json.measured("amountMillimoles", limiting.amountMillimoles());
    }

    private void theory(Theory.ProductTheory theory) {
        json.text("product", theory.product().name());
        json.flag("wanted", theory.product().wanted());
        json.measured("amountMillimoles", theory.amountMillimoles());
        json.measured("massGrams", theory.massGrams());
        json.number("plannedMassGrams", theory.plannedMassGrams());
        json.number("molarMassGramsPerMole", theory.molarMassGramsPerMole());
        json.number("massAsTypedGrams", theory.massAsTypedGrams());
        json.dependsOn(theory.massGrams());
    }

    private void lot(LotTally lot) {
        json.text("lot", lot.lot().label());
        json.text("product", lot.lot().product());
        json.text(
                "countsAs",
                Optional.of(lot.product())
                        .filter(p -> !p.equalsIgnoreCase(lot.lot().product())));
        json.text("stage", lot.lot().stage().map(EnumWord::of));
        json.flag("endsWorkup", lot.endsWorkup());
        json.measured("netGrams", lot.netGrams());
        json.measured("productFraction", lot.productFraction());
        json.text("basis", lot.basis().word());
        json.measured("pureGrams", lot.pureGrams());
        boolean purified =
                lot.lot().stage().filter(s -> s == Lot.Stage.PURIFIED).isPresent();
        json.measured(purified ? "purifiedOverTheoryPercent" : "crudeOverTheoryPercent", lot.overTheoryPercent());
    }

    private void yieldOf(ProductYield product) {
        json.text("product", product.product().name());
        json.text("stage", EnumWord.of(product.stage()));
        json.flag("headline", product.headline());
        json.texts("lots", product.lots());
        json.measured("percent", product.percent());
        json.coverage(product.percent());
        json.text("percentOf", EnumWord.of(product.percentOf()));
        json.text("basis", product.basis().word());
        json.flag("upperBound", product.basis().isUpperBound());
        json.measured("massGrams", product.massGrams());
        json.measured("conversionAdjustedPercent", product.conversionAdjustedPercent());
        json.measured("aliquotCorrectedPercent", product.aliquotCorrectedPercent());
        product.product()
                .plannedYieldPercent()
                .entered()
                .ifPresent(planned -> json.number("plannedPercent", planned.value()));
        json.dependsOn(product.percent());
    }

    private void closure(Closure closure) {
        json.text("skeleton", closure.skeleton());
        json.measured("chargedMillimoles", closure.chargedMillimoles());
        json.number("percent", closure.percent().value());
        json.number("expandedUncertaintyPercent", closure.expandedUncertaintyPercent());
        json.coverage(closure.percent());
        json.text("verdict", closure.verdict().word());
        if (!closure.because().isEmpty()) {
            json.text("because", Wording.POINT.of(closure.because()));
        }
        json.number("z", closure.z());
        json.number("unaccountedPercent", closure.unaccountedPercent());
        json.number("unaccountedGrams", closure.unaccountedGrams());
        json.text("unaccountedAs", closure.unaccountedAs());
        json.array("terms", closure.terms(), this::term);
        json.array("candidates", closure.candidates(), this::candidate);
        json.dependsOn(closure.percent());
    }

    private void term(Closure.Term term) {
        json.text("place", term.place());
        json.text("substance", term.substance());
        json.number("unitsPerMolecule", term.unitsPerMolecule());
        json.measured("unitsMillimoles", term.unitsMillimoles());
        json.number("percent", term.percent());
        json.text("kind", term.kind().word());
    }

    private void candidate(Closure.Candidate candidate) {
        json.text("place", candidate.place());
        json.number("lowGrams", candidate.lowGrams());
        json.number("highGrams", candidate.highGrams());
        json.text("evidence", candidate.evidence());
        json.text("settledBy", candidate.settledBy());
    }

    private void massBalance(MassBalance balance) {
        json.measured("inGrams", balance.inGrams());
        json.measured("outGrams", balance.outGrams());
        json.measured("gapGrams", balance.gapGrams());
        json.number("gasGrams", balance.gasGrams());
        json.number("organicSolventGrams", balance.organicSolventGrams());
        json.number("gapPercentOfOrganicSolvent", balance.gapPercentOfOrganic());
        json.number("evaporationAllowanceGrams", balance.evaporationAllowanceGrams());
        json.flag("complete", balance.complete());
        json.array("lines", balance.lines(), line -> {
            json.text("side", EnumWord.of(line.side()));
            json.text("label", line.label());
            json.text("category", EnumWord.of(line.category()));
            json.measured("massGrams", line.grams());
        });
    }

    private void contact(Contact contact) {
        json.text("step", contact.step().number());
        json.count("portion", contact.portion());
        json.number("volumeMillilitres", contact.volumeMillilitres());
        json.number("funnelMillilitres", contact.funnelMillilitres());
        json.flag("funnelRecorded", contact.funnelRecorded());
        json.number("fillPercent", contact.fillPercent());
        json.number("fillLimitPercent", contact.fillLimitPercent());
        json.count("loads", contact.loads());
        json.count("loadsNeeded", contact.loadsNeeded());
        json.flag("gasExpected", contact.gasExpected());
        tally.evidence().identities().stream()
                .filter(i -> i.step() == contact.step())
                .findFirst()
                .flatMap(LayerIdentity::lowerExpected)
                .ifPresent(phase -> json.text("lowerLayerExpected", phase.word()));
        Optional<StepReaction> reaction = tally.evidence().reactions().stream()
                .filter(r -> r.step() == contact.step())
                .findFirst();
        reaction.ifPresent(r -> {
            json.number("gasLitresExpected", r.expectedLitres());
            json.number("gasLitresWorst", r.worstLitres());
            json.number("capacityRatio", r.capacityRatio());
        });
    }

    private void reaction(StepReaction reaction) {
        json.text("step", reaction.step().number());
        json.text("gas", reaction.gas());
        json.number("gasExpectedMillimoles", reaction.expectedMillimoles());
        json.number("gasWorstMillimoles", reaction.worstMillimoles());
        json.number("gasLitresExpected", reaction.expectedLitres());
        json.number("gasLitresWorst", reaction.worstLitres());
        json.count("loads", reaction.loads());
        json.number("washMillimoles", reaction.washMillimoles());
        json.number("toNeutraliseMillimoles", reaction.toNeutraliseMillimoles());
        json.number("worstToNeutraliseMillimoles", reaction.worstToNeutraliseMillimoles());
        json.number("capacityRatio", reaction.capacityRatio());
        json.number("neededMillilitres", reaction.neededMillilitres());
        json.text("because", Wording.POINT.of(reaction.because()));
    }

    private void metrics(Metrics metrics) {
        json.measured("pmi", metrics.pmi());
        json.measured("pmiWorkupOnly", metrics.pmiWorkupOnly());
        json.number("eFactorWithWater", metrics.eFactorWithWater());
        json.number("eFactorWithoutWater", metrics.eFactorWithoutWater());
        json.number("atomEconomyPercent", metrics.atomEconomyPercent());
        json.measured("reactionMassEfficiencyPercent", metrics.reactionMassEfficiencyPercent());
        json.measured("solventIntensity", metrics.solventIntensity());
        json.measured("waterIntensity", metrics.waterIntensity());
        json.measured("inGrams", metrics.inGrams());
        json.measured("workupInGrams", metrics.workupInGrams());
        json.measured("productGrams", metrics.productGrams());
        json.flag("ofPurified", metrics.ofPurified());
        json.measured("solventGrams", metrics.solventGrams());
        json.measured("waterGrams", metrics.waterGrams());
        json.number("reusedGrams", metrics.reusedGrams());
        json.measured("reactantGrams", metrics.reactantGrams());
    }

    private void waste(WasteLine line) {
        json.text("layer", line.layer());
        json.text("stream", line.stream());
        json.text("streamName", line.streamName());
        json.text("why", line.why());
        json.number("massGrams", line.massGrams());
        json.flag("kept", line.kept());
    }

    private void notComputed(NotComputed missing) {
        json.text("what", missing.what());
        json.text("because", missing.because());
        json.text("unlockedBy", missing.unlockedBy());
    }

    private void material(RunMaterial material) {
        json.text("written", material.written());
        json.text("state", material.state());
        json.texts("means", material.meaning());
        json.texts("classes", material.classes());
        json.flag("ownCompound", material.own());
    }

    private void hazard(HazardNote note) {
        json.text("subject", note.subject());
        json.texts("statements", note.statements());
        json.text("caution", note.caution());
        json.text("source", note.source());
    }
}
