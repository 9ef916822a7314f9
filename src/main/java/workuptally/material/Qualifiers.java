package workuptally.material;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import workuptally.material.Strength.Kind;
import workuptally.reference.substances.NameWord;

/** Takes off a name, word by word from both ends, what stands around it, and keeps what it says; used once for a text. */
final class Qualifiers {
    /** Per cent from which a figure beside a name is a grade of purity (common practice: goods of 90 % and more are sold as such). */
    static final double LEAST_GRADE_PERCENT = 90;

    private static final Pattern SOLVENT = Pattern.compile("[\\p{L}][\\p{L}\\d,/-]*(?: [\\p{L}-]+)?");
    private static final String OPENING = "([";
    private static final String CLOSING = ")]";

    private final NameWordSearch words;
    private String rest;
    private Optional<Strength> strength = Optional.empty();
    private Optional<Form> form = Optional.empty();
    private Optional<String> carrier = Optional.empty();
    private List<Double> ratio = List.of();
    private boolean aqueous;
    private boolean recovered;

    Qualifiers(String text, NameWordSearch words) {
        this.rest = text;
        this.words = words;
    }

    String rest() {
        return rest;
    }

    Optional<Strength> strength() {
        return strength;
    }

    Optional<Form> form() {
        return form;
    }

    /** Text of the solvent that a bracket names. */
    Optional<String> carrier() {
        return carrier;
    }

    /** Parts by volume of a mixture. */
    List<Double> ratio() {
        return ratio;
    }

    boolean isAqueous() {
        return aqueous || strength.filter(Strength::meansWater).isPresent() && carrier.isEmpty();
    }

    boolean isRecovered() {
        return recovered;
    }

    /** Takes one thing off; false where nothing is left to take. */
    boolean peel() {
        return trimmed()
                || bracket()
                || backWords()
                || frontWords()
                || figures()
                || ratioAtAnEnd()
                || support()
                || compound();
    }

    private boolean trimmed() {
        int from = 0;
        int to = rest.length();
        while (from < to && isLoose(rest.charAt(from))) {
            from++;
        }
        while (to > from && isLoose(rest.charAt(to - 1))) {
            to--;
        }
        boolean changed = to - from < rest.length() && to > from;
        rest = changed ? rest.substring(from, to) : rest;
        return changed;
    }

    /** True for what stands between words and says nothing. */
    static boolean isLoose(char c) {
        return c == ' '
                || c == ','
                || c == ';'
                || c == ':'
                || c == '='
                || c == '~'
                || c == '<'
                || c == '>'
                || c == '\u2264';
    }

    private boolean bracket() {
        int close = rest.length() - 1;
        if (close < 2 || CLOSING.indexOf(rest.charAt(close)) < 0) {
            return false;
        }
        int open = opening(close);
        if (open <= 0) {
            return false;
        }
        Qualifiers inside = new Qualifiers(rest.substring(open + 1, close).strip(), words);
        if (!inside.readsWhole()) {
            return false;
        }
        take(inside);
        rest = rest.substring(0, open).strip();
        return true;
    }

    /** Takes a text apart that is nothing but qualifiers; its carrier, if it names one, is what stands behind "in" or a comma. */
    private boolean readsWhole() {
        String whole = rest;
        String before;
        do {
            before = rest;
            Optional<NameWord> last = words.find(rest);
            if (last.isPresent()) {
                // A figure beside the word belongs to it: "50 % wet" is no strength of the material.
                boolean ofWord = !rest.equals(whole) && last.get().meaning() == NameWord.Meaning.GRADE;
                strength = ofWord ? Optional.empty() : strength;
                note(last.get());
                return true;
            }
            if (rest.startsWith("in ")) {
                carrier = Optional.of(rest.substring("in ".length()).strip());
                return true;
            }
            Optional<PlacedStrength> figure = PlacedStrength.leading(rest + " ").filter(f -> strength.isEmpty());
            if (figure.isPresent()) {
                strength = figure.map(PlacedStrength::strength);
                rest = rest.substring(Math.min(rest.length(), figure.get().to()))
                        .strip();
                if (rest.isEmpty()) {
                    return true;
                }
                if (rest.startsWith(",")) {
                    rest = rest.substring(1).strip();
                    if (rest.isEmpty() || !word(rest)) {
                        carrier = Optional.of(rest.startsWith("in ") ? rest.substring("in ".length()) : rest);
                    }
                    return true;
                }
            }
            if (ratioAtAnEnd() && rest.isEmpty()) {
                return true;
            }
            frontWords();
        } while (!rest.equals(before));
        return TrailingAmount.isAmount(rest) || isMolarIn(rest);
    }

    /** A solvent straight behind the strength, {@code (1.6 M hexane)}. */
    private boolean isMolarIn(String text) {
        carrier = strength.filter(s -> s.kind() == Kind.MOLES_PER_LITRE)
                .filter(s -> SOLVENT.matcher(text).matches())
                .map(s -> text);
        return carrier.isPresent();
    }

