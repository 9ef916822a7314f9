package workuptally.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A waste container.
 *
 * @param id id as typed
 * @param wasteStream stream as named by the lab
 * @param capacityLitres capacity, L
 * @param tareGrams empty container, g
 * @param weighedOn day of the weighing
 * @param grossThenGrams gross at that weighing, g
 * @param contentsThen contents at that weighing
 * @param opened day of the first addition
 * @param location where it stands
 * @param contact whom to ask
 * @param row its row
 */
public record Container(
        String id,
        String wasteStream,
        Field capacityLitres,
        Field tareGrams,
        Optional<LocalDate> weighedOn,
        Field grossThenGrams,
        List<Content> contentsThen,
        Optional<LocalDate> opened,
        String location,
        String contact,
        RowPlace row) {
    /** Copies the list. */
    public Container {
        contentsThen = List.copyOf(contentsThen);
    }

    /**
     * A part of the contents.
     *
     * @param substance name as typed
     * @param massGrams mass, g
     */
    public record Content(String substance, double massGrams) {}
}
