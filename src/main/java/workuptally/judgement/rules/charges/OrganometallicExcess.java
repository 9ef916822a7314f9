package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Set;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.hazards.Hazard;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.QuenchByProduct;
import workuptally.tally.layers.LayerTally;

/**
 * An organomagnesium or organolithium reagent in excess: its quench gives R–H, which goes with the solvent and the layers; a check where it
 * harms for good and a distillate that may hold it is entered as to be used again.
 */
public final class OrganometallicExcess implements RunRule {
    /** Cancer, inherited harm, harm to the unborn child (Regulation (EC) 1272/2008, Annex VI). */
    private static final Set<String> HARMS_FOR_GOOD = Set.of("H340", "H350", "H360");

    private final Substances substances;

    public OrganometallicExcess(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.QUENCH_BY_PRODUCT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (QuenchByProduct one : QuenchByProduct.of(tally.run(), tally.amounts(), tally.closures(), substances)) {
            List<String> reused = harmsForGood(one) ? reused(tally) : List.of();
            findings.add(
                    FindingCode.QUENCH_BY_PRODUCT,
                    reused.isEmpty() ? Severity.NOTE : Severity.CHECK,
                    one.charge().row().at("Material"),
                    Phrase.of(
                            "{} {} charged, {} found in products: the quench of the rest gives up to {} {} ({})",
                            Figure.decimals(one.chargedMillimoles(), 1, "mmol"),
                            one.charge().material(),
                            Figure.decimals(one.usedMillimoles(), 1, "mmol"),
                            Figure.decimals(one.leftMillimoles(), 1, "mmol"),
                            one.name(),
                            Figure.decimals(one.grams(), 2, "g")),
                    Phrase.of("no more of it than the run needs"),
                    "stoichiometry of the quench",
                    Phrase.of(
                            "Expect it in the distillate and the layers and name it for the waste; follow its safety data sheet and"
                                    + " the local rules.{}",
                            reused.isEmpty()
                                    ? Phrase.NONE
                                    : Phrase.of(
                                            " {} is entered as to be used again: write {} on it, and let the person responsible"
                                                    + " say whether it may be.",
                                            String.join(", ", reused),
                                            one.name())));
        }
        return findings.list();
    }

    private boolean harmsForGood(QuenchByProduct one) {
        return substances.material(one.name()).hazard().map(Hazard::statements).stream()
                .flatMap(List::stream)
                .anyMatch(code -> HARMS_FOR_GOOD.stream().anyMatch(code::startsWith));
    }

    private static List<String> reused(RunTally tally) {
        return tally.layers().stream()
                .filter(l -> l.phase().filter(p -> p == Layer.Phase.DISTILLATE).isPresent())
                .filter(l -> l.entry()
                        .flatMap(entry -> entry.custody().status())
                        .filter(s -> s == Layer.Status.TO_REUSE)
                        .isPresent())
                .map(LayerTally::label)
                .toList();
    }
}
