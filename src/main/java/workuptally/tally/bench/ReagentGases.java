package workuptally.tally.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.model.Figure;
import workuptally.model.Phrase;
import workuptally.reference.substances.MaterialRow;
import workuptally.tally.amounts.AcidsAndBases;
import workuptally.tally.amounts.ChargeAmount;

/** Gases that water sets free from the reagents charged, less what the reaction uses up of each; one reagent's rest makes up for no other's. */
final class ReagentGases {
    private final AcidsAndBases acidsAndBases;
    private final List<Reagent> reagents;
    private final double extentMillimoles;

    ReagentGases(AcidsAndBases acidsAndBases, List<ChargeAmount> amounts, double extentMillimoles) {
        this.acidsAndBases = acidsAndBases;
        this.reagents = Reagent.of(amounts);
        this.extentMillimoles = extentMillimoles;
    }

    /**
     * By formula of the gas.
     *
     * @param intoBase true where the water brings a base, which takes a hydrogen halide up where it forms: what that sets free is counted
     *     with the base
     */
    Map<String, Released> of(boolean intoBase) {
        Map<String, Released> gases = new LinkedHashMap<>();
        for (Reagent reagent : reagents) {
            double charged = reagent.chargedMillimoles();
            double used = reagent.usedMillimoles(extentMillimoles);
            for (MaterialRow.Gas gas : acidsAndBases.gasesWithWater(reagent.charge())) {
                if (!intoBase || !acidsAndBases.isHydrogenHalide(gas.name())) {
                    gases.merge(
                            gas.name(),
                            Released.of(
                                    reagent.charge().material(),
                                    charged,
                                    used,
                                    gas.molesPerMole().orElseThrow()),
                            Released::plus);
                }
            }
        }
        return gases;
    }

    /**
     * Gas of some reagents.
     *
     * @param expectedMillimoles of what the reaction leaves, mmol
     * @param worstMillimoles of all that was charged, mmol
     * @param because what it rests on
     */
    record Released(double expectedMillimoles, double worstMillimoles, Phrase because) {
        private static Released of(String material, double charged, double used, double perMole) {
            return new Released(
                    Math.max(0, charged - used) * perMole,
                    charged * perMole,
                    Phrase.of(
                            "{} from each of {} {}{}",
                            Figure.digits(perMole, 3, ""),
                            Figure.digits(charged, 3, "mmol"),
                            material,
                            used > 0
                                    ? Phrase.of(", less {} used by the reaction", Figure.digits(used, 3, "mmol"))
                                    : Phrase.NONE));
        }

        private Released plus(Released other) {
            return new Released(
                    expectedMillimoles + other.expectedMillimoles,
                    worstMillimoles + other.worstMillimoles,
                    Phrase.of("{}; {}", because, other.because));
        }
    }
}
