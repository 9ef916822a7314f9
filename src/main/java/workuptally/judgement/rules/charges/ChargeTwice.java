package workuptally.judgement.rules.charges;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Amount;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.SubstanceName;
import workuptally.tally.RunTally;

/**
 * Two charges of a run with the same material, amount and bottle: two portions, or one that was typed twice (common practice). Portions that
 * say so behind the name, or that come from two bottles, are none of these.
 */
public final class ChargeTwice implements RunRule {
    /** What two rows about one weighing share. */
    private record Weighed(
            String material, Optional<Charge.Role> role, double value, Object dimension, String bottle) {}

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CHARGE_TWICE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Map<Weighed, Charge> first = new HashMap<>();
        for (Charge charge : tally.run().charges()) {
            Optional<Weighed> weighed = charge.quantity().actual().flatMap(amount -> weighed(charge, amount));
            Charge earlier = weighed.map(w -> first.putIfAbsent(w, charge)).orElse(null);
            if (earlier != null) {
                findings.add(
                        FindingCode.CHARGE_TWICE,
                        Severity.CHECK,
                        charge.row().at("Material"),
                        Phrase.of(
                                "{} stands in two rows with the same amount, here and at {}",
                                charge.material(),
                                earlier.row().at("Material").inWords()),
                        Phrase.of("one row for each weighing"),
                        FindingList.PRACTICE,
                        Phrase.of("Take one row out if it was typed twice; two portions say so behind the name, as in"
                                + " (portion 2). Both are counted."));
            }
        }
        return findings.list();
    }

    private static Optional<Weighed> weighed(Charge charge, Amount amount) {
        Optional<Double> value = amount.value().entered().map(Entered::value);
        return value.filter(v -> v > 0)
                .map(v -> new Weighed(
                        SubstanceName.key(charge.material()),
                        charge.role(),
                        v,
                        amount.dimension(),
                        charge.goods().supplierLot().strip().toLowerCase(Locale.ROOT)));
    }
}
