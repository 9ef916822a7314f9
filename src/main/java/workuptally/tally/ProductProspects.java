package workuptally.tally;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Distribution;
import workuptally.chemistry.Extraction;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.tally.Theory.ProductTheory;

/**
 * Independent routes to the product in an aqueous layer, and what one more extraction would bring.
 *
 * <p>The band of a partition figure is P ×/÷ 3 with P measured in another solvent and ×/÷ 10 with octanol's (common practice); with P of the
 * same solvent, the band of a pH ± 0.1 and of P ± 20 %. D comes from the run's own assays on both sides of a contact where there are such.
 */
final class ProductProspects {
    private static final double OTHER_SOLVENT_FACTOR = 3;
    private static final double OCTANOL_FACTOR = 10;
    private static final double SAME_SOLVENT_FACTOR = 1.2;
    private static final double PH_READING = 0.1;
    private static final double EQUIVALENT_RELATIVE = 0.01;
    private static final double PH_BELOW_PKA = 2.2;
    private static final double SMALLEST_GAIN_PERCENT = 0.1;

    private final Run run;
    private final Limits limits;
    private final LayerGraph graph;
    private final AcidsAndBases acidsAndBases;
    private final Materials materials;
    private final Substances substances;
    private final MolarMasses molarMasses;
    private final List<ChargeAmount> amounts;
    private final List<Addition> additions;
    private final List<LayerTally> layers;
    private final Found found;
    private final Optional<Theory> theory;

    ProductProspects(
            Run run,
            Limits limits,
            LayerGraph graph,
            Substances substances,
            MolarMasses molarMasses,
            List<ChargeAmount> amounts,
            List<Addition> additions,
            List<LayerTally> layers,
            Found found,
            Optional<Theory> theory) {
        this.run = run;
        this.limits = limits;
        this.graph = graph;
        this.acidsAndBases = new AcidsAndBases(run, substances);
        this.materials = new Materials(substances);
        this.substances = substances;
        this.molarMasses = molarMasses;
        this.amounts = amounts;
        this.additions = additions;
        this.layers = layers;
        this.found = found;
        this.theory = theory;
    }

    /** Routes for every terminal aqueous layer in which a wanted product was measured, where there are two or more. */
    List<Route> routes() {
        List<Route> all = new ArrayList<>();
        for (LayerTally layer : layers) {
            for (Content content : wantedIn(layer)) {
                List<Route> routes = new ArrayList<>();
                routes.add(byAssay(layer, content));
                byChargeBalance(layer, content).ifPresent(routes::add);
                byPartition(layer, content).ifPresent(routes::add);
                if (routes.size() > 1) {
                    all.addAll(routes);
                }
            }
        }
        return all;
    }

    /** Gains for every terminal aqueous layer in which a wanted product was measured. */
    List<Reextraction> reextractions() {
        List<Reextraction> all = new ArrayList<>();
        for (LayerTally layer : layers) {
            for (Content content : wantedIn(layer)) {
                all.addAll(reextractions(layer, content));
            }
        }
        return all;
    }

    private List<Content> wantedIn(LayerTally layer) {
        boolean aqueous = layer.phase().filter(p -> p == Layer.Phase.AQUEOUS).isPresent();
        if (!layer.terminal()
                || !layer.endsWorkup()
                || !aqueous
                || layer.aliquot()
                || layer.volumeMillilitres().isEmpty()) {
            return List.of();
        }
        return layer.contents().stream()
                .filter(c -> c.kind() == Content.Kind.MEASURED && c.massGrams().isPresent())
                .filter(c -> run.product(c.substance()).filter(Product::wanted).isPresent())
                .toList();
    }

    private Route byAssay(LayerTally layer, Content content) {
        MeasuredValue mass = content.massGrams().orElseThrow();
        double expanded = mass.expandedUncertainty(limits.value(Limit.COVERAGE_FACTOR));
        return new Route(
                layer.label(),
                content.substance(),
                "assay",
                mass.value(),
                mass.value() - expanded,
                mass.value() + expanded,
                content.evidence() + " × volume");
    }

