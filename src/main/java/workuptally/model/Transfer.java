package workuptally.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A proposed or done transfer of a layer or material into a waste container.
 *
 * @param id id as typed
 * @param run run id; empty for a free material
 * @param layers layer labels; empty for a free material
 * @param material free material; empty for layers
 * @param container container id
 * @param massGrams mass, g
 * @param status proposed or done
 * @param by who
 * @param date when
 * @param row its row
 */
public record Transfer(
        String id,
        String run,
        List<String> layers,
        String material,
        String container,
        Field massGrams,
        Status status,
        String by,
        Optional<LocalDate> date,
        RowPlace row) {
    /** Copies the list. */
    public Transfer {
        layers = List.copyOf(layers);
    }

    /** Whether it has happened. */
    public enum Status {
        PROPOSED,
        DONE
    }
}
