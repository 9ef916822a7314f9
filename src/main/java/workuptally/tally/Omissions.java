package workuptally.tally;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects what was not computed in one run, each once, in the order met. */
final class Omissions {
    private final Set<NotComputed> omitted = new LinkedHashSet<>();

    void add(String what, String because, String unlockedBy) {
        omitted.add(new NotComputed(what, because, unlockedBy));
    }

    List<NotComputed> list() {
        return List.copyOf(omitted);
    }
}
