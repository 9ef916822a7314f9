package workuptally.book.tables;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import workuptally.book.words.BookWords;
import workuptally.model.Limit;
import workuptally.reference.words.WordGuess;

/**
 * A name in Limits: the setting it is, with a unit behind it as headings have one, {@code Layer limit (% of theory)}, or in the plural; else
 * those it may be meant for.
 *
 * @param limit the setting
 * @param unit unit behind the name; empty without one
 * @param near settings that another name may be meant for
 */
record LimitName(Optional<Limit> limit, String unit, List<Limit> near) {
    private static final Map<String, Limit> BY_NAME = Arrays.stream(Limit.values())
            .collect(Collectors.toUnmodifiableMap(limit -> folded(limit.title()), Function.identity()));

    private static final Pattern WITH_UNIT = Pattern.compile(
            "(?<name>[^(\\[%°]+?)[,:]?\\s*(?:\\((?<round>[^()]*)\\)|\\[(?<square>[^\\[\\]]*)\\]|(?<bare>[%°].*)|/\\s*(?<slash>\\S+))");

    private static final Pattern HOLDS =
            Pattern.compile("(?iu)\\b(?:hold|release|freeze|block|keep)|sperr|zurückhalt|freigabe|retenir|libér");

    private static final Pattern LIMITS = Pattern.compile("(?iu)limit|grenz|höchst|maximum|seuil|loss|verlust|perte");

    private static final Pattern OF_OTHER_THINGS = Pattern.compile(
            "(?iu)container|bottle|drum|funnel|solvent|waste|order|stock|stor|balance|temperature|time|batch|budget|gebinde|abfall|solvant");

    /** Words that say nothing about which setting is meant. */
    private static final Set<String> FILLERS = Set.of(
            "a",
            "an",
            "the",
            "of",
            "per",
            "for",
            "in",
            "by",
            "to",
            "on",
            "our",
            "own",
            "lab",
            "max",
            "maximum",
            "maximal",
            "highest",
            "largest",
            "most",
            "allowed",
            "permitted",
            "each",
            "one",
            "and",
            "value",
            "percent",
            "single");

    /** Words that settings are also known by (common practice). */
    private static final Map<String, String> OTHER_WORDS = Map.ofEntries(
            Map.entry("held", "hold"),
            Map.entry("holds", "hold"),
            Map.entry("onhold", "hold"),
            Map.entry("filling", "fill"),
            Map.entry("filled", "fill"),
            Map.entry("level", "fill"),
            Map.entry("bottle", "container"),
            Map.entry("drum", "container"),
            Map.entry("can", "container"),
            Map.entry("separator", "funnel"),
            Map.entry("threshold", "limit"),
            Map.entry("phase", "layer"),
            Map.entry("lod", "detection"),
            Map.entry("halogenated", "halogen"),
            Map.entry("halogens", "halogen"),
            Map.entry("k", "coverage"),
            Map.entry("ambient", "room"),
            Map.entry("barometric", "pressure"));

    LimitName {
        near = List.copyOf(near);
    }

    static LimitName of(String typed) {
        Limit whole = BY_NAME.get(folded(typed));
        if (whole != null) {
            return new LimitName(Optional.of(whole), "", List.of());
        }
        Matcher split = WITH_UNIT.matcher(BookWords.tidy(typed));
        String name = split.matches() ? split.group("name").strip() : typed;
        Limit named = BY_NAME.get(folded(name));
        if (named != null) {
            String unit = unit(split);
            return LimitRows.measure(unit).isPresent()
                    ? new LimitName(Optional.of(named), unit, List.of())
                    : new LimitName(Optional.empty(), "", List.of(named));
        }
        return new LimitName(Optional.empty(), "", near(name));
    }

    private static String unit(Matcher split) {
        String unit = Arrays.asList("round", "square", "bare", "slash").stream()
                .map(split::group)
                .filter(text -> text != null)
                .findFirst()
                .orElse("");
        return unit.strip();
    }

    /** Loosely spelled, each word in the singular. */
    private static String folded(String name) {
        return Arrays.stream(BookWords.tidy(name).split(" "))
                .map(word -> singular(BookWords.loose(word)))
                .collect(Collectors.joining());
    }

    private static String singular(String word) {
        return word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
                ? word.substring(0, word.length() - 1)
                : word;
    }

    /** Settings of which the name has every word, or which have every word of the name, or of which it is a slip of the pen. */
    private static List<Limit> near(String name) {
        Set<String> typed = words(name);
        List<Limit> slips = Arrays.stream(Limit.values())
                .filter(limit -> WordGuess.isSlipOf(folded(name), folded(limit.title())))
                .toList();
        if (!slips.isEmpty() || typed.isEmpty()) {
            return slips;
        }
        List<Limit> meant = nearByWords(typed);
        return meant.isEmpty() ? ofAnyName(name) : meant;
    }

    /** A name that speaks of holding runs, or of a limit that is none of another kind, is taken for one that layers rest on. */
    private static List<Limit> ofAnyName(String name) {
        return HOLDS.matcher(name).find()
                ? List.of(Limit.HOLD_RUNS)
                : LIMITS.matcher(name).find() && !OF_OTHER_THINGS.matcher(name).find()
                        ? List.of(Limit.LAYER_LIMIT, Limit.RUN_LIMIT)
                        : List.of();
    }

    private static List<Limit> nearByWords(Set<String> typed) {
        List<Limit> whole = Arrays.stream(Limit.values())
                .filter(limit -> typed.containsAll(words(limit.title())))
                .toList();
        return whole.isEmpty()
                ? Arrays.stream(Limit.values())
                        .filter(limit -> words(limit.title()).containsAll(typed))
                        .toList()
                : whole;
    }

    private static Set<String> words(String name) {
        return Arrays.stream(BookWords.tidy(name).toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .map(LimitName::singular)
                .map(word -> OTHER_WORDS.getOrDefault(word, word))
                .filter(word -> !word.isEmpty() && !FILLERS.contains(word))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
