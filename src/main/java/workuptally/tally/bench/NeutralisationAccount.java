package workuptally.tally.bench;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.chemistry.Formula;
import workuptally.material.Part;
import workuptally.measure.Readings;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.substances.MaterialClass;
import workuptally.tally.amounts.AcidsAndBases;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Equivalents;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.AdditionAccount;
import workuptally.tally.layers.LayerGraph;

/**
 * Whether the acid of an acidification can have given back the protons that strong base took, and the base of a basification taken those
 * that strong acid gave: n(H⁺ brought) against n(OH⁻ charged and added) − n(H⁺ charged), which sets free all that a strong base had made an
 * ion of. Ester, amide or acid, what the base did in the reaction does not matter, since its anion takes the proton back.
 *
 * <p>Only where nothing else can have taken them: all charges are known, none can have set free a mineral acid or taken one up, and no
 * water went another way before. Buffers and weak bases would need more still and are left out. A mineral acid that was charged can have
 * gone off as a gas, so that of a basification only acid added in the workup counts.
 */
public final class NeutralisationAccount {
    /** Elements whose acid is strong, and that a reaction can set free. */
    private static final List<String> OF_STRONG_ACIDS = List.of("Cl", "Br", "I", "S", "P");

    /** Elements of halides that give and take nothing. */
    private static final Set<String> OF_SALTS = Set.of("Li", "Na", "K", "Cs", "Mg", "Ca", "Cl", "Br", "I");

    private static final List<String> ACIDIC = List.of(
            MaterialClass.ACID,
            "acid-chloride",
            "sulfonyl-chloride",
            "anhydride",
            MaterialClass.AMMONIUM_SALT,
            MaterialClass.HEAVY_METAL);

    private static final List<String> BASIC =
            List.of(MaterialClass.BASE, MaterialClass.BASE_WEAK, MaterialClass.CARBONATE, "alkali-metal");

    private static final double LEAST_MILLIMOLES = 0.01;

    private final Run run;
    private final Substances substances;
    private final List<ChargeAmount> amounts;
    private final AcidsAndBases acidsAndBases;
    private final LayerGraph graph;
    private final Map<Step, Addition> additions = new IdentityHashMap<>();

    /** Over the entries of a run and its charges as amounts. */
    public NeutralisationAccount(Run run, Limits limits, Substances substances, List<ChargeAmount> amounts) {
        this.run = run;
        this.substances = substances;
        this.amounts = amounts;
        this.acidsAndBases = new AcidsAndBases(run, substances);
        this.graph = LayerGraph.of(run);
        new AdditionAccount(run, new Readings(), limits, graph, substances)
                .list()
                .forEach(a -> additions.put(a.step(), a));
    }

    /** One for each last acidification or basification of a portion of which all of it can be told, in order of the steps. */
    public List<Neutralisation> list() {
        List<Neutralisation> found = new ArrayList<>();
        for (Step step : run.orderedSteps()) {
            boolean acid = step.operation().filter(o -> o == Operation.ACIDIFY).isPresent();
            boolean base = step.operation().filter(o -> o == Operation.BASIFY).isPresent();
            if ((acid || base) && brought(step, acid) > 0 && !goesOn(step, acid)) {
                of(step, acid).ifPresent(found::add);
            }
        }
        return found;
    }

    private double brought(Step step, boolean acid) {
        return Optional.ofNullable(additions.get(step))
                .map(acidsAndBases::of)
                .map(e -> acid ? e.acid() : e.base())
                .orElse(0.0);
    }

    /** True where a later step brings more of it to what came of this one. */
    private boolean goesOn(Step step, boolean acid) {
        Set<String> outcomes = new LinkedHashSet<>(step.gives().isEmpty() ? step.from() : step.gives());
        return run.orderedSteps().stream()
                .dropWhile(later -> later != step)
                .skip(1)
                .filter(later -> way(later).stream().anyMatch(outcomes::contains))
                .anyMatch(later -> brought(later, acid) > 0);
    }

