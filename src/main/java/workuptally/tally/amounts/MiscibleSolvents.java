package workuptally.tally.amounts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.model.SubstanceName;
import workuptally.reference.bench.Threshold;
import workuptally.reference.solutions.PartitionRow;

/**
 * How a solvent that mixes with water is shared between an organic phase and the water: c(organic)/c(water), an estimate.
 *
 * <p>By the partition row for that organic solvent or for its class, else by that for octanol where octanol is preferred to water, else by
 * the ratio of the bench rules (common practice). Several organic solvents count by their volumes.
 */
public final class MiscibleSolvents {
    private static final String OCTANOL = "1-octanol";

    private final Substances substances;

    public MiscibleSolvents(Substances substances) {
        this.substances = substances;
    }

    /**
     * The ratio for an organic phase.
     *
     * @param name the solvent that mixes with water
     * @param organicMillilitres the solvents that do not, by name, mL; where there are none the ratio is that of an unlisted one
     * @return 0 or more, dimensionless
     */
    public double ratio(String name, Map<String, Double> organicMillilitres) {
        List<PartitionRow> rows = substances.reference().partition().findAll(name);
        double all = organicMillilitres.values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        if (all <= 0) {
            return inUnlisted(rows);
        }
        double ratio = 0;
        for (Map.Entry<String, Double> organic : organicMillilitres.entrySet()) {
            ratio += organic.getValue() / all * in(organic.getKey(), rows);
        }
        return ratio;
    }

    private double in(String organic, List<PartitionRow> rows) {
        Optional<PartitionRow> own = rows.stream()
                .filter(r -> SubstanceName.same(r.organicPhase(), organic))
                .findFirst();
        return own.or(() -> rows.stream()
                        .filter(r -> substances.material(organic).is(r.organicPhase()))
                        .findFirst())
                .map(this::used)
                .orElseGet(() -> inUnlisted(rows));
    }

    private double inUnlisted(List<PartitionRow> rows) {
        return rows.stream()
                .filter(r -> r.organicPhase().equals(OCTANOL))
                .filter(r -> r.character() == PartitionRow.Character.NEUTRAL && r.logP() > 0)
                .findFirst()
                .map(this::used)
                .orElseGet(() -> substances.value(Threshold.MISCIBLE_DISTRIBUTION));
    }

    private double used(PartitionRow row) {
        substances.use(row);
        return row.partitionRatio();
    }
}
