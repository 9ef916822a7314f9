package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What stands together along the steps of a run.
 *
 * @param list every meeting that the tables speak of, in order of the steps
 * @param contents what each portion may still hold, by label
 */
public record Meetings(List<Meeting> list, Map<String, List<Present>> contents) {
    /** Of a run whose layers were not followed. */
    public static final Meetings NONE = new Meetings(List.of(), Map.of());

    /** Copies list and map, in their order. */
    public Meetings {
        list = List.copyOf(list);
        contents = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(contents));
    }

    /** What a portion may still hold. */
    public List<Present> in(String label) {
        return contents.getOrDefault(label, List.of());
    }

    /** The meetings that a portion may carry on. */
    public List<Meeting> carriedBy(String label) {
        List<Meeting> carried = new ArrayList<>();
        for (Meeting meeting : list) {
            if (meeting.portions().contains(label)) {
                carried.add(meeting);
            }
        }
        return carried;
    }
}
