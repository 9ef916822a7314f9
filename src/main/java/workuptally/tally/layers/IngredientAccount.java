package workuptally.tally.layers;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.Solvent;
import workuptally.reference.substances.SolventShare;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;

/** What materials are made of, for the estimates of the layer map: a solution as solvent and solute, a solvent under its listed name. */
public final class IngredientAccount {
    /** Listed name of water. */
    public static final String WATER = "water";

    /** Organic reactants and products: they take up volume in a funnel; what is left of them is told by assays alone. */
    public static final String REACTANTS = "organic reactants and products";

    /** Organic solids charged: in solution they take up volume, and make no phase of their own. */
    static final String SOLIDS = "organic solids in solution";

    /** Salts charged dry: the volume that they take up in the aqueous phase. */
    static final String SALTS = "salts in solution";

    /** What a charge of low strength holds beside what it is named for, a broth or an extract: a volume of which nothing else is known. */
    static final String REST = "rest of a charge";

    /** Of a sorbent or a catalyst on its support the rest is no liquid. */
    private static final Set<String> SOLID = Set.of("solid", "pyrophoric-catalyst");

    /** What a hydride has become once a test found none left. */
    static final String QUENCHED = "salts of the quenched hydride";

    private static final String HYDRIDE = "hydride";

    /** Of an unknown rest, g/mL: most of a broth is water (common practice). */
    private static final double WATER_DENSITY = 1;

    private final Substances substances;
    private final Carriers carriers;

    public IngredientAccount(Substances substances) {
        this.substances = substances;
        this.carriers = new Carriers(substances);
    }

    /** A figure of the bench, in the unit of its row. */
    double value(Threshold threshold) {
        return substances.value(threshold);
    }

    /**
     * A charge: the solvent of a solution apart from its solute. A substrate is none of the solvents, though a table lists it as one. Of a
     * solution without a density the solvent is estimated by its volume.
     */
    public Ingredients of(ChargeAmount amount) {
        Charge charge = amount.charge();
        double grams = amount.massGrams().map(MeasuredValue::value).orElse(0.0);
        double millilitres =
                amount.volumeMillilitres().map(MeasuredValue::value).orElse(0.0);
        boolean substrate =
                charge.role().filter(r -> r == Charge.Role.SUBSTRATE).isPresent();
        Optional<String> solvent = solventName(charge.material());
        if (solvent.isPresent()) {
            double volume = millilitres > 0 ? millilitres : volume(charge.material(), grams);
            if (substrate && substances.isOrganicSolvent(charge.material())) {
                return Ingredients.of(REACTANTS, 0, volume);
            }
            return inContent(solvent.get(), grams, volume, content(charge));
        }
        Ingredients blend = blend(charge.material(), grams, millilitres);
        if (!blend.parts().isEmpty()) {
            return blend;
        }
        Optional<String> carrier = carriers.of(amount);
        if (carrier.isPresent()
                && amount.amountMillimoles().isPresent()
                && amount.molarMassGramsPerMole().isPresent()) {
            double solute = amount.amountMillimoles().get().value()
                    * amount.molarMassGramsPerMole().getAsDouble()
                    / 1000;
            double dissolving =
                    amount.massGrams().isPresent() ? Math.max(0, grams - solute) : mass(carrier.get(), millilitres);
            Ingredients solution = Ingredients.of(
                    carrier.get(),
                    dissolving,
                    millilitres > 0
                            ? millilitres
                            : Math.max(volume(charge.material(), grams), volume(carrier.get(), dissolving)));
            return goesWithWater(charge.material(), Optional.of(charge))
                    ? solution.plus(
                            Ingredients.of(charge.material(), grams - dissolving > 0 ? grams - dissolving : solute, 0))
                    : solution;
        }
        double named = amount.amountMillimoles().isPresent()
                        && amount.molarMassGramsPerMole().isPresent()
                ? amount.amountMillimoles().get().value()
                        * amount.molarMassGramsPerMole().getAsDouble()
                        / 1000
                : grams;
        double rest = grams - named;
        boolean dilute = rest > named && SOLID.stream().noneMatch(substances.material(charge.material())::is);
        return dilute
                ? solute(charge, named, 0)
                        .plus(Ingredients.of(REST, 0, millilitres > 0 ? millilitres : rest / WATER_DENSITY))
                : solute(charge, grams, millilitres);
    }

    private static Ingredients inContent(String solvent, double grams, double millilitres, double fraction) {
        Ingredients pure = Ingredients.of(solvent, grams * fraction, millilitres * fraction);
        return fraction < 1 ? pure.plus(Ingredients.of(REACTANTS, 0, millilitres * (1 - fraction))) : pure;
    }

