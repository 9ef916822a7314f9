package workuptally.judgement.rules.layers;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.reference.Threshold;
import workuptally.reference.Wash;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.AcidsAndBases;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Equivalents;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;

/**
 * An acid or base found in an organic layer, or isolated by way of it, over water in which it is an ion, and one that a planned wash would take away as an ion.
 *
 * <p>Ionised to more than 99 %, two units of pH beyond the pKa. The pH of a planned wash is that of its class: hydroxide 13, carbonate 11,
 * hydrogencarbonate 8.3, strong acid 0.5, weak acid 2.5 (common practice).
 */
public final class ContentAgainstPh implements RunRule {

    private static final double NEUTRAL_PH = 7;

    private final Substances substances;

    /** With the reference data in force. */
    public ContentAgainstPh(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CONTENT_AGAINST_PH, FindingCode.WASH_TAKES_PRODUCT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        LayerGraph graph = LayerGraph.of(tally.run());
        Set<Product> told = new HashSet<>();
        for (Step step : tally.run().orderedSteps()) {
            for (Product product : tally.run().products()) {
                if (tally.run().status() == Run.Status.PLANNED) {
                    planned(tally.run(), step, product, findings);
                } else {
                    int before = findings.list().size();
                    done(tally, step, product, findings);
                    if (findings.list().size() > before) {
                        told.add(product);
                    }
                    if (!told.contains(product) && isolated(tally, graph, step, product, findings)) {
                        told.add(product);
                    }
                }
            }
        }
        return findings.list();
    }

    private void done(RunTally tally, Step step, Product product, FindingList findings) {
        Optional<Entered> pH = step.pHAfter().entered();
        if (pH.isEmpty() || !isIon(product, pH.get().value())) {
            return;
        }
        for (String label : step.givesOrganic()) {
            Optional<LayerTally> layer = tally.layer(label);
            layer.stream()
                    .flatMap(l -> l.contents().stream())
                    .filter(c -> c.kind() == Content.Kind.MEASURED
                            && c.substance().equalsIgnoreCase(product.name())
                            && c.percentOf().orElse(0) >= substances.value(Threshold.AGAINST_PH_LEAST))
                    .forEach(
                            c -> findings.add(
                                    FindingCode.CONTENT_AGAINST_PH,
                                    Severity.CHECK,
                                    layer.flatMap(LayerTally::entry)
                                            .orElseThrow()
                                            .row()
                                            .at("Layer"),
                                    Phrase.of(
                                            "organic layer {} holds {} of {} by assay, but over water of pH {} it is an ion (pKa {})",
                                            label,
                                            Figure.decimals(c.percentOf().orElse(0), 1, "%"),
                                            product.name(),
                                            pH.get().asTyped(),
                                            pKa(product).asTyped()),
                                    Phrase.of("an ion in the aqueous layer"),
                                    "more than 99 % ionised two units of pH beyond the pKa",
                                    Phrase.of(
                                            "Look at pH, labels, pKa and character; an assay of the aqueous layer settles which of them is wrong.")));
        }
    }

    /** A lot that came by way of the organic layer although its product is an ion in the water of that step, told at the first such step. */
    private boolean isolated(RunTally tally, LayerGraph graph, Step step, Product product, FindingList findings) {
        Optional<Entered> pH = step.pHAfter().entered();
        if (pH.isEmpty()
                || step.givesAqueous().isEmpty()
                || isUnbuffered(tally.run(), step)
                || !staysInWater(product, pH.get().value())) {
            return false;
        }
        Set<String> organic = downstream(graph, step.givesOrganic());
        Set<String> aqueous = downstream(graph, step.givesAqueous());
        double theory = tally.theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(t -> t.product().name().equalsIgnoreCase(product.name()))
                .mapToDouble(t -> t.massGrams().value())
                .findFirst()
                .orElse(0);
        Optional<LotTally> lot = tally.lots().stream()
                .filter(l -> l.endsWorkup() && l.product().equalsIgnoreCase(product.name()))
                .filter(l -> isOf(l, organic) && !isOf(l, aqueous))
                .filter(l -> theory > 0
                        && l.pureGrams().map(MeasuredValue::value).orElse(0.0)
                                >= substances.value(Threshold.AGAINST_PH_LEAST) / 100 * theory)
                .findFirst();
        lot.ifPresent(l -> findings.add(
                FindingCode.CONTENT_AGAINST_PH,
                Severity.HOLD,
                step.row().at("pH after"),
                Phrase.of(
                        "lot {} came by way of {}, but over water of pH {} in step {} its product {} is an ion (pKa {}) and"
                                + " belongs into {}",
                        l.lot().label(),
                        String.join(" + ", step.givesOrganic()),
                        pH.get().asTyped(),
                        step.number(),
                        product.name(),
                        pKa(product).asTyped(),
                        String.join(" + ", step.givesAqueous())),
                Phrase.of("an ion in the aqueous layer"),
                "more than 99 % ionised two units of pH beyond the pKa",
                Phrase.of(
                        "Look at pH, labels, pKa and character, and at whether the method for the aqueous layer sees the ion; until"
                                + " then its layers may be the evidence.")));
        return lot.isPresent();
    }

