package workuptally.judgement.rules.balance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Formula;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.PhOfWash;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.Reference;
import workuptally.reference.bench.Threshold;
import workuptally.reference.substances.MaterialClass;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerGraph;

/**
 * A base that was isolated after acid had been added to it, or from acidic water, and an acid the other way round, while the formula of the
 * theory is that of the free substance: what was weighed is likely its salt, and yield and balance are too high by the mass of the ion. Where
 * no character is entered, nitrogen in the formula may be a base and two oxygens an acid: then it is only asked.
 */
public final class IsolatedAsIon implements RunRule {
    private static final Set<Operation> MEETS_WATER =
            Set.of(Operation.QUENCH, Operation.EXTRACT, Operation.WASH, Operation.BACK_EXTRACT);

    private static final String CARBON = "C";

    private static final String NITROGEN = "N";

    private static final String OXYGEN = "O";

    /** Of a carboxylic acid; a phenol has one, as have alcohols, ketones and ethers. */
    private static final int OXYGENS_OF_AN_ACID = 2;

    /** Of the usual salts of acids and of bases. */
    private static final List<String> METALS = List.of("Na", "K", "Li");

    private static final List<String> HALOGENS = List.of("Cl", "Br", "I");

    private final Substances substances;
    private final Reference reference;
    private final PhOfWash washes;
    private final ChargedIon charged;