    /** n(A⁻) = n(strong base) − n(strong acid) over everything that reached the layer; needs an acid and a layer made by acidifying. */
    private Optional<Route> byChargeBalance(LayerTally layer, Content content) {
        Optional<Entered> pH = pH(layer);
        if (product(content)
                        .character()
                        .filter(c -> c == Product.Character.ACID)
                        .isEmpty()
                || pH.isEmpty()) {
            return Optional.empty();
        }
        if (comesFromOrganic(layer.label())) {
            return Optional.empty();
        }
        Set<Step> reached = stepsBefore(layer.label());
        if (reached.stream()
                .noneMatch(
                        s -> s.operation().filter(o -> o == Operation.ACIDIFY).isPresent())) {
            return Optional.empty();
        }
        Equivalents sum = Equivalents.NONE;
        List<String> parts = new ArrayList<>();
        for (ChargeAmount amount : amounts) {
            Equivalents part = acidsAndBases.of(amount);
            sum = sum.plus(part);
            inWords(amount.charge().material(), part).ifPresent(parts::add);
        }
        for (Addition addition : additions) {
            if (reached.contains(addition.step())) {
                Equivalents part = acidsAndBases.of(addition);
                sum = sum.plus(part);
                inWords(addition.material(), part).ifPresent(parts::add);
            }
        }
        double salt = AcidBase.residualSaltMillimoles(sum.strongBase(), sum.strongAcid());
        double volume = layer.volumeMillilitres().orElseThrow().value();
        boolean clean = sum.carbonate() + sum.hydrogencarbonate() == 0;
        if (salt <= 0 || !clean || !AcidBase.chargeBalanceHolds(salt, pH.get().value(), volume)) {
            return Optional.empty();
        }
        double gramsPerMillimole = molarMasses.of(content.substance()).orElse(0) / 1000;
        double half = limits.value(Limit.COVERAGE_FACTOR)
                * EQUIVALENT_RELATIVE
                * Math.hypot(sum.strongBase(), sum.strongAcid());
        return Optional.of(new Route(
                layer.label(),
                content.substance(),
                "charge balance",
                salt * gramsPerMillimole,
                Math.max(0, salt - half) * gramsPerMillimole,
                (salt + half) * gramsPerMillimole,
                String.format(
                        Locale.ROOT,
                        "%.1f mmol strong base − %.1f mmol strong acid = %.1f mmol salt (%s)",
                        sum.strongBase(),
                        sum.strongAcid(),
                        salt,
                        String.join(", ", parts))));
    }

    private static Optional<String> inWords(String material, Equivalents part) {
        double millimoles = part.strongBase() + part.strongAcid();
        return millimoles > 0
                ? Optional.of(String.format(Locale.ROOT, "%s %.1f mmol", material, millimoles))
                : Optional.empty();
    }

    /** True where the layer was in contact with a portion drawn off as organic: the salt stayed in the layer that portion came from. */
    private boolean comesFromOrganic(String label) {
        return graph.parents(label).stream()
                .anyMatch(parent -> graph.givenBy(parent)
                        .filter(s -> s.givesOrganic().contains(parent))
                        .isPresent());
    }

