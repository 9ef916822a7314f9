package workuptally.judgement;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.model.Amount;
import workuptally.model.Dimension;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.SubstanceName;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;

/** Charges that theory rests on and whose assay was left blank: one line for all, since nearly every book has some. */
final class TakenAsPure {
    private static final int MOST_NAMED = 8;

    private TakenAsPure() {}

    /** The assumption with the materials it was made for; empty where every assay is entered. */
    static Optional<BasisRow> row(List<RunTally> runs, Limits limits) {
        Map<String, String> materials = new LinkedHashMap<>();
        int charges = 0;
        for (RunTally run : runs) {
            for (ChargeAmount amount : run.amounts()) {
                if (isTakenAsPure(amount)) {
                    String material = amount.charge().material();
                    materials.putIfAbsent(SubstanceName.key(material), material);
                    charges++;
                }
            }
        }
        if (charges == 0) {
            return Optional.empty();
        }
        List<String> names = new ArrayList<>(materials.values());
        String more = names.size() > MOST_NAMED ? " and " + (names.size() - MOST_NAMED) + " more" : "";
        return Optional.of(new BasisRow(
                BasisRow.Kind.ASSUMPTION,
                "Assay left blank in Charges",
                "100 % with a standard uncertainty of " + plain(limits.value(Limit.CHARGE_ASSAY)) + " % for "
                        + charges + (charges == 1 ? " charge" : " charges") + " that theory rests on: "
                        + String.join(", ", names.subList(0, Math.min(MOST_NAMED, names.size()))) + more,
                "",
                "common practice; an assay entered under Assay takes its place"));
    }

    /** Weighed or measured out, with a coefficient, and all of it counted. */
    private static boolean isTakenAsPure(ChargeAmount amount) {
        boolean blank = amount.charge().goods().assayPercent().isBlank()
                && amount.charge().coefficient().entered().isPresent();
        Optional<Amount> typed = amount.planned()
                ? amount.charge().quantity().planned()
                : amount.charge().quantity().actual();
        boolean measuredOut = typed.map(Amount::dimension)
                .filter(d -> d == Dimension.MASS || d == Dimension.VOLUME)
                .isPresent();
        if (!blank
                || !measuredOut
                || amount.amountMillimoles().isEmpty()
                || amount.massGrams().isEmpty()
                || amount.molarMassGramsPerMole().isEmpty()) {
            return false;
        }
        double counted = amount.amountMillimoles().get().value()
                * amount.molarMassGramsPerMole().getAsDouble()
                / 1000;
        return Math.abs(counted / amount.massGrams().get().value() - 1) < 1e-9;
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
