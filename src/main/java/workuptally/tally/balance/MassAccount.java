package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Omissions;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;
import workuptally.tally.balance.MassBalance.Category;
import workuptally.tally.balance.MassBalance.Line;
import workuptally.tally.balance.MassBalance.Side;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerTally;

/**
 * Total mass: everything that went into reaction and workup against every terminal layer, aliquot, cake, distillate and lot that was
 * weighed. Purification is a balance of its own and left out.
 */
public final class MassAccount {
    private static final String WHAT = "total mass balance";

    private final Run run;
    private final Readings readings;
    private final Limits limits;
    private final Substances substances;
    private final IngredientAccount materials;
    private final Omissions omissions;

    public MassAccount(Run run, Readings readings, Limits limits, Substances substances, Omissions omissions) {
        this.run = run;
        this.readings = readings;
        this.limits = limits;
        this.substances = substances;
        this.materials = new IngredientAccount(substances);
        this.omissions = omissions;
    }

    /**
     * The balance; empty where nothing with a mass went in or came out yet, or something that went in has no mass, or a run without a
     * recorded workup lists less than its product must have come from.
     */
    public Optional<MassBalance> of(
            Optional<Theory> theory,
            List<ChargeAmount> amounts,
            List<Addition> additions,
            List<LayerTally> layers,
            List<LotTally> lots,
            double gasGrams) {
        if (run.status() == Run.Status.PLANNED || (layers.isEmpty() && lots.isEmpty())) {
            return Optional.empty();
        }
        Optional<List<Line>> in = wentIn(amounts, additions);
        if (in.isEmpty()) {
            return Optional.empty();
        }
        List<Line> lines = new ArrayList<>(in.get());
        List<Line> out = cameOut(layers, lots);
        if (lines.isEmpty() || out.isEmpty()) {
            // nothing recorded on one side is not zero grams
            return Optional.empty();
        }
        if (layers.isEmpty() && !run.recordsWorkup() && theory.isPresent() && lacksReagents(theory.get(), lines)) {
            omissions.add(
                    WHAT,
                    "what is charged weighs less than the product that it gives: a reagent is not listed",
                    "the amounts of all reagents in Charges");
            return Optional.empty();
        }
        lines.addAll(out);
        MeasuredValue inGrams = sum(lines, Side.IN);
        MeasuredValue outGrams = sum(lines, Side.OUT);
        double evaporates = limits.value(Limit.EVAPORATION_ALLOWANCE) / 100;
        double evaporatesVolatile = limits.value(Limit.EVAPORATION_ALLOWANCE_VOLATILE) / 100;
        return Optional.of(new MassBalance(
                inGrams,
                outGrams,
                gasGrams,
                organicSolventGrams(amounts, additions, 1, 1),
                solutionSolventGrams(amounts, 1, 1),
                organicSolventGrams(amounts, additions, evaporates, evaporatesVolatile)
                        + solutionSolventGrams(amounts, evaporates, evaporatesVolatile),
                run.leftOut().isEmpty() && isComplete(run, layers, lots),
                lines));
    }

    /** True where less was charged than theory of a product weighs, so that part of it comes from what is not listed. */
    private boolean lacksReagents(Theory theory, List<Line> in) {
        double product = theory.products().stream()
                .mapToDouble(each -> each.massGrams().value())
                .max()
                .orElse(0);
        return sum(in, Side.IN).value() < product;
    }

    /** Charges and workup additions; empty where one of them has no mass. */
    private Optional<List<Line>> wentIn(List<ChargeAmount> amounts, List<Addition> additions) {
        List<Line> lines = new ArrayList<>();
        for (ChargeAmount amount : amounts) {
            String material = amount.charge().material();
            if (amount.massGrams().isEmpty()) {
                omissions.add(
                        WHAT,
                        "the mass of " + material + " is not known",
                        amount.charge().row().entry("Actual amount or Density", material, "Charges"));
                return Optional.empty();
            }
            lines.add(new Line(
                    Side.IN, material, Category.CHARGE, amount.massGrams().get()));
        }
        for (Addition addition : additions) {
            if (addition.purification()) {
                continue;
            }
            if (addition.massGrams().isEmpty()) {
                omissions.add(
                        WHAT,
                        "the mass of " + addition.material() + " in step "
                                + addition.step().number() + " is not known",
                        "volume and density, or mass, in Workup");
                return Optional.empty();
            }
            lines.add(new Line(
                    Side.IN,
                    addition.material(),
                    Category.WORKUP,
                    addition.massGrams().get()));
        }
        return Optional.of(lines);
    }

