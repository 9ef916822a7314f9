package workuptally.material;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import workuptally.chemistry.Formula;
import workuptally.reference.Reference;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.solutions.Solute;
import workuptally.reference.substances.DryingAgent;
import workuptally.reference.substances.Liquid;
import workuptally.reference.substances.MaterialRow;
import workuptally.reference.substances.Oxidant;
import workuptally.reference.substances.Solvent;
import workuptally.reference.tables.Names;

/** Brings the rows of all tables that are about one substance together: by the links of the materials, else by name, else by alias. */
final class SubstanceRows {
    private Optional<MaterialRow> row = Optional.empty();
    private Optional<Hazard> hazard = Optional.empty();
    private Optional<Solvent> solvent = Optional.empty();
    private Optional<Liquid> liquid = Optional.empty();
    private Optional<Solute> solute = Optional.empty();
    private Optional<Oxidant> oxidant = Optional.empty();
    private Optional<DryingAgent> dryingAgent = Optional.empty();
    private final Set<String> names = new LinkedHashSet<>();
    private String name = "";
    private Optional<String> formula = Optional.empty();

    private SubstanceRows() {}

    /** Names and aliases of all its rows. */
    Collection<String> names() {
        return names;
    }

    Substance substance() {
        return new Substance(name, formula, row, hazard, solvent, liquid, solute, oxidant, dryingAgent);
    }

    private void named(String rowName, List<String> aliases, Optional<String> rowFormula) {
        if (name.isEmpty()) {
            name = rowName;
        }
        names.add(rowName);
        names.addAll(aliases);
        if (formula.isEmpty()) {
            formula = rowFormula;
        }
    }

    /**
     * What the tables list.
     *
     * @param rows one for each substance
     * @param plainByName plain forms of all their names
     */
    record All(Collection<SubstanceRows> rows, Map<String, String> plainByName) {}

    /** One for each substance that a table lists. */
    static All of(Reference reference) {
        Joined joined = new Joined();
        Map<String, List<SubstanceRows>> byHazard = new LinkedHashMap<>();
        for (MaterialRow row : reference.materials()) {
            SubstanceRows rows = joined.fresh();
            rows.row = Optional.of(row);
            List<String> aliases = Stream.concat(row.names().aliases().stream(), row.names().sharedAliases().stream())
                    .toList();
            rows.named(row.names().name(), aliases, row.names().formula());
            joined.index(rows, row.names().name(), row.names().aliases());
            row.hazards()
                    .ifPresent(key -> byHazard.computeIfAbsent(key, k -> new ArrayList<>())
                            .add(rows));
        }
        for (Hazard hazard : reference.hazards()) {
            List<SubstanceRows> linked = byHazard.getOrDefault(hazard.key(), List.of());
            linked.forEach(rows -> rows.hazard = Optional.of(hazard));
            SubstanceRows own = linked.stream()
                    .filter(rows ->
                            rows.row.filter(r -> r.key().equals(hazard.key())).isPresent())
                    .findFirst()
                    .or(() -> linked.size() == 1 ? Optional.of(linked.get(0)) : Optional.empty())
                    .orElseGet(() -> linked.isEmpty()
                            ? joined.about(hazard.name(), hazard.aliases(), Optional.empty(), r -> r.hazard.isPresent())
                            : joined.fresh());
            own.hazard = Optional.of(hazard);
            own.named(hazard.name(), joined.free(own, hazard.aliases()), Optional.empty());
            joined.index(own, hazard.name(), hazard.aliases());
        }
        for (Solvent each : reference.solvents()) {
            SubstanceRows rows = joined.about(each.name(), each.aliases(), each.formula(), r -> r.solvent.isPresent());
            rows.solvent = Optional.of(each);
            joined.add(rows, each.name(), each.aliases(), each.formula());
        }
        for (Liquid each : reference.liquids()) {
            SubstanceRows rows =
                    joined.about(each.name(), each.aliases(), Optional.of(each.formula()), r -> r.liquid.isPresent());
            rows.liquid = Optional.of(each);
            joined.add(rows, each.name(), each.aliases(), Optional.of(each.formula()));
        }
        for (Solute each : reference.solutes()) {
            SubstanceRows rows =
                    joined.about(each.name(), each.aliases(), Optional.of(each.formula()), r -> r.solute.isPresent());
            rows.solute = Optional.of(each);
            joined.add(rows, each.name(), each.aliases(), Optional.of(each.formula()));
        }
        for (Oxidant each : reference.oxidants()) {
            SubstanceRows rows =
                    joined.about(each.name(), each.aliases(), Optional.of(each.formula()), r -> r.oxidant.isPresent());
            rows.oxidant = Optional.of(each);
            joined.add(rows, each.name(), each.aliases(), Optional.of(each.formula()));
        }
        for (DryingAgent each : reference.dryingAgents()) {
            SubstanceRows rows =
                    joined.about(each.name(), each.aliases(), Optional.empty(), r -> r.dryingAgent.isPresent());
            rows.dryingAgent = Optional.of(each);
            joined.add(rows, each.name(), each.aliases(), Optional.empty());
        }
        return new All(joined.all, joined.plainByName);
    }

