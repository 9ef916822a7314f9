package workuptally.judgement.hazards;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Statements about what is swallowed, touched or inhaled, said together. */
final class WaysIn {
    /** Source of the combined wording: Regulation (EC) 1272/2008, Annex III, H300 + H310 + H330 and those of the lower categories. */
    private static final List<String> BY_ROUTE = List.of("if swallowed", "in contact with skin", "if inhaled");

    private static final Map<String, List<String>> ROUTES = Map.of(
            "Fatal", List.of("H300", "H310", "H330"),
            "Toxic", List.of("H301", "H311", "H331"),
            "Harmful", List.of("H302", "H312", "H332"));

    private WaysIn() {}

    /** Swallowed, skin and inhaled in one sentence where two or three of a grade stand, as the annex words them combined. */
    static Map<String, String> together(Map<String, String> phrases) {
        Map<String, String> joined = new LinkedHashMap<>(phrases);
        ROUTES.forEach((grade, codes) -> {
            List<Integer> there = new ArrayList<>();
            for (int i = 0; i < codes.size(); i++) {
                if (phrases.containsKey(codes.get(i))) {
                    there.add(i);
                }
            }
            if (there.size() > 1) {
                String last = BY_ROUTE.get(there.get(there.size() - 1));
                String first = there.subList(0, there.size() - 1).stream()
                        .map(BY_ROUTE::get)
                        .collect(Collectors.joining(", "));
                there.stream().skip(1).forEach(i -> joined.remove(codes.get(i)));
                joined.put(codes.get(there.get(0)), grade + " " + first + " or " + last + ".");
            }
        });
        return joined;
    }
}
