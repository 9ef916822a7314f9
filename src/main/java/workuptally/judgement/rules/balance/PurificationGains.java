package workuptally.judgement.rules.balance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Lot;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.balance.Purification;
import workuptally.tally.layers.LayerGraph;

/**
 * Lots made from lots, against what they were made from: no more product than was in it, nor with the liquors and fractions beside them, and
 * as a purified lot no smaller share of product; each beyond U of the difference. What was purified without an assay held its mass at most.
 */
public final class PurificationGains implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PURIFIED_EXCEEDS_SOURCE, FindingCode.PURIFIED_BELOW_SOURCE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        LayerGraph graph = LayerGraph.of(tally.run());
        double factor = book.limits().value(Limit.COVERAGE_FACTOR);
        Map<Origin, List<LotTally>> made = new LinkedHashMap<>();
        for (LotTally lot : tally.lots()) {
            Set<String> origin =
                    lot.endsWorkup() ? Set.of() : graph.nearestLots(lot.lot().label());
            if (!origin.isEmpty()) {
                made.computeIfAbsent(new Origin(origin, lot.product()), o -> new ArrayList<>())
                        .add(lot);
            }
        }
        made.forEach((origin, lots) -> {
            List<LotTally> sources = tally.lots().stream()
                    .filter(l -> origin.labels().contains(l.lot().label()) && l.isOf(origin.product()))
                    .toList();
            more(origin, sources, lots, factor, findings);
            lots.forEach(lot -> poorer(sources, lot, factor, findings));
        });
        withPortions(tally, factor, findings);
        return findings.list();
    }

    private static void more(
            Origin origin, List<LotTally> sources, List<LotTally> lots, double factor, FindingList findings) {
        boolean allThere = origin.labels().size()
                == sources.stream().map(l -> l.lot().label()).distinct().count();
        Optional<MeasuredValue> had = allThere ? sum(sources, LotTally::atMostGrams) : Optional.empty();
        List<LotTally> known =
                lots.stream().filter(l -> l.pureGrams().isPresent()).toList();
        Optional<MeasuredValue> has = sum(known, LotTally::pureGrams);
        if (isMore(has, had, factor)) {
            boolean weighed = known.stream().anyMatch(l -> l.productFraction().isEmpty());
            add(
                    known,
                    List.of(),
                    weighed,
                    has.get(),
                    sources,
                    areAllAssayed(sources) ? "held" : "weighed",
                    had.get(),
                    findings);
            return;
        }
        // nor do lots weigh more than what they were made from, unless their assays say that they took up something
        // else
        Optional<MeasuredValue> whole = allThere ? sum(sources, PurificationGains::mass) : Optional.empty();
        Optional<MeasuredValue> parts = sum(lots, PurificationGains::mass);
        boolean tookUpElse = known.size() == lots.size()
                && has.isPresent()
                && had.isPresent()
                && has.get().value() <= had.get().value();
        if (!tookUpElse && isMore(parts, whole, factor)) {
            add(lots, List.of(), true, parts.get(), sources, "weighed", whole.get(), findings);
        }
    }

    /** The lots with the liquors and fractions beside them, where the lots alone are not too much. */
    private static void withPortions(RunTally tally, double factor, FindingList findings) {
        List<Place> told = findings.list().stream()
                .filter(f -> f.code() == FindingCode.PURIFIED_EXCEEDS_SOURCE)
                .map(Finding::place)
                .toList();
        for (Purification purification : tally.purifications()) {
            List<LotTally> lots = of(tally, purification.made(), purification.product());
            if (purification.gains(factor) && lots.stream().noneMatch(l -> told.contains(weighing(l)))) {
                add(
                        lots,
                        purification.portions(),
                        false,
                        purification.foundGrams(),
                        of(tally, purification.sources(), purification.product()),
                        purification.inIsAtMost() ? "weighed" : "held",
                        purification.inGrams(),
                        findings);
            }
        }
    }

    private static boolean areAllAssayed(List<LotTally> lots) {
        return lots.stream().allMatch(l -> l.pureGrams().isPresent());
    }

    private static Place weighing(LotTally lot) {
        return lot.lot().row().at(lot.lot().weighing().heading());
    }

    private static List<LotTally> of(RunTally tally, Collection<String> labels, String product) {
        return tally.lots().stream()
                .filter(l -> labels.contains(l.lot().label()) && l.isOf(product))
                .toList();
    }

    private static boolean isMore(Optional<MeasuredValue> has, Optional<MeasuredValue> had, double factor) {
        if (has.isEmpty() || had.isEmpty()) {
            return false;
        }
        MeasuredValue gain = has.get().minus(had.get());
        return gain.value() > gain.expandedUncertainty(factor);
    }

    private static void add(
            List<LotTally> lots,
            List<String> portions,
            boolean weighed,
            MeasuredValue has,
            List<LotTally> sources,
            String held,
            MeasuredValue had,
            FindingList findings) {
        LotTally largest =
                lots.stream().reduce((a, b) -> grams(b) > grams(a) ? b : a).orElseThrow();
        boolean alone = lots.size() + portions.size() == 1;
        Stream<String> named = lots.stream()
                .map(l -> l.lot().label() + (weighed || l.productFraction().isPresent() ? "" : " (as weighed)"));
        String made = Stream.concat(named, portions.stream()).distinct().collect(Collectors.joining(", "));
        String from = String.join(
                ", ", sources.stream().map(l -> l.lot().label()).distinct().toList());
        findings.add(
                FindingCode.PURIFIED_EXCEEDS_SOURCE,
                Severity.CHECK,
                weighing(largest),
                Phrase.of(
                        "{} {} {} of {}, but {}, of which {} made, {} {}",
                        made,
                        weighed ? alone ? "weighs" : "weigh together" : alone ? "holds" : "hold together",
                        Figure.digits(has.value(), 4, "g"),
                        largest.product(),
                        from,
                        alone ? "it was" : "they were",
                        held,
                        Figure.digits(had.value(), 4, "g")),
                Phrase.of("no more than it was made from, within U"),
                "conservation of mass",
                weighed
                        ? Phrase.of(
                                "Dry {} to constant mass and assay it; else look at its weighing, then at that of {}.",
                                made,
                                from)
                        : Phrase.of(
                                "Look at gross, tare and assay of {}, then at those of {}; a crystallised lot may hold solvent.",
                                made,
                                from));
    }

    private static void poorer(List<LotTally> sources, LotTally lot, double factor, FindingList findings) {
        boolean purified =
                lot.lot().stage().filter(s -> s == Lot.Stage.PURIFIED).isPresent();
        if (!purified || sources.size() != 1 || sources.get(0).gramsPerGram() != lot.gramsPerGram()) {
            return;
        }
        Optional<MeasuredValue> before = assay(sources.get(0));
        Optional<MeasuredValue> after = assay(lot);
        if (before.isEmpty() || after.isEmpty()) {
            return;
        }
        MeasuredValue lost = before.get().minus(after.get());
        if (lost.value() > lost.expandedUncertainty(factor)) {
            findings.add(
                    FindingCode.PURIFIED_BELOW_SOURCE,
                    Severity.CHECK,
                    lot.lot().row().at("Assay"),
                    Phrase.of(
                            "lot {}, purified, holds {} of {} by its assay; {}, of which it was made, held {}",
                            lot.lot().label(),
                            Figure.decimals(100 * after.get().value(), 1, "%"),
                            lot.product(),
                            sources.get(0).lot().label(),
                            Figure.decimals(100 * before.get().value(), 1, "%")),
                    Phrase.of("a share of product not below that of what was purified, within U"),
                    FindingList.PRACTICE,
                    Phrase.of(
                            "Look for a slip in this assay; else dry the lot, and look whether a fraction went into the wrong flask."));
        }
    }

    private static Optional<MeasuredValue> assay(LotTally lot) {
        return lot.pureGrams().isPresent() ? lot.productFraction() : Optional.empty();
    }

    /** The sum over lots; empty where one of them is not known. */
    private static Optional<MeasuredValue> sum(List<LotTally> lots, Function<LotTally, Optional<MeasuredValue>> grams) {
        return lots.stream()
                .map(grams)
                .reduce((a, b) -> a.flatMap(x -> b.map(x::plus)))
                .orElse(Optional.empty());
    }

    private static Optional<MeasuredValue> mass(LotTally lot) {
        return lot.netGrams().map(net -> net.times(lot.gramsPerGram()));
    }

    private static double grams(LotTally lot) {
        return lot.pureGrams().or(() -> mass(lot)).map(MeasuredValue::value).orElse(0.0);
    }

    private record Origin(Set<String> labels, String product) {
        @Override
        public int hashCode() {
            return Objects.hash(labels, product);
        }
    }
}
