package workuptally.judgement.layers;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleSupplier;
import workuptally.model.Field;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Transfer;
import workuptally.tally.layers.LayerTally;

/**
 * How a layer has left the bench: by a transfer that was made, or by its status.
 *
 * @param how in words, {@code T3 into W-2, 2026-11-27}
 * @param containers where it is, where the book says so
 * @param whole false where a part of it is still there
 */
public record Departure(Phrase how, List<String> containers, boolean whole) {
    private static final Set<Layer.Status> GONE =
            Set.of(Layer.Status.RELEASED, Layer.Status.CONSUMED, Layer.Status.USED_UP);

    /** Copies the list. */
    public Departure {
        containers = List.copyOf(containers);
    }

    /**
     * Whether a layer has left.
     *
     * @param layer the layer
     * @param transfers transfers of its run
     * @param tolerance share of it that may stay behind where all of it was transferred, fraction
     */
    static Optional<Departure> of(LayerTally layer, List<Transfer> transfers, DoubleSupplier tolerance) {
        List<Transfer> made = transfers.stream()
                .filter(t -> t.status() == Transfer.Status.DONE && t.layers().contains(layer.label()))
                .toList();
        Optional<Layer.Status> gone =
                layer.entry().flatMap(l -> l.custody().status()).filter(GONE::contains);
        if (made.isEmpty()) {
            return gone.map(status -> new Departure(byStatus(layer, status), List.of(), true));
        }
        Phrase how = made.stream().map(Departure::words).collect(Phrase.joining(", "));
        List<String> containers =
                made.stream().map(Transfer::container).distinct().toList();
        return Optional.of(new Departure(how, containers, gone.isPresent() || isWhole(layer, made, tolerance)));
    }

    /** A transfer of several layers, or without an amount, takes the whole of each; a layer of unknown mass is taken to be gone. */
    private static boolean isWhole(LayerTally layer, List<Transfer> made, DoubleSupplier tolerance) {
        boolean told = made.stream()
                .allMatch(t -> t.layers().size() == 1
                        && t.massGrams().entered().isPresent()
                        && layer.massGrams().isPresent());
        double grams = made.stream()
                .map(Transfer::massGrams)
                .map(Field::entered)
                .flatMap(Optional::stream)
                .mapToDouble(e -> e.value())
                .sum();
        return !told
                || grams
                        >= (1 - tolerance.getAsDouble())
                                * layer.massGrams().get().value();
    }

    private static Phrase words(Transfer transfer) {
        return Phrase.of(
                transfer.date().isPresent() ? "{} into {}, {}" : "{} into {}{}",
                transfer.id(),
                transfer.container(),
                transfer.date().map(Object::toString).orElse(""));
    }

    private static Phrase byStatus(LayerTally layer, Layer.Status status) {
        String by = layer.entry().map(l -> l.custody().releasedBy()).orElse("");
        return by.isEmpty() ? Phrase.of("status {}", status.word()) : Phrase.of("status {}, by {}", status.word(), by);
    }
}
