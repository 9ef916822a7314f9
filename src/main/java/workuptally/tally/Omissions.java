package workuptally.tally;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects what was not computed in one run, each once, in the order met. */
final class Omissions {
    private final Map<List<String>, NotComputed> omitted = new LinkedHashMap<>();

    void add(String what, String because, String unlockedBy) {
        omitted.putIfAbsent(List.of(what, because, unlockedBy), new NotComputed(what, because, unlockedBy));
    }

    List<NotComputed> list() {
        return List.copyOf(omitted.values());
    }
}
