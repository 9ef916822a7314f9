package workuptally.tally.waste;

import java.util.OptionalDouble;

/**
 * One layer in the waste account: the stream that its composition suggests, whether or not anybody proposes to let it go.
 *
 * @param layer label
 * @param stream key of the waste stream in the reference data
 * @param streamName name of the stream
 * @param why what decides, for example {@code aqueous, pH 1.8}
 * @param massGrams mass, g; by volume and make-up where it was not weighed, which {@code why} then says; empty where neither was recorded
 * @param kept true for a layer that is kept or of which no status is recorded; false for one to be re-used or used up
 */
public record WasteLine(
        String layer, String stream, String streamName, String why, OptionalDouble massGrams, boolean kept) {
    /** Many lines have the same label, and the same reason. */
    public WasteLine {
        layer = layer.intern();
        why = why.intern();
    }
}
