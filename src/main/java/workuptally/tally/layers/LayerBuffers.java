package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.Run;
import workuptally.reference.Solute;
import workuptally.tally.amounts.AcidsAndBases;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Equivalents;
import workuptally.tally.amounts.Substances;

/**
 * What takes up or gives protons in an aqueous layer when its pH is changed: acids and bases assayed in it, carbonate, ammonium, phosphate,
 * citrate, acetate and hydrogensulfate that came with charges and washes ({@link LayerFlow}), and water itself.
 *
 * <p>The acid needed is the difference of the protons bound at the two pH values. Carbon dioxide that acids of the layer set free before is
 * taken off the carbonate. Constants at 25 °C in water (memory: textbook values); salt and co-solvent move them by some tenths.
 */
public final class LayerBuffers {
    private static final List<Double> CARBONIC = List.of(6.35, 10.33);
    private static final List<Double> AMMONIUM = List.of(9.25);
    private static final List<Double> PHOSPHORIC = List.of(2.15, 7.20, 12.35);
    private static final List<Double> HYDROGENSULFATE = List.of(1.99);
    private static final List<Known> KNOWN = List.of(
            new Known("NaHCO3", 1, CARBONIC),
            new Known("KHCO3", 1, CARBONIC),
            new Known("Na2CO3", 1, CARBONIC),
            new Known("K2CO3", 1, CARBONIC),
            new Known("Cs2CO3", 1, CARBONIC),
            new Known("NH4Cl", 1, AMMONIUM),
            new Known("(NH4)2SO4", 2, AMMONIUM),
            new Known("NH3", 1, AMMONIUM),
            new Known("H3PO4", 1, PHOSPHORIC),
            new Known("KH2PO4", 1, PHOSPHORIC),
            new Known("NaH2PO4", 1, PHOSPHORIC),
            new Known("K2HPO4", 1, PHOSPHORIC),
            new Known("Na2HPO4", 1, PHOSPHORIC),
            new Known("K3PO4", 1, PHOSPHORIC),
            new Known("C6H8O7", 1, List.of(3.13, 4.76, 6.40)),
            new Known("C2H3NaO2", 1, List.of(4.76)),
            new Known("H2SO4", 1, HYDROGENSULFATE),
            new Known("KHSO4", 1, HYDROGENSULFATE),
            new Known("NaHSO4", 1, HYDROGENSULFATE));

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
        double first = CARBONIC.get(0);
        double ions = AcidBase.ionisedAcidFraction(first, fromPH) - AcidBase.ionisedAcidFraction(first, toPH);
        return buffers(layer).stream()
                .filter(buffer -> buffer.pKa().equals(CARBONIC))
                .mapToDouble(buffer -> buffer.millimoles() * Math.max(0, ions))
                .sum();
    }

    private static double freeAcidMolesPerLitre(double pH) {
        return AcidBase.hydrogenIonMolesPerLitre(pH) - AcidBase.hydroxideIonMolesPerLitre(pH);
    }

    private List<Buffer> buffers(LayerTally layer) {
        List<Buffer> buffers = new ArrayList<>(assayed(layer));
        Equivalents put = Equivalents.NONE;
        double carbonate = 0;
        for (var part : flow.portion(layer.label()).parts().entrySet()) {
            Optional<Formula> formula = formula(part.getKey());
            double millimoles = formula.map(f -> 1000 * part.getValue().grams() / substances.molarMassGramsPerMole(f))
                    .orElse(0.0);
            put = put.plus(acidsAndBases.of(formula, millimoles));
            for (Known known : KNOWN) {
                if (formula.filter(known.formula()::sameComposition).isPresent()) {
                    if (known.pKa().equals(CARBONIC)) {
                        carbonate += millimoles;
                    } else {
                        buffers.add(new Buffer(known.ions() * millimoles, known.pKa()));
                    }
                }
            }
        }
        double left = carbonate - carbonDioxideLost(layer, put);
        if (left > 0) {
            buffers.add(new Buffer(left, CARBONIC));
        }
        return buffers;
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
                    .ifPresent(n -> pKa.ifPresent(k -> buffers.add(new Buffer(n.value(), List.of(k)))));
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
                .flatMap(this::read);
    }

    private Optional<Formula> read(String formula) {
        try {
            return Optional.of(substances.formula(formula));
        } catch (IllegalFormulaException e) {
            return Optional.empty();
        }
    }

    /** Some of an acid or its ions, mmol, with its constants in rising order. */
    private record Buffer(double millimoles, List<Double> pKa) {}

    /** A listed substance with the number of buffering ions in it. */
    private record Known(Formula formula, double ions, List<Double> pKa) {
        Known(String formula, double ions, List<Double> pKa) {
            this(Formula.parse(formula), ions, pKa);
        }
    }
}
