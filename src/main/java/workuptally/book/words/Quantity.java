package workuptally.book.words;

/** Kinds of quantity that a number in a book can be; units convert only within one. */
public enum Quantity {
    MASS("a mass"),
    VOLUME("a volume"),
    AMOUNT("an amount of substance"),
    EQUIVALENTS("a number of equivalents"),
    MASS_PER_VOLUME("a mass per volume"),
    CONCENTRATION("a concentration"),
    MOLAR_MASS("a molar mass"),
    PERCENT("a percentage"),
    TEMPERATURE("a temperature"),
    PRESSURE("a pressure"),
    TIME("a time"),
    PURE("a number");

    private final String words;

    Quantity(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
