package workuptally.reference.waste;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import workuptally.reference.substances.MaterialClass;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.NamedTable;
import workuptally.reference.tables.ReferenceCells;
import workuptally.reference.tables.TableFile;
import workuptally.reference.words.WordGuess;

/** Waste streams, the rules by which a layer suggests one, and the words by which a container tells its own; immutable. */
public final class WasteStreams {
    /** How a container is to be handled keeps no material out: {@code do not seal}, {@code no smoking}. */
    private static final Pattern ABOUT_THE_CAN = Pattern.compile(
            "(?:smoking|rauchen|fumer|full|seal|close|shut|tight|open|lid|deckel|cap|shake|heat|touch|move|remove|fill|overfill|sharps|glass|gloves"
                    + "|needles|pipettes|paper|rubbish|trash|food|before|after|yet|more than|label|entry|access|flames?)\\b");

    private static final Pattern NEUTRAL = Pattern.compile("(?<!\\p{L})neutr(?:al|e|ale|es|aux)(?!\\p{L})");

    /** Nothing is to be put into it any more. */
    private static final Pattern CLOSED = Pattern.compile(
            "(?<!\\p{L})(?:full|closed|voll|geschlossen|verschlossen|plein|pleine|fermé|fermée)(?!\\p{L})");

    /** For one acid alone, {@code sulfuric acid only}: whether another one fits cannot be told. */
    private static final Pattern ONE_ACID_ONLY = Pattern.compile(
            "(?<!\\p{L})(?:(?!organic|inorganic)\\p{L}+ic acid only|only (?!organic|inorganic)\\p{L}+ic acid"
                    + "|nur \\p{L}+säure|\\p{L}+säure nur|acide \\p{L}+ique (?:seulement|uniquement))(?!\\p{L})");

