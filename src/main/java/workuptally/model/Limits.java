package workuptally.model;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** The settings in force: the book's own where its Limits table has them, else the defaults of {@link Limit}. */
public final class Limits {
    private final Map<Limit, Field.Entered> numbers;
    private final Map<Limit, String> texts;
    private final Map<Limit, LimitAnswer> answers;
    private final List<Limit> unread;
    private final List<String> heldRuns;
    private final Map<Limit, String> given = new EnumMap<>(Limit.class);

    /**
     * Settings of a book.
     *
     * @param numbers numbers the book sets, in the unit of the limit
     * @param texts texts and dates the book sets, as typed
     */
    public Limits(Map<Limit, Field.Entered> numbers, Map<Limit, String> texts) {
        this(numbers, texts, Map.of(), Set.of(), List.of());
    }

    /**
     * Settings of a book.
     *
     * @param answers what the texts among them answer
     * @param unread what the book sets and nobody can read, so that the default stands for another number
     * @param heldRuns runs on hold by {@link Limit#HOLD_RUNS}, by their ids
     */
    public Limits(
            Map<Limit, Field.Entered> numbers,
            Map<Limit, String> texts,
            Map<Limit, LimitAnswer> answers,
            Set<Limit> unread,
            List<String> heldRuns) {
        this.unread = List.copyOf(new TreeSet<>(unread));
        this.heldRuns = List.copyOf(heldRuns);
        this.numbers = new EnumMap<>(Limit.class);
        this.numbers.putAll(numbers);
        this.texts = new EnumMap<>(Limit.class);
        this.texts.putAll(texts);
        this.answers = new EnumMap<>(Limit.class);
        this.answers.putAll(answers);
    }

    /** What the book sets and nobody can read, in the order of the template. */
    public List<Limit> unread() {
        return unread;
    }

    /** Runs that the book holds, by their ids. */
    public List<String> heldRuns() {
        return heldRuns;
    }

    /** Only defaults. */
    public static Limits defaults() {
        return new Limits(Map.of(), Map.of());
    }

    /**
     * A limit that has a default.
     *
     * @throws IllegalArgumentException if neither the book nor the defaults have it
     */
    public double value(Limit limit) {
        OptionalDouble value = optional(limit);
        if (value.isEmpty()) {
            throw new IllegalArgumentException(limit.title() + " has no default");
        }
        return value.getAsDouble();
    }

    /** A limit that may be unset. */
    public OptionalDouble optional(Limit limit) {
        Field.Entered own = numbers.get(limit);
        return own != null ? OptionalDouble.of(own.value()) : limit.defaultValue();
    }

    /** A text; empty if the book has none. */
    public String text(Limit limit) {
        return given.getOrDefault(limit, texts.getOrDefault(limit, ""));
    }

    /** A day, for example {@link Limit#AS_OF}; empty where the book has none or it is no date. */
    public Optional<LocalDate> day(Limit limit) {
        try {
            return Optional.of(text(limit)).filter(t -> !t.isBlank()).map(LocalDate::parse);
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** The same settings with a text that was given for this review and wins over the book's. */
    public Limits given(Limit limit, String text) {
        Limits other = new Limits(numbers, texts, answers, new HashSet<>(unread), heldRuns);
        other.given.putAll(given);
        other.given.put(limit, text);
        return other;
    }

    /** What the book answers to a question; empty where it says nothing. */
    public Optional<LimitAnswer> answer(Limit limit) {
        return Optional.ofNullable(answers.get(limit));
    }

    /** True where the book answers yes to a question of what counts. */
    public boolean isYes(Limit limit) {
        return answers.get(limit) == LimitAnswer.YES;
    }

    /** Where the value in force comes from: {@code given for this review}, {@code set in the book}, or the origin of the default. */
    public String origin(Limit limit) {
        if (given.containsKey(limit)) {
            return "given for this review";
        }
        return isSetByBook(limit) ? "set in the book" : limit.origin();
    }

    /** True where the book sets the limit itself. */
    public boolean isSetByBook(Limit limit) {
        return numbers.containsKey(limit) || texts.containsKey(limit);
    }

    /** True where the book sets it, or whoever asked for this review: it has not its usual value. */
    public boolean isSet(Limit limit) {
        return isSetByBook(limit) || given.containsKey(limit);
    }

    /** The cell that sets a number, if the book sets it. */
    public Optional<Place> place(Limit limit) {
        return Optional.ofNullable(numbers.get(limit)).map(Field.Entered::place);
    }
}
