package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Formula;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.Run;
import workuptally.reference.solutions.Solute;
import workuptally.tally.amounts.AcidsAndBases;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Equivalents;
import workuptally.tally.amounts.Substances;

/**
 * What takes up or gives protons in an aqueous layer when its pH is changed: acids and bases assayed in it, carbonate, ammonium, phosphate,
 * citrate, acetate and hydrogensulfate that came with charges and washes ({@link LayerFlow}), and water itself.
 *
 * <p>The acid needed is the difference of the protons bound at the two pH values. Carbon dioxide that acids of the layer set free before is
 * taken off the carbonate. Constants are those of the table of solutes, at 25 °C in water; salt and co-solvent move them by some tenths.
 */
public final class LayerBuffers {
    private final Run run;
    private final Substances substances;
    private final AcidsAndBases acidsAndBases;
    private final LayerFlow flow;

    public LayerBuffers(Run run, Substances substances, LayerFlow flow) {
        this.run = run;
        this.substances = substances;
        this.acidsAndBases = new AcidsAndBases(run, substances);
        this.flow = flow;
    }

    /** Acid that takes a layer with a volume from one pH to another, mmol; negative for base. */
    public double acidMillimoles(LayerTally layer, double fromPH, double toPH) {
        double volume = layer.volumeMillilitres().map(MeasuredValue::value).orElse(0.0);
        double acid = (freeAcidMolesPerLitre(toPH) - freeAcidMolesPerLitre(fromPH)) * volume;
        for (Buffer buffer : buffers(layer)) {
            acid += buffer.millimoles()
                    * (AcidBase.protonsBound(buffer.pKa(), toPH) - AcidBase.protonsBound(buffer.pKa(), fromPH));
        }
        return acid;
    }

    /** Carbon dioxide that this can set free: the carbonate in the layer that is ion at the one pH and not at the other, mmol. */
    public double carbonDioxideMillimoles(LayerTally layer, double fromPH, double toPH) {
        return buffers(layer).stream()
                .filter(Buffer::carbonate)
                .mapToDouble(buffer -> buffer.millimoles()
                        * Math.max(
                                0,
                                AcidBase.ionisedAcidFraction(buffer.pKa().get(0), fromPH)
                                        - AcidBase.ionisedAcidFraction(
                                                buffer.pKa().get(0), toPH)))
                .sum();
    }

    private static double freeAcidMolesPerLitre(double pH) {
        return AcidBase.hydrogenIonMolesPerLitre(pH) - AcidBase.hydroxideIonMolesPerLitre(pH);
    }

    private List<Buffer> buffers(LayerTally layer) {
        List<Buffer> buffers = new ArrayList<>(assayed(layer));
        Equivalents put = Equivalents.NONE;
        double carbonate = 0;
        List<Double> carbonic = List.of();
        for (var part : flow.portion(layer.label()).parts().entrySet()) {
            Optional<Formula> formula = formula(part.getKey());
            double millimoles = formula.map(f -> 1000 * part.getValue().grams() / substances.molarMassGramsPerMole(f))
                    .orElse(0.0);
            put = put.plus(acidsAndBases.of(part.getKey(), formula, millimoles));
            Optional<Solute> solute = acidsAndBases
                    .solute(part.getKey(), formula)
                    .filter(s -> !s.acidBase().pKa().isEmpty());
            if (solute.isPresent() && millimoles > 0) {
                double ions = solute.get().acidBase().bufferingIonsPerMole().orElse(1) * millimoles;
                if (isCarbonate(solute.get())) {
                    carbonate += ions;
                    carbonic = solute.get().acidBase().pKa();
                } else {
                    buffers.add(new Buffer(ions, solute.get().acidBase().pKa(), false));
                }
            }
        }
        double left = carbonate - carbonDioxideLost(layer, put);
        if (left > 0) {
            buffers.add(new Buffer(left, carbonic, true));
        }
        return buffers;
    }

    private static boolean isCarbonate(Solute solute) {
        return solute.acidBase()
                .behaviour()
                .filter(b -> b == Solute.Behaviour.CARBONATE || b == Solute.Behaviour.HYDROGENCARBONATE)
                .isPresent();
    }

    /** What went off as gas by the acids that met the carbonate in this layer. */
    private double carbonDioxideLost(LayerTally layer, Equivalents put) {
        double assayed = layer.contents().stream()
                .filter(content -> acidsAndBases.isWeakAcid(content.substance()))
                .flatMap(content -> content.amountMillimoles().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
        double acid = Math.max(0, put.acid() + assayed - put.strongBase());
        return AcidBase.carbonDioxideMillimoles(acid, put.carbonate(), put.hydrogencarbonate());
    }

    private List<Buffer> assayed(LayerTally layer) {
        List<Buffer> buffers = new ArrayList<>();
        for (Content content : layer.contents()) {
            Optional<Double> pKa =
                    acidsAndBases.pKaOfAcid(content.substance()).or(() -> acidsAndBases.pKaOfBase(content.substance()));
            content.amountMillimoles()
                    .ifPresent(n -> pKa.ifPresent(k -> buffers.add(new Buffer(n.value(), List.of(k), false))));
        }
        return buffers;
    }

    /** Formula of a component of the layer map: that of the charge of its name, else of the listed solute. */
    private Optional<Formula> formula(String component) {
        Optional<String> charged = run.charges().stream()
                .filter(charge -> charge.material().equals(component))
                .map(Charge::formula)
                .filter(formula -> !formula.isBlank())
                .findFirst();
        return charged.or(() -> substances.solute(component).map(Solute::formula))
                .flatMap(substances::formulaIn);
    }

    /** Some of an acid or its ions, mmol, with its constants in rising order, and whether it gives carbon dioxide. */
    private record Buffer(double millimoles, List<Double> pKa, boolean carbonate) {}
}
