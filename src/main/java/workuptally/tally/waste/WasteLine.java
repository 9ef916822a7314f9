package workuptally.tally.waste;

import java.util.OptionalDouble;
import workuptally.model.Layer;

/**
 * One layer in the waste account: the stream that its composition suggests, whether or not anybody proposes to let it go.
 *
 * @param layer label
 * @param stream key of the waste stream in the reference data
 * @param streamName name of the stream
 * @param why what decides, for example {@code aqueous, pH 1.8}
 * @param massGrams mass, g; by volume and make-up where it was not weighed, which {@code why} then says; empty where neither was recorded
 * @param standing what becomes of it
 */
public record WasteLine(
        String layer, String stream, String streamName, String why, OptionalDouble massGrams, Standing standing) {
    /** Many lines have the same label, and the same reason. */
    public WasteLine {
        layer = layer.intern();
        why = why.intern();
    }

    /** What becomes of a layer, as far as the record says. */
    public enum Standing {
        /** Kept or released, or no status is recorded: it is or will be waste. */
        KEPT("kept"),
        /** Set aside to be re-used. */
        TO_REUSE("to re-use"),
        /** Gone into an analysis or another use. */
        USED_UP("used up"),
        /** Only planned. */
        PLANNED("planned");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        /** The word in reports. */
        public String word() {
            return word;
        }

        static Standing of(Layer.Status status) {
            return switch (status) {
                case KEPT, RELEASED -> KEPT;
                case TO_REUSE -> TO_REUSE;
                case USED_UP, CONSUMED, LOST -> USED_UP;
            };
        }
    }

    /** True for a layer that is kept or of which no status is recorded; false for one to be re-used, used up, or planned. */
    public boolean kept() {
        return standing == Standing.KEPT;
    }
}
