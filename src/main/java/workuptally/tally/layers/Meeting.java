package workuptally.tally.layers;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Step;
import workuptally.reference.hazards.ReactivityPair;

/**
 * Two materials in one portion, flask or funnel at one step.
 *
 * @param step the step; empty for what was charged together
 * @param with the two materials, the one already there first
 * @param pair what the tables say of them
 * @param occasion how they come together
 * @param gasLitres gas that the amount charged can set free, at room temperature and pressure, L
 * @param lasting true where water alone does not put an end to it
 * @param portions labels of layers that may carry it on
 */
public record Meeting(
        Optional<Step> step,
        List<String> with,
        ReactivityPair pair,
        Occasion occasion,
        OptionalDouble gasLitres,
        boolean lasting,
        List<String> portions) {
    /** Copies the lists. */
    public Meeting {
        with = List.copyOf(with);
        portions = List.copyOf(portions);
    }

    /** How two materials come together. */
    public enum Occasion {
        /** Both were charged, neither as a solvent, or a known reaction wants the pair whatever their roles: the reaction itself may want it. */
        CHARGED,
        /** Both were charged, one of them as a solvent. */
        CHARGED_AS_SOLVENT,
        /** A step adds one to the other, or combines them. */
        STEP,
        /** A step concentrates what is there. */
        CONCENTRATION
    }

    /** The step as in the table, or {@code charge}. */
    public String place() {
        return step.map(Step::number).orElse("charge");
    }

    /** Whether the row speaks of this place; what it says of waste containers alone is told, and nothing more. */
    public boolean concernsPlace() {
        return pair.where()
                .contains(occasion == Occasion.CONCENTRATION ? ReactivityPair.CONCENTRATION : ReactivityPair.FUNNEL);
    }

    /** Whether the tables forbid it here; a mere caution, and ether that is concentrated, are told elsewhere. */
    public boolean isForbidden() {
        boolean grave = occasion == Occasion.CONCENTRATION
                ? pair.severity() == ReactivityPair.Severity.CRITICAL
                : pair.severity() != ReactivityPair.Severity.CAUTION;
        return pair.inWorkup() == ReactivityPair.InWorkup.NEVER && concernsPlace() && grave;
    }

    /** Whether it is an accident of the workup, and not two reagents of the reaction itself. */
    public boolean holdsItsPortions() {
        return isForbidden() && occasion != Occasion.CHARGED;
    }

    /** What happens, in words of the table. */
    public String consequence() {
        return pair.consequence();
    }

    /** The same in a word or two. */
    public String dangerInAWord() {
        return pair.dangerInAWord();
    }

    /** Gas set free, joined by a comma; empty where none is. */
    public String gas() {
        return String.join(", ", pair.gases());
    }

    /** How grave it is: caution, high, critical. */
    public String severity() {
        return pair.severity().word();
    }

    /** Whether it sets deadly gas free, burns or explodes. */
    public boolean isCritical() {
        return pair.severity() == ReactivityPair.Severity.CRITICAL;
    }

    /** Whether it may be in a workup: ordinary, planned quench, never. */
    public String inWorkup() {
        return pair.inWorkup().word();
    }

    /** Places the row speaks of: funnel, waste, concentration, reaction. */
    public List<String> where() {
        return pair.where();
    }

    Meeting carriedBy(List<String> labels) {
        return new Meeting(step, with, pair, occasion, gasLitres, lasting, labels);
    }
}
