package workuptally.judgement.rules.quench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.material.Material;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.MaterialClass;
import workuptally.reference.substances.Oxidant;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;

/** Thiosulfate charged against what a listed oxidant takes up: a stop where it cannot be enough or nothing reduces it, a note with the figures otherwise. */
public final class OxidantQuench implements RunRule {

    private static final Set<Step.Operation> BEFORE_ANYTHING_ELSE = Set.of(Step.Operation.QUENCH, Step.Operation.WASH);

    private final Substances substances;

    public OxidantQuench(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.REDUCTANT_SHORT, FindingCode.OXIDANT_QUENCH);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (ChargeAmount amount : tally.amounts()) {
            Optional<Oxidant> oxidant = substances
                    .material(amount.charge().material(), amount.charge().formula())
                    .oxidant();
            double thiosulfate = thiosulfateMillimoles(tally);
            if (oxidant.isEmpty() || amount.amountMillimoles().isEmpty() || thiosulfate == 0 && !hasWorkup(tally)) {
                continue;
            }
            double charged = amount.amountMillimoles().get().value();
            double used = Math.min(charged, usedMillimoles(tally, amount));
            double needed = used * oxidant.get().reductantForUsed()
                    + (charged - used) * oxidant.get().reductantForLeftOver();
            substances.use(List.of(oxidant.get()));
            boolean enough = thiosulfate >= needed;
            if (thiosulfate == 0 && (needed == 0 || isShownGone(tally) || bringsOtherReductant(tally))) {
                continue;
            }
            findings.add(
                    enough ? FindingCode.OXIDANT_QUENCH : FindingCode.REDUCTANT_SHORT,
                    enough ? Severity.NOTE : Severity.STOP,
                    amount.charge().row().at("Material"),
                    Phrase.of(
                            "thiosulfate {} for about {} that {} takes up ({} for each used, {} for each left over): ratio {}",
                            Figure.decimals(thiosulfate, 1, "mmol"),
                            Figure.decimals(needed, 1, "mmol"),
                            amount.charge().material(),
                            Figure.digits(oxidant.get().reductantForUsed(), 2, ""),
                            Figure.digits(oxidant.get().reductantForLeftOver(), 2, ""),
                            Figure.decimals(thiosulfate / needed, 2, "")),
                    Phrase.of("at least 1.0, and a negative test"),
                    "stoichiometry; " + FindingList.PRACTICE,
                    enough
                            ? Phrase.of("Record the test for left-over oxidant before anything is concentrated.")
                            : Phrase.of(
                                    "Do not concentrate: add reductant and test for left-over oxidant; follow the safety data sheet and the"
                                            + " local rules."));
        }
        return findings.list();
    }

    private static boolean hasWorkup(RunTally tally) {
        return !tally.run().steps().isEmpty();
    }

    /** Another reductant, or the reaction itself, has used it up: the last test says so. */
    private static boolean isShownGone(RunTally tally) {
        return tally.run().orderedSteps().stream()
                .flatMap(step -> step.quenchTest().stream())
                .filter(test -> test != Step.QuenchTest.NOT_DONE)
                .reduce((earlier, later) -> later)
                .filter(test -> test == Step.QuenchTest.NEGATIVE)
                .isPresent();
    }

    /** Sulfite, ascorbate and the like: how much they take up is not counted here, the test tells. */
    private boolean bringsOtherReductant(RunTally tally) {
        return tally.run().steps().stream()
                .anyMatch(step ->
                        substances.material(step.added().material()).classes().contains(MaterialClass.REDUCING_AGENT));
    }

    private static double usedMillimoles(RunTally tally, ChargeAmount amount) {
        double coefficient =
                amount.charge().coefficient().entered().map(Entered::value).orElse(1.0);
        return tally.theory().map(t -> t.extentMillimoles().value()).orElse(0.0) * coefficient;
    }

    private double thiosulfateMillimoles(RunTally tally) {
        double millimoles = 0;
        for (Step step : tally.run().steps()) {
            Material material = substances.material(step.added().material());
            Optional<Wash> wash = material.wash().filter(w -> material.is(MaterialClass.THIOSULFATE));
            boolean counts =
                    step.operation().filter(BEFORE_ANYTHING_ELSE::contains).isPresent();
            if (wash.isPresent() && counts) {
                double molarity = step.added()
                        .molarityMolesPerLitre()
                        .entered()
                        .map(Entered::value)
                        .orElseGet(() -> wash.get()
                                .concentration()
                                .molarityMolesPerLitre()
                                .orElse(0));
                millimoles += molarity
                        * step.added().portionCount()
                        * step.added()
                                .volumeMillilitres()
                                .entered()
                                .map(Entered::value)
                                .orElse(0.0);
            }
        }
        return millimoles;
    }
}
