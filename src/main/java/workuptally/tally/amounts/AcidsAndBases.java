package workuptally.tally.amounts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import workuptally.chemistry.Formula;
import workuptally.material.Part;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.reference.bench.Threshold;
import workuptally.reference.solutions.PartitionRow;
import workuptally.reference.solutions.Solute;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.MaterialRow;

/**
 * Equivalents of acid and base that charges and washes bring: by the table of solutes, and for weak acids by the character in Products or
 * by a pKa of the reference data below that of the first proton of carbonic acid, above which hydrogencarbonate does not take them up.
 */
public final class AcidsAndBases {
    private static final String ACID = "acid";
    private static final String BASE = "base";

    private final Run run;
    private final Substances substances;

    public AcidsAndBases(Run run, Substances substances) {
        this.run = run;
        this.substances = substances;
    }

    /** Of a charge as put in. */
    public Equivalents of(ChargeAmount amount) {
        double millimoles = amount.amountMillimoles().map(MeasuredValue::value).orElse(0.0);
        String material = amount.charge().material();
        Equivalents known = solute(
                        material, substances.formulaIn(amount.charge().formula()))
                .map(this::perMole)
                .orElse(Equivalents.NONE);
        if (known.isNone()) {
            known = ofMaterial(amount.charge());
        }
        if (known.isNone() && isWeakAcid(material)) {
            known = Equivalents.ofWeakAcid(1);
        }
        return known.times(millimoles);
    }

    /**
     * Of one mole by the table of materials: acids, what water makes of acid chlorides and anhydrides (hydrogen halides count as mineral
     * acid), amines and other bases.
     */
    private Equivalents ofMaterial(Charge charge) {
        Part part = part(charge);
        Optional<MaterialRow> row = part.row();
        double acid = row.map(r -> r.behaviour().acidMolesPerMole())
                .orElse(OptionalDouble.empty())
                .orElse(0);
        double base = row.map(r -> r.behaviour().baseMolesPerMole())
                .orElse(OptionalDouble.empty())
                .orElse(0);
        if (acid > 0 && (part.isDestroyedByWater() || part.classes().contains(ACID))) {
            double halide = gasesWithWater(charge).stream()
                    .filter(gas -> isHydrogenHalide(gas.name()))
                    .mapToDouble(gas -> gas.molesPerMole().getAsDouble())
                    .sum();
            double strong = Math.min(acid, halide);
            return Equivalents.ofStrongAcid(strong).plus(Equivalents.ofWeakAcid(acid - strong));
        }
        return base > 0 && part.classes().contains(BASE) ? new Equivalents(0, 0, 0, 0, 0, base, 0) : Equivalents.NONE;
    }

    /** True for a gas that is a mineral acid in water, so that a base there takes it up. */
    public boolean isHydrogenHalide(String gas) {
        return substances
                .solute(gas)
                .flatMap(s -> s.acidBase().behaviour())
                .filter(b -> b == Solute.Behaviour.STRONG_ACID)
                .isPresent();
    }

    /** Gases that water sets free from a charge, with a known amount of each. */
    public List<MaterialRow.Gas> gasesWithWater(Charge charge) {
        return part(charge).row().stream()
                .flatMap(row -> row.behaviour().gases().stream())
                .filter(gas -> gas.with().isEmpty() && gas.molesPerMole().isPresent())
                .toList();
    }

    private Part part(Charge charge) {
        return substances
                .material(charge.material(), substances.formulaIn(charge.formula()))
                .main();
    }

