package workuptally.judgement.rules.layers;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.material.Part;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.CompositionPart;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** A portion said to be of a solvent that no charge and no step of the run brought: a row of another run, or a charge that is missing. */
public final class CompositionNotCharged implements RunRule {
    private final Substances substances;

    /** With the reference data in force. */
    public CompositionNotCharged(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.COMPOSITION_NOT_CHARGED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        Run run = tally.run();
        FindingList findings = new FindingList(run.id());
        Set<String> brought = brought(run);
        for (Layer layer : run.layers()) {
            for (CompositionPart part : layer.composition()) {
                String name = substances.material(part.substance()).main().name();
                if (substances.isOrganicSolvent(part.substance())
                        && !brought.contains(name)
                        && part.massPercent() >= substances.value(Threshold.COMPOSITION_UNEXPECTED)) {
                    findings.add(
                            FindingCode.COMPOSITION_NOT_CHARGED,
                            Severity.CHECK,
                            layer.row().at("Composition"),
                            Phrase.of(
                                    "{} is said to hold {} of {}, which no charge and no step brought",
                                    layer.label(),
                                    Figure.decimals(part.massPercent(), 0, "%"),
                                    part.substance()),
                            Phrase.of("solvents that went into the run"),
                            FindingList.PRACTICE,
                            Phrase.of("See whether this row is of another run; else enter where it came from."));
                }
            }
        }
        return findings.list();
    }

    /** All that was charged, added or made, by the names of the tables, solvents of solutions among them. */
    private Set<String> brought(Run run) {
        Set<String> names = new LinkedHashSet<>();
        Stream.of(
                        run.charges().stream().map(Charge::material),
                        run.orderedSteps().stream().map(step -> step.added().material()),
                        run.products().stream().map(Product::name))
                .flatMap(written -> written)
                .filter(written -> !written.isBlank())
                .forEach(written -> substances.material(written).parts().stream()
                        .map(Part::name)
                        .forEach(names::add));
        return names;
    }
}
