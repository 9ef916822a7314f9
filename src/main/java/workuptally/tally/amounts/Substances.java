package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import workuptally.chemistry.AtomicMass;
import workuptally.chemistry.AtomicWeights;
import workuptally.chemistry.FormDifference;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.chemistry.MolarMass;
import workuptally.material.Material;
import workuptally.material.MaterialReader;
import workuptally.material.Part;
import workuptally.model.Product;
import workuptally.reference.Reference;
import workuptally.reference.bench.Threshold;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.solutions.Solute;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.AtomicWeightRow;
import workuptally.reference.substances.ClassBehaviour;
import workuptally.reference.substances.DryingAgent;
import workuptally.reference.substances.Liquid;
import workuptally.reference.substances.Metal;
import workuptally.reference.substances.Oxidant;
import workuptally.reference.substances.Solvent;
import workuptally.reference.substances.SolventShare;
import workuptally.reference.tables.Cited;
import workuptally.reference.waste.LayerFacts;
import workuptally.reference.waste.StreamRule;
import workuptally.reference.waste.WasteStream;

/**
 * Properties of named substances from the reference data. Every row that gave a figure is remembered, so that a report can list it.
 *
 * <p>One object serves one thread of a review; {@link #apart()} gives one for another thread.
 */
public final class Substances {
    static final String WATER = "water";

    private final Reference reference;
    private final AtomicWeights atomicWeights;
    private final List<Cited> used = new ArrayList<>();
    private final Set<Cited> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Map<String, Optional<Formula>> formulas;
    private final MaterialReader materials;
    private final SoluteCompositions solutes;
    private final QuenchTests quenchTests;

    /** Over the reference data in force. */
    public Substances(Reference reference) {
        this(reference, MaterialReader.of(reference));
    }

    /**
     * Over the reference data in force.
     *
     * @param materials reader of names over the same data, shared by the books of a run of the program
     */
    public Substances(Reference reference, MaterialReader materials) {
        this.reference = reference;
        this.materials = materials;
        Map<String, AtomicMass> elements = new LinkedHashMap<>();
        for (AtomicWeightRow weight : reference.atomicWeights()) {
            elements.put(weight.symbol(), new AtomicMass(weight.weightGramsPerMole(), weight.halfWidthGramsPerMole()));
        }
        this.atomicWeights = AtomicWeights.of(elements);
        this.formulas = new ConcurrentHashMap<>();
        this.solutes = new SoluteCompositions(reference.solutes(), Formula::parse);
        this.quenchTests = new QuenchTests(reference);
    }

    private Substances(Substances shared) {
        this.reference = shared.reference;
        this.atomicWeights = shared.atomicWeights;
        this.formulas = shared.formulas;
        this.materials = shared.materials;
        this.solutes = shared.solutes;
        this.quenchTests = shared.quenchTests;
    }

    /** The same substances for work beside, with rows used of their own. */
    public Substances apart() {
        return new Substances(this);
    }

    /** The rows that gave a figure so far, in the order first used; a wash made from a typed strength can stand twice. */
    public List<Cited> used() {
        return List.copyOf(used);
    }

    /** Remembers rows that gave a figure elsewhere, after those used so far. */
    public void use(List<Cited> rows) {
        rows.forEach(this::use);
    }

    /** The form of a substance that explains a difference of two molar masses, if one does; notes its row as used. */
    public Optional<FormDifference> formDifference(double gramsPerMole) {
        List<FormDifference.Form> forms = reference.addedForms().stream()
                .map(row -> new FormDifference.Form(
                        row.name(), Formula.parse(row.added()), row.removed().map(Formula::parse), row.numbers()))
                .toList();
        Optional<FormDifference> found = FormDifference.of(gramsPerMole, atomicWeights, forms);
        reference.addedForms().stream()
                .filter(row -> found.map(FormDifference::name)
                        .filter(row.name()::equals)
                        .isPresent())
                .forEach(this::use);
        return found;
    }

