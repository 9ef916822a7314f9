package workuptally.judgement.hazards;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import workuptally.material.Part;
import workuptally.material.Substance;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Step;
import workuptally.model.SubstanceName;
import workuptally.reference.Reference;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.substances.MaterialRow;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.QuenchByProduct;
import workuptally.tally.bench.Plan;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerMakeUp;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.Meeting;
import workuptally.tally.layers.Meetings;
import workuptally.tally.layers.Present;

/**
 * What is to be said of a portion as a whole, beside the statements of each of its parts: that it is strongly acidic or alkaline, that its
 * acids or bases together reach the limit that none of them reaches alone, that it may hold what sets a toxic gas free, and that it carries
 * on what must not have met.
 *
 * <p>A mixture of pH 2 or less, or of 11.5 or more, is corrosive to skin and eyes unless a test shows otherwise: Regulation (EC) 1272/2008,
 * Annex I, 3.2.3.1.2 and 3.3.3.1.2. Parts of one effect add up, each over its own limit, else over the generic one: 3.2.3.3.2 and tables
 * 3.2.3 and 3.3.3. Where a pH was read, acids count from that pH down and bases from that pH up only, since
 * what has neutralised each other is a salt.
 */
final class PortionHazards {
    /** Of what persists in a layer whose share no make-up tells, though most of it is there. */
    private static final Set<String> POISONS = Set.of("H300", "H310", "H330", "H301", "H311", "H331");

    private static final Set<String> GAS_WITH_WATER_OR_ACID = Set.of("EUH029", "EUH031", "EUH032");

    /** From this share of unnamed matter on a label goes by what went in, mass %. */
    private static final double HALF_PERCENT = 50;

    private final Reference reference;
    private final Substances substances;
    private final PartStatements parts;

    PortionHazards(Substances substances) {
        this.reference = substances.reference();
        this.substances = substances;
        this.parts = new PartStatements(substances);
    }

    /** A note for each portion of which there is something to say, in order of the steps. */
    List<HazardNote> of(RunTally tally, List<RunMaterial> materials) {
        List<HazardNote> notes = new ArrayList<>();
        List<Plan.ExpectedLayer> expected = tally.plan().map(Plan::layers).orElse(List.of());
        for (LayerTally layer : tally.layers()) {
            Map<String, Double> grams = tally.makeUp(layer.label())
                    .map(LayerMakeUp::grams)
                    .or(() -> expected.stream()
                            .filter(e -> e.label().equals(layer.label()))
                            .map(Plan.ExpectedLayer::grams)
                            .findFirst())
                    .orElse(Map.of());
            if (layer.terminal() || layer.entry().isPresent()) {
                note(tally, materials, layer.label(), grams, pH(tally, layer)).ifPresent(notes::add);
            }
        }
        for (Plan.ExpectedLayer layer : expected) {
            // each gets a label on the bench sheet, also one that a later step takes
            if (tally.layer(layer.label())
                    .filter(l -> l.terminal() || l.entry().isPresent())
                    .isEmpty()) {
                note(tally, materials, layer.label(), layer.grams(), Optional.empty())
                        .ifPresent(notes::add);
            }
        }
        return notes;
    }

    /** As read of the layer, else of the step that gave it as its water. */
    private static Optional<Entered> pH(RunTally tally, LayerTally layer) {
        return layer.entry()
                .map(Layer::pH)
                .flatMap(Field::entered)
                .or(() -> tally.run().orderedSteps().stream()
                        .filter(step -> step.given().aqueous().contains(layer.label()))
                        .map(Step::pHAfter)
                        .flatMap(field -> field.entered().stream())
                        .findFirst());
    }

    private Optional<HazardNote> note(
            RunTally tally,
            List<RunMaterial> materials,
            String label,
            Map<String, Double> grams,
            Optional<Entered> pH) {
        Said said = new Said(reference);
        pH.ifPresent(reading -> extreme(reading, said));
        Map<String, Double> percents = PartStatements.percents(grams);
        parts.say(percents, pH, said);
        named(percents, materials, said);
        unnamed(tally, label, percents, said);
        carried(tally, label, said);
        planned(tally, label, said);
        ofQuench(tally, label, grams, said);
        return said.note(HazardNote.subjectOfPortion(label));
    }

    /** What the quench of an organometallic gave, which goes with the organic phase and its solvent; how much of it where, nobody measured. */
    private void ofQuench(RunTally tally, String label, Map<String, Double> grams, Said said) {
        boolean organic = tally.layer(label)
                .flatMap(LayerTally::phase)
                .filter(p -> p == Layer.Phase.DISTILLATE || p == Layer.Phase.ORGANIC)
                .isPresent();
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        if (!organic || total <= 0) {
            return;
        }
        for (QuenchByProduct one : QuenchByProduct.of(tally.run(), tally.amounts(), tally.closures(), substances)) {
            double percent = Math.min(100, 100 * one.grams() / total);
            substances
                    .material(one.name())
                    .hazard()
                    .ifPresent(h -> said.codes().addAll(MixtureStatements.borneAlone(h.statements(), percent)));
            said.words()
                    .add(String.format(
                            Locale.ROOT,
                            "May hold up to %.2g g of %s from the quench of %s.",
                            one.grams(),
                            one.name(),
                            one.charge().material()));
            said.sources().add("stoichiometry of the quench");
        }
    }

    /** What a portion takes along wherever it is poured: what sets a toxic gas free, and what must not have met. */
    void carried(RunTally tally, String label, Said said) {
        Meetings meetings = tally.evidence().meetings();
        meetings.in(label).forEach(present -> gas(present, said));
        meetings.carriedBy(label).stream().filter(Meeting::isForbidden).forEach(meeting -> met(meeting, said));
    }

