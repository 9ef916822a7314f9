package workuptally.tally.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.SubstanceName;
import workuptally.tally.amounts.ChargeAmount;

/**
 * A material charged with a known amount: rows of one name are portions of it, which the reaction uses up once.
 *
 * @param portions its rows, at least one, in order of the table
 */
record Reagent(List<ChargeAmount> portions) {
    /** Copies the list. */
    Reagent {
        portions = List.copyOf(portions);
    }

    /** The materials of some charges, in the order in which they are first charged; without those of unknown amount. */
    static List<Reagent> of(List<ChargeAmount> amounts) {
        Map<String, List<ChargeAmount>> byName = new LinkedHashMap<>();
        for (ChargeAmount amount : amounts) {
            if (amount.amountMillimoles().isPresent()) {
                byName.computeIfAbsent(SubstanceName.key(amount.charge().material()), m -> new ArrayList<>())
                        .add(amount);
            }
        }
        return byName.values().stream().map(Reagent::new).toList();
    }

    /** Its first row. */
    Charge charge() {
        return portions.get(0).charge();
    }

    /** All portions together, mmol. */
    double chargedMillimoles() {
        return portions.stream()
                .flatMap(p -> p.amountMillimoles().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
    }

    /** What full conversion uses up by its coefficient, mmol; 0 without one. */
    double usedMillimoles(double extentMillimoles) {
        return extentMillimoles
                * portions.stream()
                        .flatMap(p -> p.charge().coefficient().entered().stream())
                        .mapToDouble(Entered::value)
                        .max()
                        .orElse(0);
    }
}
