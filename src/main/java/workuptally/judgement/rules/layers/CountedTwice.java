package workuptally.judgement.rules.layers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Finding;
import workuptally.model.Lot;
import workuptally.model.Severity;
import workuptally.tally.RunTally;

/** A substance assayed twice in one sample, so that it counts twice, and a lot whose two assays differ. */
public final class CountedTwice implements RunRule {
    static final String TWICE = "component-counted-twice";
    static final String LOT = "lot-assay-differs";

    @Override
    public List<String> codes() {
        return List.of(TWICE, LOT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Map<String, Assay> first = new LinkedHashMap<>();
        for (Assay assay : tally.run().assays()) {
            if (assay.unit().filter(CountedTwice::isContent).isPresent()) {
                String key = assay.sample() + "|" + assay.substance().toLowerCase(Locale.ROOT);
                Assay before = first.putIfAbsent(key, assay);
                if (before != null) {
                    findings.add(
                            TWICE,
                            Severity.CHECK,
                            assay.row().at("Substance"),
                            assay.substance() + " in " + assay.sample() + " stands in two rows of Assays ("
                                    + typed(before) + " and " + typed(assay) + "); both count in the balance",
                            "each substance once for each sample",
                            FindingList.PRACTICE,
                            "Keep the better result and note the other beside it.");
                }
            }
        }
        tally.run().lots().forEach(lot -> lot(findings, tally, lot));
        return findings.list();
    }

    private static boolean isContent(Assay.Unit unit) {
        return unit != Assay.Unit.AREA_PERCENT && unit != Assay.Unit.MOLE_RATIO_TO_PRODUCT;
    }

    private static String typed(Assay assay) {
        return assay.result().entered().map(Entered::asTyped).orElse("no result") + " "
                + assay.unit().map(Assay.Unit::word).orElse("");
    }

    private static void lot(FindingList findings, RunTally tally, Lot lot) {
        Optional<Entered> typed = lot.assayPercent().entered();
        Optional<Assay> row = tally.run().assays().stream()
                .filter(a -> a.sample().equals(lot.label())
                        && a.substance().equalsIgnoreCase(lot.product())
                        && a.unit().filter(u -> u == Assay.Unit.MASS_PERCENT).isPresent())
                .findFirst();
        Optional<Entered> other = row.flatMap(a -> a.result().entered());
        if (typed.isPresent()
                && other.isPresent()
                && typed.get().value() != other.get().value()) {
            findings.add(
                    LOT,
                    Severity.CHECK,
                    typed.get().place(),
                    "lot " + lot.label() + ": assay " + typed.get().asTyped() + " % in Isolated, "
                            + other.get().asTyped() + " % in Assays; the first is used",
                    "one assay of the lot",
                    FindingList.PRACTICE,
                    "Keep the assay that the yield shall rest on and note the other.");
        }
    }
}
