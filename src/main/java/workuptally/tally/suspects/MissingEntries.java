package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Assay;
import workuptally.model.Container;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Place;
import workuptally.model.RowPlace;
import workuptally.model.Run;

/** Blank cells without which a weighing or an assay beside them says nothing. */
final class MissingEntries {
    private final TareRegister register;

    MissingEntries(TareRegister register) {
        this.register = register;
    }

    /** The tare of a container that was weighed; not every container is. */
    List<Suspect> of(Container container) {
        List<Suspect> all = new ArrayList<>();
        if (container.grossThenGrams().entered().isPresent()) {
            weighing(
                    "container " + container.id(),
                    container.id(),
                    container.grossThenGrams(),
                    EntryHeadings.GROSS_THEN,
                    container.tareGrams(),
                    container.row(),
                    all);
        }
        return all;
    }

    /** Those of a run. */
    List<Suspect> of(Run run) {
        List<Suspect> all = new ArrayList<>();
        for (Lot lot : run.lots()) {
            weighing(
                    "lot " + lot.label(),
                    lot.vessel(),
                    lot.weighing().grossGrams(),
                    EntryHeadings.GROSS,
                    lot.weighing().tareGrams(),
                    lot.row(),
                    all);
        }
        for (Layer layer : run.layers()) {
            weighing(
                    "layer " + layer.label(),
                    layer.vessel(),
                    layer.weighing().grossGrams(),
                    EntryHeadings.GROSS,
                    layer.weighing().tareGrams(),
                    layer.row(),
                    all);
            if (layer.volumeMillilitres().isBlank() && isAssayedByVolume(run, layer)) {
                all.add(missing(
                        layer.row().at(EntryHeadings.VOLUME),
                        "volume of layer " + layer.label(),
                        "",
                        "what layer " + layer.label() + " holds, from its assay"));
            }
        }
        return all;
    }

    private static boolean isAssayedByVolume(Run run, Layer layer) {
        return run.assays().stream()
                .anyMatch(a -> a.sample().equals(layer.label())
                        && a.result().entered().isPresent()
                        && a.unit()
                                .filter(u ->
                                        u == Assay.Unit.MILLIGRAMS_PER_MILLILITRE || u == Assay.Unit.MOLES_PER_LITRE)
                                .isPresent());
    }

    private void weighing(
            String what,
            String vessel,
            Field gross,
            String headingOfGross,
            Field tare,
            RowPlace row,
            List<Suspect> all) {
        String unlocks = "mass of " + what + ", and every balance that rests on it";
        if (gross.entered().isPresent() && tare.isBlank()) {
            Optional<Entered> known = register.latest(vessel);
            all.add(missing(
                    row.at(EntryHeadings.TARE),
                    "tare of " + what,
                    known.map(Entered::asTyped).orElse(""),
                    unlocks));
        } else if (gross.isBlank() && tare.entered().isPresent()) {
            all.add(missing(row.at(headingOfGross), "gross of " + what, "", unlocks));
        }
    }

    private static Suspect missing(Place place, String what, String suggested, String unlocks) {
        return new Suspect(
                place,
                List.of(),
                what,
                "",
                suggested,
                UsualSlip.MISSING_ENTRY,
                List.of(unlocks),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0);
    }
}
