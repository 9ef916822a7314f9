package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import workuptally.tally.RunTally;
import workuptally.tally.waste.Metrics;

/** Mass metrics, each from the same few masses. */
final class ExplainedMetrics {
    private final Numbers numbers;

    ExplainedMetrics(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        tally.metrics().ifPresent(metrics -> {
            all.add(intensity(metrics));
            all.add(workupIntensity(metrics));
            all.add(withWater(metrics));
            all.add(withoutWater(metrics));
            efficiency(metrics, all);
            atomEconomy(metrics, all);
        });
        return all;
    }

    private Explanation intensity(Metrics metrics) {
        return new Draft(FigureKind.METRICS, "Process mass intensity")
                .equation("PMI = Σm(in)/m(P), water in")
                .equation("PMI = " + numbers.plain(metrics.inGrams()) + " g / " + numbers.plain(metrics.productGrams())
                        + " g")
                .note(
                        metrics.ofPurified()
                                ? "No crude was assayed: P is what was purified from it, and what purification took in is not counted."
                                : "Up to the crude or the dried solid; purification is outside.")
                .note("What went in stands under total mass in.")
                .result(metrics.pmi(), "g/g", numbers);
    }

    private Explanation workupIntensity(Metrics metrics) {
        return new Draft(FigureKind.METRICS, "Process mass intensity of the workup alone")
                .equation("PMI(workup) = Σm(in, workup)/m(P), water in")
                .equation("PMI(workup) = " + numbers.plain(metrics.workupInGrams()) + " g / "
                        + numbers.plain(metrics.productGrams()) + " g")
                .result(metrics.pmiWorkupOnly(), "g/g", numbers);
    }

    private Explanation withWater(Metrics metrics) {
        return new Draft(FigureKind.METRICS, "E-factor with water")
                .equation("E = (Σm(in) − m(P) − m(re-used))/m(P)")
                .equation("E = (" + numbers.plain(metrics.inGrams()) + " − " + numbers.plain(metrics.productGrams())
                        + " − " + numbers.plain(metrics.reusedGrams()) + ") / " + numbers.plain(metrics.productGrams()))
                .result(numbers.plain(metrics.eFactorWithWater()) + " g/g");
    }

    private Explanation withoutWater(Metrics metrics) {
        return new Draft(FigureKind.METRICS, "E-factor without water")
                .equation("E = (Σm(in) − m(water) − m(P) − (m(re-used) − m(water in it)))/m(P)")
                .equation("E = (" + numbers.plain(metrics.inGrams()) + " − " + numbers.plain(metrics.waterGrams())
                        + " − "
                        + numbers.plain(metrics.productGrams()) + " − (" + numbers.plain(metrics.reusedGrams()) + " − "
                        + numbers.plain(metrics.reusedWaterGrams()) + ")) / " + numbers.plain(metrics.productGrams()))
                .result(numbers.plain(metrics.eFactorWithoutWater()) + " g/g");
    }

    private void efficiency(Metrics metrics, List<Explanation> all) {
        if (metrics.reactantGrams().isPresent()) {
            all.add(new Draft(FigureKind.METRICS, "Reaction mass efficiency")
                    .equation(
                            "RME = 100·m(P)/Σm(reactants), the charges with a coefficient, of a solution the reagent alone")
                    .equation("RME = 100 × " + numbers.plain(metrics.productGrams()) + " g / "
                            + numbers.plain(metrics.reactantGrams().get()) + " g")
                    .result(metrics.reactionMassEfficiencyPercent().orElseThrow(), "%", numbers));
        }
    }

    private void atomEconomy(Metrics metrics, List<Explanation> all) {
        if (metrics.atomEconomyPercent().isPresent()) {
            all.add(new Draft(FigureKind.METRICS, "Atom economy")
                    .equation("AE = 100·Σν(P)·M(P)/Σν·M over the charges with a coefficient")
                    .note("Molar masses and coefficients stand under amounts and theory.")
                    .result(numbers.decimals(metrics.atomEconomyPercent().getAsDouble(), 1) + " %"));
        }
    }
}