    /** Mass fraction of what is charged as a solvent: 1 unless an assay says less, as of a recovered one. */
    private static double content(Charge charge) {
        return charge.role().filter(r -> r == Charge.Role.SOLVENT).isEmpty()
                ? 1
                : charge.goods()
                        .assayPercent()
                        .entered()
                        .map(assay -> Math.min(1, assay.value() / 100))
                        .orElse(1.0);
    }

    /** A solute by itself, with the volume it takes up in solution where none was measured. */
    private Ingredients solute(Charge charge, double grams, double millilitres) {
        if (goesWithWater(charge.material(), Optional.of(charge))) {
            return millilitres > 0
                    ? Ingredients.of(charge.material(), grams, millilitres)
                    : Ingredients.of(charge.material(), grams, 0)
                            .plus(Ingredients.of(SALTS, 0, grams / value(Threshold.DISSOLVED_SALT_DENSITY)));
        }
        if (millilitres > 0) {
            return Ingredients.of(REACTANTS, 0, millilitres);
        }
        boolean liquid = substances.liquid(charge.material()).isPresent();
        double volume = liquid ? volume(charge.material(), grams) : grams / value(Threshold.ORGANIC_SOLUTE_DENSITY);
        return Ingredients.of(liquid ? REACTANTS : SOLIDS, 0, volume);
    }

    /** Volume of organic reactants, dissolved solids among them, mL. */
    public double reactantMillilitres(Ingredients portion) {
        return portion.share(name -> isReactants(name) ? 1 : 0).millilitres();
    }

    /** A portion without its organic reactants. */
    public Ingredients withoutReactants(Ingredients portion) {
        return portion.share(name -> isReactants(name) ? 0 : 1);
    }

    /** Volume of liquids that go with the water and of which neither mass nor make-up is known, such as bleach without its density, mL. */
    double unknownMillilitres(Ingredients portion) {
        return portion.parts().entrySet().stream()
                .filter(e -> e.getValue().grams() == 0 && !isReactants(e.getKey()))
                .filter(e -> !e.getKey().equals(SALTS) && !substances.isOrganicSolvent(e.getKey()))
                .mapToDouble(e -> e.getValue().millilitres())
                .sum();
    }

    /** What was poured: a portion without the volume of solids that went into solution, which no rule of filling a funnel counts. */
    public Ingredients poured(Ingredients portion) {
        return portion.share(name -> name.equals(SOLIDS) || name.equals(SALTS) ? 0 : 1);
    }

    private static boolean isReactants(String name) {
        return name.equals(REACTANTS) || name.equals(SOLIDS);
    }

    /** The solvent of a solution that was charged by volume without a density, whose mass is therefore not known; empty otherwise. */
    public Optional<String> solventOfUnknownMass(ChargeAmount amount) {
        return amount.massGrams().isPresent()
                        || amount.volumeMillilitres().isEmpty()
                        || amount.amountMillimoles().isEmpty()
                ? Optional.empty()
                : carriers.of(amount).filter(substances::isOrganicSolvent);
    }

    /** The listed organic solvent that a material is by itself; empty for solutions, blends and all else. */
    public Optional<String> organicSolvent(String material) {
        return solventName(material).filter(substances::isOrganicSolvent);
    }

    /** A portion in which a test found no hydride left: what the hydrides charged have become instead. */
    Ingredients withoutHydrides(Ingredients portion, Run run) {
        Ingredients tested = portion;
        for (Charge charge : run.charges()) {
            Ingredients.Part part = tested.parts().get(charge.material());
            if (part != null && isHydride(charge)) {
                tested = tested.share(name -> name.equals(charge.material()) ? 0 : 1)
                        .plus(Ingredients.of(QUENCHED, part.grams(), part.millilitres()));
            }
        }
        return tested;
    }

    private boolean isHydride(Charge charge) {
        return substances.material(charge.material(), charge.formula()).is(HYDRIDE);
    }

