package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Portions that, by the steps, were made from themselves. */
final class Rings {
    private final Map<String, Set<String>> parents;
    private final Set<String> done = new LinkedHashSet<>();

    /** Of portions with what each was made from. */
    Rings(Map<String, Set<String>> parents) {
        this.parents = parents;
    }

    /** Each ring once, each label made from the next. */
    List<List<String>> list() {
        List<List<String>> rings = new ArrayList<>();
        for (String label : parents.keySet()) {
            List<String> ring = ring(label, new ArrayList<>());
            if (!ring.isEmpty()) {
                rings.add(ring);
            }
        }
        return rings;
    }

    /** The ring that the ancestors of a portion first run into; empty where there is none. */
    private List<String> ring(String label, List<String> path) {
        int before = path.indexOf(label);
        if (before >= 0) {
            return List.copyOf(path.subList(before, path.size()));
        }
        if (!done.add(label)) {
            return List.of();
        }
        path.add(label);
        List<String> found = List.of();
        for (String parent : parents.getOrDefault(label, Set.of())) {
            if (found.isEmpty()) {
                found = ring(parent, path);
            }
        }
        path.remove(path.size() - 1);
        return found;
    }
}