    private Set<Step> stepsBefore(String label) {
        Set<Step> steps = new LinkedHashSet<>();
        Set<String> seen = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(List.of(label));
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (!seen.add(next)) {
                continue;
            }
            for (Step step : run.orderedSteps()) {
                if (step.gives().contains(next)) {
                    steps.add(step);
                }
            }
            open.addAll(graph.parents(next));
        }
        return steps;
    }

    /** Product that stays in the aqueous layer after the extraction that gave it, by D at its pH. */
    private Optional<Route> byPartition(LayerTally layer, Content content) {
        Optional<Step> step = graph.givenBy(layer.label()).filter(s -> materials.isOrganic(s));
        Optional<Partition> partition = step.flatMap(s -> partition(content, s.material()));
        Optional<Entered> pH = pH(layer);
        if (partition.isEmpty() || (pH.isEmpty() && partition.get().isIonisable())) {
            return Optional.empty();
        }
        double portionMillilitres =
                step.get().volumeMillilitres().entered().map(Entered::value).orElse(0.0);
        if (portionMillilitres <= 0) {
            return Optional.empty();
        }
        int portions = (int) Math.round(step.get().portionCount());
        double reading = pH.map(Entered::value).orElse(7.0);
        double there = productAfter(step.get(), content.substance());
        double volume = layer.volumeMillilitres().orElseThrow().value();
        double d = partition.get().distributionRatio(reading);
        double shift = Math.pow(10, partition.get().isIonisable() ? PH_READING : 0);
        double left = Extraction.fractionLeft(d, portionMillilitres, volume, portions);
        double factor = partition.get().factor() * shift;
        return Optional.of(new Route(
                layer.label(),
                content.substance(),
                "partition at the pH",
                there * left,
                there * Extraction.fractionLeft(d * factor, portionMillilitres, volume, portions),
                there * Extraction.fractionLeft(d / factor, portionMillilitres, volume, portions),
                String.format(
                        Locale.ROOT,
                        "%s = %.3g at pH %.1f; (%.0f / (%.0f + D × %.0f))^%d = %.3f left of %.4g g",
                        partition.get().equation(reading),
                        d,
                        reading,
                        volume,
                        volume,
                        portionMillilitres,
                        portions,
                        left,
                        there)));
    }

    /** Product in everything that came out of a step or after it, g. */
    private double productAfter(Step step, String substance) {
        Set<String> after = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(step.gives());
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (after.add(next)) {
                open.addAll(graph.children(next));
            }
        }
        return found.terms().stream()
                .filter(t ->
                        after.contains(t.label()) && t.content().substance().equalsIgnoreCase(substance))
                .flatMap(t -> t.content().massGrams().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
    }

    private List<Reextraction> reextractions(LayerTally layer, Content content) {
        Optional<Step> step = graph.givenBy(layer.label());
        Optional<String> solvent = step.flatMap(this::solventOf);
        double volume = step.map(s -> portionMillilitres(s, layer)).orElse(0.0);
        Optional<ProductTheory> expected = theory.flatMap(t -> t.products().stream()
                .filter(p -> p.product().name().equalsIgnoreCase(content.substance()))
                .findFirst());
        if (solvent.isEmpty() || volume <= 0 || expected.isEmpty()) {
            return List.of();
        }
        List<Reextraction> gains = new ArrayList<>();
        Optional<Partition> partition = partition(content, solvent.get());
        Optional<Ratio> ratio = ownRatio(layer, content, step.get())
                .or(() -> partition
                        .filter(p -> !p.isIonisable() || pH(layer).isPresent())
                        .map(p -> new Ratio(
                                p.distributionRatio(
                                        pH(layer).map(Entered::value).orElse(7.0)),
                                p.origin())));
        Gain gain = new Gain(
                layer,
                content,
                solvent.get(),
                volume,
                expected.get().massGrams().value());
        ratio.ifPresent(r -> gains.add(gain.of(1, r, Double.NaN, 0)));
        ratio.ifPresent(r -> gains.add(gain.of(2, r, Double.NaN, 0)));
        partition
                .filter(Partition::isIonisable)
                .filter(p -> pH(layer).isPresent())
                .ifPresent(p -> {
                    double pH = p.pHOfNeutralForm();
                    Ratio shifted = new Ratio(p.distributionRatio(pH), p.origin());
                    double reading = pH(layer).orElseThrow().value();
                    boolean helps = ratio.isEmpty()
                            || shifted.distributionRatio() > 2 * ratio.get().distributionRatio();
                    double millimoles = neutralisingMillimoles(layer, content, p, reading, pH);
                    if (helps && millimoles != 0) {
                        gains.add(gain.of(1, shifted, pH, millimoles));
                        gains.add(gain.of(2, shifted, pH, millimoles));
                    }
                });
        return gains.stream()
                .filter(g -> g.gainPercentOfTheory() >= SMALLEST_GAIN_PERCENT)
                .toList();
    }

    /** The portion to reckon with: that of the contact itself, else of the run's extraction, else half the layer (common practice). */
    private double portionMillilitres(Step step, LayerTally layer) {
        boolean contact = step.operation()
                .filter(o -> o == Operation.EXTRACT || o == Operation.WASH || o == Operation.BACK_EXTRACT)
                .isPresent();
        Optional<Double> own =
                step.volumeMillilitres().entered().map(Entered::value).filter(v -> contact);
        return own.or(() -> run.orderedSteps().stream()
                        .filter(s -> s.operation()
                                .filter(o -> o == Operation.EXTRACT)
                                .isPresent())
                        .filter(materials::isOrganic)
                        .flatMap(s -> s.volumeMillilitres().entered().stream())
                        .map(Entered::value)
                        .findFirst())
                .orElseGet(() -> layer.volumeMillilitres().orElseThrow().value() / 2);
    }

    private Optional<String> solventOf(Step step) {
        if (materials.isOrganic(step)) {
            return Optional.of(step.material());
        }
        return amounts.stream()
                .filter(ChargeAmount::isSolvent)
                .map(a -> a.charge().material())
                .filter(substances::isOrganicSolvent)
                .findFirst()
                .or(() -> run.orderedSteps().stream()
                        .map(Step::material)
                        .filter(substances::isOrganicSolvent)
                        .findFirst());
    }

    /** D from a sample of the organic layer of the same contact: c(organic)/c(aqueous). */
    private Optional<Ratio> ownRatio(LayerTally layer, Content content, Step step) {
        for (LayerTally other : layers) {
            boolean sampleOfOrganic = step.givesOrganic().contains(other.label())
                    || (other.aliquot()
                            && graph.parents(other.label()).stream().anyMatch(step.givesOrganic()::contains));
            if (!sampleOfOrganic
                    || other.volumeMillilitres().filter(v -> v.value() > 0).isEmpty()) {
                continue;
            }
            for (Content there : other.contents()) {
                if (there.kind() == Content.Kind.MEASURED && there.substance().equalsIgnoreCase(content.substance())) {
                    double organic = there.massGrams().orElseThrow().value()
                            / other.volumeMillilitres().get().value();
                    double aqueous = content.massGrams().orElseThrow().value()
                            / layer.volumeMillilitres().orElseThrow().value();
                    return Optional.of(new Ratio(
                            Extraction.distributionRatio(organic, aqueous),
                            "assays of " + other.label() + " and " + layer.label()));
                }
            }
        }
        return Optional.empty();
    }

    private double neutralisingMillimoles(
            LayerTally layer, Content content, Partition partition, double fromPH, double toPH) {
        double millimoles = content.amountMillimoles().map(MeasuredValue::value).orElse(0.0);
        double volume = layer.volumeMillilitres().orElseThrow().value();
        double ionised = AcidBase.ionisedAcidFraction(partition.pKa(), fromPH);
        return partition.character() == Product.Character.ACID
                ? Math.max(0, millimoles * ionised + AcidBase.hydrogenIonMolesPerLitre(toPH) * volume)
                : -Math.max(0, millimoles * (1 - ionised) + AcidBase.hydroxideIonMolesPerLitre(toPH) * volume);
    }

    private Optional<Partition> partition(Content content, String solvent) {
        Product product = product(content);
        Product.Character character = product.character().orElse(Product.Character.NEUTRAL);
        Optional<Double> pKa = product.pKa().entered().map(Entered::value);
        if (character != Product.Character.NEUTRAL && pKa.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> ratio =
                product.partitionRatio().entered().map(Entered::value).filter(p -> p > 0);
        if (ratio.isPresent()) {
            boolean same = materials.solventName(product.partitionSolvent()).equals(materials.solventName(solvent));
            return Optional.of(new Partition(
                    ratio.get(),
                    character,
                    pKa.orElse(7.0),
                    same ? SAME_SOLVENT_FACTOR : OTHER_SOLVENT_FACTOR,
                    "P = " + product.partitionRatio().entered().get().asTyped() + " in " + product.partitionSolvent()));
        }
        return product.logP()
                .entered()
                .map(l -> new Partition(
                        Math.pow(10, l.value()),
                        character,
                        pKa.orElse(7.0),
                        OCTANOL_FACTOR,
                        "octanol log P = " + l.asTyped()));
    }

    private Product product(Content content) {
        return run.product(content.substance()).orElseThrow();
    }

    private static Optional<Entered> pH(LayerTally layer) {
        return layer.entry().map(Layer::pH).flatMap(Field::entered);
    }

    private record Ratio(double distributionRatio, String origin) {}

    private record Partition(
            double partitionRatio, Product.Character character, double pKa, double factor, String origin) {
        boolean isIonisable() {
            return character != Product.Character.NEUTRAL;
        }

        double distributionRatio(double pH) {
            return switch (character) {
                case ACID -> Distribution.acid(partitionRatio, List.of(pKa), pH);
                case BASE -> Distribution.base(partitionRatio, List.of(pKa), pH);
                case NEUTRAL -> Distribution.neutral(partitionRatio);
            };
        }

        String equation(double pH) {
            return switch (character) {
                case ACID -> String.format(Locale.ROOT, "D = %.3g / (1 + 10^(%.1f − %.2f))", partitionRatio, pH, pKa);
                case BASE -> String.format(Locale.ROOT, "D = %.3g / (1 + 10^(%.2f − %.1f))", partitionRatio, pKa, pH);
                case NEUTRAL -> "D = P";
            };
        }

        /** A pH at which more than 99 % is neutral, to one decimal. */
        double pHOfNeutralForm() {
            double shift = character == Product.Character.ACID ? -PH_BELOW_PKA : PH_BELOW_PKA;
            return Math.round(10 * (pKa + shift)) / 10.0;
        }
    }

    /** Gains of one layer in one solvent. */
    private final class Gain {
        private final LayerTally layer;
        private final Content content;
        private final String solvent;
        private final double portionMillilitres;
        private final double theoryGrams;

        Gain(LayerTally layer, Content content, String solvent, double portionMillilitres, double theoryGrams) {
            this.layer = layer;
            this.content = content;
            this.solvent = solvent;
            this.portionMillilitres = portionMillilitres;
            this.theoryGrams = theoryGrams;
        }

        Reextraction of(int portions, Ratio ratio, double pH, double acidMillimoles) {
            double added = Math.abs(acidMillimoles) / Reextraction.ACID_MOLES_PER_LITRE;
            double grams = Extraction.gainGrams(
                    content.massGrams().orElseThrow().value(),
                    ratio.distributionRatio(),
                    portionMillilitres,
                    layer.volumeMillilitres().orElseThrow().value() + added,
                    portions);
            return new Reextraction(
                    layer.label(),
                    content.substance(),
                    solvent,
                    portions,
                    portionMillilitres,
                    ratio.distributionRatio(),
                    ratio.origin(),
                    pH,
                    grams,
                    100 * grams / theoryGrams,
                    acidMillimoles,
                    portions
                            * portionMillilitres
                            * substances.densityGramsPerMillilitre(solvent).orElse(1));
        }
    }
}
