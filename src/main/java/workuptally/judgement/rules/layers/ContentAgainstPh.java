package workuptally.judgement.rules.layers;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.chemistry.AcidBase;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.PhOfWash;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.FoundDownstream;

/**
 * An acid or base found in an organic layer over water in which it is an ion, by an assay of the layer or, without one, in what was made of
 * it alone; and one that a planned wash would take away as an ion.
 *
 * <p>Ionised to more than 99 %, two units of pH beyond the pKa. The pH of a planned wash is that of its class, see {@link PhOfWash}.
 */
public final class ContentAgainstPh implements RunRule {

    private final Substances substances;
    private final PhOfWash phOfWash;

    /** With the reference data in force. */
    public ContentAgainstPh(Substances substances) {
        this.substances = substances;
        this.phOfWash = new PhOfWash(substances);
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CONTENT_AGAINST_PH, FindingCode.WASH_TAKES_PRODUCT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Set<Product> told = new HashSet<>();
        for (Step step : tally.run().orderedSteps()) {
            for (Product product : tally.run().products()) {
                if (tally.run().status() == Run.Status.PLANNED) {
                    planned(tally.run(), step, product, findings);
                } else {
                    done(tally, step, product, told, findings);
                }
            }
        }
        return findings.list();
    }

    /** What was isolated contradicts every later wash as well, so that the first one is told. */
    private void done(RunTally tally, Step step, Product product, Set<Product> told, FindingList findings) {
        Optional<Entered> pH = step.pHAfter().entered();
        if (pH.isEmpty()
                || !isIon(product, pH.get().value())
                || staysOrganic(product, pH.get().value())) {
            return;
        }
        for (String label : step.given().organic()) {
            Optional<Content> assayed = tally.layer(label)
                    .flatMap(layer -> layer.contents().stream()
                            .filter(c -> c.kind() == Content.Kind.MEASURED && c.isOf(product.name()))
                            .findFirst());
            if (assayed.isPresent()) {
                against(
                        Severity.CHECK,
                        assayed.get().percentOf().orElse(0),
                        Phrase.of("by assay"),
                        tally.run()
                                .layer(label)
                                .map(l -> l.row().at("Layer"))
                                .orElse(step.row().at("pH after")),
                        label,
                        pH.get(),
                        product,
                        findings);
            } else if (!isUnbuffered(tally.run(), step) && !told.contains(product)) {
                isolatedFrom(tally, step, label, product)
                        .filter(found -> found.percentOfTheory() >= substances.value(Threshold.AGAINST_PH_LEAST))
                        .filter(found -> told.add(product))
                        .ifPresent(found -> against(
                                Severity.HOLD,
                                found.percentOfTheory(),
                                Phrase.of(
                                        "as found in {}, which was made of it alone",
                                        String.join(", ", found.labels())),
                                step.row().at("pH after"),
                                label,
                                pH.get(),
                                product,
                                findings));
            }
        }
    }

    private void against(
            Severity severity,
            double percent,
            Phrase evidence,
            Place place,
            String label,
            Entered pH,
            Product product,
            FindingList findings) {
        if (percent < substances.value(Threshold.AGAINST_PH_LEAST)) {
            return;
        }
        findings.add(
                FindingCode.CONTENT_AGAINST_PH,
                severity,
                place,
                Phrase.of(
                        "organic layer {} holds {} of {} {}, but over water of pH {} it is an ion (pKa {})",
                        label,
                        Figure.decimals(percent, 1, "%"),
                        product.name(),
                        evidence,
                        pH.asTyped(),
                        pKa(product).asTyped()),
                Phrase.of("an ion in the aqueous layer"),
                "more than 99 % ionised two units of pH beyond the pKa",
                Phrase.of(
                        "Look at pH, labels, pKa and character; an assay of the aqueous layer, by a method that sees the ion,"
                                + " settles which of them is wrong."));
    }

    /** A wash with water or brine, which has nothing to make an ion with whatever its pH reads. */
    private boolean isUnbuffered(Run run, Step step) {
        return step.operation().filter(o -> o == Step.Operation.WASH).isPresent()
                && phOfWash.pHOf(run, step.added().material()).isEmpty();
    }

    /** What lots and later layers show of an organic layer that nobody assayed; what it is in per cent of theory. */
    private static Optional<Found> isolatedFrom(RunTally tally, Step step, String label, Product product) {
        if (step.from().contains(label)) {
            return Optional.empty();
        }
        Optional<Double> theory = tally.theory()
                .flatMap(t -> t.products().stream()
                        .filter(p -> p.isOf(product.name()))
                        .findFirst())
                .map(p -> p.massGrams().value());
        return theory.flatMap(grams -> new FoundDownstream(tally.run(), tally.layers(), tally.lots())
                .of(label, product)
                .map(found -> new Found(found.labels(), 100 * found.grams().value() / grams)));
    }

    /** True where so much of the neutral form goes into the solvent that the ion follows it: P times what is not ionised is 1 or more. */
    private static boolean staysOrganic(Product product, double pH) {
        Optional<Double> ratio = product.partitioning()
                .partitionRatio()
                .entered()
                .map(Entered::value)
                .or(() -> product.partitioning().logP().entered().map(l -> Math.pow(10, l.value())));
        double acid = AcidBase.ionisedAcidFraction(pKa(product).value(), pH);
        double neutral = product.partitioning().character().orElse(Product.Character.NEUTRAL) == Product.Character.ACID
                ? 1 - acid
                : acid;
        return ratio.filter(p -> p * neutral >= 1).isPresent();
    }

    private void planned(Run run, Step step, Product product, FindingList findings) {
        boolean washes = step.operation()
                .filter(o -> o == Step.Operation.WASH || o == Step.Operation.EXTRACT)
                .isPresent();
        Optional<Double> pH =
                washes && product.wanted() ? phOfWash.pHOf(run, step.added().material()) : Optional.empty();
        boolean takenUp = step.given().aqueous().stream()
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
                            step.added().material(),
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
        return product.partitioning().pKa().entered().orElseThrow();
    }

    private boolean isIon(Product product, double pH) {
        Optional<Double> pKa = product.partitioning().pKa().entered().map(Entered::value);
        return pKa.isPresent()
                && switch (product.partitioning().character().orElse(Product.Character.NEUTRAL)) {
                    case ACID -> AcidBase.ionisedAcidFraction(pKa.get(), pH) > substances.value(Threshold.IONISED);
                    case BASE -> 1 - AcidBase.ionisedAcidFraction(pKa.get(), pH) > substances.value(Threshold.IONISED);
                    case NEUTRAL -> false;
                };
    }

    private record Found(List<String> labels, double percentOfTheory) {}
}