    /** With the reference data in force. */
    public IsolatedAsIon(Substances substances) {
        this.substances = substances;
        this.reference = substances.reference();
        this.washes = new PhOfWash(substances);
        this.charged = new ChargedIon(substances);
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.ISOLATED_FORM_OPEN);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Run run = tally.run();
        if (run.status() == Run.Status.PLANNED) {
            return findings.list();
        }
        Set<String> told = new LinkedHashSet<>();
        for (Lot lot : run.lots()) {
            Optional<Product> product = run.product(lot.product())
                    .filter(p -> !isShownAsSalt(run, p) && told.add(lot.label() + "|" + p.name()));
            for (Product.Character character :
                    product.map(IsolatedAsIon::characters).orElse(List.of())) {
                leftAsIon(tally, lot, product.get(), character == Product.Character.BASE)
                        .ifPresent(left -> add(findings, lot, product.get(), character, left));
            }
        }
        return findings.list();
    }

    private static void add(FindingList findings, Lot lot, Product product, Product.Character character, Phrase left) {
        boolean acid = character == Product.Character.ACID;
        boolean entered = product.partitioning().character().isPresent();
        findings.add(
                FindingCode.ISOLATED_FORM_OPEN,
                entered ? Severity.HOLD : Severity.CHECK,
                lot.row().at("Product"),
                Phrase.of(
                        "lot {} of {} {} comes from what {} left {}, and theory is of {}",
                        lot.label(),
                        entered ? Phrase.of("the {}", acid ? "acid" : "base") : Phrase.of("what may be"),
                        entered ? product.name() : Phrase.of("{} {}", acid ? "an acid," : "a base,", product.name()),
                        left,
                        acid ? "basic" : "acidic",
                        product.formula()),
                Phrase.of("theory in the form that is isolated: free, or as its salt"),
                FindingList.PRACTICE,
                entered
                        ? Phrase.of(
                                "Settle which form was weighed: enter the formula of the salt in Products, or the step that"
                                        + " set it free. A row in Corrections settles it.")
                        : Phrase.of(
                                "Enter Character in Products: neutral, or acid or base with its pKa and the formula of the form"
                                        + " weighed."));
    }

    /** What a product is, or may be where nobody says so: what it can be by its formula. */
    private static List<Product.Character> characters(Product product) {
        if (product.partitioning().character().isPresent()) {
            return product.partitioning().character().filter(c -> c != Product.Character.NEUTRAL).stream()
                    .toList();
        }
        Map<String, Double> atoms = elements(product.formula());
        if (atoms.containsKey(NITROGEN)) {
            return List.of(Product.Character.BASE);
        }
        return atoms.getOrDefault(OXYGEN, 0.0) >= OXYGENS_OF_AN_ACID ? List.of(Product.Character.ACID) : List.of();
    }

    /** What last decided between free substance and ion on the way to a lot, a step or the charges, where that makes an ion of it. */
    private Optional<Phrase> leftAsIon(RunTally tally, Lot lot, Product product, boolean base) {
        Run run = tally.run();
        Set<String> way = way(run, lot);
        Set<String> water = new LinkedHashSet<>();
        Optional<Phrase> ion = product.partitioning().character().isPresent() && charged.leaves(tally, product, base)
                ? Optional.of(Phrase.of("what was charged"))
                : Optional.empty();
        for (Step step : run.orderedSteps()) {
            if (step.gives().stream().noneMatch(way::contains)) {
                continue;
            }
            Optional<Operation> operation = step.operation();
            boolean aqueous = step.given().aqueous().stream().anyMatch(way::contains);
            // beside water an organic layer holds what is not ionised, whatever its pH: another rule asks about that
            boolean besideWater = operation.filter(MEETS_WATER::contains).isPresent()
                    && !aqueous
                    && step.given().organic().stream().anyMatch(way::contains);
            boolean goesOn = !besideWater;
            boolean outOfWater = step.from().stream().anyMatch(water::contains);
            water.addAll(step.given().aqueous());
            if (outOfWater && goesOn) {
                water.addAll(step.given().other());
            }
            boolean acidified = operation.filter(o -> o == Operation.ACIDIFY).isPresent()
                    || goesOn && brings(step, MaterialClass.ACID);
            boolean weak = !base
                    && product.partitioning()
                            .pKa()
                            .entered()
                            .filter(p -> p.value() > substances.value(Threshold.WEAK_ACID_FROM))
                            .isPresent();
            boolean basified = operation.filter(o -> o == Operation.BASIFY).isPresent()
                    || goesOn && !weak && brings(step, MaterialClass.BASE);
            Optional<Double> pH = step.pHAfter()
                    .entered()
                    .map(Entered::value)
                    .or(() -> goesOn ? pHOfLiquor(run, step) : Optional.empty())
                    .or(() -> goesOn ? washes.pHOf(run, step.added().material()) : Optional.empty());
            if (pH.isPresent() && product.partitioning().pKa().entered().isPresent()) {
                boolean ionised = isIon(product, base, pH.get()) && (base || !isZwitterion(product, pH.get()));
                ion = ionised && !besideWater ? Optional.of(name(step)) : Optional.empty();
            } else if (acidified || basified) {
                ion = acidified == base && acidified != basified ? Optional.of(name(step)) : Optional.empty();
            } else if (besideWater && !outOfWater) {
                ion = Optional.empty();
            }
        }
        return ion;
    }

    private static Phrase name(Step step) {
        return Phrase.of("step {}", step.number());
    }

    /** The pH that was read of the liquid from which a lot was filtered: that of the solution before. */
    private static Optional<Double> pHOfLiquor(Run run, Step step) {
        return step.gives().stream()
                .flatMap(label -> run.layer(label).stream())
                .filter(layer -> layer.phase()
                        .filter(p -> p == Layer.Phase.AQUEOUS || p == Layer.Phase.MOTHER_LIQUOR)
                        .isPresent())
                .flatMap(layer -> layer.pH().entered().stream())
                .map(Entered::value)
                .findFirst();
    }

    /** Whether a step brings an acid that makes an ion of the base, or a base that does so with the acid. */
    private boolean brings(Step step, String materialClass) {
        return !step.added().material().isBlank()
                && substances.material(step.added().material()).is(materialClass);
    }

    private boolean isZwitterion(Product product, double pH) {
        return pH <= substances.value(Threshold.ISOELECTRIC_MOST)
                && elements(product.formula()).containsKey(NITROGEN);
    }

    /** Labels of all portions that a lot was made from, and its own. */
    private static Set<String> way(Run run, Lot lot) {
        LayerGraph graph = LayerGraph.of(run);
        Set<String> way = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(List.of(lot.label()));
        open.addAll(lot.from());
        while (!open.isEmpty()) {
            String next = open.remove(0);
            if (way.add(next)) {
                open.addAll(graph.parents(next));
            }
        }
        return way;
    }

    private boolean isIon(Product product, boolean base, double pH) {
        double acid = AcidBase.ionisedAcidFraction(
                product.partitioning().pKa().entered().orElseThrow().value(), pH);
        double ionised = base ? 1 - acid : acid;
        return ionised > substances.value(Threshold.IONISED);
    }

    /** True where name or formula are those of a salt: by its word, as an adduct, or by an element that only the ion brings. */
    private boolean isShownAsSalt(Run run, Product product) {
        if (reference.saltForm(product.name()).isPresent()
                || product.formula().isBlank()
                || product.formula().matches(".*[.\u00B7*].*")) {
            return true;
        }
        Map<String, Double> own = elements(product.formula());
        return METALS.stream().anyMatch(own::containsKey)
                || HALOGENS.stream()
                        .filter(own::containsKey)
                        .anyMatch(element -> run.charges().stream()
                                .map(c -> elements(c.formula()))
                                .noneMatch(parts -> parts.containsKey(CARBON) && parts.containsKey(element)));
    }

    private static Map<String, Double> elements(String formula) {
        return Formula.in(formula).map(Formula::composition).orElse(Map.of());
    }
}
