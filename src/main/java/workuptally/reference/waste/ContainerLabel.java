package workuptally.reference.waste;

import java.util.List;
import java.util.Optional;

/**
 * What the label of a waste container says of its stream.
 *
 * @param stream the stream it is for; empty if no word tells it
 * @param keptOut streams that it keeps out, {@code no acids}
 * @param said its words without those that deny, in lower case
 * @param unread true where it keeps something out that no word of a stream tells, or where it cannot be told what
 */
public record ContainerLabel(Optional<WasteStream> stream, List<WasteStream> keptOut, String said, boolean unread) {
    /** Copies the list. */
    public ContainerLabel {
        keptOut = List.copyOf(keptOut);
    }
}
