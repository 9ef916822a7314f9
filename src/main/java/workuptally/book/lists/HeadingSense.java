package workuptally.book.lists;

import java.util.Optional;
import workuptally.book.words.Unit;

/**
 * What a heading of a laboratory's own list can mean.
 *
 * @param subject whom it is about: {@code run}, {@code substrate}, {@code product} …; empty where the heading does not say
 * @param number which one, for {@code reagent 2}; 1 where the heading does not say
 * @param quantity what of it: {@code mass}, {@code molar mass} …; empty where the heading does not say
 * @param unit unit in the heading, if any
 * @param called the material or product by its own name, where the heading gives it, {@code DMF (mL)}; else empty
 */
record HeadingSense(String subject, int number, String quantity, Optional<Unit> unit, String called) {
    /** A sense without a name of its own. */
    HeadingSense(String subject, int number, String quantity, Optional<Unit> unit) {
        this(subject, number, quantity, unit, "");
    }

    HeadingSense withSubject(String other, int which) {
        return new HeadingSense(other, which, quantity, unit, called);
    }

    /** The same quantity of what another heading is about. */
    HeadingSense ofThatOf(HeadingSense other) {
        return new HeadingSense(other.subject, other.number, quantity, unit, other.called);
    }

    HeadingSense withQuantity(String other) {
        return new HeadingSense(subject, number, other, unit, called);
    }

    HeadingSense called(String name) {
        return new HeadingSense(subject, number, quantity, unit, name);
    }

    /** True for a sense about the same thing. */
    boolean isAbout(HeadingSense other) {
        return subject.equals(other.subject) && number == other.number && called.equals(other.called);
    }

    /** In words, {@code mass of reagent 2}. */
    String inWords() {
        if (subject.equals(NamedInHeading.WORKUP)) {
            return "used in the workup (not used)";
        }
        if (quantity.equals("no table")) {
            return "nothing that a table takes (not used)";
        }
        String what = quantity.isEmpty() ? "name" : quantity;
        String whom = subject + (number > 1 ? " " + number : "");
        if (!called.isEmpty()) {
            return what + " of " + called + " (" + whom + ")";
        }
        return subject.isEmpty() ? what : what + " of the " + whom;
    }
}
