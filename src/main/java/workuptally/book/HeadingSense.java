package workuptally.book;

import java.util.Optional;

/**
 * What a heading of a laboratory's own list can mean.
 *
 * @param subject whom it is about: {@code run}, {@code substrate}, {@code product} …; empty where the heading does not say
 * @param number which one, for {@code reagent 2}; 1 where the heading does not say
 * @param quantity what of it: {@code mass}, {@code molar mass} …; empty where the heading does not say
 * @param unit unit in the heading, if any
 */
record HeadingSense(String subject, int number, String quantity, Optional<Unit> unit) {
    HeadingSense withSubject(String other, int which) {
        return new HeadingSense(other, which, quantity, unit);
    }

    HeadingSense withQuantity(String other) {
        return new HeadingSense(subject, number, other, unit);
    }

    /** In words, {@code mass of reagent 2}. */
    String inWords() {
        String what = quantity.isEmpty() ? "name" : quantity;
        String whom = subject + (number > 1 ? " " + number : "");
        return subject.isEmpty() ? what : what + " of the " + whom;
    }
}