    /** A workup addition, all portions. */
    public Ingredients of(Addition addition) {
        double grams = addition.massGrams().map(MeasuredValue::value).orElse(0.0);
        double millilitres =
                addition.volumeMillilitres().map(MeasuredValue::value).orElse(0.0);
        Optional<String> solvent = solventName(addition.material());
        if (solvent.isPresent()) {
            return Ingredients.of(solvent.get(), grams, millilitres);
        }
        OptionalDouble solute = soluteGrams(addition, millilitres);
        if (solute.isPresent() && millilitres > 0) {
            String name = soluteName(addition.material());
            return Ingredients.of(WATER, grams - solute.getAsDouble(), millilitres)
                    .plus(Ingredients.of(name, solute.getAsDouble(), 0));
        }
        Ingredients blend = blend(addition.material(), grams, millilitres);
        if (!blend.parts().isEmpty()) {
            return blend;
        }
        Optional<String> carrier = carriers.of(addition.material());
        if (carrier.isPresent() && millilitres > 0) {
            return Ingredients.of(carrier.get(), grams > 0 ? grams : mass(carrier.get(), millilitres), millilitres);
        }
        if (millilitres > 0 && substances.liquid(addition.material()).isPresent()) {
            return Ingredients.of(REACTANTS, 0, millilitres);
        }
        // an unlisted liquid passes for water, which a finding says
        return millilitres > 0
                ? Ingredients.of(WATER, grams > 0 ? grams : mass(WATER, millilitres), millilitres)
                : Ingredients.of(addition.material(), grams, 0);
    }

    /**
     * True where a component belongs with the water: water itself, salts, mineral acids and bases. A charge without a formula does so only
     * where the tables list it as a solute.
     */
    boolean goesWithWater(String component, List<Charge> charges) {
        for (Charge charge : charges) {
            if (charge.material().equals(component)) {
                return goesWithWater(component, Optional.of(charge));
            }
        }
        return goesWithWater(component, Optional.empty());
    }

    private boolean goesWithWater(String component, Optional<Charge> charge) {
        if (component.equals(WATER) || component.equals(REST)) {
            return true;
        }
        if (isReactants(component)) {
            return false;
        }
        if (substances.isOrganicSolvent(component)) {
            return false;
        }
        if (charge.isEmpty()) {
            return true;
        }
        String formula = charge.get().formula();
        return formula.isBlank()
                ? substances.solute(component).isPresent()
                        || substances.wash(component).isPresent()
                : !carriers.holdsCarbon(formula) || formula.contains("CO3");
    }

    /** A mixture of listed solvents in its parts; nothing for any other material. */
    Ingredients blend(String material, double grams, double millilitres) {
        List<SolventShare> shares = substances.blend(material);
        if (shares.isEmpty()) {
            return Ingredients.EMPTY;
        }
        double volume = millilitres > 0
                ? millilitres
                : grams / substances.densityGramsPerMillilitre(material).orElseThrow();
        Ingredients blend = Ingredients.EMPTY;
        for (SolventShare share : shares) {
            double part = volume * share.volumeFraction();
            blend = blend.plus(Ingredients.of(
                    inText(share.solvent()), part * share.solvent().density().gramsPerMillilitre(), part));
        }
        return blend;
    }

    /** A solvent's name within a sentence: lower case but for the capital of a locant, {@code N,N-dimethylformamide}. */
    static String inText(Solvent solvent) {
        String name = solvent.name();
        int locants = name.startsWith("N,N-") ? 4 : name.startsWith("N-") ? 2 : 0;
        return name.substring(0, locants) + name.substring(locants).toLowerCase(Locale.ROOT);
    }

    /** Listed name of a solvent as within a sentence; empty for anything else. */
    public Optional<String> solventName(String material) {
        return substances.solvent(material).map(IngredientAccount::inText);
    }

    /** True where a step's material is an organic liquid. */
    public boolean isOrganic(Step step) {
        return substances.isOrganicLiquid(step.added().material());
    }

    private OptionalDouble soluteGrams(Addition addition, double millilitres) {
        Optional<Wash> wash = substances.wash(addition.material());
        if (wash.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble listed = wash.get().concentration().massPercent();
        OptionalDouble percent = listed.isPresent()
                ? listed
                : substances.material(addition.material()).massPercentInWater();
        if (percent.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble molarMass = substances.molarMassIn(wash.get().formula());
        Optional<Entered> typed =
                addition.step().added().molarityMolesPerLitre().entered();
        if (typed.isPresent() && molarMass.isPresent()) {
            return OptionalDouble.of(typed.get().value() * molarMass.getAsDouble() * millilitres / 1000);
        }
        double grams = addition.massGrams().map(MeasuredValue::value).orElse(0.0);
        return OptionalDouble.of(grams * percent.getAsDouble() / 100);
    }

    private String soluteName(String material) {
        return substances.wash(material).flatMap(Wash::solute).orElse(material);
    }

    private double mass(String solvent, double millilitres) {
        return millilitres * substances.densityGramsPerMillilitre(solvent).orElse(1);
    }

    private double volume(String solvent, double grams) {
        return grams / substances.densityGramsPerMillilitre(solvent).orElse(1);
    }
}
