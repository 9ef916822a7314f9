package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Amount;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Field.Entered;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;

/** Charges as amounts of substance: weighed, measured by volume and density, or by volume and strength. */
final class ExplainedAmounts {
    private static final String EXACT_ASSAY = "1 (assay not entered)";

    private final Numbers numbers;

    ExplainedAmounts(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        for (ChargeAmount amount : tally.amounts()) {
            amount.amountMillimoles().ifPresent(n -> all.add(of(amount, n)));
        }
        return all;
    }

    private Explanation of(ChargeAmount amount, MeasuredValue millimoles) {
        Charge charge = amount.charge();
        Draft draft = new Draft(FigureKind.AMOUNTS, "Amount of " + charge.material());
        Optional<Amount> entry = amount.planned()
                ? charge.quantity().planned()
                : charge.quantity().actual();
        Optional<Entered> entered = entry.flatMap(a -> a.value().entered());
        Dimension dimension = entry.map(Amount::dimension).orElse(Dimension.AMOUNT);
        String typed = entered.map(e -> numbers.entry(e, dimension.unit())).orElse("");
        Optional<Entered> strength = charge.goods()
                .titreMolesPerLitre()
                .entered()
                .or(() -> charge.goods().molarityMolesPerLitre().entered());
        if (byStatement(amount, entered)) {
            draft.equation("n as typed")
                    .equation("n = "
                            + numbers.entry(charge.quantity().statedMillimoles(), "mmol")
                                    .orElse(""));
        } else if (dimension == Dimension.EQUIVALENTS) {
            draft.equation("n = equivalents·n(substrate)").equation("n = " + typed + " × n(substrate)");
        } else if (dimension == Dimension.AMOUNT) {
            draft.equation("n as entered").equation("n = " + typed);
        } else if (dimension == Dimension.VOLUME && strength.isPresent()) {
            draft.equation("n = V·c")
                    .equation("n = " + typed + " × " + numbers.entry(strength.get(), "mol/L")
                            + (charge.goods().titreMolesPerLitre().entered().isPresent()
                                    ? ", the titre"
                                    : ", by the label"));
        } else if (dimension == Dimension.VOLUME) {
            draft.equation("n = 1000·V·ρ·w/M")
                    .equation("n = 1000 × " + typed + " × " + density(amount) + " × " + assay(charge) + " / "
                            + molarMass(amount));
        } else {
            draft.equation("n = 1000·m·w/M")
                    .equation("n = 1000 × " + typed + " × " + assay(charge) + " / " + molarMass(amount));
        }
        amount.asTypedMillimoles()
                .ifPresent(n -> draft.note("With the molar mass as typed, "
                        + numbers.entry(charge.molarMassGramsPerMole(), "g/mol").orElse("")
                        + ", it would be " + numbers.plain(n) + " mmol; the formula decides."));
        amount.labelAmountMillimoles()
                .ifPresent(n -> draft.note("By the label, "
                        + numbers.entry(charge.goods().molarityMolesPerLitre(), "mol/L")
                                .orElse("") + ", it would be "
                        + numbers.plain(n) + " mmol; the titre decides."));
        if (amount.planned()) {
            draft.note("Planned amount; nothing was charged yet.");
        }
        return draft.result(millimoles, "mmol", numbers);
    }

    /** True where only the amount of substance typed beside it gave n. */
    private static boolean byStatement(ChargeAmount amount, Optional<Entered> entered) {
        boolean typed = !amount.planned()
                && amount.charge().quantity().statedMillimoles().entered().isPresent();
        boolean inSolution = amount.charge()
                        .goods()
                        .titreMolesPerLitre()
                        .entered()
                        .isPresent()
                || amount.charge().goods().molarityMolesPerLitre().entered().isPresent();
        return typed
                && (entered.isEmpty()
                        || amount.massGrams().isEmpty() && !inSolution
                        || amount.molarMassGramsPerMole().isEmpty() && !inSolution);
    }

    private String density(ChargeAmount amount) {
        return numbers.entry(amount.charge().goods().densityGramsPerMillilitre(), "g/mL")
                .orElseGet(() -> amount.massGrams()
                        .flatMap(m -> amount.volumeMillilitres().map(v -> m.value() / v.value()))
                        .map(d -> numbers.plain(d) + " g/mL [reference data]")
                        .orElse("?"));
    }

    private String assay(Charge charge) {
        return numbers.entry(charge.goods().assayPercent(), "%")
                .map(a -> a.replace(" [", "/100 ["))
                .orElse(EXACT_ASSAY);
    }

    private String molarMass(ChargeAmount amount) {
        String number = amount.molarMassGramsPerMole().isPresent()
                ? numbers.molarMass(amount.molarMassGramsPerMole().getAsDouble())
                : "?";
        boolean typed = !amount.charge().molarMassGramsPerMole().isBlank();
        String formula = amount.charge().formula();
        return number + " g/mol [" + (!formula.isBlank() ? formula : typed ? "as typed" : "reference data") + "]";
    }
}
