package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.ContentsAccount;
import workuptally.tally.amounts.InstrumentUncertainty;
import workuptally.tally.amounts.NetMass;
import workuptally.tally.amounts.Omissions;

/** Layers with their masses, volumes and contents: by their own assays, else carried on from the layers they were made from. */
public final class LayerAccount {
    private final Run run;
    private final Readings readings;
    private final InstrumentUncertainty uncertainty;
    private final LayerGraph graph;
    private final StepOutputs outputs;
    private final ContentsAccount contents;
    private final ContentShares shares;
    private final AliquotContents aliquots;
    private final Omissions omissions;

    public LayerAccount(
            Run run,
            Readings readings,
            Limits limits,
            StepOutputs outputs,
            ContentsAccount contents,
            ContentShares shares,
            Omissions omissions) {
        this.run = run;
        this.readings = readings;
        this.uncertainty = new InstrumentUncertainty(limits);
        this.graph = outputs.graph();
        this.outputs = outputs;
        this.contents = contents;
        this.shares = shares;
        this.aliquots = new AliquotContents(run, readings, uncertainty, graph, omissions);
        this.omissions = omissions;
    }

    public List<LayerTally> of() {
        Map<String, LayerTally> layers = new LinkedHashMap<>();
        for (String label : graph.layerLabels()) {
            layers.put(label, of(label));
        }
        layers.replaceAll((label, layer) -> aliquots.taken(layer, layers));
        Map<String, LayerTally> carried = new CarriedContents(run, graph, layers).added();
        CombinedContents combined = new CombinedContents(run, graph, contents);
        return carried.values().stream()
                .map(layer -> combined.bounded(layer, carried))
                .map(layer -> layer.withContents(shares.of(layer.contents())))
                .map(this::withUnknowns)
                .toList();
    }

    private LayerTally of(String label) {
        Optional<Layer> entry = run.layer(label);
        String name = "layer " + label;
        Optional<MeasuredValue> mass = entry.flatMap(l -> new NetMass(readings, uncertainty)
                .of(
                        name,
                        l.weighing().grossGrams(),
                        l.weighing().tareGrams(),
                        l.weighing().netGrams()));
        Optional<Entered> typed = entry.flatMap(l -> l.volumeMillilitres().entered())
                .filter(v -> v.value() > 0) // no layer has none: nothing can be computed from it
                .or(() -> graph.isAliquot(label) ? aliquots.ofSample(label) : Optional.empty());
        Optional<MeasuredValue> volume = typed.map(v -> readings.enter(
                "volume of " + name,
                "mL",
                v.value(),
                volumeUncertainty(label, entry, v),
                () -> v.place().inWords()));
        if (entry.isPresent() && mass.isEmpty() && graph.isTerminal(label)) {
            Layer l = entry.get();
            omissions.add(
                    "mass of " + name,
                    NetMass.whyMissing(
                            l.weighing().grossGrams(),
                            l.weighing().tareGrams(),
                            l.weighing().netGrams()),
                    "Gross and Tare of " + label + " in Layers");
        }
        return new LayerTally(
                label,
                entry,
                PartedLiquids.counting(run, label).or(() -> phaseGiven(label)),
                graph.isTerminal(label),
                graph.isAliquot(label),
                !graph.descendsFromLot(label),
                mass,
                volume,
                shares.of(contents.of(label, mass, volume, Optional.empty())));
    }

    private double volumeUncertainty(String label, Optional<Layer> layer, Entered volume) {
        double usual = graph.isAliquot(label)
                ? uncertainty.deliveredVolumeMillilitres(volume)
                : uncertainty.layerVolumeMillilitres(volume);
        return layer.map(l -> uncertainty.statedVolumeMillilitres(l.volumeUncertaintyMillilitres(), volume, usual))
                .orElse(usual);
    }

    private Optional<Layer.Phase> phaseGiven(String label) {
        return graph.givenBy(label).flatMap(step -> {
            if (outputs.isDryingCake(step, label)) {
                return Optional.of(Layer.Phase.SOLID);
            }
            if (step.given().organic().contains(label)) {
                return Optional.of(Layer.Phase.ORGANIC);
            }
            return step.given().aqueous().contains(label) ? Optional.of(Layer.Phase.AQUEOUS) : Optional.empty();
        });
    }

    /**
     * A terminal liquid or rag, or the distillate beside a volatile product, in which a wanted product was never looked for holds an unknown amount of it, also where another one was
     * assayed. Samples and liquors are left out as soon as one wanted product was: they belong to the portion or lot they came from.
     */
    private LayerTally withUnknowns(LayerTally layer) {
        boolean canHold = layer.phase().filter(p -> p == Layer.Phase.SOLID).isEmpty();
        boolean distilled =
                layer.phase().filter(p -> p == Layer.Phase.DISTILLATE).isPresent();
        boolean holdsAny = run.products().stream().anyMatch(p -> p.wanted() && isLookedFor(layer, p));
        boolean aside = layer.aliquot() || !layer.endsWorkup();
        if (!layer.terminal() || !canHold || layer.entry().isEmpty() || (holdsAny && aside)) {
            return layer;
        }
        List<Content> contents = new ArrayList<>(layer.contents());
        for (Product product : run.products()) {
            boolean goesThere = !distilled || outputs.goesOver(product);
            if (product.wanted() && goesThere && !isLookedFor(layer, product)) {
                contents.add(Content.unknown(product.name(), holdsAny ? "not assayed for it" : "not assayed"));
            }
        }
        return layer.withContents(contents);
    }

    private static boolean isLookedFor(LayerTally layer, Product product) {
        return layer.contents().stream().anyMatch(c -> c.isOf(product.name()));
    }
}
