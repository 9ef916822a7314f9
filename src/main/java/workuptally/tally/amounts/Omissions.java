package workuptally.tally.amounts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects what was not computed in one run, each once, in the order met. */
public final class Omissions {
    private final Map<List<String>, NotComputed> omitted = new LinkedHashMap<>();

    public void add(String what, String because, String unlockedBy) {
        omitted.putIfAbsent(List.of(what, because, unlockedBy), new NotComputed(what, because, unlockedBy));
    }

    public List<NotComputed> list() {
        return List.copyOf(omitted.values());
    }
}
