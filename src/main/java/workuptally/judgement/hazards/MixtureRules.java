package workuptally.judgement.hazards;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Which hazard statements a mixture bears by the shares of its parts and their own statements: sums for burns, eyes, airways, drowsiness and
 * water life, the estimate of acute toxicity, and a limit for each part alone for the rest. A part below a limit may still leave a milder
 * statement: 2 % of what burns the skin irritates it.
 *
 * <p>Source: Regulation (EC) 1272/2008, Annex I, 3.1.3.6 with tables 3.1.1 and 3.1.2, and tables 3.2.3, 3.3.3, 3.4.5, 3.5.2, 3.6.2, 3.7.2,
 * 3.8.3, 3.9.4, 3.10.3.3, 4.1.1 and 4.1.2. Two things are left out because the tables of this program do not hold them: sub-categories (H300,
 * H310 and H330 count as category 1; sensitisers as category 1, not 1A) and M-factors (taken as 1, so water life may be affected at a share
 * down to a thousandth of what is said). Limits of a substance's own entry are the matter of {@link PartStatements}.
 *
 * <p>The regulation has no limit for explosive peroxides and for drying of the skin; a tenth and a fifth are common practice. A statement
 * without a limit here holds from 1 % on.
 */
final class MixtureRules {
    /** From this share on a part counts for burns and irritation, mass %. Source: Annex I, 3.2.3.3.1. */
    static final double RELEVANT_PERCENT = 1;
    /** Unknown parts thin the estimate of acute toxicity only up to this share, mass %. Source: Annex I, 3.1.3.6.2.3. */
    private static final double UNKNOWN_UP_TO_PERCENT = 10;

    private static final double ROUNDING = 1e-9;

    /** From this share on a part alone gives its statement to the mixture, mass %; by the first four signs of its code. */
    private static final Map<String, Double> ALONE_PERCENT = Map.ofEntries(
            Map.entry("H317", 1.0),
            Map.entry("H334", 1.0),
            Map.entry("H340", 0.1),
            Map.entry("H341", 1.0),
            Map.entry("H350", 0.1),
            Map.entry("H351", 1.0),
            Map.entry("H360", 0.3),
            Map.entry("H361", 3.0),
            Map.entry("H362", 0.3),
            Map.entry("H370", 10.0),
            Map.entry("H371", 10.0),
            Map.entry("H372", 10.0),
            Map.entry("H373", 10.0),
            Map.entry("EUH019", 10.0),
            Map.entry("EUH066", 20.0));
    /** What is left of damage to organs below a tenth and from 1 % on. */
    private static final Map<String, String> MILDER = Map.of("H370", "H371", "H372", "H373");
    /** From these sums on over the parts that have a statement, mass %. */
    private static final Map<String, Double> SUM_PERCENT =
            new TreeMap<>(Map.of("H304", 10.0, "H335", 20.0, "H336", 20.0, "H413", 25.0));

    static final double BURNS_PERCENT = 5;
    private static final double EYE_DAMAGE_PERCENT = 3;
    static final double IRRITATES_PERCENT = 10;
    private static final double TEN = 10;
    private static final double WATER_LIFE_PERCENT = 25;
    /** What sums and estimates judge; all other statements go by a part alone. */
    private static final Set<String> JUDGED_TOGETHER = Set.of(
            "H300", "H301", "H302", "H310", "H311", "H312", "H330", "H331", "H332", "H304", "H314", "H315", "H318",
            "H319", "H335", "H336", "H400", "H410", "H411", "H412", "H413");

    private MixtureRules() {}

    /**
     * A part of a mixture.
     *
     * @param percent its share, mass %
     * @param codes codes of its own statements
     */
    record Part(double percent, Set<String> codes) {
        boolean has(String code) {
            return codes.contains(code);
        }
    }

    /** A way into the body with what its categories 1, 3 and 4 are reckoned with and reach up to; unit left out, it is the same in both. */
    private enum Route {
        SWALLOWED(List.of("H300", "H301", "H302"), new double[] {0.5, 100, 500}, new double[] {50, 300, 2000}),
        SKIN(List.of("H310", "H311", "H312"), new double[] {5, 300, 1100}, new double[] {200, 1000, 2000}),
        VAPOUR(List.of("H330", "H331", "H332"), new double[] {0.05, 3, 11}, new double[] {2, 10, 20}),
        DUST(List.of("H330", "H331", "H332"), new double[] {0.005, 0.5, 1.5}, new double[] {0.5, 1, 5});

        private final List<String> codes;
        private final double[] estimates;
        private final double[] upTo;

        Route(List<String> codes, double[] estimates, double[] upTo) {
            this.codes = codes;
            this.estimates = estimates;
            this.upTo = upTo;
        }

