package workuptally.judgement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.model.Charge;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.Basis;
import workuptally.reference.HStatement;
import workuptally.reference.Hazard;
import workuptally.reference.Reference;
import workuptally.reference.Source;

/** Cautions about the operations and materials of a run, from the reference data. They are reminders; the safety data sheet and the local rules win. */
final class HazardNotes {
    private final Reference reference;
    private final OperationHazards operations;
    private final Map<String, HazardNote> notesByHazard = new HashMap<>();

    HazardNotes(Reference reference, Limits limits) {
        this.reference = reference;
        this.operations = new OperationHazards(reference, limits);
    }

    /** What the run does first, then one note for each listed material in the order in which the run meets them. */
    List<HazardNote> of(Run run) {
        List<HazardNote> all = new ArrayList<>(operations.of(run));
        all.addAll(ofMaterials(run));
        return List.copyOf(all);
    }

    private List<HazardNote> ofMaterials(Run run) {
        List<String> names = new ArrayList<>();
        run.charges().stream().map(Charge::material).forEach(names::add);
        run.orderedSteps().stream()
                .map(Step::material)
                .filter(m -> !m.isBlank())
                .forEach(names::add);
        Map<String, HazardNote> notes = new LinkedHashMap<>();
        for (String name : names) {
            listed(name)
                    .ifPresent(h -> notes.putIfAbsent(h.key(), notesByHazard.computeIfAbsent(h.key(), k -> note(h))));
        }
        return List.copyOf(notes.values());
    }

    /** The material itself, or what is dissolved in it, {@code 1 M HCl} or {@code phenylmagnesium bromide in diethyl ether}. */
    private Optional<Hazard> listed(String name) {
        Optional<Hazard> own = reference.hazard(name);
        if (own.isPresent()) {
            return own;
        }
        int in = name.lastIndexOf(" in ");
        Optional<Hazard> solute = in > 0 ? reference.hazard(name.substring(0, in)) : Optional.empty();
        return solute.or(() -> reference.wash(name).flatMap(w -> w.solute()).flatMap(reference::hazard));
    }

    private HazardNote note(Hazard hazard) {
        List<String> statements = new ArrayList<>();
        for (String code : hazard.statements()) {
            statements.add(code
                    + reference
                            .hStatement(code)
                            .map(HStatement::phrase)
                            .map(p -> " " + p)
                            .orElse(""));
        }
        String origin = hazard.basis() == Basis.SOURCE
                ? hazard.sources().stream()
                        .flatMap(key -> reference.source(key).stream())
                        .map(Source::citation)
                        .collect(Collectors.joining("; "))
                : hazard.basis().word();
        return new HazardNote(hazard.name(), statements, hazard.caution(), origin, true);
    }
}