    /** What a written name means, with the formula that stands beside it. */
    public Material material(String written, Optional<Formula> formula) {
        return materials.read(written, formula);
    }

    /** True where a name, or what stands on a bottle, says that the material was used before. */
    public boolean isRecovered(String name, String onBottle) {
        return !name.isBlank() && material(name).recovered() || materials.saysRecovered(onBottle);
    }

    /** What a written name means. */
    public Material material(String name) {
        return materials.read(name);
    }

    /**
     * What a written name means.
     *
     * @param formula formula typed beside it; a blank one, and one that cannot be read, tells nothing
     */
    public Material material(String name, String formula) {
        return materials.read(name, formulaIn(formula));
    }

    /** Listed names near one that no table has, at most three. */
    public List<String> nearest(String name) {
        return materials.nearest(name);
    }

    /** The reference data in force. */
    public Reference reference() {
        return reference;
    }

    /**
     * Molar mass of a formula, g/mol.
     *
     * @throws IllegalFormulaException for an element without an atomic weight
     */
    public double molarMassGramsPerMole(Formula formula) {
        return formula.molarMass(atomicWeights).gramsPerMole();
    }

    /** The formula that a cell holds, each read only once; empty for a blank one, and for one that cannot be read. */
    public Optional<Formula> formulaIn(String text) {
        return formulas.computeIfAbsent(text, Formula::in);
    }

    /** Molar mass by the formula that a cell holds, g/mol; empty too for an element without an atomic weight. */
    public OptionalDouble molarMassIn(String formula) {
        return molarMass(formula).stream().mapToDouble(MolarMass::gramsPerMole).findFirst();
    }

    /** Its standard uncertainty by the atomic weights, g/mol. */
    OptionalDouble molarMassUncertaintyIn(String formula) {
        return molarMass(formula).stream()
                .mapToDouble(MolarMass::standardUncertaintyGramsPerMole)
                .findFirst();
    }

    private Optional<MolarMass> molarMass(String formula) {
        try {
            return formulaIn(formula).map(f -> f.molarMass(atomicWeights));
        } catch (IllegalFormulaException e) {
            return Optional.empty();
        }
    }

    /** Molar mass of a listed solvent, liquid reagent or product, g/mol. */
    public OptionalDouble molarMassGramsPerMole(String name) {
        Optional<Solvent> solvent =
                solvent(name).filter(s -> s.molarMassGramsPerMole().isPresent());
        Optional<Liquid> liquid = solvent.isPresent() ? Optional.empty() : liquid(name);
        solvent.ifPresent(this::use);
        liquid.ifPresent(this::use);
        return liquid.isPresent()
                ? OptionalDouble.of(liquid.get().molarMassGramsPerMole())
                : solvent.map(Solvent::molarMassGramsPerMole).orElse(OptionalDouble.empty());
    }

    /** Density at 20 °C of a listed solvent or wash, or near it of a listed liquid, g/mL. */
    public OptionalDouble densityGramsPerMillilitre(String name) {
        return new Densities(this).gramsPerMillilitre(name);
    }

    /** Standard uncertainty of that density, g/mL; 0 for solvents, their mixtures and washes, whose purity is not in question. */
    double densityUncertaintyGramsPerMillilitre(String name) {
        return new Densities(this).standardUncertaintyGramsPerMillilitre(name);
    }

    /**
     * Density of a liquid at a temperature over that at 20 °C.
     *
     * @param celsius within 40 K of 20 °C
     */
    public double densityOver20(String name, double celsius) {
        return new Densities(this).over20(name, celsius);
    }

    /** Rows are met again and again, and comparing them whole would cost more than finding them. */
    void use(Cited row) {
        if (seen.add(row)) {
            used.add(row);
        }
    }

    /** A listed solvent by name or alias. */
    public Optional<Solvent> solvent(String name) {
        return material(name).solvent();
    }