    private static final Pattern COMMAS = Pattern.compile(",\\s*");

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\d]+");

    private static final Pattern OF_ANY_KIND = Pattern.compile(
            "(?:strong|weak|mineral|organic|inorganic|conc|concentrated|dilute|diluted|any|other|all|free|heavy|toxic|aqueous|waste|more|further"
                    + "|stark\\p{L}*|schwach\\p{L}*|organisch\\p{L}*|konz\\p{L}*|verd\\p{L}*|all\\p{L}*|forts?|faibles?|autres?)");

    private final NamedTable<WasteStream> all;
    private final List<StreamRule> rules;
    private final List<StreamWords> words;

    private WasteStreams(List<WasteStream> all, List<StreamRule> rules, List<StreamWords> words) {
        this.all = NamedTable.spelledFreely(all).by(WasteStream::key).by(WasteStream::name);
        this.rules = rules.stream()
                .sorted(Comparator.comparingInt(StreamRule::priority))
                .toList();
        this.words = words;
    }

    /**
     * Reads them.
     *
     * @throws IllegalReferenceException if a value is malformed, a rule or word names a stream that is not listed, or no stream asks first
     */
    public static WasteStreams of(Map<KnownTable, TableFile> files) throws IllegalReferenceException {
        WasteStreams streams = new WasteStreams(
                files.get(KnownTable.WASTE_STREAMS).each(WasteStream::of),
                files.get(KnownTable.STREAM_RULES).each(StreamRule::of),
                files.get(KnownTable.STREAM_WORDS).each(StreamWords::of));
        for (KnownTable table : List.of(KnownTable.STREAM_RULES, KnownTable.STREAM_WORDS)) {
            for (ReferenceCells row : files.get(table).rows()) {
                if (streams.find(row.raw("stream")).isEmpty()) {
                    throw row.wrong("stream", row.raw("stream"), "a key of waste-streams.csv");
                }
            }
        }
        if (streams.all.stream().noneMatch(WasteStream::asksFirst)) {
            throw new IllegalReferenceException(
                    KnownTable.WASTE_STREAMS.fileName(), "no stream of the family 'ask first' is left");
        }
        return streams;
    }

    /** The stream with a key or name. */
    public Optional<WasteStream> find(String name) {
        return all.find(name);
    }

    /**
     * What a container's label says: a listed key or name, else the words in it that it does not deny. A denial that is itself a word of a
     * stream, such as {@code non-halogenated}, tells that stream where nothing else does.
     */
    public ContainerLabel ofLabel(String label) {
        Optional<WasteStream> listed = find(label);
        if (listed.isPresent()) {
            return new ContainerLabel(listed, outOfNeutral(label), List.of(), label.toLowerCase(Locale.ROOT), false);
        }
        LabelDenials parts = LabelDenials.of(label, text -> words.stream().anyMatch(row -> row.begin(text)));
        Optional<WasteStream> stream = byWords(parts.said())
                .or(() -> parts.denials().stream()
                        .filter(denial -> !denial.items().isEmpty() && isTold(denial.whole(), denial.items()))
                        .flatMap(denial -> byWords(denial.whole()).stream())
                        .findFirst());
        List<WasteStream> keptOut = new ArrayList<>(outOfNeutral(parts.said()));
        List<String> byName = new ArrayList<>();
        boolean unread = false;
        for (LabelDenials.Denial denial : parts.denials()) {
            if (!denial.items().isEmpty()
                    && denial.items().stream()
                            .allMatch(item -> ABOUT_THE_CAN.matcher(item).lookingAt())) {
                continue;
            }
            unread |= !denial.clear() || denial.items().isEmpty();
            for (String item : denial.items()) {
                Optional<WasteStream> out = isOneMaterial(item) ? Optional.empty() : byWords(item);
                out.ifPresent(keptOut::add);
                if (out.isEmpty() && !isTold(denial.whole(), denial.items())) {
                    byName.add(item.strip());
                }
            }
        }
        unread |= ONE_ACID_ONLY.matcher(label.toLowerCase(Locale.ROOT)).find();
        boolean closed = CLOSED.matcher(parts.said()).find();
        return new ContainerLabel(stream, keptOut, byName, parts.said(), unread || closed || holdsASlip(parts.said()));
    }

    /** A container for neutral water takes neither acid nor base; one that says aqueous alone may. */
    private List<WasteStream> outOfNeutral(String said) {
        return NEUTRAL.matcher(said.toLowerCase(Locale.ROOT)).find()
                ? all.stream()
                        .filter(stream -> stream.impliedClasses().contains(MaterialClass.ACID)
                                || stream.impliedClasses().contains(MaterialClass.BASE))
                        .toList()
                : List.of();
    }

    /** True where a word is one slip from a word of a stream, and is none: {@code aqueous, basc}. A plural without its ending is no slip. */
    private boolean holdsASlip(String said) {
        return WORD.matcher(said)
                .results()
                .map(MatchResult::group)
                .filter(word -> byWords(word).isEmpty() && byWords(word + "s").isEmpty())
                .anyMatch(word -> words.stream()
                        .flatMap(row -> row.words().stream())
                        .anyMatch(known -> WordGuess.isSlipOf(word, known)));
    }

    /** {@code no nitric acid} keeps one acid out, {@code no strong acids} all that the stream is for. */
    private boolean isOneMaterial(String item) {
        String[] itsWords = item.strip().split("[\\s-]+");
        return itsWords.length > 1
                && byWords(itsWords[0]).isEmpty()
                && byWords(item).isPresent()
                && !OF_ANY_KIND.matcher(itsWords[0]).matches();
    }

    private Optional<WasteStream> byWords(String text) {
        String plain = COMMAS.matcher(text).replaceAll(" ");
        return words.stream().filter(row -> row.standIn(plain)).findFirst().flatMap(row -> find(row.stream()));
    }

    /** True where a denial is a word of a stream with what denies, so that it tells another stream than what it denies. */
    private boolean isTold(String whole, List<String> items) {
        Optional<String> told = byWords(whole).map(WasteStream::key);
        return told.isPresent()
                && items.stream()
                        .noneMatch(item -> byWords(item).map(WasteStream::key).equals(told));
    }

    /** True where a layer of one stream holds what a label keeps out with the name of another: acid, or solvent in water. */
    public boolean isKeptOut(WasteStream incoming, WasteStream keptOut) {
        boolean solvent = isOfSolvent(keptOut);
        boolean holdsSolvent = rules.stream()
                .anyMatch(rule -> rule.stream().equals(incoming.key())
                        && rule.when().organicAboveMassPercent().isPresent());
        return incoming.key().equals(keptOut.key())
                || solvent && holdsSolvent
                || incoming.impliedClasses().stream().anyMatch(keptOut.impliedClasses()::contains);
    }

    /** True for a stream that takes organic solvents of any kind: who keeps it out keeps organics out. */
    public boolean isOfSolvent(WasteStream stream) {
        return rules.stream()
                .anyMatch(rule -> rule.stream().equals(stream.key())
                        && rule.when().organicAboveMassPercent().isPresent()
                        && !rule.when().aboveHalogenLimit());
    }

    /** The rule that decides the stream of a layer: of those that fit, the one with the lowest priority number. */
    public Optional<StreamRule> ruleFor(LayerFacts layer) {
        return rules.stream().filter(rule -> rule.fits(layer)).findFirst();
    }

    /** The stream for what fits no other: the first that asks first. */
    public WasteStream askFirst() {
        return all.stream().filter(WasteStream::asksFirst).findFirst().orElseThrow();
    }

    /** All streams. */
    public List<WasteStream> all() {
        return all;
    }

    /** All rules, the lowest priority number first. */
    public List<StreamRule> rules() {
        return rules;
    }

    /** All words of containers, in the order in which they are looked for. */
    public List<StreamWords> words() {
        return words;
    }
}
