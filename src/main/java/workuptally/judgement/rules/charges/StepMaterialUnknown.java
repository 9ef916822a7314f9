package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.regex.Pattern;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;

/** A liquid of a step that no table knows and whose density is not entered: it would pass for water in every account, unseen. */
public final class StepMaterialUnknown implements RunRule {
    static final String CODE = "step-material-unknown";

    private static final String IN = " in ";

    /** Words around a solute that tell no strength. */
    private static final Pattern NO_STRENGTH = Pattern.compile(
            "(?iu)(?<![\\p{L}\\p{N}])(dil\\.?|diluted?|verd\\.|verd\u00fcnnte?|aq\\.?|aqueous|soln\\.?|solution|l\u00f6sung)(?![\\p{L}\\p{N}])");

    private final Reference reference;

    public StepMaterialUnknown(Reference reference) {
        this.reference = reference;
    }

    @Override
    public List<String> codes() {
        return List.of(CODE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Step step : tally.run().orderedSteps()) {
            if (!step.material().isBlank()
                    && step.volumeMillilitres().entered().isPresent()
                    && step.densityGramsPerMillilitre().entered().isEmpty()
                    && !isKnown(step.material())) {
                findings.add(
                        CODE,
                        Severity.CHECK,
                        step.row().at("Material"),
                        FindingList.say(
                                "step %s: %.4g mL of '%s', %s; it is counted as so much water",
                                step.number(),
                                step.volumeMillilitres().entered().get().value() * step.portionCount(),
                                step.material(),
                                isSolute(step.material()) ? "a solution without its strength" : "which no table lists"),
                        "a listed solvent or wash, a solute with its strength, or a mixture with its ratio",
                        "reference tables",
                        "Write it as 'ethyl acetate', 'sat. NaHCO3', '10 % NaOH', '1 M HCl' or 'hexane/EtOAc 4:1',"
                                + " or enter its density.");
            }
        }
        return findings.list();
    }

    private boolean isSolute(String material) {
        return reference
                .solute(NO_STRENGTH.matcher(material).replaceAll(" ").strip())
                .isPresent();
    }

    private boolean isKnown(String material) {
        int in = material.lastIndexOf(IN);
        return reference.solvent(material).isPresent()
                || reference.wash(material).isPresent()
                || !reference.solventBlend(material).isEmpty()
                || reference.liquid(material).isPresent()
                || reference.dryingAgent(material).isPresent()
                || in > 0
                        && reference
                                .solvent(material.substring(in + IN.length()))
                                .isPresent();
    }
}