        /** Number of the gravest of its codes that the mixture bears: never graver than its parts, whose estimates lie at the edge of theirs. */
        private Optional<Integer> grade(List<Part> parts, double known) {
            double sum = 0;
            int gravest = codes.size();
            for (Part part : parts) {
                for (int i = 0; i < codes.size(); i++) {
                    if (part.has(codes.get(i))) {
                        sum += part.percent() / estimates[i];
                        gravest = Math.min(gravest, i);
                        break;
                    }
                }
            }
            for (int i = gravest; i < codes.size(); i++) {
                if (known <= sum * upTo[i] * (1 + ROUNDING)) {
                    return Optional.of(i);
                }
            }
            return Optional.empty();
        }
    }

    /**
     * The codes that the mixture bears, flammability left out.
     *
     * @param parts its parts
     * @param unknownPercent share of parts of which nothing is known, mass %
     */
    static Set<String> codes(List<Part> parts, double unknownPercent) {
        Set<String> codes = new LinkedHashSet<>();
        acute(parts, unknownPercent, codes);
        skinAndEyes(parts, codes);
        waterLife(parts, codes);
        SUM_PERCENT.forEach((code, least) -> {
            if (sum(parts, p -> p.has(code) ? 1 : 0) >= least) {
                codes.add(code);
            }
        });
        for (Part part : parts) {
            part.codes().stream()
                    .filter(code -> !JUDGED_TOGETHER.contains(code))
                    .forEach(code -> alone(code, part.percent(), codes));
        }
        return codes;
    }

    private static void alone(String code, double percent, Set<String> codes) {
        String kind = code.startsWith("H3") ? code.substring(0, Math.min(4, code.length())) : code;
        if (percent >= ALONE_PERCENT.getOrDefault(kind, RELEVANT_PERCENT)) {
            codes.add(code);
        } else if (MILDER.containsKey(kind) && percent >= RELEVANT_PERCENT) {
            codes.add(MILDER.get(kind));
        }
    }

    private static void acute(List<Part> parts, double unknownPercent, Set<String> codes) {
        double known = 100 - (unknownPercent > UNKNOWN_UP_TO_PERCENT ? unknownPercent : 0);
        for (Route route : List.of(Route.SWALLOWED, Route.SKIN)) {
            route.grade(parts, known).map(route.codes::get).ifPresent(codes::add);
        }
        // nothing tells whether it would be breathed in as vapour or as mist: the graver of both
        Stream.of(Route.VAPOUR, Route.DUST)
                .flatMap(r -> r.grade(parts, known).stream())
                .min(Integer::compare)
                .map(Route.VAPOUR.codes::get)
                .ifPresent(codes::add);
    }

    private static void skinAndEyes(List<Part> parts, Set<String> codes) {
        List<Part> relevant =
                parts.stream().filter(p -> p.percent() >= RELEVANT_PERCENT).toList();
        double burns = sum(relevant, p -> p.has("H314") ? 1 : 0);
        if (burns >= BURNS_PERCENT) {
            codes.add("H314");
        } else if (TEN * burns + sum(relevant, p -> p.has("H315") && !p.has("H314") ? 1 : 0) >= IRRITATES_PERCENT) {
            codes.add("H315");
        }
        double damage = sum(relevant, p -> p.has("H314") || p.has("H318") ? 1 : 0);
        if (damage >= EYE_DAMAGE_PERCENT) {
            codes.add("H318");
        } else if (TEN * damage + sum(relevant, p -> p.has("H319") && !p.has("H314") && !p.has("H318") ? 1 : 0)
                >= IRRITATES_PERCENT) {
            codes.add("H319");
        }
    }

    private static void waterLife(List<Part> parts, Set<String> codes) {
        if (sum(parts, p -> p.has("H400") ? 1 : 0) >= WATER_LIFE_PERCENT) {
            codes.add("H400");
        }
        double first = sum(parts, p -> p.has("H410") ? 1 : 0);
        double second = sum(parts, p -> p.has("H411") ? 1 : 0);
        double third = sum(parts, p -> p.has("H412") ? 1 : 0);
        if (first >= WATER_LIFE_PERCENT) {
            codes.add("H410");
        } else if (TEN * first + second >= WATER_LIFE_PERCENT) {
            codes.add("H411");
        } else if (TEN * TEN * first + TEN * second + third >= WATER_LIFE_PERCENT) {
            codes.add("H412");
        }
    }

    private static double sum(List<Part> parts, ToDoubleFunction<Part> factor) {
        return parts.stream()
                .mapToDouble(p -> factor.applyAsDouble(p) * p.percent())
                .sum();
    }
}
