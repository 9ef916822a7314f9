package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.material.Material;
import workuptally.model.Amount;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.reference.substances.Liquid;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;

/** A liquid by volume without a density, a density that no liquid of a workup has, and a mass that equals the volume. */
public final class DensityForgotten implements RunRule {

    private final Substances substances;

    public DensityForgotten(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.DENSITY_MISSING, FindingCode.DENSITY_UNLIKELY, FindingCode.MASS_EQUALS_VOLUME);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (ChargeAmount amount : tally.amounts()) {
            Charge charge = amount.charge();
            if (amount.volumeMillilitres().isPresent() && amount.massGrams().isEmpty()) {
                boolean amountKnown = amount.amountMillimoles().isPresent();
                findings.add(
                        FindingCode.DENSITY_MISSING,
                        amountKnown ? Severity.NOTE : Severity.CHECK,
                        charge.row().at("Density"),
                        Phrase.of(
                                "{} of {} without a density",
                                Figure.digits(amount.volumeMillilitres().get().value(), 4, "mL"),
                                charge.material()),
                        amountKnown
                                ? Phrase.of("a density in g/mL; without it its mass is not known")
                                : Phrase.of("a density in g/mL; without it neither mass nor amount can be computed"),
                        "n = V·ρ·w/M",
                        Phrase.of("Enter the density from the label or the safety data sheet."));
            }
            charge.goods().densityGramsPerMillilitre().entered().ifPresent(d -> judgeDensity(findings, charge, d));
            if (massEqualsVolume(charge)) {
                findings.add(
                        FindingCode.MASS_EQUALS_VOLUME,
                        Severity.CHECK,
                        charge.row().at("Actual amount"),
                        Phrase.of(
                                "planned and actual amount of {} are the same number, one in mL and one in g",
                                charge.material()),
                        Phrase.of("two numbers that differ by the density"),
                        FindingList.PRACTICE,
                        Phrase.of("Look up which of the two was measured and enter the density."));
            }
        }
        return findings.list();
    }

    private void judgeDensity(FindingList findings, Charge charge, Entered density) {
        double value = density.value();
        if (value < substances.value(Threshold.DENSITY_LOW) || value > substances.value(Threshold.DENSITY_HIGH)) {
            findings.add(
                    FindingCode.DENSITY_UNLIKELY,
                    Severity.CHECK,
                    density.place(),
                    Phrase.of("read density {} g/mL for {}", density.asTyped(), charge.material()),
                    Phrase.of(
                            "{} to {}",
                            Figure.brief(substances.value(Threshold.DENSITY_LOW), ""),
                            Figure.brief(substances.value(Threshold.DENSITY_HIGH), "g/mL")),
                    FindingList.PRACTICE,
                    Phrase.of("Check the unit and the number against the label."));
            return;
        }
        Material material = substances.material(charge.material(), charge.formula());
        Optional<Double> listed = material.solvent()
                .map(s -> s.density().gramsPerMillilitre())
                .or(() -> material.liquid().map(Liquid::densityGramsPerMillilitre));
        if (listed.filter(l -> Math.abs(value / l - 1) > substances.value(Threshold.DENSITY_LISTED))
                .isPresent()) {
            findings.add(
                    FindingCode.DENSITY_UNLIKELY,
                    Severity.CHECK,
                    density.place(),
                    Phrase.of("read density {} g/mL for {}", density.asTyped(), charge.material()),
                    Phrase.of("about {} near 20 °C", Figure.decimals(listed.get(), 3, "g/mL")),
                    "reference tables of solvents and liquids",
                    Phrase.of("Check the number; a density of 1 is often a blank that was filled in."));
        }
    }

    private static boolean massEqualsVolume(Charge charge) {
        return charge.quantity()
                .planned()
                .flatMap(p -> charge.quantity().actual().map(a -> differInDimension(p, a) && sameNumber(p, a)))
                .orElse(false);
    }

    private static boolean differInDimension(Amount planned, Amount actual) {
        return planned.dimension() != actual.dimension()
                && planned.dimension() != Dimension.AMOUNT
                && actual.dimension() != Dimension.AMOUNT;
    }

    private static boolean sameNumber(Amount planned, Amount actual) {
        Optional<Double> p = planned.value().entered().map(Entered::value);
        return p.isPresent() && p.equals(actual.value().entered().map(Entered::value));
    }
}
