package workuptally.book.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import workuptally.book.words.BookWords;
import workuptally.book.words.TypedText;

/**
 * The runs that a supervisor's entry holds, {@code AM-1; AM-2}, {@code am 1 + am 2}, {@code AM-1 to AM-3}, {@code all}.
 *
 * @param ids the runs it holds, as Runs spells them, in order of the entry
 * @param unknown what in it names no run
 */
record HeldRuns(List<String> ids, List<String> unknown) {
    private static final Set<String> NONE = Set.of(
            "none", "no", "/", "", "n/a", "na", "nil", "nothing", "keine", "kein", "nein", "aucun", "aucune", "non");

    private static final Set<String> ALL = Set.of(
            "all",
            "allruns",
            "every",
            "everyrun",
            "everything",
            "each",
            "eachrun",
            "wholebook",
            "alle",
            "alleversuche",
            "alles",
            "tous",
            "toutes",
            "tout",
            "touslesessais");

    /** Marks and words that stand between names, the ones least likely to be part of a name first. */
    private static final List<Pattern> BETWEEN = Stream.of(
                    ";", "\\R", "[,+&|]", "(?i)\\s+(?:and|und|et|sowie|as well as|or|oder|ou)\\s+", "\\s+", "/")
            .map(Pattern::compile)
            .toList();

    private static final Pattern TO = Pattern.compile("(?iu)\\b(?:to|through|until|bis|à)\\b|\\.{2,3}|->|-");

    private static final Pattern NUMBERED = Pattern.compile("(?<stem>.*?)(?<number>\\d{1,6})");

    private static final Pattern IN_BRACKETS = Pattern.compile("\\([^()]*\\)|\\[[^\\[\\]]*\\]");

    private static final Pattern QUOTES = Pattern.compile("[\"'“”„«»]+");

    private static final Pattern RUN_WORD = Pattern.compile("(?iu)(?:runs?|versuche?|ansätze?|ansatz|essais?)[\\s:]+");

    private static final int MOST_OF_A_RANGE = 200;

    HeldRuns {
        ids = List.copyOf(ids);
        unknown = List.copyOf(unknown);
    }

    static HeldRuns read(String typed, RunIndex runs) {
        String text = TypedText.plain(typed);
        List<String> ids = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        if (runs.find(text).isEmpty() && NONE.contains(BookWords.loose(bare(text)))) {
            return new HeldRuns(ids, unknown);
        }
        take(text, 0, runs, ids, unknown);
        return new HeldRuns(ids.stream().distinct().toList(), unknown);
    }

    private static void take(String text, int mark, RunIndex runs, List<String> ids, List<String> unknown) {
        String name = runs.find(text.strip()).isPresent() ? text.strip() : bare(text);
        if (name.isEmpty()) {
            return;
        }
        List<String> named = named(name, runs);
        if (!named.isEmpty()) {
            ids.addAll(named);
        } else if (mark < BETWEEN.size()) {
            BETWEEN.get(mark).splitAsStream(name).forEach(part -> take(part, mark + 1, runs, ids, unknown));
        } else {
            unknown.add(name);
        }
    }

    private static List<String> named(String name, RunIndex runs) {
        Optional<RunAssembly> run = runs.find(name);
        if (run.isPresent()) {
            return List.of(run.get().id());
        }
        if (ALL.contains(BookWords.loose(name))) {
            return runs.all().stream().map(RunAssembly::id).toList();
        }
        return range(name, runs);
    }

    /** The runs from the first to the last number of one stem; none unless both ends are runs. */
    private static List<String> range(String name, RunIndex runs) {
        Matcher join = TO.matcher(name);
        while (join.find()) {
            Matcher first = NUMBERED.matcher(name.substring(0, join.start()).strip());
            Matcher last = NUMBERED.matcher(name.substring(join.end()).strip());
            if (first.matches() && last.matches() && isOneStem(first.group("stem"), last.group("stem"))) {
                return between(first, last, runs);
            }
        }
        return List.of();
    }

    private static boolean isOneStem(String first, String last) {
        return last.isBlank() || BookWords.loose(first).equals(BookWords.loose(last));
    }

    private static List<String> between(Matcher first, Matcher last, RunIndex runs) {
        int from = Integer.parseInt(first.group("number"));
        int to = Integer.parseInt(last.group("number"));
        int digits = first.group("number").length();
        if (from >= to || to - from > MOST_OF_A_RANGE) {
            return List.of();
        }
        List<Optional<RunAssembly>> all = IntStream.rangeClosed(from, to)
                .mapToObj(number -> numbered(first.group("stem"), number, digits, runs))
                .toList();
        boolean endsAreRuns = all.get(0).isPresent() && all.get(all.size() - 1).isPresent();
        return endsAreRuns
                ? all.stream().flatMap(Optional::stream).map(RunAssembly::id).toList()
                : List.of();
    }

    private static Optional<RunAssembly> numbered(String stem, int number, int digits, RunIndex runs) {
        String padded = "0".repeat(Math.max(0, digits - Integer.toString(number).length())) + number;
        return runs.find(stem + padded);
    }

    /** A name without quotes, remarks in brackets and the word run before it. */
    private static String bare(String text) {
        String plain = QUOTES.matcher(text).replaceAll("").strip();
        String open = IN_BRACKETS.matcher(plain).replaceAll(" ").strip();
        String name = open.isEmpty() ? plain : open;
        Matcher word = RUN_WORD.matcher(name);
        return word.lookingAt() ? name.substring(word.end()).strip() : name;
    }
}
