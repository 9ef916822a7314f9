package workuptally.judgement.rules.balance;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Substances;

/**
 * A second weighing that differs: lighter or heavier by more than 0.5 % of the net mass and 3u (common practice) means the lot is not at
 * constant mass; heavier by less than that but more than 3u, that it was weighed warm.
 */
public final class NotAtConstantMass implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public NotAtConstantMass(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.NOT_AT_CONSTANT_MASS, FindingCode.WEIGHED_WARM);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Set<String> seen = new HashSet<>();
        for (LotTally lot : tally.lots()) {
            if (!seen.add(lot.lot().label())) {
                continue; // another product of the same weighing
            }
            Optional<Entered> first = lot.lot().weighing().grossGrams().entered();
            Optional<Entered> second = lot.lot().weighing().secondGrossGrams().entered();
            if (first.isPresent() && second.isPresent() && lot.netGrams().isPresent()) {
                judge(findings, lot, second.get().value() - first.get().value(), second.get());
            }
        }
        return findings.list();
    }

    private void judge(FindingList findings, LotTally lot, double change, Entered second) {
        double net = lot.netGrams().orElseThrow().value();
        double noise = substances.value(Threshold.CONSTANT_MASS_UNCERTAINTIES)
                * lot.netGrams().get().standardUncertainty();
        Phrase seen = Phrase.of(
                "lot {}: the second weighing differs by {} ({} of the net mass)",
                lot.lot().label(),
                Figure.signed(change, 4, "g"),
                Figure.signed(100 * change / net, 2, "%"));
        if (Math.abs(change) > Math.max(noise, substances.value(Threshold.CONSTANT_MASS) * net)) {
            findings.add(
                    FindingCode.NOT_AT_CONSTANT_MASS,
                    Severity.CHECK,
                    second.place(),
                    seen,
                    Phrase.of(
                            "within {} and {}u of the first",
                            Figure.brief(100 * substances.value(Threshold.CONSTANT_MASS), "%"),
                            Figure.brief(substances.value(Threshold.CONSTANT_MASS_UNCERTAINTIES), "")),
                    FindingList.PRACTICE,
                    change < 0
                            ? Phrase.of("Dry on until two weighings agree; the first mass still held solvent or water.")
                            : Phrase.of("Look for moisture taken up or a flask not cooled, and weigh again."));
        } else if (change > noise) {
            findings.add(
                    FindingCode.WEIGHED_WARM,
                    Severity.NOTE,
                    second.place(),
                    seen,
                    Phrase.of("a weighing at the temperature of the balance"),
                    "a warm vessel weighs light: common practice",
                    Phrase.of("Let the flask stand half an hour by the balance before the weighing that counts."));
        }
    }
}
