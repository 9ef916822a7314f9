package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import workuptally.material.Form;
import workuptally.material.Material;
import workuptally.material.Part;
import workuptally.material.State;
import workuptally.material.Substance;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Place;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.SubstanceName;
import workuptally.reference.substances.MaterialClass;

/**
 * A material of a run by the name that is written for it.
 *
 * @param written name as typed
 * @param material what it means
 * @param own true for a compound of the group itself: a substrate or product that no table has
 * @param stepLiquid true for a liquid of the workup, which passes for water where no table has it
 * @param salt true for a base as the salt of an acid, which goes with water
 * @param tested true where only a negative quench test shows it gone
 * @param place cell of the name
 */
public record RunMaterial(
        String written, Material material, boolean own, boolean stepLiquid, boolean salt, boolean tested, Place place) {
    /** What a hydrate shows in its formula: no salt. */
    private static final String CRYSTAL_WATER = "H2O";

    /** What a boronic acid or its ester is, of which the ending tells all that a row would, if its name tells nothing else. */
    private static final Set<String> OF_A_BORONIC_ACID = Set.of(MaterialClass.BORONIC_ACID, MaterialClass.ORGANIC);

    /** True where no table says what it does, nor its name by a family, and it is no compound of the group. */
    public boolean isUnjudged() {
        return !own && material.state() != State.LISTED && !isToldByName();
    }

    private boolean isToldByName() {
        return material.is(MaterialClass.BORONIC_ACID) && OF_A_BORONIC_ACID.containsAll(material.classes());
    }

    /** True for a reagent of which water or acid makes a magnesium halide. */
    public boolean isOrganomagnesium() {
        return material.is(MaterialClass.GRIGNARD);
    }

    /** True where water in excess leaves nothing of what makes it reactive. */
    public boolean isDestroyedByWater() {
        return material.main().isDestroyedByWater();
    }

    /** How far it is understood: listed, described or unlisted. */
    public String state() {
        return material.state().word();
    }

    /** Name of what it is above all, as the tables have it; as typed where none has. */
    public String mainName() {
        return material.main().name();
    }

    /** Names of its parts as the tables have them, the solute before its solvent; as typed where no table has them. */
    public List<String> meaning() {
        return material.parts().stream().map(Part::name).toList();
    }

    /** Whether a component of that name is one of its parts, by the name of the tables or that of what is dissolved. */
    public boolean means(String component) {
        return material.parts().stream().anyMatch(part -> isNamed(part, component));
    }

    /** Whether the tables hold hazard statements of its part of that name, or know that it needs none. */
    public boolean isHeld(String component) {
        return material.parts().stream()
                .filter(part -> isNamed(part, component))
                .anyMatch(part -> part.isWater()
                        || part.substance().flatMap(Substance::hazard).isPresent()
                        || part.row()
                                .filter(row -> !row.rememberedStatements().isEmpty())
                                .isPresent());
    }

    private static boolean isNamed(Part part, String component) {
        return SubstanceName.same(part.name(), component)
                || part.substance()
                        .flatMap(Substance::solute)
                        .filter(solute -> SubstanceName.same(solute.name(), component))
                        .isPresent();
    }

    /** Whether its name is that of a solution. */
    public boolean isSolution() {
        return material.parts().size() > 1 || material.wash().isPresent();
    }

    /** Classes it belongs to. */
    public List<String> classes() {
        return List.copyOf(material.classes());
    }

    /**
     * The materials of every run, by run id.
     *
     * @param book the entries
     */
    public static Map<String, List<RunMaterial>> ofBook(Book book, Substances substances) {
        Set<String> products = new HashSet<>();
        book.runs()
                .forEach(run -> run.products().stream()
                        .map(Product::name)
                        .map(RunMaterial::plain)
                        .forEach(products::add));
        Map<String, List<RunMaterial>> byRun = new LinkedHashMap<>();
        book.runs().forEach(run -> byRun.put(run.id(), of(run, products, substances)));
        return byRun;
    }

    private static List<RunMaterial> of(Run run, Set<String> products, Substances substances) {
        Map<String, RunMaterial> materials = new LinkedHashMap<>();
        for (Charge charge : run.charges()) {
            Material material = substances.material(charge.material(), charge.formula());
            boolean substrate =
                    charge.role().filter(r -> r == Charge.Role.SUBSTRATE).isPresent();
            boolean own = material.state() != State.LISTED
                    && !material.isAmbiguous()
                    && (substrate || products.contains(plain(charge.material())));
            add(
                    materials,
                    new RunMaterial(
                            charge.material(),
                            material,
                            own,
                            false,
                            isSalt(material, substances),
                            material.parts().stream().anyMatch(substances::needsQuenchTest),
                            charge.row().at("Material")));
        }
        for (Step step : run.orderedSteps()) {
            Material material = substances.material(step.added().material());
            boolean own = material.state() != State.LISTED
                    && products.contains(plain(step.added().material()));
            boolean liquid = step.added().volumeMillilitres().entered().isPresent();
            add(
                    materials,
                    new RunMaterial(
                            step.added().material(),
                            material,
                            own,
                            liquid,
                            isSalt(material, substances),
                            material.parts().stream().anyMatch(substances::needsQuenchTest),
                            step.row().at("Material")));
        }
        return new ArrayList<>(materials.values());
    }

    /** By its form, by the name that the tables have for it, or by its own. */
    private static boolean isSalt(Material material, Substances substances) {
        Part main = material.main();
        return main.form().filter(form -> form.kind() == Form.Kind.SALT).isPresent()
                || Stream.of(main.name(), material.written())
                        .flatMap(name -> substances.reference().saltForm(name).stream())
                        .anyMatch(form -> !form.shows().equals(CRYSTAL_WATER));
    }

    private static void add(Map<String, RunMaterial> materials, RunMaterial material) {
        if (!material.written().isBlank()) {
            materials.putIfAbsent(plain(material.written()), material);
        }
    }

    private static String plain(String name) {
        return SubstanceName.key(name);
    }
}
