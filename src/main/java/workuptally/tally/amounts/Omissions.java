package workuptally.tally.amounts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects what was not computed in one run, each once, in the order met. */
public final class Omissions {
    private final Map<List<String>, NotComputed> omitted = new LinkedHashMap<>();

    public void add(String what, String because, String unlockedBy) {
        add(new NotComputed(what, because, unlockedBy));
    }

    /** The theory, or that of one product. */
    public void addTheory(String what, String because, String unlockedBy) {
        add(new NotComputed(what, because, unlockedBy, true));
    }

    private void add(NotComputed missing) {
        omitted.putIfAbsent(List.of(missing.what(), missing.because(), missing.unlockedBy()), missing);
    }

    public List<NotComputed> list() {
        return List.copyOf(omitted.values());
    }
}