    /** Layers and lots that were weighed. */
    private static List<Line> cameOut(List<LayerTally> layers, List<LotTally> lots) {
        List<Line> lines = new ArrayList<>();
        layers.stream()
                .filter(LayerTally::counts)
                .forEach(layer -> layer.massGrams()
                        .ifPresent(m -> lines.add(new Line(Side.OUT, layer.label(), category(layer), m))));
        // a lot with a row for each of its products was weighed once
        Set<String> counted = new HashSet<>();
        lots.stream()
                .filter(lot -> lot.endsWorkup() && counted.add(lot.lot().label()))
                .forEach(lot -> lot.netGrams()
                        .ifPresent(m -> lines.add(new Line(Side.OUT, lot.lot().label(), Category.LOT, m))));
        return lines;
    }

    /** A run of which neither steps nor layers are recorded says nothing of where its solvent went. */
    private static boolean isComplete(Run run, List<LayerTally> layers, List<LotTally> lots) {
        boolean workup = run.recordsWorkup() || !layers.isEmpty();
        return workup
                && layers.stream()
                        .filter(LayerTally::counts)
                        .allMatch(layer -> layer.massGrams().isPresent())
                && lots.stream()
                        .filter(LotTally::endsWorkup)
                        .allMatch(lot -> lot.netGrams().isPresent());
    }

    private MeasuredValue sum(List<Line> lines, Side side) {
        return lines.stream()
                .filter(l -> l.side() == side)
                .map(Line::grams)
                .reduce(MeasuredValue::plus)
                .orElse(readings.exact(0));
    }

    private static Category category(LayerTally layer) {
        if (layer.aliquot()) {
            return Category.ALIQUOT;
        }
        Layer.Phase phase = layer.phase().orElse(Layer.Phase.AQUEOUS);
        return phase == Layer.Phase.SOLID
                ? Category.CAKE
                : phase == Layer.Phase.DISTILLATE ? Category.DISTILLATE : Category.LAYER;
    }

    /** Organic solvent charged as such. */
    private double organicSolventGrams(
            List<ChargeAmount> amounts, List<Addition> additions, double weight, double weightVolatile) {
        double grams = 0;
        for (ChargeAmount amount : amounts) {
            if (amount.isSolvent() && substances.isOrganicLiquid(amount.charge().material())) {
                double share = substances.isVeryVolatile(amount.charge().material()) ? weightVolatile : weight;
                grams += share * amount.massGrams().map(MeasuredValue::value).orElse(0.0);
            }
        }
        for (Addition addition : additions) {
            if (!addition.purification() && substances.isOrganicLiquid(addition.material())) {
                double share = substances.isVeryVolatile(addition.material()) ? weightVolatile : weight;
                grams += share * addition.massGrams().map(MeasuredValue::value).orElse(0.0);
            }
        }
        return grams;
    }

    /** Organic solvent of the solutions in which reagents were charged: it evaporates as well. */
    private double solutionSolventGrams(List<ChargeAmount> amounts, double weight, double weightVolatile) {
        double grams = 0;
        for (ChargeAmount amount : amounts) {
            String material = amount.charge().material();
            if (amount.isSolvent() || materials.solventName(material).isPresent()) {
                continue;
            }
            for (Map.Entry<String, Ingredients.Part> part :
                    materials.of(amount).parts().entrySet()) {
                if (substances.isOrganicSolvent(part.getKey())) {
                    grams += (substances.isVeryVolatile(part.getKey()) ? weightVolatile : weight)
                            * part.getValue().grams();
                }
            }
        }
        return grams;
    }
}
