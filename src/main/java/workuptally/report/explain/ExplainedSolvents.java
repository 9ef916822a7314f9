package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import workuptally.tally.RunTally;
import workuptally.tally.waste.SolventUse;

/** Where each solvent went. */
final class ExplainedSolvents {
    private static final int DECIMALS = 2;

    private final Numbers numbers;

    ExplainedSolvents(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        tally.solvents().forEach(use -> all.add(of(use)));
        return all;
    }

    private Explanation of(SolventUse use) {
        return new Draft(FigureKind.SOLVENTS, "Not found of " + use.solvent())
                .equation(
                        "not found = charged + workup − to re-use − in other distillates − in layers − on cakes − in lots")
                .equation("not found = " + grams(use.chargedGrams()) + " + " + grams(use.workupGrams()) + " − "
                        + grams(use.recoveredGrams()) + " − " + grams(use.inDistillatesGrams()) + " − "
                        + grams(use.inLayersGrams()) + " − "
                        + grams(use.onCakesGrams()) + " − " + grams(use.inLotsGrams()) + " g")
                .note(
                        "What stands in layers and on cakes is an estimate where no composition is entered; the rest left with air,"
                                + " pump and glassware.")
                .result(numbers.decimals(use.notFoundGrams(), DECIMALS - 1) + " g");
    }

    private String grams(double grams) {
        return numbers.decimals(grams, DECIMALS);
    }
}
