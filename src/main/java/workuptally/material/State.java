package workuptally.material;

import java.util.Locale;

/** How far a written name is understood. */
public enum State {
    /** The tables know it. */
    LISTED,
    /** The user gave its formula: its mass is known, what it does is not. */
    DESCRIBED,
    /** Neither the tables know it nor has it a formula, or its name means more than one thing. */
    UNLISTED;

    /** The word in reports. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
