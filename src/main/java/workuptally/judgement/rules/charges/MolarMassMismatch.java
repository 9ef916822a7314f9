package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.FormDifference;
import workuptally.chemistry.Formula;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.material.Material;
import workuptally.material.Part;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.NmrAssay;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.RowPlace;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;

/**
 * A typed molar mass that the formula does not give. Above 0.5 % it stops, above 0.1 % it is a note (common practice). A difference that
 * equals HCl, water, sodium for hydrogen or another usual form is named. The formula wins.
 */
public final class MolarMassMismatch implements RunRule {
    private static final String MOLAR_MASS = "Molar mass";

    private final Substances substances;

    public MolarMassMismatch(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.MOLAR_MASS_MISMATCH, FindingCode.MOLAR_MASS_ROUNDED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (ChargeAmount amount : tally.amounts()) {
            Charge charge = amount.charge();
            Phrase effect = amount.asTypedMillimoles().isPresent()
                            && amount.amountMillimoles().isPresent()
                    ? Phrase.of(
                            "; that would be {}, the formula gives {}",
                            Figure.decimals(amount.asTypedMillimoles().getAsDouble(), 2, "mmol"),
                            Figure.decimals(amount.amountMillimoles().get().value(), 2, "mmol"))
                    : Phrase.NONE;
            judge(
                    findings,
                    charge.material(),
                    charge.formula(),
                    charge.molarMassGramsPerMole(),
                    charge.row(),
                    MOLAR_MASS,
                    effect,
                    false);
            if (charge.formula().isBlank()) {
                ofName(findings, charge.material(), charge.molarMassGramsPerMole(), charge.row(), MOLAR_MASS);
            }
        }
        for (Product product : tally.run().products()) {
            judge(
                    findings,
                    product.name(),
                    product.formula(),
                    product.molarMassGramsPerMole(),
                    product.row(),
                    MOLAR_MASS,
                    Phrase.NONE,
                    false);
            if (product.formula().isBlank()) {
                ofName(findings, product.name(), product.molarMassGramsPerMole(), product.row(), MOLAR_MASS);
            }
        }
        for (NmrAssay assay : tally.run().nmrAssays()) {
            ofName(
                    findings,
                    assay.standard(),
                    assay.standardMolarMassGramsPerMole(),
                    assay.row(),
                    "Standard molar mass");
        }
        return findings.list();
    }

    /** By the formula that a name has in the tables; of a name that none has, or that tells a form, nothing is said. */
    private void ofName(FindingList findings, String name, Field typed, RowPlace row, String heading) {
        if (name.isBlank()) {
            return;
        }
        Material material = substances.material(name);
        Part main = material.main();
        if (material.parts().size() == 1
                && main.form().isEmpty()
                && main.substance().isPresent()) {
            main.formula()
                    .map(Formula::toString)
                    .ifPresent(formula -> judge(findings, name, formula, typed, row, heading, Phrase.NONE, true));
        }
    }

    private void judge(
            FindingList findings,
            String name,
            String formula,
            Field typed,
            RowPlace row,
            String heading,
            Phrase effect,
            boolean byName) {
        OptionalDouble computed = substances.molarMassIn(formula);
        Optional<Entered> entered = typed.entered().filter(e -> e.value() > 0);
        if (computed.isEmpty() || entered.isEmpty()) {
            return;
        }
        double difference = entered.get().value() - computed.getAsDouble();
        double relative = Math.abs(difference) / computed.getAsDouble();
        if (relative <= substances.value(Threshold.MOLAR_MASS_DIFFERS)) {
            return;
        }
        boolean stops = relative > substances.value(Threshold.MOLAR_MASS_WRONG);
        Optional<FormDifference> form = stops ? substances.formDifference(difference) : Optional.empty();
        findings.add(
                stops ? FindingCode.MOLAR_MASS_MISMATCH : FindingCode.MOLAR_MASS_ROUNDED,
                !stops
                        ? Severity.NOTE
                        : byName && heading.equals(MOLAR_MASS) && form.isPresent() ? Severity.CHECK : Severity.STOP,
                row.at(heading),
                Phrase.of(
                        "read molar mass {} g/mol for {}; its formula {} gives {} g/mol{}{}",
                        entered.get().asTyped(),
                        name,
                        formula,
                        Figure.decimals(computed.getAsDouble(), 2, ""),
                        form.map(f -> Phrase.of("; the difference is that of {}", f.words()))
                                .orElse(Phrase.NONE),
                        effect),
                Phrase.of(
                        "within {} of {} g/mol",
                        Figure.brief(100 * substances.value(Threshold.MOLAR_MASS_DIFFERS), "%"),
                        Figure.decimals(computed.getAsDouble(), 2, "")),
                "standard atomic weights; thresholds common practice",
                !byName
                        ? Phrase.of(
                                "Compare label, formula and molar mass (salt, hydrate or free form), correct the wrong one and run again;"
                                        + " the formula is used meanwhile.")
                        : Phrase.of(
                                "Compare name and molar mass, enter the formula of the form that was weighed and run again; the"
                                        + " figure as typed is used meanwhile."));
    }
}