    /** Labels of what a step takes and of all that this was made from. */
    private Set<String> way(Step step) {
        Set<String> way = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(step.from());
        while (!open.isEmpty()) {
            String next = open.remove(0);
            if (way.add(next)) {
                open.addAll(graph.parents(next));
            }
        }
        return way;
    }

    private Optional<Neutralisation> of(Step step, boolean acid) {
        Set<String> way = way(step);
        Equivalents added = Equivalents.NONE;
        for (Step each : run.orderedSteps()) {
            boolean before = each != step;
            boolean onWay = each.from().stream().anyMatch(way::contains);
            if (before && onWay && (isPartLost(each, way) || isUnknown(each))) {
                return Optional.empty();
            }
            if (onWay || !before) {
                added = added.plus(Optional.ofNullable(additions.get(each))
                        .map(acidsAndBases::of)
                        .orElse(Equivalents.NONE));
            }
            if (!before) {
                break;
            }
        }
        boolean charges = way.contains(Step.REACTION_MIXTURE);
        if (charges && !amounts.stream().allMatch(this::isKnown)) {
            return Optional.empty();
        }
        Equivalents charged = charges
                ? amounts.stream().map(acidsAndBases::of).reduce(Equivalents.NONE, Equivalents::plus)
                : Equivalents.NONE;
        double needed =
                acid ? added.strongBase() + charged.strongBase() - charged.acid() : added.strongAcid() - charged.base();
        double brought = acid ? added.acid() : added.base();
        return needed > LEAST_MILLIMOLES
                ? Optional.of(new Neutralisation(step, acid, brought, needed))
                : Optional.empty();
    }

    /** True where water or a solid leaves the way, with what it holds of acid or base. */
    private boolean isPartLost(Step step, Set<String> way) {
        boolean still = step.operation().filter(Operation::takesSolventOff).isPresent();
        return step.given().aqueous().stream().anyMatch(label -> !way.contains(label))
                || !still
                        && step.given().other().stream()
                                .anyMatch(label -> !way.contains(label) && !graph.isAliquot(label));
    }

    /** True for an addition that is acid or base in an amount that nothing tells. */
    private boolean isUnknown(Step step) {
        String material = step.added().material();
        if (material.isBlank()) {
            return false;
        }
        Equivalents known =
                Optional.ofNullable(additions.get(step)).map(acidsAndBases::of).orElse(Equivalents.NONE);
        return known.isNone() && isAny(substances.material(material).classes(), ACIDIC, BASIC);
    }

    private static boolean isAny(Set<String> classes, List<String> some, List<String> others) {
        return classes.stream().anyMatch(c -> some.contains(c) || others.contains(c));
    }

    /**
     * True for a charge whose acid or base is counted, and for one that can give or take none: it holds no element of a strong acid that the
     * product does not keep, and no nitrogen that could have come off as ammonia.
     */
    private boolean isKnown(ChargeAmount amount) {
        Part part = substances
                .material(
                        amount.charge().material(),
                        substances.formulaIn(amount.charge().formula()))
                .main();
        if (!acidsAndBases.of(amount).isNone()) {
            return true;
        }
        if (isAny(part.classes(), ACIDIC, BASIC) || !part.heavyMetals().isEmpty()) {
            return false;
        }
        Optional<Formula> formula =
                substances.formulaIn(amount.charge().formula()).or(part::formula);
        if (amount.isSolvent()) {
            return part.substance().isPresent();
        }
        return formula.filter(f ->
                        f.count("C") == 0 || OF_STRONG_ACIDS.stream().allMatch(e -> isKept(e, f)) && isKept("N", f))
                .isPresent();
    }

    private boolean isKept(String element, Formula of) {
        return of.count(element) == 0
                || run.products().stream()
                        .map(Product::formula)
                        .flatMap(f -> substances.formulaIn(f).stream())
                        .anyMatch(f -> f.count(element) >= of.count(element));
    }
}