    /**
     * What the label of a planned portion names since it went in and persists: no pH and no test tells yet that it is gone, however often
     * the portion is washed on paper.
     */
    private void planned(RunTally tally, String label, Said said) {
        boolean named = tally.plan().stream()
                .flatMap(plan -> plan.layers().stream())
                .anyMatch(layer -> layer.label().equals(label));
        if (!named) {
            return;
        }
        List<Present> followed = tally.evidence().meetings().in(label);
        for (Charge charge : Plan.leftOver(tally.run())) {
            if (followed.stream().noneMatch(p -> p.name().equals(charge.material()))) {
                substances.material(charge.material(), charge.formula()).parts().stream()
                        .filter(Part::isPersistent)
                        .forEach(part -> gas(charge.material(), part, Present.Share.TRACE, said));
            }
        }
    }

    /** Burns by a pH that was read. */
    static void extreme(Entered reading, Said said) {
        boolean acidic = reading.qualifier() != Field.Qualifier.ABOVE
                && reading.value() - reading.halfWidth() <= PartStatements.ACIDIC_UP_TO_PH;
        boolean alkaline = reading.qualifier() != Field.Qualifier.BELOW
                && reading.value() + reading.halfWidth() >= PartStatements.ALKALINE_FROM_PH;
        if (acidic || alkaline) {
            said.codes().add(PartStatements.BURNS);
            said.sources().add(PartStatements.REGULATION);
            said.words()
                    .add("Corrosive by its pH (" + reading.asTyped() + (acidic ? "; 2 or less)." : "; 11.5 or more)."));
        }
    }

    /**
     * A part that stands under another name than that of the tables, as a charge or the solute of a solution does: its statements are found
     * by what the name means.
     */
    private void named(Map<String, Double> percents, List<RunMaterial> materials, Said said) {
        boolean wet = percents.getOrDefault(IngredientAccount.WATER, 0.0) > 0;
        for (RunMaterial material : materials) {
            Part main = material.material().main();
            // under its name in the tables the statements of its row of hazards count among those of all parts
            boolean row = material.material().hazard().isPresent();
            double percent = percents.entrySet().stream()
                    .filter(p ->
                            isOf(main, p.getKey(), material) && !(row && SubstanceName.same(p.getKey(), main.name())))
                    .mapToDouble(Map.Entry::getValue)
                    .sum();
            boolean gone = wet && main.isDestroyedByWater();
            if (percent > 0 && !gone) {
                said.codes().addAll(MixtureStatements.borneAlone(withoutLimits(main), percent));
            }
        }
    }

    /** Statements of a part that no limits of its own rule: those of its row of hazards, else those remembered. */
    private List<String> withoutLimits(Part part) {
        Optional<Hazard> hazard = part.substance().flatMap(Substance::hazard);
        return hazard.isPresent()
                ? hazard.filter(h ->
                                reference.concentrationLimits().findAll(h.key()).isEmpty())
                        .map(Hazard::statements)
                        .orElse(List.of())
                : part.row().map(MaterialRow::rememberedStatements).orElse(List.of());
    }

    /** Of a portion that is unknown for the most part: what is only remembered of what went in, which no row of hazards tells. */
    private void unnamed(RunTally tally, String label, Map<String, Double> percents, Said said) {
        double unknown = percents.getOrDefault(LayerFlow.UNSTATED, 0.0);
        if (unknown < HALF_PERCENT) {
            return;
        }
        tally.evidence().meetings().in(label).stream()
                .filter(p -> p.share() == Present.Share.MAIN && !p.isListedSolvent())
                .map(Present::part)
                .filter(part -> part.substance().flatMap(Substance::hazard).isEmpty())
                .forEach(part -> said.codes().addAll(MixtureStatements.borneAlone(withoutLimits(part), unknown)));
    }

    /** Whether a name is the main part's, as typed or as that of what is dissolved: sodium hypochlorite of its solution. */
    private static boolean isOf(Part main, String name, RunMaterial material) {
        return SubstanceName.same(name, material.written())
                || SubstanceName.same(name, main.name())
                || main.substance()
                        .flatMap(Substance::solute)
                        .filter(solute -> SubstanceName.same(solute.name(), name))
                        .isPresent();
    }

    private static Stream<String> ofPart(Part part) {
        return Stream.concat(
                        part.substance().flatMap(Substance::hazard).map(Hazard::statements).stream(),
                        part.row().map(MaterialRow::rememberedStatements).stream())
                .flatMap(List::stream);
    }

    /** What follows the layers until it is destroyed, however little of it is left. */
    private static void gas(Present present, Said said) {
        if (present.persists()) {
            gas(present.name(), present.part(), present.share(), said);
        }
    }

    private static void gas(String name, Part part, Present.Share share, Said said) {
        Set<String> codes = new LinkedHashSet<>();
        ofPart(part).filter(GAS_WITH_WATER_OR_ACID::contains).forEach(codes::add);
        if (share == Present.Share.MAIN) {
            ofPart(part).filter(POISONS::contains).forEach(codes::add);
        }
        if (!codes.isEmpty()) {
            said.codes().addAll(codes);
            said.sources().add("reference table of hazards");
            said.words().add("May hold " + name + ".");
        }
    }

    private static void met(Meeting meeting, Said said) {
        said.words()
                .add("Here "
                        + String.join(" met ", meeting.with())
                        + meeting.step()
                                .map(step -> " in step " + step.number())
                                .orElse("")
                        + ": " + meeting.consequence() + meeting.pair().gasInBrackets() + ".");
        said.sources().add("reference table of pairs, " + meeting.pair().basis().word());
    }
}
