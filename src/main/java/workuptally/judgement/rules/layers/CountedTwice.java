package workuptally.judgement.rules.layers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.SubstanceName;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.AssayResults;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.YieldBasis;

/**
 * A substance assayed twice in one sample: pooled where the results agree, a hold where they do not; and a lot whose two assays differ.
 */
public final class CountedTwice implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public CountedTwice(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.COMPONENT_COUNTED_TWICE, FindingCode.ASSAYS_DISAGREE, FindingCode.LOT_ASSAY_DIFFERS);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Map<String, Assay> first = new LinkedHashMap<>();
        for (Assay assay : tally.run().assays()) {
            if (assay.unit().filter(CountedTwice::isContent).isPresent()) {
                String key = assay.sample() + "|" + SubstanceName.key(assay.substance());
                Assay before = first.putIfAbsent(key, assay);
                if (before != null) {
                    twice(findings, tally, book, before, assay);
                }
            }
        }
        new LotAssays(substances, tally, book).judge(findings);
        return findings.list();
    }

    private void twice(FindingList findings, RunTally tally, Book book, Assay before, Assay assay) {
        boolean told = assay.isComposite()
                && tally.evidence().composites().list().stream()
                        .noneMatch(c ->
                                c.name().equals(assay.sample()) && c.together().rests() == Content.Rests.OWN_READING);
        if (told) {
            return; // refused, or gainsaid: its own finding says so
        }
        Phrase seen = Phrase.of(
                "{} in {} stands in two rows of Assays ({} and {})",
                assay.substance(),
                assay.sample(),
                typed(before),
                typed(assay));
        if (isCountedInIsolated(tally, assay)) {
            note(findings, assay, Phrase.of("{}; its assay in Isolated counts", seen));
        } else if (isDisputed(tally, assay) || isDisputedBesideProduct(tally, book, assay)) {
            findings.add(
                    FindingCode.ASSAYS_DISAGREE,
                    isDisputed(tally, assay) ? Severity.HOLD : Severity.CHECK,
                    assay.row().at("Result"),
                    Phrase.of(
                            "{}, which differ by more than their uncertainties explain; the larger counts meanwhile",
                            seen),
                    Phrase.of(
                            "two results of one portion within {}u of each other",
                            Figure.brief(substances.value(Threshold.READINGS_AGREE), "")),
                    FindingList.PRACTICE,
                    Phrase.of(
                            "Find out which is right, by a third aliquot if need be, and keep that row; note the other beside it."));
        } else if (counts(before, book) && counts(assay, book)) {
            note(findings, assay, Phrase.of("{}, {}", seen, whichCounts(tally, assay)));
        }
    }

    private static void note(FindingList findings, Assay assay, Phrase seen) {
        findings.add(
                FindingCode.COMPONENT_COUNTED_TWICE,
                Severity.NOTE,
                assay.row().at("Substance"),
                seen,
                Phrase.of("each substance once for each sample"),
                FindingList.PRACTICE,
                Phrase.of("Nothing needs doing; one row with the number of replicates says the same."));
    }

    private boolean counts(Assay assay, Book book) {
        return new AssayResults(book.limits(), substances).counts(assay);
    }

    /** True for rows beside an assay of the product that the lot has in Isolated. */
    private static boolean isCountedInIsolated(RunTally tally, Assay assay) {
        return ofLot(tally, assay)
                .flatMap(l -> l.lot().assayPercent().entered())
                .filter(typed -> typed.qualifier() != Qualifier.NOT_DETECTED)
                .isPresent();
    }

    /** The lot, where the assay is of its product. */
    private static Optional<LotTally> ofLot(RunTally tally, Assay assay) {
        return tally.lots().stream()
                .filter(l -> l.lot().label().equals(assay.sample()) && l.isOf(assay.substance()))
                .findFirst();
    }

    private static boolean isDisputed(RunTally tally, Assay assay) {
        return ofLot(tally, assay)
                        .filter(l -> l.basis() == YieldBasis.UPPER_LIMIT)
                        .isPresent()
                || restsOn(tally, assay, Content.Rests.DISPUTED_READINGS);
    }

    /** Of what a lot holds beside its product only more than a trace is asked about: by the share up to which readings of a layer may differ. */
    private boolean isDisputedBesideProduct(RunTally tally, Book book, Assay assay) {
        double tracePercent =
                substances.value(Threshold.READINGS_APART) * book.limits().value(Limit.LAYER_LIMIT);
        OptionalDouble grams = besideProduct(tally, assay)
                .filter(c -> c.rests() == Content.Rests.DISPUTED_READINGS)
                .map(Content::upperBoundGrams)
                .orElse(OptionalDouble.empty());
        return grams.isPresent()
                && tally.lots().stream()
                        .filter(l -> l.lot().label().equals(assay.sample()))
                        .flatMap(l -> l.netGrams().stream())
                        .anyMatch(net -> 100 * grams.getAsDouble() > tracePercent * net.value());
    }

    private static Phrase whichCounts(RunTally tally, Assay assay) {
        if (restsOn(tally, assay, Content.Rests.READINGS_APART)) {
            return Phrase.of("which differ, but both lie far below the layer limit; the larger counts");
        }
        return besideProduct(tally, assay)
                        .filter(c -> c.rests() == Content.Rests.DISPUTED_READINGS)
                        .isPresent()
                ? Phrase.of("which differ by more than their uncertainties explain; the larger counts")
                : Phrase.of("which agree; their mean counts, with the larger of both bounds");
    }

    /** What was assayed in a lot beside its product. */
    private static Optional<Content> besideProduct(RunTally tally, Assay assay) {
        return tally.evidence().inLots().getOrDefault(assay.sample(), List.of()).stream()
                .filter(c -> c.isOf(assay.substance()))
                .findFirst();
    }

    private static boolean restsOn(RunTally tally, Assay assay, Content.Rests rests) {
        return tally.layers().stream()
                .filter(l -> l.label().equals(assay.sample()))
                .flatMap(l -> l.contents().stream())
                .anyMatch(c -> c.isOf(assay.substance()) && c.rests() == rests);
    }

    private static boolean isContent(Assay.Unit unit) {
        return unit != Assay.Unit.AREA_PERCENT && unit != Assay.Unit.MOLE_RATIO_TO_PRODUCT;
    }

    private static Phrase typed(Assay assay) {
        return Phrase.of(
                "{} {}",
                assay.result().entered().map(Entered::asTyped).orElse("no result"),
                assay.unit().map(Assay.Unit::word).orElse(""));
    }
}
