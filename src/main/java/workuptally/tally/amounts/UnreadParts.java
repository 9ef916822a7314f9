package workuptally.tally.amounts;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import workuptally.material.Material;
import workuptally.material.Part;
import workuptally.material.State;
import workuptally.model.Charge;
import workuptally.model.CompositionPart;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.SubstanceName;

/**
 * Parts of a layer's stated composition of which no table tells what they are: unlisted names, names of two meanings, and liquids mixed
 * without each one's share. Whether they are solvent, halogenated or water is not known, nor is their density. Substrates, products and
 * what was assayed are compounds of the run and not meant.
 */
public final class UnreadParts {
    private final Substances substances;
    private final Set<String> own = new HashSet<>();

    /** With the names of a run's own compounds. */
    public UnreadParts(Run run, Substances substances) {
        this.substances = substances;
        run.products().forEach(product -> own.add(plain(product.name())));
        run.assays().forEach(assay -> own.add(plain(assay.substance())));
        run.charges().stream()
                .filter(c -> c.role().filter(r -> r == Charge.Role.SUBSTRATE).isPresent())
                .forEach(charge -> own.add(plain(charge.material())));
    }

    /** Their names as typed, in the order of the cell. */
    public List<String> of(Layer layer) {
        return layer.composition().stream()
                .map(CompositionPart::substance)
                .filter(this::isUnread)
                .toList();
    }

    /** True for a name of which nothing is known. */
    public boolean isUnread(String name) {
        Material material = substances.material(name);
        boolean mixture =
                material.parts().stream().filter(part -> !part.carrier()).count() > 1
                        && material.parts().stream().noneMatch(Part::carrier)
                        && material.blend().isEmpty();
        return (material.state() != State.LISTED || material.isAmbiguous() || mixture) && !own.contains(plain(name));
    }

    private static String plain(String name) {
        return SubstanceName.key(name);
    }
}
