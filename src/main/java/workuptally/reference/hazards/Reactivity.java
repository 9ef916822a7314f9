package workuptally.reference.hazards;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import workuptally.reference.substances.MaterialRow;
import workuptally.reference.tables.IllegalReferenceException;

/**
 * Classes of materials and what happens where two of them meet, looked up the finest class first: a row of a material's own class hides
 * the rows of its parent classes, and rows of the published chart count only where the laboratory's own classes say nothing.
 */
public final class Reactivity {
    private final Map<String, ReactivityGroup> groups = new LinkedHashMap<>();
    private final Map<String, Set<String>> ancestors = new LinkedHashMap<>();
    private final Map<String, Set<String>> chartGroups = new LinkedHashMap<>();
    /** Rows by one of their classes, then by the other, both ways round. */
    private final Map<String, Map<String, List<ReactivityPair>>> pairsByClasses = new HashMap<>();

    private final List<ReactivityPair> pairs;
    private final List<ReactivityStrength> strengths;

    /** Worked out once: a thousand runs have the same few dozen materials. */
    private final Map<List<List<String>>, Membership> memberships = new ConcurrentHashMap<>();

    Reactivity(List<ReactivityGroup> groups, List<ReactivityPair> pairs, List<ReactivityStrength> strengths)
            throws IllegalReferenceException {
        this.pairs = pairs;
        this.strengths = strengths;
        groups.forEach(group -> this.groups.put(group.key(), group));
        for (ReactivityGroup group : groups) {
            ancestors.put(group.key(), above(group));
            for (String laboratoryClass : group.laboratoryClasses()) {
                chartGroups
                        .computeIfAbsent(laboratoryClass, name -> new LinkedHashSet<>())
                        .add(group.key());
            }
        }
        for (ReactivityPair pair : pairs) {
            known(pair.classA(), pair.key());
            known(pair.classB(), pair.key());
            add(pair.classA(), pair.classB(), pair);
            if (!pair.classA().equals(pair.classB())) {
                add(pair.classB(), pair.classA(), pair);
            }
        }
    }

    private void add(String one, String other, ReactivityPair pair) {
        pairsByClasses
                .computeIfAbsent(one, name -> new HashMap<>())
                .computeIfAbsent(other, name -> new ArrayList<>(1))
                .add(pair);
    }

    private void known(String name, String key) throws IllegalReferenceException {
        if (!groups.containsKey(name)) {
            throw new IllegalReferenceException(
                    "reactivity-pairs.csv", key + " names the class '" + name + "', which reactivity-groups.csv lacks");
        }
    }

    private Set<String> above(ReactivityGroup group) throws IllegalReferenceException {
        Set<String> found = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(group.parentClasses());
        while (!open.isEmpty()) {
            String next = open.remove(0);
            ReactivityGroup parent = groups.get(next);
            if (parent == null || next.equals(group.key())) {
                throw new IllegalReferenceException(
                        "reactivity-groups.csv",
                        group.key() + " names the parent class '" + next + "', which is missing or its own child");
            }
            if (found.add(next)) {
                open.addAll(parent.parentClasses());
            }
        }
        return found;
    }

    /** All classes. */
    public List<ReactivityGroup> groups() {
        return List.copyOf(groups.values());
    }

    /** A class by its key. */
    public Optional<ReactivityGroup> group(String key) {
        return Optional.ofNullable(groups.get(key));
    }

    /** All pairs. */
    public List<ReactivityPair> pairs() {
        return pairs;
    }

    /** The parents of a class and theirs, nearest first. */
    public Set<String> ancestors(String key) {
        return ancestors.getOrDefault(key, Set.of());
    }

    /**
     * The classes that a material of this strength in water belongs to.
     *
     * @param massPercent strength in water, where known
     * @param molesPerLitre the same in mol/L, where known
     */
    public Membership membership(MaterialRow row, OptionalDouble massPercent, OptionalDouble molesPerLitre) {
        Set<String> own = new LinkedHashSet<>();
        for (String name : row.behaviour().classes()) {
            own.addAll(weakened(name, massPercent, molesPerLitre));
        }
        return membership(own, row.behaviour().parentClasses());
    }

    private List<String> weakened(String name, OptionalDouble massPercent, OptionalDouble molesPerLitre) {
        for (ReactivityStrength strength : strengths) {
            if (strength.strongClass().equals(name) && strength.weakens(massPercent, molesPerLitre)) {
                return strength.weakClasses();
            }
        }
        return List.of(name);
    }

