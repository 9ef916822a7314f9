package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import workuptally.model.Field.Entered;
import workuptally.model.Run;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Theory;

/** The limiting reagent and what it allows of each product. */
final class ExplainedTheory {
    private final Numbers numbers;

    ExplainedTheory(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        if (tally.theory().isEmpty()) {
            return all;
        }
        Theory theory = tally.theory().get();
        if (tally.run().kind() != Run.Kind.SEPARATION) {
            all.add(limiting(tally, theory));
        }
        theory.products().forEach(p -> all.add(product(tally.run(), theory, p)));
        return all;
    }

    private Explanation limiting(RunTally tally, Theory theory) {
        List<String> names =
                theory.limiting().stream().map(Theory.Limiting::material).toList();
        Draft draft = new Draft(FigureKind.THEORY, "Limiting reagent")
                .equation("ξ = smallest n/ν of the charges with a coefficient")
                .headings("Charge", "n (mmol)", "ν (1)", "n/ν (mmol)", "");
        for (ChargeAmount amount : tally.amounts()) {
            double coefficient =
                    amount.charge().coefficient().entered().map(Entered::value).orElse(0.0);
            if (coefficient > 0 && amount.amountMillimoles().isPresent()) {
                double millimoles = amount.amountMillimoles().get().value();
                draft.row(
                        amount.charge().material(),
                        numbers.plain(millimoles),
                        numbers.plain(coefficient),
                        numbers.plain(millimoles / coefficient),
                        names.contains(amount.charge().material()) ? "limiting" : "");
            }
        }
        if (names.size() > 1) {
            draft.note("The smallest amounts differ by less than twice the uncertainty of their difference: "
                    + String.join(" and ", names) + " cannot be told apart.");
        }
        return draft.result(theory.extentMillimoles(), "mmol", numbers);
    }

    private Explanation product(Run run, Theory theory, Theory.ProductTheory product) {
        String name = product.product().name();
        Draft draft = new Draft(FigureKind.THEORY, "Theory of " + name);
        String molarMass = numbers.molarMass(product.molarMassGramsPerMole()) + " g/mol ["
                + (product.product().formula().isBlank()
                        ? "as typed"
                        : product.product().formula())
                + "]";
        if (run.kind() == Run.Kind.SEPARATION) {
            draft.equation("m = n(charged)·M/1000: a separation gives back what was charged")
                    .equation("m = " + numbers.plain(product.amountMillimoles()) + " mmol × " + molarMass + " / 1000");
        } else {
            boolean resolution = run.kind() == Run.Kind.RESOLUTION;
            String coefficient =
                    numbers.entry(product.product().coefficient(), "").orElse("1 (coefficient not entered)");
            draft.equation("m = ξ·ν·M/1000" + (resolution ? "·½, a resolution without racemisation" : ""))
                    .equation("m = " + numbers.plain(theory.extentMillimoles()) + " mmol × " + coefficient + " × "
                            + molarMass + " / 1000" + (resolution ? " × 0.5" : ""));
        }
        product.molarMassUncertaintyGramsPerMole()
                .ifPresent(u -> draft.note("u(M) = " + numbers.decimals(u, 4)
                        + " g/mol by the atomic weights is left out; weighing and assay are less certain by far."));
        product.massAsTypedGrams()
                .ifPresent(m -> draft.note("With the molar masses as typed it would be " + numbers.plain(m) + " g."));
        return draft.result(product.massGrams(), "g", numbers);
    }
}