    private void take(Qualifiers inside) {
        strength = strength.or(inside::strength);
        form = form.or(inside::form);
        carrier = carrier.or(inside::carrier);
        ratio = ratio.isEmpty() ? inside.ratio : ratio;
        aqueous |= inside.aqueous;
        recovered |= inside.recovered;
    }

    private int opening(int close) {
        int depth = 0;
        for (int i = close; i >= 0; i--) {
            char c = rest.charAt(i);
            depth += CLOSING.indexOf(c) >= 0 ? 1 : OPENING.indexOf(c) >= 0 ? -1 : 0;
            if (depth == 0) {
                return i;
            }
        }
        return -1;
    }

    private boolean backWords() {
        for (int count = words.longestPhrase(); count > 0; count--) {
            int from = startOfLast(count);
            if (from > 0 && word(stripped(rest.substring(from)))) {
                rest = rest.substring(0, from).strip();
                return true;
            }
        }
        return false;
    }

    private int startOfLast(int count) {
        int from = rest.length();
        for (int i = 0; i < count; i++) {
            from = from <= 0 ? -1 : rest.lastIndexOf(' ', from - 1);
            if (from < 0) {
                return -1;
            }
        }
        return from + 1;
    }

    private boolean frontWords() {
        for (int count = words.longestPhrase(); count > 0; count--) {
            int to = endOfFirst(count);
            if (to > 0 && word(stripped(rest.substring(0, to)))) {
                rest = rest.substring(to).strip();
                return true;
            }
        }
        return false;
    }

    private int endOfFirst(int count) {
        int to = 0;
        for (int i = 0; i < count; i++) {
            to = rest.indexOf(' ', to + 1);
            if (to < 0) {
                return -1;
            }
        }
        return to;
    }

    private static String stripped(String phrase) {
        String text = phrase.strip();
        return text.endsWith(",") ? text.substring(0, text.length() - 1) : text;
    }

    private boolean word(String phrase) {
        Optional<NameWord> word = words.find(phrase);
        word.ifPresent(this::note);
        return word.isPresent();
    }

    private void note(NameWord word) {
        switch (word.meaning()) {
            case GRADE, SOLUTION -> {}
            case RECOVERED -> recovered = true;
            case SATURATED -> inWords(Kind.SATURATED);
            case HALF_SATURATED -> inWords(Kind.HALF_SATURATED);
            case CONCENTRATED -> inWords(Kind.CONCENTRATED);
            case DILUTE -> inWords(Kind.DILUTE);
            case AQUEOUS -> aqueous = true;
            case HYDRATE -> form(Form.Kind.HYDRATE, word);
            case SALT -> form(Form.Kind.SALT, word);
            case SUPPORTED -> form(Form.Kind.SUPPORTED, word);
            case DISPERSED -> form(Form.Kind.DISPERSION, word);
        }
    }

    private void inWords(Kind kind) {
        strength = strength.or(() -> Optional.of(Strength.inWords(kind)));
    }

    private void form(Form.Kind kind, NameWord word) {
        form = form.or(() -> Optional.of(new Form(kind, word.value().orElse(word.word()))));
    }

    private boolean figures() {
        Optional<PlacedStrength> front = PlacedStrength.leading(rest);
        if (front.isPresent() && take(front.get().strength())) {
            rest = rest.substring(front.get().to()).strip();
            return true;
        }
        Optional<PlacedStrength> back = PlacedStrength.trailing(rest).filter(f -> f.from() > 0);
        if (back.isPresent() && take(back.get().strength())) {
            rest = rest.substring(0, back.get().from()).strip();
            return true;
        }
        return false;
    }

    /** A second figure is a grade if it can be one, or it makes room for the other; else the text says two things. */
    private boolean take(Strength figure) {
        boolean percent = figure.kind() == Kind.MASS_PERCENT;
        boolean grade = percent && figure.value().orElse(0) >= LEAST_GRADE_PERCENT;
        OptionalDouble held = strength.map(Strength::value).orElse(OptionalDouble.empty());
        if (strength.isEmpty() || held.isEmpty()) {
            strength = Optional.of(figure);
            return true;
        }
        return grade;
    }

    private boolean ratioAtAnEnd() {
        Optional<RatioAtEnd> found = ratio.isEmpty() ? RatioAtEnd.of(rest) : Optional.empty();
        found.ifPresent(f -> {
            ratio = f.parts();
            rest = f.rest();
        });
        return found.isPresent();
    }

    /** The end of a German compound, {@code NaHCO3-L\u00f6sung}. */
    private boolean compound() {
        int ending = words.endingForSolution(rest);
        if (ending > 0) {
            String name = rest.substring(0, rest.length() - ending);
            rest = name.endsWith("-") ? name.substring(0, name.length() - 1) : name;
        }
        return ending > 0;
    }

    private boolean support() {
        Optional<NameWord> suffix = words.suffix(rest);
        suffix.ifPresent(word -> {
            note(word);
            rest = rest.substring(0, rest.length() - word.word().length()).strip();
        });
        return suffix.isPresent();
    }
}
