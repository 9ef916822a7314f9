package workuptally.tally.balance;

import workuptally.model.Phrase;

/**
 * One way to the product in a layer, independent of the others.
 *
 * @param layer label
 * @param substance product
 * @param way which way
 * @param massGrams the figure, g
 * @param lowGrams low end of its band, g
 * @param highGrams high end, g
 * @param equation the equation with its numbers
 */
public record Route(
        String layer, String substance, Way way, double massGrams, double lowGrams, double highGrams, Phrase equation) {
    /** Ways that rest on different readings. */
    public enum Way {
        /** What an assay of the layer found. */
        ASSAY("assay"),
        /** The salt that the strong base and acid put in leave room for. */
        CHARGE_BALANCE("charge balance"),
        /** What an extraction leaves in water of that pH. */
        PARTITION("partition at the pH");

        private final String word;

        Way(String word) {
            this.word = word;
        }

        /** The words in reports and JSON. */
        public String word() {
            return word;
        }
    }
}
