package workuptally.judgement.rules.charges;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.material.Material;
import workuptally.material.Part;
import workuptally.material.State;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** A liquid of a step that no table knows and whose density is not entered: it would pass for water in every account, unseen. */
public final class StepMaterialUnknown implements RunRule {

    private static final Set<Operation> ADDING = EnumSet.of(
            Operation.QUENCH,
            Operation.DILUTE,
            Operation.EXTRACT,
            Operation.WASH,
            Operation.BACK_EXTRACT,
            Operation.ACIDIFY,
            Operation.BASIFY);

    private final Substances substances;

    public StepMaterialUnknown(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.STEP_MATERIAL_UNKNOWN);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Step step : tally.run().orderedSteps()) {
            if (!step.added().material().isBlank()
                    && step.added().volumeMillilitres().entered().isPresent()
                    && step.added().densityGramsPerMillilitre().entered().isEmpty()
                    && !isKnown(step.added().material())) {
                findings.add(
                        FindingCode.STEP_MATERIAL_UNKNOWN,
                        isOfSolutions(substances.material(step.added().material())) ? Severity.NOTE : Severity.CHECK,
                        step.row().at("Material"),
                        Phrase.of(
                                "step {}: {} of '{}', {}; it is counted as so much water",
                                step.number(),
                                Figure.digits(
                                        step.added()
                                                        .volumeMillilitres()
                                                        .entered()
                                                        .get()
                                                        .value()
                                                * step.added().portionCount(),
                                        4,
                                        "mL"),
                                step.added().material(),
                                why(substances.material(step.added().material()))),
                        Phrase.of(
                                "a listed solvent or wash, a solute with its strength, or a mixture with its ratio{}",
                                nearest(step.added().material())),
                        "reference tables",
                        Phrase.of(
                                "Write it as 'ethyl acetate', 'sat. NaHCO3', '10 % NaOH', '1 M HCl' or 'hexane/EtOAc 4:1', or enter its"
                                        + " density."));
            }
        }
        withoutMaterial(findings, tally.run());
        return findings.list();
    }

    /** A wash or quench whose material was left out is neither harmless nor nothing; said once a run. */
    private static void withoutMaterial(FindingList findings, Run run) {
        List<Step> steps = run.orderedSteps().stream()
                .filter(step -> step.added().material().isBlank()
                        && bringsSomething(step)
                        && !isSeparation(run, step)
                        && !step.isOfPartOf(run))
                .toList();
        if (!steps.isEmpty()) {
            findings.add(
                    FindingCode.STEP_MATERIAL_UNKNOWN,
                    Severity.CHECK,
                    steps.get(0).row().at("Material"),
                    Phrase.of(
                            "no material is named in {} {}: what it does there is not judged, and it is not in the solvent account",
                            steps.size() == 1 ? "step" : "steps",
                            steps.stream().map(Step::number).collect(Collectors.joining(", "))),
                    Phrase.of("what was added, such as 'water', 'sat. NaHCO3' or 'ethyl acetate'"),
                    FindingList.PRACTICE,
                    Phrase.of("Enter what was added, and run again."));
        }
    }

    /** Phases parted that an earlier step made by what it added, as after a quench: nothing more goes in. */
    private static boolean isSeparation(Run run, Step step) {
        List<Step> steps = run.orderedSteps();
        return step.operation().filter(o -> o == Step.Operation.EXTRACT).isPresent()
                && step.added().volumeMillilitres().isBlank()
                && step.added().massGrams().isBlank()
                && !step.given().organic().isEmpty()
                && !step.given().aqueous().isEmpty()
                && steps.subList(0, steps.indexOf(step)).stream()
                        .filter(earlier -> !earlier.added().material().isBlank())
                        .anyMatch(earlier -> earlier.gives().stream().anyMatch(step.from()::contains));
    }

    private static boolean bringsSomething(Step step) {
        return step.operation().filter(ADDING::contains).isPresent()
                || step.added().volumeMillilitres().entered().isPresent()
                || step.added().massGrams().entered().isPresent();
    }

    private static Phrase why(Material material) {
        if (material.isAmbiguous()) {
            return Phrase.of("a name that means more than one thing");
        }
        if (material.state() != State.LISTED) {
            return Phrase.of("which no table lists, so that what it does is not judged");
        }
        if (isOfSolutions(material)) {
            return Phrase.of("a mixture of solutions in water");
        }
        return material.parts().stream().filter(part -> !part.carrier()).count() > 1
                ? Phrase.of("a mixture without its ratio")
                : Phrase.of("a solution without its strength");
    }

    /** Two or more things in water: that it counts as so much water is near enough. */
    private static boolean isOfSolutions(Material material) {
        return material.state() == State.LISTED
                && material.parts().stream().filter(part -> !part.carrier()).count() > 1
                && material.carrier().filter(Part::isWater).isPresent();
    }

    private Phrase nearest(String name) {
        List<String> near = substances.material(name).state() == State.LISTED ? List.of() : substances.nearest(name);
        return near.isEmpty() ? Phrase.NONE : Phrase.of("; the nearest: {}", String.join(", ", near));
    }

    /** Water, solvents, washes at a strength, mixtures with a ratio, listed liquids, and solutions in a listed solvent: their volume is known. */
    private boolean isKnown(String written) {
        Material material = substances.material(written);
        boolean otherSolvent = material.carrier().filter(c -> !c.isWater()).isPresent();
        return material.solvent().isPresent()
                || material.wash().isPresent()
                || !material.blend().isEmpty()
                || material.liquid().isPresent()
                || material.dryingAgent().isPresent()
                || otherSolvent
                || material.parts().stream().allMatch(Part::isWater);
    }
}