    /** Of a workup addition, all portions: by the molarity of its own cell, else by the capacity of the wash. */
    public Equivalents of(Addition addition) {
        Optional<Wash> wash = substances.wash(addition.material());
        double millilitres =
                addition.volumeMillilitres().map(MeasuredValue::value).orElse(0.0);
        Optional<Solute> solute = wash.flatMap(w -> solute(w.solute().orElse(""), substances.formulaIn(w.formula())));
        if (solute.isEmpty() || millilitres == 0) {
            return Equivalents.NONE;
        }
        Equivalents perMole = perMole(solute.get());
        Optional<Double> typed =
                addition.step().added().molarityMolesPerLitre().entered().map(Entered::value);
        double ofWash = perMole.acid() > 0
                ? wash.get().acidMillimolesPerMillilitre().orElse(0) / perMole.acid()
                : perMole.base() > 0 ? wash.get().baseMillimolesPerMillilitre().orElse(0) / perMole.base() : 0;
        return perMole.times(typed.orElse(ofWash) * millilitres);
    }

    /** True for a substance whose protons hydrogencarbonate takes up. */
    public boolean isWeakAcid(String substance) {
        return pKaOfAcid(substance).filter(p -> p < weakAcidsBelow()).isPresent();
    }

    /** pKa of an acid by the Products table, else by the reference data. */
    public Optional<Double> pKaOfAcid(String substance) {
        Optional<Product> product = run.product(substance)
                .filter(p -> p.partitioning()
                        .character()
                        .filter(c -> c == Product.Character.ACID)
                        .isPresent());
        Optional<Double> own =
                product.flatMap(p -> p.partitioning().pKa().entered()).map(Entered::value);
        return own.or(
                () -> Stream.of(substance, substances.material(substance).main().name())
                        .flatMap(name -> substances.reference().partition().findAll(name).stream())
                        .filter(r -> r.character() == PartitionRow.Character.ACID
                                && !r.pKa().isEmpty())
                        .map(r -> r.pKa().get(0))
                        .findFirst());
    }

    /** pKa of the conjugate acid of a base, by the Products table. */
    public Optional<Double> pKaOfBase(String substance) {
        return run.product(substance)
                .filter(p -> p.partitioning()
                        .character()
                        .filter(c -> c == Product.Character.BASE)
                        .isPresent())
                .flatMap(p -> p.partitioning().pKa().entered())
                .map(Entered::value);
    }

    /** Of an amount of a component of the layer map, mmol. */
    public Equivalents of(String component, Optional<Formula> formula, double millimoles) {
        return solute(component, formula)
                .map(this::perMole)
                .orElse(Equivalents.NONE)
                .times(millimoles);
    }

    /** The solute a name means, else the one of its formula. */
    public Optional<Solute> solute(String name, Optional<Formula> formula) {
        return substances.solute(name).or(() -> formula.flatMap(substances::soluteOf));
    }

    private Equivalents perMole(Solute solute) {
        double acid = solute.acidBase().acidMolesPerMole();
        double base = solute.acidBase().baseMolesPerMole();
        return solute.acidBase()
                .behaviour()
                .map(behaviour -> switch (behaviour) {
                    case STRONG_ACID -> Equivalents.ofStrongAcid(acid);
                    case WEAK_ACID -> Equivalents.ofWeakAcid(acid);
                    case VERY_WEAK_ACID -> Equivalents.NONE;
                    case STRONG_BASE -> new Equivalents(0, 0, base, 0, 0, 0, 0);
                    case CARBONATE -> new Equivalents(0, 0, 0, base / 2, 0, 0, 0);
                    case HYDROGENCARBONATE -> new Equivalents(0, 0, 0, 0, base, 0, 0);
                    case WEAK_BASE ->
                        takesWeakAcids(solute)
                                ? new Equivalents(0, 0, 0, 0, 0, base, 0)
                                : new Equivalents(0, 0, 0, 0, 0, 0, base);
                })
                .orElse(Equivalents.NONE);
    }

    /** True where the last constant of its acid lies above those of the weak acids. */
    private boolean takesWeakAcids(Solute solute) {
        return solute.acidBase().pKa().stream().anyMatch(pKa -> pKa > weakAcidsBelow());
    }

    private double weakAcidsBelow() {
        return substances.value(Threshold.TAKEN_UP_BY_HYDROGENCARBONATE);
    }
}
