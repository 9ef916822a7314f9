package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.LeftOutRow;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.SubstanceName;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.MolarMassAccount;
import workuptally.tally.amounts.Omissions;
import workuptally.tally.amounts.Skeletons;
import workuptally.tally.amounts.Theory;
import workuptally.tally.balance.Closure.Candidate;
import workuptally.tally.balance.Closure.Term;
import workuptally.tally.balance.Closure.Verdict;

/**
 * Closure B = Σ aⱼ·nⱼ / n₀ over each partner's skeleton, with a the units of the partner per molecule and n in mmol.
 *
 * <p>The form is the constraint test for gross errors in a balance; {@link VerdictOnClosure} judges it.
 */
public final class ClosureAccount {
    private final Run run;
    private final Limits limits;
    private final Skeletons skeletons;
    private final MolarMassAccount molarMasses;
    private final Optional<Theory> theory;
    private final Omissions omissions;

    public ClosureAccount(
            Run run,
            Limits limits,
            Skeletons skeletons,
            MolarMassAccount molarMasses,
            Optional<Theory> theory,
            Omissions omissions) {
        this.run = run;
        this.limits = limits;
        this.skeletons = skeletons;
        this.molarMasses = molarMasses;
        this.theory = theory;
        this.omissions = omissions;
    }

    /**
     * One closure for each partner that a wanted product carries.
     *
     * @param undecided tells the layers that may hold product and have neither assay nor bound
     */
    public List<Closure> of(Portions portions, Undecided undecided, Whereabouts whereabouts) {
        List<Closure> closures = new ArrayList<>();
        for (String partner : skeletons.partners()) {
            of(partner, portions, undecided, whereabouts).ifPresent(closures::add);
        }
        return closures;
    }

