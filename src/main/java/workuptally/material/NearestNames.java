package workuptally.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import workuptally.reference.tables.Names;

/**
 * Listed names a few letters away from one that no table has. Figures must agree: 1,2-dichloroethane is no slip of 1,1-dichloroethane. Where
 * several are equally near, all are named, so that no guess is made for the reader.
 */
final class NearestNames {
    private static final int MOST = 3;
    private static final int SHORTEST = 4;
    private static final int SHORTEST_FOR_TWO = 8;

    private final List<Candidate> candidates = new ArrayList<>();

    private record Candidate(String plain, String figures, long letters, String shown) {
        static Candidate of(String name, String shown) {
            String plain = Names.plain(name);
            return new Candidate(plain, figuresOf(plain), lettersOf(plain), shown);
        }
    }

    private final SubstanceIndex index;

    NearestNames(SubstanceIndex index) {
        this.index = index;
    }

    /** Made at the first question: most books hold no name that asks for it. */
    private synchronized List<Candidate> candidates() {
        if (candidates.isEmpty()) {
            index.names().keySet().forEach(name -> candidates.add(Candidate.of(name, name)));
        }
        return candidates;
    }

    /** The nearest ones, at most three; empty where none is near. */
    List<String> of(String name) {
        Candidate typed = Candidate.of(name, name);
        int length = typed.plain().length();
        // One letter of a formula is another element: MgCl2 is no slip of HgCl2.
        boolean formula = SubstanceIndex.formula(name).isPresent();
        int most = length < SHORTEST || formula ? 0 : length < SHORTEST_FOR_TWO ? 1 : 2;
        int best = most;
        Set<String> found = new LinkedHashSet<>();
        for (Candidate candidate : candidates()) {
            boolean possible = Math.abs(candidate.plain().length() - length) <= best
                    && Long.bitCount(candidate.letters() ^ typed.letters()) <= 2 * best
                    && candidate.figures().equals(typed.figures());
            int distance = possible ? distance(typed.plain(), candidate.plain(), best) : best + 1;
            if (distance <= best) {
                if (distance < best) {
                    found.clear();
                }
                best = distance;
                found.add(candidate.shown());
            }
        }
        Map<String, String> shown = new LinkedHashMap<>();
        found.stream().sorted().forEach(each -> shown.putIfAbsent(Names.plain(each), each));
        return shown.values().stream().limit(MOST).toList();
    }

    private static String figuresOf(String plain) {
        StringBuilder figures = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            if (Character.isDigit(plain.charAt(i))) {
                figures.append(plain.charAt(i));
            }
        }
        return figures.toString();
    }

    private static long lettersOf(String plain) {
        return plain.chars().mapToLong(c -> 1L << (c & 63)).reduce(0, (a, b) -> a | b);
    }

    /** Letters changed, left out, put in or swapped with the next; more than {@code most} where it is more. */
    private static int distance(String one, String other, int most) {
        int[] before = new int[other.length() + 1];
        int[] last = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] now = new int[other.length() + 1];
            now[0] = i;
            int least = i;
            for (int j = 1; j <= other.length(); j++) {
                boolean same = one.charAt(i - 1) == other.charAt(j - 1);
                int cost = Math.min(Math.min(last[j], now[j - 1]) + 1, last[j - 1] + (same ? 0 : 1));
                boolean swapped = i > 1
                        && j > 1
                        && one.charAt(i - 1) == other.charAt(j - 2)
                        && one.charAt(i - 2) == other.charAt(j - 1);
                now[j] = swapped ? Math.min(cost, before[j - 2] + 1) : cost;
                least = Math.min(least, now[j]);
            }
            if (least > most) {
                return most + 1;
            }
            before = last;
            last = now;
        }
        return last[other.length()];
    }
}