    /** A wash with water or brine, which has nothing to make an ion with, whatever a strip of paper read in it. */
    private boolean isUnbuffered(Run run, Step step) {
        return step.operation().filter(o -> o == Step.Operation.WASH).isPresent()
                && !step.material().isBlank()
                && pHOf(run, step.material()).isEmpty();
    }

    /** As an ion, and with a partition that does not hold it in the organic layer all the same, where that is known. */
    private boolean staysInWater(Product product, double pH) {
        Optional<Double> ratio = product.partitionRatio()
                .entered()
                .map(Entered::value)
                .or(() -> product.logP().entered().map(l -> Math.pow(10, l.value())));
        double neutral = isIon(product, pH) ? neutralFraction(product, pH) : 1;
        return isIon(product, pH) && ratio.map(p -> p * neutral < 1).orElse(true);
    }

    private static double neutralFraction(Product product, double pH) {
        double acid = AcidBase.ionisedAcidFraction(pKa(product).value(), pH);
        return product.character().filter(c -> c == Product.Character.BASE).isPresent() ? acid : 1 - acid;
    }

    private static boolean isOf(LotTally lot, Set<String> labels) {
        return labels.contains(lot.lot().label()) || lot.lot().from().stream().anyMatch(labels::contains);
    }

    private static Set<String> downstream(LayerGraph graph, List<String> labels) {
        Set<String> seen = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(labels);
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (seen.add(next)) {
                open.addAll(graph.children(next));
            }
        }
        return seen;
    }

    private void planned(Run run, Step step, Product product, FindingList findings) {
        boolean washes = step.operation()
                .filter(o -> o == Step.Operation.WASH || o == Step.Operation.EXTRACT)
                .isPresent();
        Optional<Double> pH = washes && product.wanted() ? pHOf(run, step.material()) : Optional.empty();
        boolean takenUp = step.givesAqueous().stream()
                .anyMatch(label ->
                        run.steps().stream().anyMatch(later -> later.from().contains(label)));
        if (pH.isPresent() && !takenUp && isIon(product, pH.get())) {
            findings.add(
                    FindingCode.WASH_TAKES_PRODUCT,
                    Severity.CHECK,
                    step.row().at("Material"),
                    Phrase.of(
                            "step {} ({}, about pH {}) takes {} into the water as its ion (pKa {}), and no later step takes the"
                                    + " aqueous layer up",
                            step.number(),
                            step.material(),
                            Figure.digits(pH.get(), 3, ""),
                            product.name(),
                            pKa(product).asTyped()),
                    Phrase.of("a wash in which the product stays neutral, or a step that brings it back"),
                    "more than 99 % ionised two units of pH beyond the pKa",
                    Phrase.of(
                            "Leave the wash out, use a weaker one, or plan the step that sets the product free from the aqueous layer."));
        }
    }

    private static Entered pKa(Product product) {
        return product.pKa().entered().orElseThrow();
    }

    private boolean isIon(Product product, double pH) {
        Optional<Double> pKa = product.pKa().entered().map(Entered::value);
        return pKa.isPresent()
                && switch (product.character().orElse(Product.Character.NEUTRAL)) {
                    case ACID -> AcidBase.ionisedAcidFraction(pKa.get(), pH) > substances.value(Threshold.IONISED);
                    case BASE -> 1 - AcidBase.ionisedAcidFraction(pKa.get(), pH) > substances.value(Threshold.IONISED);
                    case NEUTRAL -> false;
                };
    }

    private Optional<Double> pHOf(Run run, String material) {
        Optional<String> formula = substances.wash(material).map(Wash::formula).filter(f -> !f.isBlank());
        if (formula.isEmpty()) {
            return Optional.empty();
        }
        try {
            Equivalents per =
                    new AcidsAndBases(run, substances).of(material, Optional.of(substances.formula(formula.get())), 1);
            List<Double> strongest = new ArrayList<>();
            strongest.add(per.strongBase() > 0 ? 13.0 : NEUTRAL_PH);
            strongest.add(per.carbonate() > 0 ? 11.0 : NEUTRAL_PH);
            strongest.add(per.hydrogencarbonate() > 0 ? 8.3 : NEUTRAL_PH);
            strongest.add(per.strongAcid() > 0 ? 0.5 : NEUTRAL_PH);
            strongest.add(per.weakAcid() > 0 ? 2.5 : NEUTRAL_PH);
            return strongest.stream().filter(pH -> pH != NEUTRAL_PH).findFirst();
        } catch (IllegalFormulaException e) {
            return Optional.empty();
        }
    }
}