    private Optional<Closure> of(String partner, Portions portions, Undecided undecided, Whereabouts whereabouts) {
        String what = "closure on " + partner;
        Optional<MeasuredValue> charged = skeletons.chargedMillimoles(partner).filter(n -> n.value() > 0);
        if (charged.isEmpty()) {
            omissions.add(
                    what, "the amount charged is not known", "a charge named " + partner + " with amount and formula");
            return Optional.empty();
        }
        if (isLotUnknown(what, partner, portions)) {
            return Optional.empty();
        }
        List<Term> terms = terms(partner, portions.found(), charged.get());
        if (terms.isEmpty()) {
            // of a run that is still to be made nothing is missing
            if (run.status() != Run.Status.PLANNED) {
                omissions.add(what, "no lot or layer has an assay", "assays of lots and layers");
            }
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
        Optional<ExcessPartner> excess = unseenExcess(partner, charged.get(), portions);
        List<Unknown> unknowns = unknowns(partner, excess, portions);
        VerdictOnClosure.Result test = new VerdictOnClosure(limits)
                .judge(percent, expanded, doubts(terms, unknowns, portions, undecided, counts));
        Verdict verdict = test.verdict();
        Optional<Product> as = skeletons.wantedProduct(partner);
        double gramsPerPercent = gramsPerPercent(partner, as, charged.get());
        List<Candidate> candidates = verdict == Verdict.OPEN || verdict == Verdict.CANNOT_DECIDE
                ? candidates(
                        as,
                        // what is left over of it has its place among the unknowns
                        substance -> counts.test(substance)
                                && excess.filter(e -> SubstanceName.same(e.name(), substance))
                                        .isEmpty(),
                        unaccounted * gramsPerPercent,
                        percent.oneSidedReach() * gramsPerPercent,
                        unknowns,
                        whereabouts)
                : List.of();
        return Optional.of(new Closure(
                partner,
                charged.get(),
                percent,
                expanded,
                factor,
                verdict,
                test.because(),
                percent.standardUncertainty() == 0 ? 0 : unaccounted / percent.standardUncertainty(),
                unaccounted,
                unaccounted * gramsPerPercent,
                as.map(Product::name).orElse(""),
                terms,
                candidates));
    }

    private static Stream<Term> withinLimits(List<Term> terms) {
        return terms.stream().filter(term -> term.kind() == Content.Kind.BOUND);
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

    /** What speaks against taking the terms of a closure for all there is. */
    private VerdictOnClosure.Doubts doubts(
            List<Term> terms,
            List<Unknown> unknowns,
            Portions portions,
            Undecided undecided,
            Predicate<String> counts) {
        return new VerdictOnClosure.Doubts(
                run.leftOut().stream().map(LeftOutRow::inWords).toList(),
                undecided.labels(counts),
                undecided.boundedByTheBalance(counts),
                disputed(portions.found(), counts),
                upperBounds(portions, counts),
                unknowns.stream().map(Unknown::place).toList(),
                withinLimits(terms).map(Term::place).distinct().toList(),
                withinLimits(terms).mapToDouble(Term::percent).sum());
    }

    /** True where a crude of the partner's product is not known and nothing purified from it is either; told as an omission. */
    private boolean isLotUnknown(String what, String partner, Portions portions) {
        Optional<LotTally> unknown = portions.lots().stream()
                .filter(l -> l.endsWorkup()
                        && skeletons.units(l.product(), partner) > 0
                        && l.pureGrams().isEmpty()
                        && !portions.purified().replaced().contains(l))
                .findFirst();
        unknown.ifPresent(lot -> omissions.add(
                what,
                "lot " + lot.lot().label() + (lot.netGrams().isEmpty() ? " has no mass" : " has no assay"),
                lot.lot()
                        .row()
                        .entry(
                                lot.netGrams().isPresent()
                                        ? "Assay"
                                        : lot.lot().row().table().ownHeadings().isEmpty() ? "Gross and Tare" : "Net",
                                "lot " + lot.lot().label(),
                                "Isolated")));
        return unknown.isPresent();
    }

    /** What no figure of the run bounds, so that a gap says nothing of a loss: a purification's loss, a reagent left over. */
    private List<Unknown> unknowns(String partner, Optional<ExcessPartner> excess, Portions portions) {
        List<Unknown> unknowns = new ArrayList<>();
        for (LeftOutRow row : run.leftOut()) {
            unknowns.add(new Unknown(
                    "what " + row.inWords() + " records",
                    "the row could not be read and was left out",
                    "correct " + row.inWords(),
                    Closure.Looked.NOWHERE));
        }
        for (LotTally crude : portions.purified().replaced()) {
            String label = crude.lot().label();
            if (skeletons.units(crude.product(), partner) > 0) {
                unknowns.add(new Unknown(
                        "purification of " + label,
                        label + " has no assay, so that what was purified from it is counted in its place",
                        "assay " + label + ", or the liquors and fractions of its purification",
                        Closure.Looked.NOWHERE));
            }
        }
        for (String label : purifiedFromUnrecorded(partner, portions)) {
            unknowns.add(new Unknown(
                    "purification of " + label,
                    label + " has no row, so that what was purified from it is counted in its place",
                    "enter and assay " + label + ", or the liquors and fractions of its purification",
                    Closure.Looked.NOWHERE));
        }
        excess.ifPresent(e -> unknowns.add(new Unknown(
                partner + " left over",
                String.format(
                        Locale.ROOT,
                        "%.1f %% of the charge is beyond theory, and no layer was assayed for it",
                        e.percent()),
                "assay " + (e.ask().isEmpty() ? "the layers and lots" : String.join(", ", e.ask())) + " for " + partner,
                Closure.Looked.BOUNDED)));
        if (!run.recordsWorkup()) {
            unknowns.add(new Unknown(
                    Closure.workupOf(run.id()),
                    "neither steps nor layers of it are recorded",
                    "enter the layers in Layers, and assay them",
                    Closure.Looked.NOWHERE));
        }
        return unknowns;
    }

    /** What a partner was taken in excess, where that is as meant and nobody looked for what is left of it. */
    private Optional<ExcessPartner> unseenExcess(String partner, MeasuredValue charged, Portions portions) {
        return theory.flatMap(
                        t -> ExcessPartner.of(partner, charged, t, skeletons, portions.found(), portions.layers()))
                .filter(e -> !e.lookedFor() && !isSurprising(e));
    }

    /** Labels that purified lots were made from and that stand in no row of their own: less is known of them than of a crude without an assay. */
    private Set<String> purifiedFromUnrecorded(String partner, Portions portions) {
        Set<String> recorded = new LinkedHashSet<>();
        portions.lots().forEach(l -> recorded.add(l.lot().label()));
        portions.layers().stream().filter(l -> l.entry().isPresent()).forEach(l -> recorded.add(l.label()));
        Set<String> labels = new LinkedHashSet<>();
        portions.lots().stream()
                .filter(l ->
                        l.lot().stage().filter(s -> s == Lot.Stage.PURIFIED).isPresent())
                .filter(l -> skeletons.units(l.product(), partner) > 0)
                .forEach(l -> labels.addAll(l.lot().from()));
        labels.removeAll(recorded);
        labels.remove(Step.REACTION_MIXTURE);
        labels.removeIf(label -> isFollowed(label, recorded));
        return labels;
    }

    /** True where every portion that the steps made of one has a row, so that the lot and its liquors stand for it. */
    private boolean isFollowed(String label, Set<String> recorded) {
        List<String> made = run.steps().stream()
                .filter(step -> step.from().contains(label))
                .flatMap(step -> step.gives().stream())
                .filter(given -> !given.equals(label))
                .toList();
        return !made.isEmpty() && recorded.containsAll(made);
    }

    /**
     * Much of a substrate beyond theory, where nothing that was entered as a substrate limits: a reagent is taken in excess on purpose, of a
     * substrate the amount is more likely wrong, so that what its balance lacks is not taken for left over before somebody looked for it.
     */
    private boolean isSurprising(ExcessPartner excess) {
        return isSubstrate(excess.name())
                && excess.percent() > molarMasses.substances().value(Threshold.SUBSTRATE_EXCESS_MOST)
                && theory.stream().flatMap(t -> t.limiting().stream()).noneMatch(l -> isSubstrate(l.material()));
    }

    private boolean isSubstrate(String material) {
        return run.charges().stream()
                .filter(c -> c.isOf(material))
                .anyMatch(c -> c.role().filter(r -> r == Charge.Role.SUBSTRATE).isPresent());
    }

    /** Portions whose readings of something that counts do not agree. */
    private static List<String> disputed(Found found, Predicate<String> counts) {
        return found.terms().stream()
                .filter(t ->
                        counts.test(t.content().substance()) && t.content().rests() == Content.Rests.DISPUTED_READINGS)
                .map(Found.Term::label)
                .distinct()
                .toList();
    }

    /** Lots in the balance of whose product only an upper bound is known. */
    private static List<String> upperBounds(Portions portions, Predicate<String> counts) {
        return portions.lots().stream()
                .filter(l -> counts.test(l.product())
                        && l.basis().isUpperBound()
                        && portions.found().terms().stream()
                                .anyMatch(t -> t.label().equals(l.lot().label())))
                .map(l -> l.lot().label())
                .toList();
    }

    /** The unknowns first, as nothing but the gap bounds them; none where too much was found, so that nothing is to be looked for. */
    private static List<Candidate> candidates(
            Optional<Product> as,
            Predicate<String> counts,
            double unaccountedGrams,
            double reachGrams,
            List<Unknown> unknowns,
            Whereabouts whereabouts) {
        double most = unaccountedGrams + reachGrams;
        if (most < 0) {
            return List.of();
        }
        Stream<Candidate> first =
                unknowns.stream().map(u -> new Candidate(u.place(), 0, most, u.evidence(), u.settledBy(), u.looked()));
        Stream<Candidate> others = as.map(p -> whereabouts.of(p, counts, unaccountedGrams, reachGrams)).stream()
                .flatMap(List::stream);
        return Stream.concat(first, others).toList();
    }

    private record Unknown(String place, String evidence, String settledBy, Closure.Looked looked) {}

    private double gramsPerPercent(String partner, Optional<Product> as, MeasuredValue charged) {
        OptionalDouble molarMass = as.map(p -> molarMasses.of(p.name())).orElse(OptionalDouble.empty());
        if (molarMass.isEmpty()) {
            return 0;
        }
        double units = skeletons.units(as.orElseThrow().name(), partner);
        return charged.value() / 100 / units * molarMass.getAsDouble() / 1000;
    }
}
