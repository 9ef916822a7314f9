package workuptally.judgement.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Formula;
import workuptally.model.Run;
import workuptally.reference.bench.Threshold;
import workuptally.reference.solutions.Wash;
import workuptally.tally.amounts.AcidsAndBases;
import workuptally.tally.amounts.Equivalents;
import workuptally.tally.amounts.Substances;

/**
 * The pH that a wash brings, by its class: hydroxide 13, carbonate 11, hydrogencarbonate 8.3, strong acid 0.5, weak acid 2.5 (common
 * practice).
 */
public final class PhOfWash {

    private final Substances substances;

    /** With the reference data in force. */
    public PhOfWash(Substances substances) {
        this.substances = substances;
    }

    /** The pH of a wash; empty for one that is neither acid nor base, or that no table knows. */
    public Optional<Double> pHOf(Run run, String material) {
        Optional<String> formula = substances.wash(material).map(Wash::formula).filter(f -> !f.isBlank());
        if (formula.isEmpty()) {
            return Optional.empty();
        }
        Optional<Formula> read = substances.formulaIn(formula.get());
        if (read.isEmpty()) {
            return Optional.empty();
        }
        Equivalents per = new AcidsAndBases(run, substances).of(material, read, 1);
        List<Double> strongest = new ArrayList<>();
        strongest.add(per.strongBase() > 0 ? substances.value(Threshold.WASH_STRONG_BASE) : AcidBase.NEUTRAL_PH);
        strongest.add(per.carbonate() > 0 ? substances.value(Threshold.WASH_CARBONATE) : AcidBase.NEUTRAL_PH);
        strongest.add(
                per.hydrogencarbonate() > 0 ? substances.value(Threshold.WASH_HYDROGENCARBONATE) : AcidBase.NEUTRAL_PH);
        strongest.add(per.strongAcid() > 0 ? substances.value(Threshold.WASH_STRONG_ACID) : AcidBase.NEUTRAL_PH);
        strongest.add(per.weakAcid() > 0 ? substances.value(Threshold.WASH_WEAK_ACID) : AcidBase.NEUTRAL_PH);
        return strongest.stream().filter(pH -> pH != AcidBase.NEUTRAL_PH).findFirst();
    }
}
