package workuptally.tally;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import workuptally.measure.MeasuredValue;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.Closure.Candidate;
import workuptally.tally.Closure.Term;
import workuptally.tally.Closure.Verdict;

/**
 * Closure B = Σ aⱼ·nⱼ / n₀ over each partner's skeleton, with a the units of the partner per molecule and n in mmol.
 *
 * <p>Closes when |1 − B| ≤ U, open when 1 − B &gt; U, over when B − 1 &gt; U. Cannot decide when U is wider than the limit, or when a layer
 * that may hold product has neither an assay nor a bound of its own. The form is the constraint test for gross errors in a balance.
 */
final class ClosureAccount {
    private final Run run;
    private final Limits limits;
    private final Skeletons skeletons;
    private final MolarMasses molarMasses;
    private final Omissions omissions;

    ClosureAccount(Run run, Limits limits, Skeletons skeletons, MolarMasses molarMasses, Omissions omissions) {
        this.run = run;
        this.limits = limits;
        this.skeletons = skeletons;
        this.molarMasses = molarMasses;
        this.omissions = omissions;
    }

    /**
     * One closure for each partner that a wanted product carries.
     *
     * @param undecided tells the layers that may hold product and have neither assay nor bound
     */
    List<Closure> of(Found found, List<LotTally> lots, Undecided undecided, Whereabouts whereabouts) {
        List<Closure> closures = new ArrayList<>();
        for (String partner : skeletons.partners()) {
            of(partner, found, lots, undecided, whereabouts).ifPresent(closures::add);
        }
        return closures;
    }

    private Optional<Closure> of(
            String partner, Found found, List<LotTally> lots, Undecided undecided, Whereabouts whereabouts) {
        String what = "closure on " + partner;
        Optional<MeasuredValue> charged = skeletons.chargedMillimoles(partner).filter(n -> n.value() > 0);
        if (charged.isEmpty()) {
            omissions.add(
                    what, "the amount charged is not known", "a charge named " + partner + " with amount and formula");
            return Optional.empty();
        }
        for (LotTally lot : lots) {
            if (lot.endsWorkup()
                    && skeletons.units(lot.lot().product(), partner) > 0
                    && lot.pureGrams().isEmpty()) {
                omissions.add(
                        what,
                        "lot " + lot.lot().label() + (lot.netGrams().isEmpty() ? " has no mass" : " has no assay"),
                        (lot.netGrams().isEmpty() ? "Gross and Tare" : "Assay") + " of the lot in Isolated");
                return Optional.empty();
            }
        }
        List<Term> terms = terms(partner, found, charged.get());
        if (terms.isEmpty()) {
            omissions.add(what, "no lot or layer has an assay", "assays of lots and layers");
            return Optional.empty();
        }
        MeasuredValue percent = terms.stream()
                .map(Term::unitsMillimoles)
                .reduce(MeasuredValue::plus)
                .orElseThrow()
                .over(charged.get())
                .times(100);
        double factor = limits.value(Limit.COVERAGE_FACTOR);
        double expanded = percent.expandedUncertainty(factor);
        double unaccounted = 100 - percent.value();
        Predicate<String> counts = substance -> skeletons.units(substance, partner) > 0;
        Verdict verdict = verdict(unaccounted, expanded, undecided.labels(counts));
        Optional<Product> as = skeletons.wantedProduct(partner);
        double gramsPerPercent = gramsPerPercent(partner, as, charged.get());
        List<Candidate> candidates = verdict == Verdict.OPEN || verdict == Verdict.CANNOT_DECIDE
                ? as.map(p -> whereabouts.of(
                                p,
                                counts,
                                unaccounted * gramsPerPercent,
                                percent.standardUncertainty() * gramsPerPercent))
                        .orElse(List.of())
                : List.of();
        return Optional.of(new Closure(
                partner,
                charged.get(),
                percent,
                expanded,
                factor,
                verdict,
                percent.standardUncertainty() == 0 ? 0 : unaccounted / percent.standardUncertainty(),
                unaccounted,
                unaccounted * gramsPerPercent,
                as.map(Product::name).orElse(""),
                terms,
                candidates));
    }

    private List<Term> terms(String partner, Found found, MeasuredValue charged) {
        List<Term> terms = new ArrayList<>();
        for (Found.Term term : found.terms()) {
            Content content = term.content();
            double units = skeletons.units(content.substance(), partner);
            if (units > 0 && content.amountMillimoles().isPresent()) {
                MeasuredValue millimoles = content.amountMillimoles().get().times(units);
                terms.add(new Term(
                        term.label(),
                        content.substance(),
                        units,
                        millimoles,
                        100 * millimoles.value() / charged.value(),
                        content.kind()));
            }
        }
        terms.sort(Comparator.comparingDouble(Term::percent).reversed());
        return terms;
    }

    private Verdict verdict(double unaccounted, double expanded, List<String> undecided) {
        if (-unaccounted > expanded) {
            return Verdict.OVER;
        }
        if (!undecided.isEmpty() || expanded > limits.value(Limit.CLOSURE_WIDTH)) {
            return Verdict.CANNOT_DECIDE;
        }
        return unaccounted > expanded ? Verdict.OPEN : Verdict.CLOSES;
    }

    private double gramsPerPercent(String partner, Optional<Product> as, MeasuredValue charged) {
        OptionalDouble molarMass = as.map(p -> molarMasses.of(p.name())).orElse(OptionalDouble.empty());
        if (molarMass.isEmpty()) {
            return 0;
        }
        double units = skeletons.units(as.orElseThrow().name(), partner);
        return charged.value() / 100 / units * molarMass.getAsDouble() / 1000;
    }
}
