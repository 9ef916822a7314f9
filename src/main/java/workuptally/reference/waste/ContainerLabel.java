package workuptally.reference.waste;

import java.util.List;
import java.util.Optional;

/**
 * What the label of a waste container says of its stream.
 *
 * @param stream the stream it is for; empty if no word tells it
 * @param keptOut streams that it keeps out, {@code no acids}
 * @param keptOutByName what else it keeps out, as typed in lower case, that no word of a stream tells: a material, {@code no DMF}
 * @param said its words without those that deny, in lower case
 * @param unread true where it cannot be told what it keeps out
 */
public record ContainerLabel(
        Optional<WasteStream> stream,
        List<WasteStream> keptOut,
        List<String> keptOutByName,
        String said,
        boolean unread) {
    /** Copies the lists. */
    public ContainerLabel {
        keptOut = List.copyOf(keptOut);
        keptOutByName = List.copyOf(keptOutByName);
    }

    /** The same where it tells less than it seems: it keeps out what no table knows, or its contents contradict it. */
    public ContainerLabel withDoubt() {
        return new ContainerLabel(stream, keptOut, keptOutByName, said, true);
    }
}