    /** A listed liquid reagent or product by name or alias. */
    public Optional<Liquid> liquid(String name) {
        return material(name).liquid();
    }

    /** The listed solvents of a mixture by volume; empty for anything else. */
    public List<SolventShare> blend(String name) {
        return material(name).blend();
    }

    /** A listed wash by name or alias. */
    public Optional<Wash> wash(String name) {
        return material(name).wash();
    }

    /** A listed drying agent by name or alias. */
    public Optional<DryingAgent> dryingAgent(String name) {
        return material(name).dryingAgent();
    }

    /** True for a listed sorbent, filter aid or drying agent. */
    public boolean isSorbent(String name) {
        return material(name).hazard().filter(Hazard::isSorbent).isPresent();
    }

    /** A listed oxidant by name or alias. */
    public Optional<Oxidant> oxidant(String name) {
        return material(name).oxidant();
    }

    /** A waste stream by key. */
    public Optional<WasteStream> wasteStream(String key) {
        Optional<WasteStream> stream = reference.streams().find(key);
        stream.ifPresent(this::use);
        return stream;
    }

    /** The rule that decides the stream of a layer. */
    public Optional<StreamRule> streamRule(LayerFacts layer) {
        Optional<StreamRule> rule = reference.streams().ruleFor(layer);
        rule.ifPresent(this::use);
        return rule;
    }

    /** The stream for what no rule knows. */
    public WasteStream askFirst() {
        return reference.streams().askFirst();
    }

    /** Whether a quench test shows a part of a material gone, by its row or by what its name tells. */
    public boolean hasQuenchTest(Part part) {
        return quenchTests.existsFor(part);
    }

    /** Whether only a negative quench test shows a part of a material gone. */
    public boolean needsQuenchTest(Part part) {
        return quenchTests.isNeededFor(part);
    }

    /** What becomes of a class of materials. */
    public Optional<ClassBehaviour> classBehaviour(String materialClass) {
        return reference.classBehaviours().find(materialClass);
    }

    /** Classes that a material has by holding an element; none for one that is no heavy metal. */
    public List<String> classesOfElement(String symbol) {
        return reference.metals().stream()
                .filter(metal -> metal.element().equals(symbol))
                .findFirst()
                .map(Metal::classes)
                .orElse(List.of());
    }

    /** The solute with a composition that tells what it is: one without carbon or without hydrogen, or with a metal of the salts. */
    public Optional<Solute> soluteOf(Formula formula) {
        return solutes.of(formula);
    }

    /** True for a listed solvent other than water. */
    public boolean isOrganicSolvent(String name) {
        return solvent(name).filter(s -> !s.key().equals(WATER)).isPresent();
    }

    /** True for a listed solvent other than water, and for a mixture that is so for more than half of its volume. */
    public boolean isOrganicLiquid(String name) {
        return isOrganicSolvent(name)
                || blend(name).stream()
                                .filter(s -> !s.solvent().key().equals(WATER))
                                .mapToDouble(SolventShare::volumeFraction)
                                .sum()
                        > 0.5;
    }

    /** True for solvents that boil as low as diethyl ether and dichloromethane, which have an evaporation allowance of their own. */
    public boolean isVeryVolatile(String name) {
        return solvent(name)
                .filter(s -> s.volatility().boilingPointCelsius() <= value(Threshold.VERY_VOLATILE_BELOW))
                .isPresent();
    }

    /** A figure of the bench, in the unit of its row; the row is remembered. */
    public double value(Threshold threshold) {
        use(reference.benchRule(threshold));
        return reference.value(threshold);
    }

    /** The solute that a name means, whatever its strength. */
    public Optional<Solute> solute(String name) {
        return material(name).solute();
    }

    /** True for a product that goes over with the solvent when that is taken off, by the boiling point entered for it. */
    public boolean isVolatile(Product product) {
        return product.boilingPointCelsius()
                .entered()
                .filter(b -> b.value() < value(Threshold.VOLATILE_BELOW))
                .isPresent();
    }
}
