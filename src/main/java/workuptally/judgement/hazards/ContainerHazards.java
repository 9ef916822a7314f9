package workuptally.judgement.hazards;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.material.Material;
import workuptally.material.Part;
import workuptally.material.Substance;
import workuptally.model.Book;
import workuptally.model.Field;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.SubstanceName;
import workuptally.reference.Reference;
import workuptally.reference.hazards.FlashPoint;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.solutions.Solute;
import workuptally.reference.substances.MaterialRow;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.containers.ContainerTally;
import workuptally.tally.layers.LayerFlow;

/**
 * What is to be said of a container by what it holds, whether a run of the book has these materials or not: a note for each of its
 * components, then one about it as a whole with what the layers poured into it take along.
 *
 * <p>No pH is read of a container. Strong acid beyond all base of at least 10 mmol/L gives a pH of 2 or less, strong base beyond all acid of
 * at least 3.2 mmol/L one of 11.5 or more (pH of a strong acid = -log c, of a strong base = 14 + log c, 25 °C, activity left out), both of
 * which are corrosive by {@link PartStatements}.
 */
public final class ContainerHazards {
    private static final double STRONG_ACID_OF_PH_2 = 0.01;
    private static final double STRONG_BASE_OF_PH_11_5 = 0.0032;
    private static final double UNSTATED_FROM_PERCENT = 50;

    private final Substances substances;
    private final Reference reference;
    private final PortionHazards portions;
    private final PartStatements parts;
    private final Map<String, RunTally> runs = new LinkedHashMap<>();
    private final Set<String> own = new LinkedHashSet<>();

    /**
     * Over the containers of a book.
     *
     * @param book the entries, whose products are assessed by the group
     * @param tallies results of its runs
     * @param substances reference data in force
     */
    public ContainerHazards(Book book, List<RunTally> tallies, Substances substances) {
        this.substances = substances;
        this.reference = substances.reference();
        this.portions = new PortionHazards(substances);
        this.parts = new PartStatements(substances);
        tallies.forEach(t -> runs.put(t.run().id(), t));
        book.runs().stream()
                .flatMap(run -> run.products().stream())
                .map(Product::name)
                .map(name -> SubstanceName.key(name))
                .forEach(own::add);
    }

    /** The notes of a container as it stands now. */
    public List<HazardNote> of(ContainerTally container) {
        ContainerState now = container.now();
        Map<String, Double> percents = PartStatements.percents(now.grams());
        List<HazardNote> notes = new ArrayList<>();
        Said said = new Said(reference);
        acidity(now, said);
        parts.say(percents, Optional.empty(), said);
        List<String> silent = new ArrayList<>();
        percents.forEach((name, percent) -> {
            Material material = substances.material(name);
            ofComponent(name, material).ifPresent(notes::add);
            boolean listed = material.parts().stream()
                    .anyMatch(p -> p.substance().isPresent() || p.row().isPresent());
            if (!listed && !ContainerState.isOurWord(name) && !own.contains(SubstanceName.key(name))) {
                silent.add(name);
            }
        });
        if (!silent.isEmpty()) {
            said.words()
                    .add("No hazard note is held for " + String.join(", ", silent)
                            + ": read the safety data sheet before anything is added.");
        }
        if (percents.isEmpty() || percents.getOrDefault(LayerFlow.UNSTATED, 0.0) >= UNSTATED_FROM_PERCENT) {
            said.words().add("Contents not recorded: their hazards are not known. Ask who filled it.");
        }
        container.done().forEach(addition -> carried(addition, said));
        said.note("container " + container.container().id()).ifPresent(notes::add);
        return List.copyOf(notes);
    }

    /** Statements that hold at any strength; those with limits of concentration are said of the whole. */
    private Optional<HazardNote> ofComponent(String name, Material material) {
        Set<String> codes = new LinkedHashSet<>();
        List<FlashPoint> inWater = new ArrayList<>();
        String caution = "";
        for (Part part : material.parts()) {
            Optional<Hazard> hazard = part.substance().flatMap(Substance::hazard);
            hazard.ifPresent(h -> {
                Set<String> all = new LinkedHashSet<>(h.statements());
                reference.concentrationLimits().findAll(h.key()).forEach(limit -> all.remove(limit.statement()));
                codes.addAll(all);
                if (material.parts().size() == 1) {
                    inWater.addAll(reference.flashPoints().findAll(h.key()));
                }
            });
            if (hazard.isEmpty()) {
                part.row().map(MaterialRow::rememberedStatements).ifPresent(codes::addAll);
            }
            caution = caution.isEmpty() ? hazard.map(Hazard::caution).orElse("") : caution;
        }
        return codes.isEmpty()
                ? Optional.empty()
                : Optional.of(new HazardNote(
                        name, Said.statements(reference, codes), caution, "reference table of hazards", true, inWater));
    }

    /** Burns by the acid or base that is left over, as far as solutes of the tables tell. */
    private void acidity(ContainerState state, Said said) {
        if (state.litres() <= 0) {
            return;
        }
        double strongAcid = 0;
        double acid = 0;
        double strongBase = 0;
        double base = 0;
        for (Map.Entry<String, Double> part : state.grams().entrySet()) {
            Optional<Solute> solute = substances.solute(part.getKey());
            if (solute.isPresent()) {
                double moles = part.getValue() / solute.get().molarMassGramsPerMole();
                acid += moles * solute.get().acidBase().acidMolesPerMole();
                base += moles * solute.get().acidBase().baseMolesPerMole();
                strongAcid += is(solute.get(), Solute.Behaviour.STRONG_ACID)
                        ? moles * solute.get().acidBase().acidMolesPerMole()
                        : 0;
                strongBase += is(solute.get(), Solute.Behaviour.STRONG_BASE)
                        ? moles * solute.get().acidBase().baseMolesPerMole()
                        : 0;
            }
        }
        double acidLeft = (strongAcid - base) / state.litres();
        double baseLeft = (strongBase - acid) / state.litres();
        if (acidLeft >= STRONG_ACID_OF_PH_2) {
            burns(acidLeft, "acid", said);
        } else if (baseLeft >= STRONG_BASE_OF_PH_11_5) {
            burns(baseLeft, "base", said);
        }
    }

    private static void burns(double molesPerLitre, String what, Said said) {
        said.codes().add(PartStatements.BURNS);
        said.sources().add(PartStatements.REGULATION);
        said.words()
                .add(String.format(
                        Locale.ROOT,
                        "About %.2g mol/L of strong %s by its contents; its pH was not read.",
                        molesPerLitre,
                        what));
    }

    private static boolean is(Solute solute, Solute.Behaviour behaviour) {
        return solute.acidBase().behaviour().filter(b -> b == behaviour).isPresent();
    }

    /** What a layer that was poured in takes along: what was said of it beside its make-up does not end with its label. */
    private void carried(ContainerAddition addition, Said said) {
        RunTally run = runs.get(addition.transfer().run());
        if (run == null) {
            return;
        }
        for (String label : addition.transfer().layers()) {
            Said ofLayer = new Said(reference);
            portions.carried(run, label, ofLayer);
            run.layer(label)
                    .flatMap(layer -> layer.entry())
                    .map(Layer::pH)
                    .flatMap(Field::entered)
                    .ifPresent(reading -> PortionHazards.extreme(reading, ofLayer));
            said.codes().addAll(ofLayer.codes());
            said.sources().addAll(ofLayer.sources());
            if (!ofLayer.words().isEmpty()) {
                said.words().add("From " + run.run().id() + " " + label + ": " + String.join(" ", ofLayer.words()));
            }
        }
    }
}