    /** The classes above these, parents of a single row coarser than all of its own ones. */
    public Membership membership(Collection<String> own, Collection<String> parents) {
        return memberships.computeIfAbsent(
                List.of(List.copyOf(own), List.copyOf(parents)), both -> workedOut(both.get(0), both.get(1)));
    }

    private Membership workedOut(List<String> own, List<String> parents) {
        Map<String, Set<String>> coarser = new LinkedHashMap<>();
        Set<String> wide = new LinkedHashSet<>();
        for (String parent : parents) {
            wide.add(parent);
            wide.addAll(ancestors(parent));
        }
        for (String name : own) {
            Set<String> above = new LinkedHashSet<>(ancestors(name));
            above.addAll(wide);
            above.remove(name);
            coarser.put(name, above);
        }
        for (Set<String> above : List.copyOf(coarser.values())) {
            for (String name : above) {
                coarser.putIfAbsent(name, ancestors(name));
            }
        }
        wide.forEach(name -> coarser.putIfAbsent(name, ancestors(name)));
        return new Membership(coarser, chart(coarser.keySet()));
    }

    /**
     * The rows that apply where two materials meet, in either order.
     *
     * @param alsoThere classes of whatever else is there, for rows that need a third one
     */
    public List<ReactivityPair> between(Membership one, Membership other, Set<String> alsoThere) {
        List<Match> found = new ArrayList<>();
        for (String a : one.classes()) {
            Map<String, List<ReactivityPair>> ofOne = pairsByClasses.getOrDefault(a, Map.of());
            for (String b : other.classes()) {
                for (ReactivityPair pair : ofOne.getOrDefault(b, List.of())) {
                    if (pair.thirdClass().isEmpty()
                            || alsoThere.contains(pair.thirdClass().get())) {
                        found.add(new Match(a, b, pair));
                    }
                }
            }
        }
        List<ReactivityPair> kept = new ArrayList<>();
        Set<ReactivityPair> known = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Match match : found) {
            if (found.stream().noneMatch(finer -> finer.hides(match, one, other)) && known.add(match.pair())) {
                kept.add(match.pair());
            }
        }
        return kept.isEmpty() ? ofChart(one, other) : List.copyOf(kept);
    }

    private List<ReactivityPair> ofChart(Membership one, Membership other) {
        List<ReactivityPair> kept = new ArrayList<>();
        Set<ReactivityPair> known = Collections.newSetFromMap(new IdentityHashMap<>());
        for (String a : one.chart) {
            Map<String, List<ReactivityPair>> ofOne = pairsByClasses.getOrDefault(a, Map.of());
            for (String b : other.chart) {
                for (ReactivityPair pair : ofOne.getOrDefault(b, List.of())) {
                    if (known.add(pair)) {
                        kept.add(pair);
                    }
                }
            }
        }
        return List.copyOf(kept);
    }

    private Set<String> chart(Set<String> classes) {
        Set<String> found = new LinkedHashSet<>();
        classes.forEach(name -> found.addAll(chartGroups.getOrDefault(name, Set.of())));
        return found;
    }

    /** A row, with the class of each of the two materials by which it was found. */
    private record Match(String a, String b, ReactivityPair pair) {
        boolean hides(Match coarser, Membership one, Membership other) {
            boolean closer = one.finer(a, coarser.a) || other.finer(b, coarser.b);
            return closer
                    && (a.equals(coarser.a) || one.finer(a, coarser.a))
                    && (b.equals(coarser.b) || other.finer(b, coarser.b));
        }
    }

    /** The classes of one material, each with the coarser ones that its rows hide. */
    public static final class Membership {
        private final Map<String, Set<String>> coarser;

        /** The groups of the published chart that it belongs to. */
        private final Set<String> chart;

        private Membership(Map<String, Set<String>> coarser, Set<String> chart) {
            this.coarser = coarser;
            this.chart = chart;
        }

        /** All classes, its own ones first. */
        public Set<String> classes() {
            return Collections.unmodifiableSet(coarser.keySet());
        }

        /** Whether one of its classes is finer than another. */
        boolean finer(String one, String other) {
            return coarser.getOrDefault(one, Set.of()).contains(other);
        }
    }
}
