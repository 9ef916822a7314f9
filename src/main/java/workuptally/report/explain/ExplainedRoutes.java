package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import workuptally.report.view.wording.Wording;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Theory;
import workuptally.tally.balance.Route;

/** The product of a layer by ways that share no reading: assay, charge balance, partition at the pH. */
final class ExplainedRoutes {
    private final Numbers numbers;

    ExplainedRoutes(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        for (Route route : tally.evidence().routes()) {
            all.add(of(tally, route));
        }
        return all;
    }

    private Explanation of(RunTally tally, Route route) {
        Draft draft = new Draft(
                FigureKind.ROUTES,
                route.substance() + " in layer " + route.layer() + " by "
                        + route.way().word());
        switch (route.way()) {
            case CHARGE_BALANCE ->
                draft.equation("n(A⁻) = n(strong base) − n(strong acid); m = n·M/1000")
                        .equation(Wording.POINT.of(route.equation()))
                        .equation("m = " + numbers.plain(1000 * route.massGrams() / molarMass(tally, route))
                                + " mmol × " + numbers.molarMass(molarMass(tally, route)) + " g/mol / 1000");
            case PARTITION ->
                draft.equation("m = m₀·(V(aq)/(V(aq) + D·V(org)))^n, D by P, pKa and pH")
                        .equation(Wording.POINT.of(route.equation()));
            case ASSAY -> draft.equation(Wording.POINT.of(route.equation()));
        }
        return draft.note("Band " + numbers.plain(route.lowGrams()) + " to " + numbers.plain(route.highGrams()) + " g.")
                .result(numbers.decimals(route.massGrams(), 2) + " g");
    }

    private static double molarMass(RunTally tally, Route route) {
        return tally.theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(p -> p.isOf(route.substance()))
                .mapToDouble(Theory.ProductTheory::molarMassGramsPerMole)
                .findFirst()
                .orElse(1);
    }
}
