package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.chemistry.Reconciliation;
import workuptally.measure.Contribution;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Reading;

/**
 * The readings of a run brought into agreement with conservation of mass and of each skeleton: shown beside, never instead of, what was
 * measured.
 *
 * @param values readings with their adjusted values, the largest standardised adjustment first; empty where no balance can be struck
 * @param chiSquare global test of all balances at once
 * @param degreesOfFreedom balances that were struck
 */
public record ReconciledBalance(List<Value> values, double chiSquare, int degreesOfFreedom) {
    /** No balance could be struck. */
    public static final ReconciledBalance NONE = new ReconciledBalance(List.of(), 0, 0);

    /** Half the width of a rectangular distribution over its standard uncertainty. Source: JCGM 100:2008, 4.3.7. */
    private static final double RECTANGULAR = Math.sqrt(3);

    /** Copies the list. */
    public ReconciledBalance {
        values = List.copyOf(values);
    }

    /**
     * A reading and what the balances make of it.
     *
     * @param reading the reading
     * @param adjusted adjusted value, in the unit of the reading
     * @param standardUncertainty u of the adjusted value, in the same unit
     * @param standardisedAdjustment adjustment over its standard deviation, without sign
     */
    public record Value(Reading reading, double adjusted, double standardUncertainty, double standardisedAdjustment) {}

    /**
     * One balance.
     *
     * @param figure the figure that conservation fixes but for what is lost
     * @param imbalance its distance from where it must lie, with half of what can be lost taken as lost
     * @param mostLost what can be lost at most, in the same unit
     */
    private record Balance(MeasuredValue figure, double imbalance, double mostLost) {}

    /**
     * Reconciles a run. What may be lost stands in each balance as one more unknown, equally likely anywhere up to its most; a closure whose
     * gap a portion without an assay may hold, and a total mass of which a part was not weighed, are left out.
     *
     * @param transferLossPercent what is lost on glass without an explanation, % of what was charged
     */
    public static ReconciledBalance of(
            List<Closure> closures, Optional<MassBalance> massBalance, double transferLossPercent) {
        List<Balance> balances = new ArrayList<>();
        for (Closure closure : closures) {
            double lost = Math.max(transferLossPercent, closure.candidatesAtMostPercent());
            boolean open = closure.candidates().stream().anyMatch(Closure.Candidate::keptWithoutAssay);
            if (!open && Double.isFinite(lost)) {
                balances.add(new Balance(closure.percent(), closure.percent().value() - 100 + lost / 2, lost));
            }
        }
        massBalance.filter(MassBalance::complete).ifPresent(m -> {
            double lost = m.evaporationAllowanceGrams() + m.gasGrams();
            balances.add(new Balance(m.gapGrams(), m.gapGrams().value() - lost / 2, lost));
        });
        return balances.isEmpty() ? NONE : reconciled(balances);
    }

    private static ReconciledBalance reconciled(List<Balance> balances) {
        Map<Reading, Integer> numbers = new IdentityHashMap<>();
        Map<Integer, Reading> readings = new LinkedHashMap<>();
        for (Balance balance : balances) {
            for (Contribution part : balance.figure().budget()) {
                if (numbers.putIfAbsent(part.reading(), numbers.size()) == null) {
                    readings.put(readings.size(), part.reading());
                }
            }
        }
        int measured = readings.size();
        double[] u = new double[measured + balances.size()];
        double[][] rows = new double[balances.size()][u.length];
        double[] imbalances = new double[balances.size()];
        readings.forEach((number, reading) -> u[number] = reading.standardUncertainty());
        for (int i = 0; i < rows.length; i++) {
            Balance balance = balances.get(i);
            for (Contribution part : balance.figure().budget()) {
                rows[i][numbers.get(part.reading())] = part.sensitivity();
            }
            u[measured + i] = Math.max(1e-9, balance.mostLost() / 2 / RECTANGULAR);
            rows[i][measured + i] = 1;
            imbalances[i] = balance.imbalance();
        }
        Reconciliation reconciliation = new Reconciliation(u, rows, imbalances);
        double[] adjustments = reconciliation.adjustments();
        double[] uncertainties = reconciliation.adjustedStandardUncertainties();
        double[] standardised = reconciliation.standardisedAdjustments();
        List<Value> values = new ArrayList<>();
        readings.forEach((number, reading) -> values.add(new Value(
                reading, reading.value() + adjustments[number], uncertainties[number], standardised[number])));
        values.sort(Comparator.comparingDouble(Value::standardisedAdjustment).reversed());
        return new ReconciledBalance(values, reconciliation.chiSquare(), reconciliation.degreesOfFreedom());
    }
}
