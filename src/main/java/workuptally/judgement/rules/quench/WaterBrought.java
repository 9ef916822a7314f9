package workuptally.judgement.rules.quench;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import workuptally.material.Part;
import workuptally.material.State;
import workuptally.model.Charge;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.substances.MaterialClass;
import workuptally.tally.amounts.Substances;

/**
 * Carbon-metal reagents, which water destroys, and whether the workup brings what does it: water, acid or an alcohol, at the latest
 * in the step that gives the first aqueous layer, which has its water from nowhere otherwise. A step called a quench with a material counts
 * whatever that is; common practice.
 */
final class WaterBrought {
    private static final Set<String> ENDING =
            Set.of(MaterialClass.WATER, MaterialClass.ACID, MaterialClass.ALCOHOL, MaterialClass.AMMONIUM_SALT);

    private final Substances substances;

    WaterBrought(Substances substances) {
        this.substances = substances;
    }

    /** The carbon-metal reagents of a run that met no water; empty where no step is entered, as in a list of yields. */
    List<Charge> missingFor(Run run) {
        if (run.orderedSteps().isEmpty() || isBrought(run)) {
            return List.of();
        }
        return run.charges().stream().filter(this::isGoneWithWater).toList();
    }

    /**
     * A carbon-metal reagent, in any role. What else water destroys can be stripped off, as thionyl chloride is, or is used up where it was
     * the substrate; where it meets water later, that is told as a meeting.
     */
    private boolean isGoneWithWater(Charge charge) {
        return substances.material(charge.material(), charge.formula()).parts().stream()
                .anyMatch(part -> part.classes().contains(MaterialClass.ORGANOMETALLIC));
    }

    private boolean isBrought(Run run) {
        for (Step step : untilFirstAqueousLayer(run)) {
            boolean quench = step.operation().filter(o -> o == Operation.QUENCH).isPresent()
                    && !step.added().material().isBlank();
            if (quench || ends(step.added().material())) {
                return true;
            }
        }
        return run.charges().stream().anyMatch(c -> endsAsCharge(c));
    }

    private static List<Step> untilFirstAqueousLayer(Run run) {
        List<Step> steps = new ArrayList<>();
        for (Step step : run.orderedSteps()) {
            steps.add(step);
            if (!step.given().aqueous().isEmpty()) {
                break;
            }
        }
        return steps;
    }

    /** A solution without a word about its solvent is one in water; a name that no table knows is asked about elsewhere. */
    private boolean ends(String written) {
        if (written.isBlank()) {
            return false;
        }
        List<Part> parts = substances.material(written).parts();
        boolean unlisted = parts.stream().allMatch(part -> part.state() == State.UNLISTED);
        boolean inWater = parts.size() == 1
                && (parts.get(0).massPercent().isPresent()
                        || parts.get(0).molesPerLitre().isPresent());
        return unlisted
                || inWater
                || parts.stream()
                        .anyMatch(part ->
                                part.isWater() || part.classes().stream().anyMatch(ENDING::contains));
    }

    /** A quench that stands among the charges, as some write it; the alcohol or acid that the reaction starts from is none. */
    private boolean endsAsCharge(Charge charge) {
        boolean starts = charge.role().filter(r -> r != Charge.Role.SOLVENT).isPresent();
        return !starts
                && substances.material(charge.material(), charge.formula()).parts().stream()
                        .anyMatch(Part::isWater);
    }
}
