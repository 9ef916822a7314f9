package workuptally.judgement.rules.balance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.layers.LayerGraph;

/**
 * Lots made from lots, against what they were made from: no more product than was in it, and as a purified lot no smaller share of product;
 * both beyond U of the difference.
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
        return findings.list();
    }

    private static void more(
            Origin origin, List<LotTally> sources, List<LotTally> lots, double factor, FindingList findings) {
        Optional<MeasuredValue> had = sum(sources);
        boolean allKnown = sources.stream().allMatch(l -> l.pureGrams().isPresent())
                && origin.labels().size()
                        == sources.stream().map(l -> l.lot().label()).distinct().count();
        Optional<MeasuredValue> has = sum(lots);
        if (had.isEmpty() || !allKnown || has.isEmpty()) {
            return;
        }
        MeasuredValue gain = has.get().minus(had.get());
        if (gain.value() > gain.expandedUncertainty(factor)) {
            LotTally largest = lots.stream()
                    .filter(l -> l.pureGrams().isPresent())
                    .reduce((a, b) ->
                            b.pureGrams().get().value() > a.pureGrams().get().value() ? b : a)
                    .orElseThrow();
            findings.add(
                    FindingCode.PURIFIED_EXCEEDS_SOURCE,
                    Severity.CHECK,
                    largest.lot().row().at("Gross"),
                    Phrase.of(
                            "{} {} {} of {}, but {}, of which it was made, held {}",
                            labels(lots),
                            lots.size() == 1 ? "holds" : "hold together",
                            Figure.digits(has.get().value(), 4, "g"),
                            origin.product(),
                            String.join(", ", origin.labels()),
                            Figure.digits(had.get().value(), 4, "g")),
                    Phrase.of("no more than it was made from, within U"),
                    "conservation of mass",
                    Phrase.of(
                            "Look at gross, tare and assay of {}, then at those of {}; a crystallised lot may hold solvent.",
                            labels(lots),
                            String.join(", ", origin.labels())));
        }
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

    private static Optional<MeasuredValue> sum(List<LotTally> lots) {
        return lots.stream().flatMap(l -> l.pureGrams().stream()).reduce(MeasuredValue::plus);
    }

    private static String labels(List<LotTally> lots) {
        return String.join(", ", lots.stream().map(l -> l.lot().label()).toList());
    }

    private record Origin(Set<String> labels, String product) {
        @Override
        public int hashCode() {
            return Objects.hash(labels, product);
        }
    }
}