    /** The substances found so far by their names. */
    private static final class Joined {
        private final List<SubstanceRows> all = new ArrayList<>();
        private final Map<String, String> plainByName = new HashMap<>();
        private final Map<String, Set<SubstanceRows>> byName = new HashMap<>();

        /** Each name stands in several tables, and bringing it to its plain form costs more than finding it. */
        private String plain(String name) {
            return plainByName.computeIfAbsent(name, Names::plain);
        }

        SubstanceRows fresh() {
            SubstanceRows rows = new SubstanceRows();
            all.add(rows);
            return rows;
        }

        void index(SubstanceRows rows, String name, List<String> aliases) {
            Stream.concat(Stream.of(name), aliases.stream())
                    .forEach(each -> byName.computeIfAbsent(plain(each), k -> new LinkedHashSet<>(2))
                            .add(rows));
        }

        void add(SubstanceRows rows, String name, List<String> aliases, Optional<String> formula) {
            rows.named(name, free(rows, aliases), formula);
            index(rows, name, aliases);
        }

        /** Aliases that no other substance has taken. */
        List<String> free(SubstanceRows own, List<String> aliases) {
            return aliases.stream()
                    .filter(alias -> {
                        Set<SubstanceRows> taken = byName.getOrDefault(plain(alias), Set.of());
                        return taken.isEmpty() || taken.contains(own);
                    })
                    .toList();
        }

        /** The substance that a row is about; where another row of the same table has it, one of its own with the names of this row. */
        SubstanceRows about(
                String name, List<String> aliases, Optional<String> formula, Predicate<SubstanceRows> taken) {
            SubstanceRows found = found(name, aliases, formula);
            if (!taken.test(found)) {
                return found;
            }
            SubstanceRows twin = fresh();
            twin.row = found.row;
            twin.hazard = found.hazard;
            Stream.concat(Stream.of(name), aliases.stream()).forEach(each -> {
                found.names.removeIf(n -> plain(n).equals(plain(each)));
                Optional.ofNullable(byName.get(plain(each))).ifPresent(rows -> rows.remove(found));
            });
            return twin;
        }

        private SubstanceRows found(String name, List<String> aliases, Optional<String> formula) {
            return Stream.concat(Stream.of(name), aliases.stream())
                    .map(each -> byName.getOrDefault(plain(each), Set.of()))
                    .filter(found -> found.size() == 1)
                    .map(found -> found.iterator().next())
                    .filter(found -> agree(found.formula, formula))
                    .findFirst()
                    .orElseGet(this::fresh);
        }

        /** Formulas of one substance are those of the same composition, water of crystallisation apart. */
        private static boolean agree(Optional<String> one, Optional<String> other) {
            if (one.isEmpty() || other.isEmpty() || one.equals(other)) {
                return true;
            }
            Optional<Formula> first = one.flatMap(SubstanceIndex::formula);
            Optional<Formula> second = other.flatMap(SubstanceIndex::formula);
            if (first.isEmpty() || second.isEmpty()) {
                return true;
            }
            double waters = first.get().count("O") - second.get().count("O");
            Set<String> elements = new LinkedHashSet<>(first.get().composition().keySet());
            elements.addAll(second.get().composition().keySet());
            return elements.stream().allMatch(element -> {
                double difference = first.get().count(element) - second.get().count(element);
                double ofWater = element.equals("O") ? waters : element.equals("H") ? 2 * waters : 0;
                return Math.abs(difference - ofWater) < 1e-6;
            });
        }
    }
}
