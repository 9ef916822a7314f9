package workuptally.judgement.hazards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import workuptally.material.Material;
import workuptally.model.Charge;
import workuptally.model.CompositionPart;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.Reference;
import workuptally.reference.hazards.ConcentrationLimit;
import workuptally.reference.hazards.HStatement;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Source;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.QuenchByProduct;

/** Cautions about the operations and materials of a run, from the reference data. They are reminders; the safety data sheet and the local rules win. */
public final class HazardNoteAccount {
    private final Reference reference;
    private final Substances substances;
    private final OperationHazards operations;
    private final PortionHazards portions;
    private final SolutionStrength strengths;
    private final Map<String, HazardNote> notesByHazard = new ConcurrentHashMap<>();

    public HazardNoteAccount(Substances substances, Limits limits) {
        this.reference = substances.reference();
        this.substances = substances;
        this.strengths = new SolutionStrength(reference);
        this.operations = new OperationHazards(substances, limits);
        this.portions = new PortionHazards(substances);
    }

    /**
     * What the run does first, then what is to be said of a portion as a whole, then one note for each listed material in the order in which the run meets them, last the names for which no
     * note is held: silence about a material would read as safety.
     *
     * @param tally results of the run
     * @param materials what the names of the run mean
     */
    public List<HazardNote> of(RunTally tally, List<RunMaterial> materials) {
        Run run = tally.run();
        List<HazardNote> all =
                new ArrayList<>(operations.of(run, tally.evidence().meetings()));
        all.addAll(portions.of(tally, materials));
        all.addAll(ofMaterials(tally));
        notHeld(materials).ifPresent(all::add);
        ownCompounds(materials).ifPresent(all::add);
        return List.copyOf(all);
    }

    /** What was charged and added, what a layer is said to hold, and what a quench gives besides. */
    private List<HazardNote> ofMaterials(RunTally tally) {
        Run run = tally.run();
        List<String> names = new ArrayList<>();
        run.charges().stream().map(Charge::material).forEach(names::add);
        run.orderedSteps().stream()
                .filter(step -> !step.added().material().isBlank())
                .map(this::named)
                .forEach(names::add);
        run.layers().stream()
                .flatMap(layer -> layer.composition().stream())
                .map(CompositionPart::substance)
                .filter(name -> !substances.material(name).main().isWater())
                .forEach(names::add);
        QuenchByProduct.of(run, tally.amounts(), tally.closures(), substances).stream()
                .map(QuenchByProduct::name)
                .forEach(names::add);
        Map<String, HazardNote> notes = new LinkedHashMap<>();
        for (String name : names) {
            Material material = substances.material(name);
            material.hazard().ifPresent(h -> {
                OptionalDouble strength = strengths.massPercent(material, h);
                String key = h.key() + (strength.isPresent() ? " at " + strength.getAsDouble() : "");
                notes.putIfAbsent(key, notesByHazard.computeIfAbsent(key, k -> note(h, strength)));
            });
        }
        return List.copyOf(notes.values());
    }

    /** The material with the strength of its own cell in front, {@code 1 M HCl}, where that is a solution whose strength is known. */
    private String named(Step step) {
        return step.added()
                .molarityMolesPerLitre()
                .entered()
                .map(m -> m.asTyped() + " M " + step.added().material())
                .filter(name -> substances.material(name).wash().isPresent())
                .orElse(step.added().material());
    }

    private static Optional<HazardNote> notHeld(List<RunMaterial> materials) {
        List<String> names = materials.stream()
                .filter(m -> !m.own() && m.material().hazard().isEmpty())
                .map(RunMaterial::written)
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(new HazardNote(
                        "no hazard note held for " + String.join(", ", names),
                        List.of(),
                        "The tables say nothing about it, which is no sign of safety: read its safety data sheet before it is used.",
                        HazardNote.NO_ROW));
    }

    private static Optional<HazardNote> ownCompounds(List<RunMaterial> materials) {
        List<String> names = materials.stream()
                .filter(RunMaterial::own)
                .map(RunMaterial::written)
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(new HazardNote(
                        "own compounds: " + String.join(", ", names),
                        List.of(),
                        "Hazards as assessed by the group; the tables hold none.",
                        "book"));
    }

    private HazardNote note(Hazard hazard, OptionalDouble massPercent) {
        List<String> codes =
                massPercent.isPresent() ? strengths.statements(hazard, massPercent.getAsDouble()) : hazard.statements();
        List<String> statements = new ArrayList<>();
        for (String code : codes) {
            statements.add(code
                    + reference
                            .hStatements()
                            .find(code)
                            .map(HStatement::phrase)
                            .map(p -> " " + p)
                            .orElse(""));
        }
        String subject =
                massPercent.isPresent() ? SolutionStrength.subject(hazard, massPercent.getAsDouble()) : hazard.name();
        String caution = massPercent.isPresent() ? SolutionStrength.caution(hazard, codes) : hazard.caution();
        return new HazardNote(
                subject,
                statements,
                caution,
                origin(hazard, massPercent),
                true,
                massPercent.isPresent() ? List.of() : reference.flashPoints().findAll(hazard.key()));
    }

    private String origin(Hazard hazard, OptionalDouble massPercent) {
        String origin = (hazard.basis() == Basis.SOURCE
                        ? citations(hazard.sources())
                        : hazard.basis().word())
                + hazard.classification().note().map(n -> "; " + n).orElse("")
                + (hazard.classification().kind() == Hazard.StatementKind.SUPPLIER ? "; as suppliers classify" : "")
                + (hazard.classification().furtherSupplierStatements().isEmpty()
                        ? ""
                        : "; suppliers often add "
                                + String.join(", ", hazard.classification().furtherSupplierStatements())
                                + " (from memory)");
        if (massPercent.isEmpty()) {
            return origin;
        }
        List<ConcentrationLimit> limits = reference.concentrationLimits().findAll(hazard.key());
        Basis weakest = limits.stream()
                .map(ConcentrationLimit::basis)
                .max(Comparator.naturalOrder())
                .orElse(Basis.MEMORY);
        return origin + "; concentration limits: "
                + citations(limits.stream()
                        .flatMap(l -> l.sources().stream())
                        .distinct()
                        .toList())
                + (weakest == Basis.SOURCE ? "" : " (" + weakest.word() + ")");
    }

    private String citations(List<String> sources) {
        return sources.stream()
                .flatMap(key -> reference.sources().find(key).stream())
                .map(Source::citation)
                .collect(Collectors.joining("; "));
    }
}
