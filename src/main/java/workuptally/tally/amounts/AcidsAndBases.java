package workuptally.tally.amounts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.reference.PartitionRow;
import workuptally.reference.Wash;

/**
 * Equivalents of acid and base that charges and washes bring. Known mineral acids, hydroxides and carbonates by formula; weak acids by
 * the character in Products or by a pKa of the reference data below 6.4, the first pKa of carbonic acid (memory: textbook value 6.35),
 * above which hydrogencarbonate does not take them up.
 */
public final class AcidsAndBases {
    private static final double CARBONIC_ACID_PKA = 6.4;
    private static final List<Known> PER_MOLE = List.of(
            new Known("HCl", new Equivalents(1, 0, 0, 0, 0)),
            new Known("HBr", new Equivalents(1, 0, 0, 0, 0)),
            new Known("HNO3", new Equivalents(1, 0, 0, 0, 0)),
            new Known("H2SO4", new Equivalents(2, 0, 0, 0, 0)),
            new Known("KHSO4", new Equivalents(1, 0, 0, 0, 0)),
            new Known("NaHSO4", new Equivalents(1, 0, 0, 0, 0)),
            new Known("H3PO4", new Equivalents(1, 0, 0, 0, 0)),
            new Known("C6H8O7", new Equivalents(0, 3, 0, 0, 0)),
            new Known("LiOH", new Equivalents(0, 0, 1, 0, 0)),
            new Known("NaOH", new Equivalents(0, 0, 1, 0, 0)),
            new Known("KOH", new Equivalents(0, 0, 1, 0, 0)),
            new Known("Na2CO3", new Equivalents(0, 0, 0, 1, 0)),
            new Known("K2CO3", new Equivalents(0, 0, 0, 1, 0)),
            new Known("Cs2CO3", new Equivalents(0, 0, 0, 1, 0)),
            new Known("NaHCO3", new Equivalents(0, 0, 0, 0, 1)),
            new Known("KHCO3", new Equivalents(0, 0, 0, 0, 1)));

    private final Run run;
    private final Substances substances;

    public AcidsAndBases(Run run, Substances substances) {
        this.run = run;
        this.substances = substances;
    }

    /** Of a charge as put in. */
    public Equivalents of(ChargeAmount amount) {
        double millimoles = amount.amountMillimoles().map(MeasuredValue::value).orElse(0.0);
        Equivalents known = perMole(amount.charge().formula());
        if (known == Equivalents.NONE && isWeakAcid(amount.charge().material())) {
            known = new Equivalents(0, 1, 0, 0, 0);
        }
        return times(known, millimoles);
    }

    /** Of a workup addition, all portions. */
    public Equivalents of(Addition addition) {
        Optional<Wash> wash = substances.wash(addition.material());
        double millilitres =
                addition.volumeMillilitres().map(MeasuredValue::value).orElse(0.0);
        if (wash.isEmpty() || millilitres == 0) {
            return Equivalents.NONE;
        }
        double molarity = addition.step()
                .molarityMolesPerLitre()
                .entered()
                .map(Entered::value)
                .orElseGet(() -> wash.get().molarityMolesPerLitre().orElse(0));
        return times(perMole(wash.get().formula()), molarity * millilitres);
    }

    /** True for a substance whose protons hydrogencarbonate takes up. */
    public boolean isWeakAcid(String substance) {
        return pKaOfAcid(substance).filter(p -> p < CARBONIC_ACID_PKA).isPresent();
    }

    /** pKa of an acid by the Products table, else by the reference data. */
    public Optional<Double> pKaOfAcid(String substance) {
        Optional<Product> product = run.product(substance)
                .filter(p ->
                        p.character().filter(c -> c == Product.Character.ACID).isPresent());
        Optional<Double> own = product.flatMap(p -> p.pKa().entered()).map(Entered::value);
        return own.or(
                () -> Stream.of(substance, substances.material(substance).main().name())
                        .flatMap(name -> substances.reference().partition(name).stream())
                        .filter(r -> r.character() == PartitionRow.Character.ACID
                                && !r.pKa().isEmpty())
                        .map(r -> r.pKa().get(0))
                        .findFirst());
    }

    /** pKa of the conjugate acid of a base, by the Products table. */
    public Optional<Double> pKaOfBase(String substance) {
        return run.product(substance)
                .filter(p ->
                        p.character().filter(c -> c == Product.Character.BASE).isPresent())
                .flatMap(p -> p.pKa().entered())
                .map(Entered::value);
    }

    /** Of an amount of a substance by its formula, mmol. */
    public Equivalents of(Optional<Formula> formula, double millimoles) {
        return times(formula.map(AcidsAndBases::perMole).orElse(Equivalents.NONE), millimoles);
    }

    private Equivalents perMole(String formula) {
        if (formula.isBlank()) {
            return Equivalents.NONE;
        }
        try {
            return perMole(substances.formula(formula));
        } catch (IllegalFormulaException e) {
            return Equivalents.NONE;
        }
    }

    private static Equivalents perMole(Formula formula) {
        return PER_MOLE.stream()
                .filter(known -> known.formula().sameComposition(formula))
                .map(Known::perMole)
                .findFirst()
                .orElse(Equivalents.NONE);
    }

    private static Equivalents times(Equivalents perMole, double millimoles) {
        return new Equivalents(
                perMole.strongAcid() * millimoles,
                perMole.weakAcid() * millimoles,
                perMole.strongBase() * millimoles,
                perMole.carbonate() * millimoles,
                perMole.hydrogencarbonate() * millimoles);
    }

    private record Known(Formula formula, Equivalents perMole) {
        Known(String formula, Equivalents perMole) {
            this(Formula.parse(formula), perMole);
        }
    }
}
